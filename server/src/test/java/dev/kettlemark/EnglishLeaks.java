package dev.kettlemark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds what a page in another language shares with the same page in English.
 *
 * <p>Four words in a row are a sentence of the program; names and notes of the source stay as they were written.
 */
public final class EnglishLeaks {

  private static final int WORDS = 4;

  private final String sources;

  private EnglishLeaks(String sources) {
    this.sources = sources;
  }

  /** Whatever stands in the samples, in the pantry or in one of the further texts may stay English. */
  public static EnglishLeaks besidesSources(String... further) {
    String files = Stream.of(
            Path.of("../samples/gannet-slip"), Path.of("src/main/resources/dev/kettlemark/pantry"))
        .flatMap(folder -> texts(folder).stream())
        .collect(Collectors.joining(" "));
    return new EnglishLeaks(words(files + " " + String.join(" ", further)));
  }

  private static List<String> texts(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      List<String> texts = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".kettle")).toList()) {
        texts.add(Files.readString(file));
      }
      return texts;
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Four words in a row that both pages hold. */
  public Set<String> in(String english, String other) {
    Set<String> shared = rows(english);
    shared.retainAll(rows(other));
    shared.removeIf(row -> sources.contains(" " + row + " "));
    return shared;
  }

  // The version behind a name is the same word in French.
  private static Set<String> rows(String page) {
    Set<String> rows = new LinkedHashSet<>();
    for (String line : page.split("[\\n|·.,;:(]|\\bversion\\b")) {
      List<String> words =
          Arrays.stream(words(line).split(" ")).filter(w -> !w.isEmpty()).toList();
      for (int i = 0; i + WORDS <= words.size(); i++) {
        rows.add(String.join(" ", words.subList(i, i + WORDS)));
      }
    }
    return rows;
  }

  private static String words(String text) {
    return " " + text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}]+", " ") + " ";
  }
}
