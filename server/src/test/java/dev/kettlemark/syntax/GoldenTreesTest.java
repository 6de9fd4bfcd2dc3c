package dev.kettlemark.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small texts, each with its tree as a committed drawing: {@code NAME.kettle} and {@code NAME.tree}. */
class GoldenTreesTest {

  private static final String FOLDER = "syntax/trees";

  static List<Path> texts() throws IOException {
    try (Stream<Path> files = Files.list(Pinned.folder(FOLDER))) {
      return files.filter(file -> file.toString().endsWith(".kettle")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("texts")
  void aTextHasItsTree(Path text) throws IOException {
    String name = text.getFileName().toString().replace(".kettle", ".tree");
    StringBuilder drawn = new StringBuilder();
    ParsedText.of(Files.readString(text))
        .sections()
        .forEach(placed -> drawn.append(TreeDrawing.of(placed.section())));
    Pinned.resource(FOLDER + "/" + name).check(drawn.toString(), GoldenTreesTest.class);
  }

  @Test
  void everyDrawingHasItsText() throws IOException {
    try (Stream<Path> files = Files.list(Pinned.folder(FOLDER))) {
      long drawings = files.filter(file -> file.toString().endsWith(".tree")).count();
      assertEquals(texts().size(), drawings);
      assertTrue(drawings >= 40, "only " + drawings + " trees");
    }
  }
}
