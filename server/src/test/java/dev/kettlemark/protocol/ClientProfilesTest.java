package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.TextDocumentContentParams;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each client is offered what it can take, and nothing is reachable only by what a client may lack. */
class ClientProfilesTest {

  private static final Path SAMPLES = Path.of("../samples/gannet-slip");
  private static final String SYRUP =
      "formula syrup\n  percent of charge\n  batch 500 g\nstage pan\n  60.00 white-sugar\n  40.00 % water\n";
  private static final String URI = "untitled:syrup";
  private static final Range ALL = new Range(new Position(0, 0), new Position(9999, 0));

  private static List<Either<Command, CodeAction>> actions(EditorFixture editor) throws Exception {
    Position at = editor.positionOf(URI, "60.00");
    return editor.await(editor
        .server()
        .getTextDocumentService()
        .codeAction(new CodeActionParams(
            EditorFixture.id(URI), new Range(at, at), new CodeActionContext(List.of()))));
  }

  private static CodeAction addPercent(EditorFixture editor) throws Exception {
    return actions(editor).stream()
        .map(Either::getRight)
        .filter(action -> action.getTitle().equals("Add %"))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anOldClientIsOfferedTheBasics() throws Exception {
    try (EditorFixture editor = EditorFixture.with(ClientProfiles.old())) {
      ServerCapabilities offered = editor.initialized().getCapabilities();
      assertEquals("utf-16", offered.getPositionEncoding());
      assertEquals(null, offered.getDiagnosticProvider());
      assertEquals(null, offered.getWorkspace().getFileOperations());
      assertEquals(null, offered.getWorkspace().getTextDocumentContent());
      assertEquals(true, offered.getCodeActionProvider().getLeft());
      assertTrue(offered.getExecuteCommandProvider().getCommands().contains("kettlemark.apply"));
      editor.open(URI, SYRUP);
      for (Diagnostic finding : editor.diagnostics(URI)) {
        assertEquals(null, finding.getCodeDescription());
        assertEquals(null, finding.getRelatedInformation());
      }
      assertEquals(0, editor.client().registered.size());
      assertEquals(0, editor.client().created.size());
      assertEquals(0, editor.client().asked.size());
    }
  }

  @Test
  void anOldClientMendsByACommandThatSendsTheEdit() throws Exception {
    try (EditorFixture editor = EditorFixture.with(ClientProfiles.old())) {
      editor.open(URI, SYRUP);
      List<Either<Command, CodeAction>> actions = actions(editor);
      assertTrue(actions.stream().allMatch(Either::isLeft));
      Command mend = actions.stream()
          .map(Either::getLeft)
          .filter(command -> command.getTitle().equals("Add %"))
          .findFirst()
          .orElseThrow();
      Set<String> sent = new TreeSet<>();
      actions.forEach(action -> sent.add(action.getLeft().getCommand()));
      assertEquals(Set.of("kettlemark.apply"), sent);
      editor.await(editor
          .server()
          .getWorkspaceService()
          .executeCommand(new ExecuteCommandParams(mend.getCommand(), mend.getArguments())));
      var edit = RecordingClient.next(editor.client().applied).getEdit();
      String mended =
          EditorFixture.applied(SYRUP, Objects.requireNonNull(edit.getChanges().get(URI)));
      assertEquals(SYRUP.replace("60.00 white", "60.00 % white"), mended);
    }
  }

  @Test
  void neovimFetchesTheEditWhenAnActionIsChosen() throws Exception {
    try (EditorFixture editor = EditorFixture.with(ClientProfiles.neovim())) {
      ServerCapabilities offered = editor.initialized().getCapabilities();
      assertEquals(true, offered.getCodeActionProvider().getRight().getResolveProvider());
      assertEquals(null, offered.getDiagnosticProvider());
      assertFalse(offered.getExecuteCommandProvider().getCommands().contains("kettlemark.apply"));
      editor.open(URI, SYRUP);
      CodeAction mend = addPercent(editor);
      assertEquals(null, mend.getEdit());
      assertEquals(true, mend.getIsPreferred());
      CodeAction whole =
          editor.await(editor.server().getTextDocumentService().resolveCodeAction(mend));
      assertEquals(
          SYRUP.replace("60.00 white", "60.00 % white"),
          EditorFixture.applied(
              SYRUP, Objects.requireNonNull(whole.getEdit().getChanges().get(URI))));
      // It knows no commands of its own and shows no documents: nothing is offered that needs
      // either.
      assertTrue(actions(editor).stream().allMatch(a -> a.getRight().getCommand() == null));
    }
  }

  @Test
  void anActionThatNoLongerFitsTheTextIsRefused() throws Exception {
    try (EditorFixture editor = EditorFixture.with(ClientProfiles.neovim())) {
      editor.open(URI, SYRUP);
      CodeAction mend = addPercent(editor);
      editor.type(URI, "60.00 white", "60.00 % white");
      Exception refused = assertThrows(
          Exception.class,
          () -> editor.await(editor.server().getTextDocumentService().resolveCodeAction(mend)));
      assertTrue(String.valueOf(refused.getMessage()).contains("has changed"), refused.toString());
    }
  }

  @Test
  void vsCodeIsOfferedAllOfIt() throws Exception {
    try (EditorFixture editor = EditorFixture.with(ClientProfiles.vscode())) {
      ServerCapabilities offered = editor.initialized().getCapabilities();
      assertTrue(offered.getDiagnosticProvider().isInterFileDependencies());
      assertTrue(offered.getDiagnosticProvider().isWorkspaceDiagnostics());
      assertEquals(true, offered.getCodeActionProvider().getRight().getResolveProvider());
      assertEquals(true, offered.getCodeLensProvider().getResolveProvider());
      assertEquals(true, offered.getInlayHintProvider().getRight().getResolveProvider());
      assertEquals(true, offered.getWorkspaceSymbolProvider().getRight().getResolveProvider());
      assertEquals(
          List.of("kettlemark-page", "kettlemark-pantry"),
          offered.getWorkspace().getTextDocumentContent().getSchemes());
      assertEquals(
          2,
          offered.getWorkspace().getFileOperations().getDidRename().getFilters().size());
      Set<String> registered = new TreeSet<>();
      registered.add(RecordingClient.next(editor.client().registered).getMethod());
      registered.add(RecordingClient.next(editor.client().registered).getMethod());
      assertEquals(
          Set.of("workspace/didChangeConfiguration", "workspace/didChangeWatchedFiles"),
          registered);
    }
  }

  @Test
  void vsCodeFetchesLensesHintsAndSymbolsWhenItShowsThem() throws Exception {
    try (EditorFixture editor = EditorFixture.onFolders(ClientProfiles.vscode(), SAMPLES)) {
      editor.open(URI, SYRUP.replace("60.00 white", "60.00 % white"));
      var documents = editor.server().getTextDocumentService();
      CodeLens lens = editor
          .await(documents.codeLens(new CodeLensParams(EditorFixture.id(URI))))
          .get(0);
      assertEquals(null, lens.getCommand());
      CodeLens whole = editor.await(documents.resolveCodeLens(lens));
      assertTrue(whole.getCommand().getTitle().contains("500"), whole.toString());
      assertEquals("kettlemark.show.open", whole.getCommand().getCommand());
      InlayHint hint = editor
          .await(documents.inlayHint(new InlayHintParams(EditorFixture.id(URI), ALL)))
          .get(0);
      assertEquals(null, hint.getTooltip());
      InlayHint told = editor.await(documents.resolveInlayHint(hint));
      // 60 % of 500 g, by hand.
      assertTrue(told.getTooltip().getRight().getValue().contains("300.0 g"), told.toString());
      WorkspaceSymbol symbol = editor
          .await(editor
              .server()
              .getWorkspaceService()
              .symbol(new WorkspaceSymbolParams("heather-nougat")))
          .getRight()
          .get(0);
      assertTrue(symbol.getLocation().isRight());
      WorkspaceSymbol placed =
          editor.await(editor.server().getWorkspaceService().resolveWorkspaceSymbol(symbol));
      assertTrue(placed.getLocation().isLeft());
    }
  }

  /** A closed file has no version, and the protocol wants that said: {@code version: null}. */
  @Test
  void aRenameReachesClosedFilesOfAClientThatCountsVersions(@TempDir Path folder) throws Exception {
    Files.writeString(
        folder.resolve("pantry.kettle"), "ingredient moon-sugar\n  contains 100 % sucrose\n");
    Path file = folder.resolve("syrup.kettle");
    String text = SYRUP.replace("60.00 white-sugar", "60.00 % moon-sugar");
    Files.writeString(file, text);
    String uri = file.toUri().toString();
    try (EditorFixture editor = EditorFixture.onFolders(ClientProfiles.vscode(), folder)) {
      editor.open(uri, text);
      var edit = editor.await(editor
          .server()
          .getTextDocumentService()
          .rename(new RenameParams(
              EditorFixture.id(uri), editor.positionOf(uri, "moon-sugar"), "sun-sugar")));
      assertEquals(2, edit.getDocumentChanges().size());
    }
  }

  /** What stands in hints and lenses, of every sample, by the only thing every client has. */
  @Test
  void whatHintsAndLensesTellAHoverTellsAsWell() throws Exception {
    List<String> missing = new ArrayList<>();
    int figures = 0;
    try (EditorFixture editor = EditorFixture.onFolder(SAMPLES.toRealPath());
        Stream<Path> files = Files.walk(SAMPLES.toRealPath())) {
      for (Path file :
          files.filter(f -> f.toString().endsWith(".kettle")).sorted().toList()) {
        String uri = file.toUri().toString();
        editor.open(uri, Files.readString(file));
        var documents = editor.server().getTextDocumentService();
        for (InlayHint hint :
            editor.await(documents.inlayHint(new InlayHintParams(EditorFixture.id(uri), ALL)))) {
          figures++;
          Position at = hint.getPosition();
          String line = editor.text(uri).split("\n", -1)[at.getLine()];
          String told = hover(editor, uri, new Position(at.getLine(), at.getCharacter() - 1));
          for (int column = 0; column < at.getCharacter(); column++) {
            boolean begins =
                column > 0 && line.charAt(column - 1) == ' ' && line.charAt(column) != ' ';
            told += begins ? hover(editor, uri, new Position(at.getLine(), column)) : "";
          }
          String all = told;
          figures(hint.getLabel().getLeft())
              .filter(figure -> !isTold(figure, all))
              .forEach(
                  figure -> missing.add(place(file, at) + " hint " + figure + " not in " + all));
        }
        for (CodeLens lens :
            editor.await(documents.codeLens(new CodeLensParams(EditorFixture.id(uri))))) {
          figures++;
          Position at = lens.getRange().getStart();
          String told = hover(editor, uri, at);
          figures(lens.getCommand().getTitle())
              .filter(figure -> !isTold(figure, told))
              .forEach(
                  figure -> missing.add(place(file, at) + " lens " + figure + " not in " + told));
        }
      }
    }
    assertTrue(figures > 150, "too few figures: " + figures);
    assertEquals(
        "",
        String.join("\n", missing.subList(0, Math.min(12, missing.size()))),
        () -> missing.size() + " are missing");
  }

  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  private static Stream<String> figures(String label) {
    return NUMBER.matcher(label).results().map(MatchResult::group);
  }

  /** Whether a text holds a figure, or one that rounds to it. */
  private static boolean isTold(String figure, String text) {
    BigDecimal wanted = new BigDecimal(figure);
    return NUMBER
        .matcher(text)
        .results()
        .map(found -> new BigDecimal(found.group()))
        .anyMatch(found ->
            found.subtract(wanted).abs().compareTo(wanted.ulp().divide(BigDecimal.valueOf(2)))
                <= 0);
  }

  private static String place(Path file, Position at) {
    return file.getFileName() + ":" + (at.getLine() + 1);
  }

  private static String hover(EditorFixture editor, String uri, Position at) throws Exception {
    Hover hover = editor.await(
        editor.server().getTextDocumentService().hover(new HoverParams(EditorFixture.id(uri), at)));
    return hover == null ? "" : hover.getContents().getRight().getValue();
  }

  @Test
  void settingsAreAskedOfAClientThatAnswers(@TempDir Path first, @TempDir Path second)
      throws Exception {
    String text = SYRUP.replace("60.00 white", "60.00 % white");
    Path here = Files.writeString(first.resolve("a.kettle"), text);
    Path there = Files.writeString(second.resolve("b.kettle"), text.replace("syrup", "sirup"));
    String spelled = second.toUri().toString();
    try (EditorFixture editor = EditorFixture.onFolders(
        ClientProfiles.neovim(),
        item -> spelled.equals(item.getScopeUri()) ? noGrams() : new JsonObject(),
        first,
        second)) {
      assertEquals(3, RecordingClient.next(editor.client().asked).size());
      // The answer is on its way; asking again puts what follows behind it.
      editor.open(here.toUri().toString(), text);
      editor.open(there.toUri().toString(), text.replace("syrup", "sirup"));
      assertEquals(2, settled(editor, here, 2));
      assertEquals(0, settled(editor, there, 0));
      editor
          .server()
          .getWorkspaceService()
          .didChangeConfiguration(new DidChangeConfigurationParams(new JsonObject()));
      assertEquals(3, RecordingClient.next(editor.client().asked).size());
      editor
          .server()
          .getWorkspaceService()
          .didChangeConfiguration(new DidChangeConfigurationParams(noGrams()));
      assertEquals(0, settled(editor, here, 0));
    }
  }

  private static JsonObject noGrams() {
    JsonObject hints = new JsonObject();
    hints.addProperty("grams", false);
    JsonObject own = new JsonObject();
    own.add("inlayHints", hints);
    return own;
  }

  /** Settings come with an answer that nobody waits for, so this looks until they are there. */
  private static int settled(EditorFixture editor, Path file, int wanted) throws Exception {
    int found = -1;
    for (int tries = 0; tries < 200 && found != wanted; tries++) {
      Thread.sleep(tries == 0 ? 0 : 20);
      found = editor
          .await(editor
              .server()
              .getTextDocumentService()
              .inlayHint(new InlayHintParams(EditorFixture.id(file.toUri().toString()), ALL)))
          .size();
    }
    return found;
  }

  @Test
  void everyReportOfTheTerminalIsACommand() throws Exception {
    try (EditorFixture editor = EditorFixture.onFolder(SAMPLES.toRealPath())) {
      String uri = SAMPLES.toRealPath().resolve("heather-nougat.kettle").toUri().toString();
      assertTrue(report(editor, "used", uri, "name", "heather-honey").contains("heather-nougat"));
      assertTrue(report(editor, "trials", uri).contains("measured"));
      assertTrue(report(editor, "label", uri, "formula", "heather-nougat").contains("nutrition"));
      assertTrue(report(editor, "label", uri, "formula", "heather-nougat", "market", "US")
          .contains("21 CFR"));
      assertTrue(report(editor, "explain", uri, "formula", "heather-nougat", "value", "moisture")
          .contains("the whole, moisture"));
      assertTrue(report(editor, "explain", uri, "rule", "missing-unit").contains("missing-unit"));
    }
  }

  @Test
  void aReportOfWhatIsNotThereSaysSo() throws Exception {
    try (EditorFixture editor = EditorFixture.onFolder(SAMPLES.toRealPath())) {
      String uri = SAMPLES.toRealPath().resolve("heather-nougat.kettle").toUri().toString();
      for (List<String> wrong : List.of(
          List.of("used", "name", "moon-dust"),
          List.of("label", "formula", "moon-dust"),
          List.of("label", "formula", "heather-nougat", "market", "MOON"),
          List.of("explain", "formula", "heather-nougat", "value", "moon-phase"),
          List.of("show", "formula", "moon-dust"))) {
        Exception refused = assertThrows(
            Exception.class,
            () -> report(
                editor, wrong.get(0), uri, wrong.subList(1, wrong.size()).toArray(String[]::new)),
            wrong.toString());
        assertTrue(String.valueOf(refused.getMessage()).contains("`"), refused.toString());
      }
    }
  }

  @Test
  void aTableIsShownByAClientThatShowsDocuments() throws Exception {
    try (EditorFixture editor = EditorFixture.with(ClientProfiles.vscode())) {
      editor.open(URI, SYRUP.replace("60.00 white", "60.00 % white"));
      JsonObject argument = new JsonObject();
      argument.addProperty("uri", URI);
      argument.addProperty("formula", "syrup");
      argument.addProperty("open", true);
      Object page = editor.await(editor
          .server()
          .getWorkspaceService()
          .executeCommand(new ExecuteCommandParams("kettlemark.show", List.<Object>of(argument))));
      String shown = RecordingClient.next(editor.client().shown).getUri();
      assertEquals("kettlemark-page:/reports/show-syrup.md", shown);
      String text = editor
          .await(editor
              .server()
              .getWorkspaceService()
              .textDocumentContent(new TextDocumentContentParams(shown)))
          .getText();
      assertEquals(page, text);
    }
  }

  @Test
  void aVariantIsComparedWithItsParent() throws Exception {
    try (EditorFixture editor = EditorFixture.with(ClientProfiles.vscode())) {
      editor.open(URI, SYRUP + """

          variant sweeter of syrup
            replace   white-sugar  by 60.00 % caster-sugar
          """);
      String page = report(editor, "compare", URI, "formula", "sweeter");
      assertTrue(page.contains("Is it one-to-one?"), page);
      assertTrue(page.contains("Caster sugar for White sugar"), page);
      String german =
          report(editor, "compare", URI, "formula", "syrup", "with", "sweeter", "language", "de");
      assertTrue(german.contains("Ist es eins zu eins?"), german);
    }
  }

  private static String report(EditorFixture editor, String name, String uri, String... rest)
      throws Exception {
    JsonObject argument = new JsonObject();
    argument.addProperty("uri", uri);
    for (int i = 0; i < rest.length; i += 2) {
      argument.addProperty(rest[i], rest[i + 1]);
    }
    return String.valueOf(editor.await(editor
        .server()
        .getWorkspaceService()
        .executeCommand(
            new ExecuteCommandParams("kettlemark." + name, List.<Object>of(argument)))));
  }
}
