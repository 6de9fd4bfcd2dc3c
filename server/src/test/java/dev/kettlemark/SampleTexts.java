package dev.kettlemark;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Pantry;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The texts that are shipped: the samples, and the pantry. */
public final class SampleTexts {

  private SampleTexts() {}

  /** The sample library, without the pantry. */
  public static List<Document> library() {
    return folder("gannet-slip");
  }

  /** The sample library with the pantry. */
  public static List<Document> libraryWithPantry() {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.addAll(library());
    return all;
  }

  /** The gallery of mistakes; each text is a library of its own. */
  public static List<Document> mistakes() {
    return folder("mistakes");
  }

  /** Every text there is. */
  public static List<Document> all() {
    List<Document> all = new ArrayList<>(libraryWithPantry());
    all.addAll(mistakes());
    return all;
  }

  private static List<Document> folder(String name) {
    try (Stream<Path> files = Files.list(Path.of("..", "samples", name))) {
      return files
          .filter(file -> file.toString().endsWith(".kettle"))
          .sorted()
          .map(file -> Document.of(name + "/" + file.getFileName(), read(file)))
          .toList();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
