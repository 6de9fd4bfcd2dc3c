package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an editor is told while somebody types. */
class EditingTest {

  private static final String SYRUP = """
      formula syrup
        percent of charge
        batch 500 g
      stage pan
        60.00 % white-sugar
        40.00 % water
        boil until dissolved
      """;

  private static final String URI = "untitled:syrup";

  private static List<String> codes(List<Diagnostic> diagnostics) {
    return diagnostics.stream().map(d -> d.getCode().getLeft()).toList();
  }

  @Test
  void aCleanFormulaHasNoFindings() throws Exception {
    try (EditorFixture editor = EditorFixture.withoutFolder()) {
      editor.open(URI, SYRUP);
      assertEquals(List.of(), codes(editor.diagnostics(URI)));
    }
  }

  @Test
  void aMistakeShowsAndGoesWithTheVersionThatHasIt() throws Exception {
    try (EditorFixture editor = EditorFixture.withoutFolder()) {
      editor.open(URI, SYRUP);
      editor.diagnostics(URI);
      editor.type(URI, "60.00 %", "60.00");
      assertTrue(codes(editor.diagnostics(URI)).contains("missing-unit"));
      editor.type(URI, "60.00", "60.00 %");
      assertEquals(List.of(), codes(editor.diagnostics(URI)));
    }
  }

  @Test
  void aFindingStandsOnOneLineAndNamesItsSource() throws Exception {
    try (EditorFixture editor = EditorFixture.withoutFolder()) {
      editor.open(URI, SYRUP.replace("60.00 %", "60.00"));
      Diagnostic finding = editor.diagnostics(URI).stream()
          .filter(d -> d.getCode().getLeft().equals("missing-unit"))
          .findFirst()
          .orElseThrow();
      assertEquals("kettlemark", finding.getSource());
      assertEquals(new Range(new Position(4, 2), new Position(4, 7)), finding.getRange());
    }
  }

  @Test
  void aBurstOfKeysEndsWithTheFindingsOfTheLast() throws Exception {
    try (EditorFixture editor = EditorFixture.withoutFolder()) {
      editor.open(URI, SYRUP);
      for (int key = 0; key < 40; key++) {
        editor.type(URI, "60.00 %", "60.00");
        editor.type(URI, "60.00", "60.00 %");
      }
      editor.type(URI, "60.00 %", "60.00");
      assertTrue(codes(editor.diagnostics(URI)).contains("missing-unit"));
    }
  }

  @Test
  void countsColumnsAsTheClientAsksFor() throws Exception {
    String text = SYRUP.replace("60.00 % white-sugar", "60.00 % white-sugar \uD83C\uDF6F x");
    for (String encoding : List.of("utf-8", "utf-16", "utf-32")) {
      try (EditorFixture editor = EditorFixture.counting(encoding)) {
        assertEquals(encoding, editor.initialized().getCapabilities().getPositionEncoding());
        editor.open(URI, text);
        int end = editor.diagnostics(URI).stream()
            .filter(d -> d.getRange().getStart().getLine() == 4)
            .mapToInt(d -> d.getRange().getEnd().getCharacter())
            .max()
            .orElseThrow();
        int honey = encoding.equals("utf-8") ? 4 : encoding.equals("utf-16") ? 2 : 1;
        // The pot of honey starts in column 22; what follows it moves with its width.
        assertTrue(end == 22 + honey || end == 24 + honey, encoding + " " + end);
      }
    }
  }

  @Test
  void aFileOfTheFolderIsTakenBackFromTheDiskOnClose(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("syrup ä#%.kettle");
    Files.writeString(file, SYRUP);
    String uri = file.toUri().toString();
    try (EditorFixture editor = EditorFixture.onFolder(folder)) {
      editor.open(uri, SYRUP.replace("60.00 %", "60.00"));
      assertTrue(codes(editor.diagnostics(uri)).contains("missing-unit"));
      editor.close(uri);
      assertEquals(List.of(), codes(editor.diagnosticsOfClosed(uri)));
    }
  }

  @Test
  void anIngredientOfAnotherFileCounts(@TempDir Path folder) throws Exception {
    Path pantry = folder.resolve("pantry.kettle");
    Files.writeString(pantry, "ingredient moon-sugar\n  contains 100 % sucrose\n");
    String text = SYRUP.replace("white-sugar", "moon-sugar");
    String uri = folder.resolve("syrup.kettle").toUri().toString();
    try (EditorFixture editor = EditorFixture.onFolder(folder)) {
      editor.open(uri, text);
      assertEquals(List.of(), codes(editor.diagnostics(uri)));
      Files.delete(pantry);
      editor
          .server()
          .getWorkspaceService()
          .didChangeWatchedFiles(new DidChangeWatchedFilesParams(
              List.of(new FileEvent(pantry.toUri().toString(), FileChangeType.Deleted))));
      assertTrue(codes(editor.diagnostics(uri)).contains("unknown-ingredient"));
    }
  }

  @Test
  void aFileOutsideAnyFolderBringsItsNeighbours(@TempDir Path folder) throws Exception {
    Files.writeString(
        folder.resolve("pantry.kettle"), "ingredient moon-sugar\n  contains 100 % sucrose\n");
    String uri = folder.resolve("syrup.kettle").toUri().toString();
    try (EditorFixture editor = EditorFixture.withoutFolder()) {
      editor.open(uri, SYRUP.replace("white-sugar", "moon-sugar"));
      assertEquals(List.of(), codes(editor.diagnostics(uri)));
    }
  }

  @Test
  void keepsTheSpellingOfTheClient(@TempDir Path folder) throws Exception {
    String uri = folder.resolve("my syrup.kettle").toUri().toString().replace("%20", "%20");
    String spelled = uri.replace("my%20syrup", "m%79%20syrup");
    try (EditorFixture editor = EditorFixture.onFolder(folder)) {
      editor.open(spelled, SYRUP.replace("60.00 %", "60.00"));
      assertTrue(codes(editor.diagnostics(spelled)).contains("missing-unit"));
    }
  }

  @Test
  void endsCleanly() throws Exception {
    EditorFixture editor = EditorFixture.withoutFolder();
    assertEquals(0, editor.shutDown());
  }
}
