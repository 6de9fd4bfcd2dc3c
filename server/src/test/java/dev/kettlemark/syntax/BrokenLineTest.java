package dev.kettlemark.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Chance;
import dev.kettlemark.text.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A broken line spoils only itself. */
class BrokenLineTest {

  private static final List<String> LITTER =
      List.of(" ", ",", "#", "\"", "-", "±", "%", "1/2", "of", "all", "=", "°C", ".5", "\r", "\n");

  @Test
  void takesNothingFromTheNextLine() {
    assertEquals(
        List.of("SectionLine", "TakeLine", "StatementLine", "EmptyLine"),
        shapes("formula a\nall of\nmix foam\n"));
    assertEquals(
        List.of("SectionLine", "StatementLine", "StatementLine", "EmptyLine"),
        shapes("formula a\nmix foam,\nfold nut\n"));
  }

  @Test
  void leavesTheLinesBelowABrokenHeading() {
    assertEquals(
        List.of("SectionLine", "StatementLine", "AmountLine"),
        shapes("formula a °C\nmix foam\n3 % sugar"));
  }

  @Test
  void everyLineHasItsShapeInDamagedTexts() throws IOException {
    List<Path> files = samples();
    Chance.rounds(60, random -> {
      for (Path file : files) {
        String text = Files.readString(file);
        for (ParsedText.PlacedSection placed :
            ParsedText.of(damaged(text, random)).sections()) {
          Section section = placed.section();
          assertEquals(
              Source.of(section.text()).lineCount(), section.lines().size(), section::text);
        }
      }
    });
  }

  private static List<String> shapes(String text) {
    return ParsedText.of(text).sections().stream()
        .flatMap(placed -> placed.section().lines().stream())
        .map(line -> line.getClass().getSimpleName())
        .collect(Collectors.toList());
  }

  private static String damaged(String text, Random random) {
    StringBuilder damaged = new StringBuilder(text);
    for (int i = 0; i < 8; i++) {
      damaged.insert(random.nextInt(damaged.length()), LITTER.get(random.nextInt(LITTER.size())));
    }
    return damaged.toString();
  }

  private static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("../samples/gannet-slip"))) {
      return files.sorted().toList();
    }
  }
}
