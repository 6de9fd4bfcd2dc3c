package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.LogTraceParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SetTraceParams;
import org.eclipse.lsp4j.WorkDoneProgressCancelParams;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;
import org.eclipse.lsp4j.WorkspaceDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Progress, parts of results and cancelling through the wire, on a library that takes a while. */
class ProgressTest {

  private static final int FILES = 300;

  @TempDir
  Path folder;

  @BeforeEach
  void writeALargeLibrary() throws Exception {
    Files.writeString(
        folder.resolve("pantry.kettle"), "ingredient moon-sugar\n  contains 100 % sucrose\n");
    for (int i = 0; i < FILES; i++) {
      Files.writeString(folder.resolve("syrup-" + i + ".kettle"), """
          formula syrup-%d
            percent of charge
            batch %d g
          stage pan
            60.00 %% moon-sugar
            40.00 %% water
            cook to 118 °C
          """.formatted(i, 500 + i));
    }
  }

  private EditorFixture editor() throws Exception {
    return EditorFixture.onFolders(ClientProfiles.vscode(), folder);
  }

  private Position atTheName() {
    return new Position(0, 12);
  }

  private String pantry() {
    return folder.resolve("pantry.kettle").toUri().toString();
  }

  private static List<ProgressParams> of(EditorFixture editor, String token) {
    return editor.client().progress.stream()
        .filter(each -> each.getToken().equals(Either.forLeft(token)))
        .toList();
  }

  /** What was told beside an answer may still be on its way to the test when the answer is there. */
  private static List<ProgressParams> ended(EditorFixture editor, String token) throws Exception {
    for (int tries = 0; tries < 200; tries++) {
      List<ProgressParams> told = of(editor, token);
      if (!told.isEmpty() && kind(told.get(told.size() - 1)).equals("end")) {
        return told;
      }
      Thread.sleep(20);
    }
    throw new AssertionError("no end of " + token);
  }

  private static String kind(ProgressParams told) {
    return told.getValue().getLeft().getKind().name();
  }

  @Test
  void openingALibraryIsShownWithCounts() throws Exception {
    try (EditorFixture editor = editor()) {
      RecordingClient.next(editor.client().created);
      List<ProgressParams> told = ended(editor, "kettlemark-1");
      assertEquals("begin", kind(told.get(0)));
      assertTrue(told.stream().anyMatch(each -> each.toString().contains(" of " + (FILES + 1))));
    }
  }

  @Test
  void aSearchTellsHowFarItIsAndHandsOutParts() throws Exception {
    try (EditorFixture editor = editor()) {
      ReferenceParams params =
          new ReferenceParams(EditorFixture.id(pantry()), atTheName(), new ReferenceContext(true));
      params.setWorkDoneToken("w");
      params.setPartialResultToken(Either.forLeft("p"));
      var rest = editor.await(editor.server().getTextDocumentService().references(params));
      assertEquals(0, rest.size());
      assertEquals("begin", kind(ended(editor, "w").get(0)));
      int found = 0;
      for (ProgressParams part : of(editor, "p")) {
        found += ((JsonArray) part.getValue().getRight()).size();
      }
      assertEquals(FILES + 1, found);
      params.setPartialResultToken((String) null);
      var whole = editor.await(editor.server().getTextDocumentService().references(params));
      assertEquals(FILES + 1, whole.size());
    }
  }

  @Test
  void symbolsComeInParts() throws Exception {
    try (EditorFixture editor = editor()) {
      WorkspaceSymbolParams params = new WorkspaceSymbolParams("syrup-");
      params.setPartialResultToken(Either.forLeft("p"));
      var rest = editor.await(editor.server().getWorkspaceService().symbol(params));
      assertEquals(0, rest.isLeft() ? rest.getLeft().size() : rest.getRight().size());
      Set<String> names = new HashSet<>();
      for (ProgressParams part : of(editor, "p")) {
        ((JsonArray) part.getValue().getRight())
            .forEach(each -> names.add(each.getAsJsonObject().get("name").getAsString()));
      }
      assertEquals(FILES, names.size());
    }
  }

  @Test
  void findingsOfTheLibraryComeInPartsWithProgress() throws Exception {
    try (EditorFixture editor = editor()) {
      WorkspaceDiagnosticParams params = new WorkspaceDiagnosticParams(List.of());
      params.setPartialResultToken(Either.forLeft("p"));
      params.setWorkDoneToken("w");
      WorkspaceDiagnosticReport rest =
          editor.await(editor.server().getWorkspaceService().diagnostic(params));
      assertEquals(List.of(), rest.getItems());
      assertEquals("begin", kind(ended(editor, "w").get(0)));
      assertTrue(of(editor, "p").size() > 1);
    }
  }

  @Test
  void aRenameTellsHowFarItIs() throws Exception {
    try (EditorFixture editor = editor()) {
      RenameParams params = new RenameParams(EditorFixture.id(pantry()), atTheName(), "sun-sugar");
      params.setWorkDoneToken("w");
      var edit = editor.await(editor.server().getTextDocumentService().rename(params));
      assertEquals(FILES + 1, edit.getDocumentChanges().size());
      assertEquals("begin", kind(ended(editor, "w").get(0)));
    }
  }

  private CompletableFuture<WorkspaceDiagnosticReport> check(EditorFixture editor)
      throws Exception {
    WorkspaceDiagnosticParams params = new WorkspaceDiagnosticParams(List.of());
    params.setWorkDoneToken("w");
    return editor.server().getWorkspaceService().diagnostic(params);
  }

  private static void assertCancelled(CompletableFuture<?> answer) {
    ExecutionException failure =
        assertThrows(ExecutionException.class, () -> answer.get(20, TimeUnit.SECONDS));
    ResponseErrorException refused =
        assertInstanceOf(ResponseErrorException.class, failure.getCause());
    assertEquals(
        ResponseErrorCode.RequestCancelled.getValue(),
        refused.getResponseError().getCode());
  }

  /** Language Server Protocol 3.17, "Cancellation Support": the request is answered all the same. */
  @Test
  void bothWaysOfCancellingEndTheWorkWithTheSameAnswer() throws Exception {
    try (EditorFixture editor = editor()) {
      CompletableFuture<WorkspaceDiagnosticReport> byRequest = check(editor);
      byRequest.cancel(true);
      assertEquals(
          ResponseErrorCode.RequestCancelled.getValue(),
          RecordingClient.next(editor.said().errors()).get("code").getAsInt());
      CompletableFuture<WorkspaceDiagnosticReport> byButton = check(editor);
      editor.server().cancelProgress(new WorkDoneProgressCancelParams(Either.forLeft("w")));
      assertCancelled(byButton);
      assertEquals(FILES + 1, editor.await(check(editor)).getItems().size());
    }
  }

  @Test
  void whatPassesIsTracedOnlyWhereTheClientWantsIt() throws Exception {
    try (EditorFixture editor = EditorFixture.withoutFolder()) {
      symbols(editor);
      assertEquals(0, editor.client().traced.size());
      editor.server().setTrace(new SetTraceParams("messages"));
      symbols(editor);
      var told = RecordingClient.next(editor.client().traced);
      assertTrue(
          told.getMessage().matches("workspace/symbol answered in \\d+ ms"), told.toString());
      assertEquals(null, told.getVerbose());
      editor.server().setTrace(new SetTraceParams("verbose"));
      symbols(editor);
      // The trace of the first request may come behind its answer, when more is wanted already.
      LogTraceParams verbose = RecordingClient.next(editor.client().traced);
      while (verbose.getVerbose() == null) {
        verbose = RecordingClient.next(editor.client().traced);
      }
      assertTrue(verbose.getVerbose().contains("MiB"), verbose.toString());
      editor.server().setTrace(new SetTraceParams("off"));
      symbols(editor);
      assertEquals(0, editor.client().traced.size());
    }
  }

  private static void symbols(EditorFixture editor) throws Exception {
    editor.await(
        editor.server().getWorkspaceService().symbol(new WorkspaceSymbolParams("nothing")));
  }
}
