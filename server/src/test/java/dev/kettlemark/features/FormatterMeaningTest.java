package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Chance;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Pantry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Over many texts: the layout says the same as the text, and laying it out again changes nothing. */
class FormatterMeaningTest {

  private static final List<String> LITTER = List.of(
      " ", "  ", "\t", "\u00A0", ",", "#", "\"", "-", "±", "%", "1/2", "of", "stage", "°C", ".5",
      "🍬", "\r", "\n", "\r\n");

  @Test
  void samplesAreInTheirLayout() throws IOException {
    for (Path file : samples("gannet-slip")) {
      String text = Files.readString(file);
      assertEquals(text, Formatter.format(text), file.toString());
    }
  }

  @Test
  void pantryAndMistakesKeepTheirMeaning() throws IOException {
    Pantry.documents().forEach(document -> checkMeaning(document.text().source().text()));
    for (Path file : samples("mistakes")) {
      checkMeaning(Files.readString(file));
    }
  }

  @Test
  void shuffledLinesKeepTheirMeaning() throws IOException {
    List<Path> files = samples("gannet-slip");
    Chance.rounds(20, random -> {
      for (Path file : files) {
        List<String> lines = new ArrayList<>(Files.readAllLines(file));
        Collections.shuffle(lines, random);
        checkMeaning(
            lines.stream().map(line -> respaced(line, random)).collect(Collectors.joining("\n")));
      }
    });
  }

  @Test
  void damagedTextsKeepTheirMeaning() throws IOException {
    List<Path> files = samples("gannet-slip");
    Chance.rounds(60, random -> {
      for (Path file : files) {
        checkMeaning(damaged(Files.readString(file), random));
      }
    });
  }

  private static void checkMeaning(String text) {
    String formatted = Formatter.format(text);
    assertEquals(meaning(text), meaning(formatted), () -> "of:\n" + text);
    assertEquals(formatted, Formatter.format(formatted), () -> "of:\n" + text);
  }

  /** What the sections declare, without the places where it is written. */
  private static String meaning(String text) {
    return Document.of("a.kettle", text).entries().stream()
        .map(Entry::declaration)
        .map(declaration -> declaration
            .map(d -> d.toString().replaceAll("Span\\[start=\\d+, end=\\d+\\]", "here"))
            .orElse("nothing"))
        .filter(declaration -> !declaration.equals("nothing"))
        .collect(Collectors.joining("\n"));
  }

  /** The line with other gaps between its words; quotes and comments are left alone. */
  private static String respaced(String line, Random random) {
    if (line.contains("\"") || line.contains("#")) {
      return " ".repeat(random.nextInt(3)) + line + " ".repeat(random.nextInt(3));
    }
    return Arrays.stream(line.split(" +"))
        .map(word -> word + " ".repeat(1 + random.nextInt(4)))
        .collect(Collectors.joining());
  }

  private static String damaged(String text, Random random) {
    StringBuilder damaged = new StringBuilder(text);
    for (int i = 0; i < 8; i++) {
      int at = random.nextInt(damaged.length());
      if (random.nextBoolean()) {
        damaged.delete(at, Math.min(damaged.length(), at + random.nextInt(4)));
      } else {
        damaged.insert(at, LITTER.get(random.nextInt(LITTER.size())));
      }
    }
    return damaged.toString();
  }

  private static List<Path> samples(String folder) throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../samples", folder))) {
      return files.sorted().toList();
    }
  }
}
