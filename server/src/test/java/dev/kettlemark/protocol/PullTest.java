package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import dev.kettlemark.checks.RulePages;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.PreviousResultId;
import org.eclipse.lsp4j.RelatedFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceDiagnosticParams;
import org.eclipse.lsp4j.WorkspaceDocumentDiagnosticReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Findings that a client fetches: Language Server Protocol 3.17, "Pull Diagnostics". */
class PullTest {

  private static final String SYRUP = """
      formula syrup
        percent of charge
        batch 500 g
      stage pan
        60.00 % moon-sugar
        40.00 % water
        boil until dissolved
      """;

  private static final String PANTRY = "ingredient moon-sugar\n  contains 100 % sucrose\n";

  @TempDir
  Path folder;

  private String uri(String file) {
    return folder.resolve(file).toUri().toString();
  }

  private EditorFixture editor(InitializeParams params) throws Exception {
    Files.writeString(folder.resolve("syrup.kettle"), SYRUP);
    Files.writeString(folder.resolve("pantry.kettle"), PANTRY);
    return EditorFixture.onFolders(params, folder);
  }

  private static RelatedFullDocumentDiagnosticReport full(EditorFixture editor, String uri)
      throws Exception {
    return editor
        .await(editor
            .server()
            .getTextDocumentService()
            .diagnostic(new DocumentDiagnosticParams(EditorFixture.id(uri))))
        .getRelatedFullDocumentDiagnosticReport();
  }

  private static List<String> codes(List<Diagnostic> diagnostics) {
    return diagnostics.stream().map(d -> d.getCode().getLeft()).toList();
  }

  @Test
  void whoFetchesIsNotSentAny() throws Exception {
    try (EditorFixture editor = editor(ClientProfiles.vscode())) {
      String syrup = uri("syrup.kettle");
      editor.open(syrup, SYRUP.replace("60.00 %", "60.00"));
      assertTrue(codes(full(editor, syrup).getItems()).contains("missing-unit"));
      assertEquals(0, editor.client().told.size());
    }
  }

  @Test
  void whoDoesNotFetchIsSentThemWithTheVersion() throws Exception {
    try (EditorFixture editor = editor(ClientProfiles.neovim())) {
      String syrup = uri("syrup.kettle");
      editor.open(syrup, SYRUP.replace("60.00 %", "60.00"));
      assertTrue(codes(editor.diagnostics(syrup)).contains("missing-unit"));
      assertFalse(editor.initialized().getCapabilities().getDiagnosticProvider() != null);
    }
  }

  @Test
  void theSameFindingsAreToldOnlyByTheirName() throws Exception {
    try (EditorFixture editor = editor(ClientProfiles.vscode())) {
      String syrup = uri("syrup.kettle");
      editor.open(syrup, SYRUP.replace("60.00 %", "60.00"));
      String first = full(editor, syrup).getResultId();
      DocumentDiagnosticParams again = new DocumentDiagnosticParams(EditorFixture.id(syrup));
      again.setPreviousResultId(first);
      assertEquals(
          first,
          editor
              .await(editor.server().getTextDocumentService().diagnostic(again))
              .getRelatedUnchangedDocumentDiagnosticReport()
              .getResultId());
      editor.type(syrup, "  60.00", "   60.00");
      assertNotEquals(
          first,
          editor
              .await(editor.server().getTextDocumentService().diagnostic(again))
              .getRelatedFullDocumentDiagnosticReport()
              .getResultId());
    }
  }

  @Test
  void aChangeBringsTheNewFindingsOfOtherOpenDocumentsAlong() throws Exception {
    try (EditorFixture editor = editor(ClientProfiles.vscode())) {
      String syrup = uri("syrup.kettle");
      String pantry = uri("pantry.kettle");
      editor.open(syrup, SYRUP);
      editor.open(pantry, PANTRY);
      assertEquals(List.of(), full(editor, syrup).getItems());
      assertEquals(null, full(editor, pantry).getRelatedDocuments());
      editor.type(pantry, "moon-sugar", "sun-sugar");
      editor.said().results().clear();
      // The client's library cannot tell the two kinds of reports apart in a map, so it is read as
      // sent.
      var unused = editor
          .server()
          .getTextDocumentService()
          .diagnostic(new DocumentDiagnosticParams(EditorFixture.id(pantry)));
      JsonObject related = RecordingClient.next(editor.said().results())
          .getAsJsonObject()
          .getAsJsonObject("relatedDocuments");
      assertEquals(Set.of(syrup), related.keySet());
      assertTrue(related.toString().contains("unknown-ingredient"), related.toString());
    }
  }

  @Test
  void aClientIsToldToFetchAgainWhenAnotherFileAltersWhatItHas() throws Exception {
    try (EditorFixture editor = editor(ClientProfiles.vscode())) {
      String syrup = uri("syrup.kettle");
      editor.open(syrup, SYRUP);
      assertEquals(List.of(), full(editor, syrup).getItems());
      Files.delete(folder.resolve("pantry.kettle"));
      editor
          .server()
          .getWorkspaceService()
          .didChangeWatchedFiles(new DidChangeWatchedFilesParams(
              List.of(new FileEvent(uri("pantry.kettle"), FileChangeType.Deleted))));
      String told = RecordingClient.next(editor.client().refreshed);
      while (!told.equals("diagnostics")) {
        told = RecordingClient.next(editor.client().refreshed);
      }
      assertTrue(codes(full(editor, syrup).getItems()).contains("unknown-ingredient"));
    }
  }

  private static List<WorkspaceDocumentDiagnosticReport> all(
      EditorFixture editor, List<PreviousResultId> known) throws Exception {
    return editor
        .await(
            editor.server().getWorkspaceService().diagnostic(new WorkspaceDiagnosticParams(known)))
        .getItems();
  }

  @Test
  void allFilesOfAllLibrariesAreReportedOnceEach(@TempDir Path second) throws Exception {
    Files.writeString(second.resolve("other.kettle"), SYRUP);
    Files.writeString(folder.resolve("syrup.kettle"), SYRUP);
    Files.writeString(folder.resolve("pantry.kettle"), PANTRY);
    try (EditorFixture editor = EditorFixture.onFolders(ClientProfiles.vscode(), folder, second)) {
      List<PreviousResultId> known = new ArrayList<>();
      List<String> withFindings = new ArrayList<>();
      for (WorkspaceDocumentDiagnosticReport each : all(editor, List.of())) {
        var report = each.getWorkspaceFullDocumentDiagnosticReport();
        known.add(new PreviousResultId(report.getUri(), report.getResultId()));
        if (!report.getItems().isEmpty()) {
          withFindings.add(report.getUri());
        }
      }
      assertEquals(3, known.size());
      assertEquals(List.of(second.resolve("other.kettle").toUri().toString()), withFindings);
      assertTrue(all(editor, known).stream()
          .allMatch(
              WorkspaceDocumentDiagnosticReport::isWorkspaceUnchangedDocumentDiagnosticReport));
    }
  }

  @Test
  void theFindingsOfAFileThatIsGoneAreTakenBack() throws Exception {
    try (EditorFixture editor = editor(ClientProfiles.vscode())) {
      var reports = all(editor, List.of(new PreviousResultId(uri("gone.kettle"), "1-x")));
      var gone = reports.get(reports.size() - 1).getWorkspaceFullDocumentDiagnosticReport();
      assertEquals(uri("gone.kettle"), gone.getUri());
      assertEquals(List.of(), gone.getItems());
      assertEquals(null, gone.getVersion());
    }
  }

  @Test
  void thePageOfARuleIsReadWithoutANetwork() throws Exception {
    InitializeParams onFiles = ClientProfiles.vscode();
    onFiles.getCapabilities().getWorkspace().setTextDocumentContent(null);
    try (EditorFixture editor = editor(onFiles)) {
      editor.open(uri("syrup.kettle"), SYRUP.replace("60.00 %", "60.00"));
      Diagnostic finding = full(editor, uri("syrup.kettle")).getItems().stream()
          .filter(d -> d.getCode().getLeft().equals("missing-unit"))
          .findFirst()
          .orElseThrow();
      Path page = Path.of(URI.create(finding.getCodeDescription().getHref()));
      assertEquals(RulePages.page("missing-unit").orElseThrow(), Files.readString(page));
      assertEquals(0, editor.shutDown());
      assertTrue(Files.exists(page), "a list of findings may outlive the server");
    }
  }
}
