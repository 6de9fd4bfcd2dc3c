package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.features.Formatter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each feature through the wire, on a small library of two files. */
class FeaturesTest {

  private static final String BAR = """
      house bench "Bench"
        scale     big   reads 1 g     to 6000 g
        scale     fine  reads 0.01 g  to 200 g

      formula cold-bar "Cold bar"
        percent   of charge
        batch     1200 g

      stage dough
        60.00 %             desiccated-coconut
        39.75 %             moon-honey
         0.25 %             sea-salt
        mix

      product bar-42 "Bar"
        centre    42 g                cold-bar
        make      37 pieces
        loss      4 % of centre
      """;

  private static final String GEL = """
      formula gel "Gel"
        percent   of charge
        batch     1000 g

      stage soak
         1.50 %             gelatine-250
         q.s.               water
        soak      gelatine-250, water for 20 min until bloomed
      """;

  private static final String PANTRY = """
      ingredient moon-honey "Moon honey"
        role      sweetening
        contains  17 % water, 41 % fructose, 36 % glucose, 6 % other  from "typical, common practice, no source"
      """;

  @TempDir
  Path folder;

  private EditorFixture editor;
  private String bar;
  private String pantry;

  @BeforeEach
  void openTheLibrary() throws Exception {
    Files.writeString(folder.resolve("pantry.kettle"), PANTRY);
    bar = folder.resolve("bar.kettle").toUri().toString();
    pantry = folder.resolve("pantry.kettle").toUri().toString();
    editor = EditorFixture.onFolder(folder);
    editor.open(bar, BAR);
    editor.diagnostics(bar);
  }

  @AfterEach
  void closeTheEditor() throws Exception {
    editor.close();
  }

  private Position at(String what) {
    return editor.positionOf(bar, what);
  }

  @Test
  void hoverTellsAnIngredientInGrams() throws Exception {
    HoverParams params = new HoverParams(EditorFixture.id(bar), at("sea-salt"));
    String text = editor
        .await(editor.server().getTextDocumentService().hover(params))
        .getContents()
        .getRight()
        .getValue();
    // 0.25 % of 1200 g, by hand.
    assertTrue(text.contains("3.00 g"), text);
  }

  @Test
  void hintsStandBesideThePercents() throws Exception {
    Range all = new Range(new Position(0, 0), new Position(99, 0));
    List<String> labels = editor
        .await(editor
            .server()
            .getTextDocumentService()
            .inlayHint(new InlayHintParams(EditorFixture.id(bar), all)))
        .stream()
        .map(hint -> hint.getLabel().getLeft())
        .toList();
    assertTrue(labels.contains("720.0 g"), labels.toString());
  }

  @Test
  void lensesStandOverFormulasAndStages() throws Exception {
    List<String> titles = editor
        .await(editor
            .server()
            .getTextDocumentService()
            .codeLens(new CodeLensParams(EditorFixture.id(bar))))
        .stream()
        .map(lens -> lens.getCommand().getTitle())
        .toList();
    assertTrue(titles.stream().anyMatch(title -> title.startsWith("100.00 %")), titles.toString());
  }

  @Test
  void aFixMendsWhatItNames() throws Exception {
    editor.type(bar, "60.00 %", "60.00");
    editor.diagnostics(bar);
    CodeAction fix = actions("60.00").stream()
        .filter(action -> action.getTitle().equals("Add %"))
        .findFirst()
        .orElseThrow();
    String mended = EditorFixture.applied(editor.text(bar), edits(fix.getEdit(), bar));
    assertTrue(mended.contains("60.00 %"), mended);
  }

  @Test
  void acceptingComesLast() throws Exception {
    editor.type(bar, "60.00 %", "60.00");
    editor.diagnostics(bar);
    List<CodeAction> actions = actions("60.00");
    CodeAction last = actions.get(actions.size() - 1);
    assertEquals("Accept missing-unit with a reason", last.getTitle());
    String accepted = EditorFixture.applied(editor.text(bar), edits(last.getEdit(), bar));
    assertTrue(accepted.contains("  mix\n  accept    missing-unit \"reason\"\n"), accepted);
  }

  /** {@code SnippetTextEdit}: Language Server Protocol 3.18, "Text Edit". */
  @Test
  void theReasonIsAPlaceholderWhereTheClientFillsItIn() throws Exception {
    String uri = "untitled:syrup";
    try (EditorFixture filling = EditorFixture.readingSnippets()) {
      filling.open(uri, "formula syrup\nstage pan\n  50 water\n");
      Position position = filling.positionOf(uri, "50");
      var actions = filling.await(filling
          .server()
          .getTextDocumentService()
          .codeAction(new CodeActionParams(
              EditorFixture.id(uri),
              new Range(position, position),
              new CodeActionContext(List.of()))));
      CodeAction last = actions.get(actions.size() - 1).getRight();
      var edit = last.getEdit().getDocumentChanges().get(0).getLeft().getEdits().get(0);
      assertEquals(
          "\n  accept    missing-unit \"${1:reason}\"",
          edit.getRight().getSnippet().getValue());
      assertEquals("snippet", edit.getRight().getSnippet().getKind());
    }
  }

  @Test
  void whatIsAcceptedIsNotPublished() throws Exception {
    editor.type(bar, "60.00 %", "59.00 %");
    assertTrue(codes().contains("total-off"));
    editor.type(
        bar, "  batch     1200 g\n", "  batch     1200 g\n  accept    total-off \"a trial\"\n");
    assertFalse(codes().contains("total-off"));
  }

  @Test
  void fixesAllOnlyWhereAClientAsksForIt() throws Exception {
    editor.type(bar, "0.25 %", ".25 %");
    editor.diagnostics(bar);
    assertFalse(
        actions("60.00").stream().anyMatch(action -> action.getKind().startsWith("source.fixAll")));
    CodeActionContext context = new CodeActionContext(List.of());
    context.setOnly(List.of("source.fixAll"));
    Range all = new Range(new Position(0, 0), new Position(99, 0));
    List<CodeAction> actions = editor
        .await(editor
            .server()
            .getTextDocumentService()
            .codeAction(new CodeActionParams(EditorFixture.id(bar), all, context)))
        .stream()
        .map(either -> either.getRight())
        .toList();
    assertEquals(
        List.of("source.fixAll.kettlemark"),
        actions.stream().map(CodeAction::getKind).toList());
    String fixed = EditorFixture.applied(editor.text(bar), edits(actions.get(0).getEdit(), bar));
    assertTrue(fixed.contains("0.25 %"), fixed);
  }

  private List<String> codes() throws Exception {
    return editor.diagnostics(bar).stream()
        .map(diagnostic -> diagnostic.getCode().getLeft())
        .toList();
  }

  @Test
  void scalingNeedsNoQuestionWhereAProductSaysWhatIsWanted() throws Exception {
    CodeAction scale = actions("60.00").stream()
        .filter(action -> action.getTitle().startsWith("Scale to what bar-42 needs"))
        .findFirst()
        .orElseThrow();
    String scaled = EditorFixture.applied(editor.text(bar), edits(scale.getEdit(), bar));
    // 37 × 42 g / 0.96, by hand.
    assertEquals(BAR.replace("1200 g", "1618.75 g"), scaled);
  }

  @Test
  void anAnswerIsARewritingThatOneUndoTakesBack() throws Exception {
    String gel = folder.resolve("gel.kettle").toUri().toString();
    editor.open(gel, GEL);
    Position position = editor.positionOf(gel, "1.50");
    CodeActionParams params = new CodeActionParams(
        EditorFixture.id(gel), new Range(position, position), new CodeActionContext(List.of()));
    CodeAction answer =
        editor.await(editor.server().getTextDocumentService().codeAction(params)).stream()
            .map(either -> either.getRight())
            .filter(action -> action.getTitle().startsWith("Use gelatine-200: 1.68 %"))
            .findFirst()
            .orElseThrow();
    assertEquals(CodeActionKind.RefactorRewrite, answer.getKind());
    assertEquals(
        GEL.replace("gelatine-250", "gelatine-200").replace("1.50 %", "1.68 %"),
        EditorFixture.applied(editor.text(gel), edits(answer.getEdit(), gel)));
  }

  @Test
  void refactoringsStandBehindTheFixesAndLeaveTheMenuShort() throws Exception {
    List<CodeAction> found = actions("60.00");
    List<String> kinds = found.stream().map(CodeAction::getKind).toList();
    assertTrue(
        kinds.lastIndexOf(CodeActionKind.RefactorRewrite) > kinds.indexOf(CodeActionKind.QuickFix),
        () -> "" + kinds);
    assertTrue(
        kinds.stream().filter(kind -> kind.startsWith("refactor")).count() <= 15, () -> "" + kinds);
    assertTrue(
        found.stream().allMatch(action -> action.getDisabled() == null), "none is refused unasked");
    assertTrue(found.stream()
        .filter(action -> action.getKind().startsWith("refactor"))
        .allMatch(action -> action.getTitle().length() <= 90));
  }

  @Test
  void whoAsksForRefactoringsIsToldWhatIsRefusedAndWhy() throws Exception {
    String gel = folder.resolve("two.kettle").toUri().toString();
    editor.open(gel, """
        formula two "Two"
          percent   of charge
          batch     1000 g

        stage one in bowl-a
          50.00 %             honey
          50.00 %             water
          mix       honey, water

        stage last
          all of              one
          rest      for 10 min
        """);
    List<CodeAction> inline = kind(gel, "stage one", CodeActionKind.RefactorInline);
    assertEquals(
        List.of("Work stage one into last"),
        inline.stream().map(CodeAction::getTitle).toList());
    assertEquals("it is made in another vessel", inline.get(0).getDisabled().getReason());
    List<CodeAction> organize = kind(gel, "stage one", "source.organizeSettings");
    assertEquals(List.of(), organize);
    List<CodeAction> extract = kind(gel, "stage one", CodeActionKind.RefactorExtract);
    assertTrue(
        extract.stream().anyMatch(action -> action.getTitle().startsWith("Begin trial T-001")),
        () -> "" + extract);
  }

  private List<CodeAction> kind(String uri, String where, String kind) throws Exception {
    Position position = editor.positionOf(uri, where);
    CodeActionParams params = new CodeActionParams(
        EditorFixture.id(uri),
        new Range(position, position),
        new CodeActionContext(List.of(), List.of(kind)));
    return editor.await(editor.server().getTextDocumentService().codeAction(params)).stream()
        .map(either -> either.getRight())
        .toList();
  }

  @Test
  void theNextTrialComesAsAnEditAndAsAText() throws Exception {
    JsonObject result =
        command("kettlemark.newTrial", "{'uri':'" + bar + "','formula':'cold-bar'}");
    assertEquals("T-001", result.get("trial").getAsString());
    assertTrue(result.get("text").getAsString().startsWith("trial T-001 of cold-bar on "));
    assertTrue(result.getAsJsonObject("edit").has("changes"));
  }

  @Test
  void theScaleCommandChangesTheBatchLineOnly() throws Exception {
    JsonObject result = command(
        "kettlemark.scale",
        "{'uri':'" + bar + "','formula':'cold-bar','target':"
            + "{'kind':'pieces','pieces':37,'pieceGrams':42,'lossPercent':4}}");
    assertEquals(1618.75, result.get("charge").getAsDouble(), 1e-9);
    assertEquals(1554.0, result.get("finished").getAsDouble(), 1e-9);
    assertTrue(result.get("weighingList").getAsString().contains("moon-honey"));
    assertTrue(result.get("edit").toString().contains("\"newText\":\"618.75\""), result.toString());
  }

  @Test
  void aScalingThatCannotBeSaysWhy() {
    ExecutionException refused = assertThrows(
        ExecutionException.class,
        () -> command(
            "kettlemark.scale",
            "{'uri':'" + bar + "','formula':'cold-bar','target':"
                + "{'kind':'ingredient','name':'pistachio','grams':10}}"));
    assertTrue(
        String.valueOf(refused.getMessage()).contains("weighs no `pistachio`"),
        () -> "refused with " + refused.getMessage());
  }

  @Test
  void aFormulaIsShownAsATable() throws Exception {
    Object table = editor.await(editor
        .server()
        .getWorkspaceService()
        .executeCommand(new ExecuteCommandParams(
            "kettlemark.show",
            List.of(JsonParser.parseString("{'uri':'" + bar + "','formula':'cold-bar'}")))));
    assertTrue(table.toString().contains("desiccated-coconut"), table.toString());
  }

  /** The figures are those of the table, by name, by place, and of the text's first formula. */
  @Test
  void theFiguresOfAFormulaAreData() throws Exception {
    JsonObject named = command("kettlemark.figures", "{'uri':'" + bar + "','formula':'cold-bar'}");
    assertEquals("cold-bar", named.get("formula").getAsString());
    assertTrue(
        named.get("ingredients").toString().contains("desiccated-coconut"), named.toString());
    for (JsonElement figure : named.getAsJsonArray("figures")) {
      JsonObject one = figure.getAsJsonObject();
      assertTrue(
          one.get("text").getAsString().isEmpty()
              != one.get("because").getAsString().isEmpty(),
          one.toString());
    }
    String at = "{'uri':'" + bar + "','position':{'line':3,'character':0}}";
    assertEquals(named, command("kettlemark.figures", at));
    assertEquals(named, command("kettlemark.figures", "{'uri':'" + bar + "'}"));
    for (String wrong : List.of(
        "{'uri':'" + bar + "','formula':'no-such'}",
        "{'uri':'" + bar + "','position':{'line':'x'}}",
        "{'uri':'" + pantry + "'}")) {
      assertThrows(ExecutionException.class, () -> command("kettlemark.figures", wrong));
    }
  }

  @Test
  void aFormulaIsDrawn() throws Exception {
    assertTrue(drawn("flow").contains("Flow of"), drawn("flow"));
    assertTrue(drawn("shares").contains("is made of"), drawn("shares"));
    ExecutionException refused = assertThrows(ExecutionException.class, () -> drawn("smell"));
    assertTrue(String.valueOf(refused.getMessage()).contains("of the kind `smell`"));
  }

  private String drawn(String kind) throws Exception {
    String argument = "{'uri':'" + bar + "','formula':'cold-bar','kind':'" + kind + "'}";
    return editor
        .await(editor
            .server()
            .getWorkspaceService()
            .executeCommand(new ExecuteCommandParams(
                "kettlemark.flow", List.of(JsonParser.parseString(argument)))))
        .toString();
  }

  /** By hand: 39.75 % more or less of what 17 % water holds is told of the formula that uses it. */
  @Test
  void unsavedTextsAreHeldAgainstTheDisk() throws Exception {
    Files.writeString(folder.resolve("bar.kettle"), BAR);
    assertTrue(changes().contains("Nothing changed"), changes());
    editor.open(pantry, PANTRY);
    editor.type(pantry, "17 % water, 41 % fructose", "27 % water, 31 % fructose");
    String told = changes();
    assertTrue(told.contains("ingredient moon-honey, changed"), told);
    assertTrue(told.contains("## formula cold-bar"), told);
    assertTrue(told.contains("## product bar-42"), told);
    assertTrue(told.contains("| moisture |"), told);
  }

  @Test
  void aTextThatWasNeverSavedIsNew() throws Exception {
    assertTrue(changes().contains("## formula cold-bar, new"), changes());
  }

  private String changes() throws Exception {
    return editor
        .await(editor
            .server()
            .getWorkspaceService()
            .executeCommand(new ExecuteCommandParams(
                "kettlemark.changes", List.of(JsonParser.parseString("{'uri':'" + bar + "'}")))))
        .toString();
  }

  @Test
  void aNameLeadsToItsDeclarationInAnotherFile() throws Exception {
    var found = editor.await(editor
        .server()
        .getTextDocumentService()
        .definition(new DefinitionParams(EditorFixture.id(bar), at("moon-honey"))));
    assertEquals(List.of(pantry), found.getLeft().stream().map(l -> l.getUri()).toList());
  }

  @Test
  void usesAreFoundAcrossFiles() throws Exception {
    var found = editor.await(editor
        .server()
        .getTextDocumentService()
        .references(new ReferenceParams(
            EditorFixture.id(bar), at("moon-honey"), new ReferenceContext(true))));
    assertEquals(2, found.size());
  }

  @Test
  void aRenameReachesEveryFile() throws Exception {
    WorkspaceEdit edit = editor.await(editor
        .server()
        .getTextDocumentService()
        .rename(new RenameParams(EditorFixture.id(bar), at("moon-honey"), "sun-honey")));
    assertEquals(
        BAR.replace("moon-honey", "sun-honey"), EditorFixture.applied(BAR, edits(edit, bar)));
    assertEquals(
        PANTRY.replace("moon-honey", "sun-honey"),
        EditorFixture.applied(PANTRY, edits(edit, pantry)));
  }

  @Test
  void formattingLaysTheTextOutAsTheTerminalDoes() throws Exception {
    DocumentFormattingParams params =
        new DocumentFormattingParams(EditorFixture.id(bar), new FormattingOptions(2, true));
    var edits = editor.await(editor.server().getTextDocumentService().formatting(params));
    assertEquals(Formatter.format(BAR), EditorFixture.applied(BAR, edits));
  }

  @Test
  void theOutlineHoldsSectionsAndTheirStages() throws Exception {
    List<String> names = editor
        .await(editor
            .server()
            .getTextDocumentService()
            .documentSymbol(new DocumentSymbolParams(EditorFixture.id(bar))))
        .stream()
        .map(symbol -> symbol.getRight().getName())
        .toList();
    assertEquals(List.of("bench", "cold-bar", "bar-42"), names);
  }

  @Test
  void completionOffersTheLibraryBehindAnAmount() throws Exception {
    Position behind = at("desiccated-coconut");
    List<CompletionItem> items = editor
        .await(editor
            .server()
            .getTextDocumentService()
            .completion(new CompletionParams(EditorFixture.id(bar), behind)))
        .getRight()
        .getItems();
    assertTrue(items.stream().anyMatch(item -> item.getLabel().equals("moon-honey")));
    assertTrue(items.stream().anyMatch(item -> item.getLabel().equals("white-sugar")));
  }

  @Test
  void anUnknownDocumentHasNoAnswersButNoFaults() throws Exception {
    var id = EditorFixture.id("untitled:nothing");
    Range all = new Range(new Position(0, 0), new Position(9, 9));
    var documents = editor.server().getTextDocumentService();
    assertEquals(List.of(), editor.await(documents.inlayHint(new InlayHintParams(id, all))));
    assertFalse(editor.await(documents.hover(new HoverParams(id, new Position(0, 0)))) != null);
  }

  private List<CodeAction> actions(String where) throws Exception {
    Position position = at(where);
    CodeActionParams params = new CodeActionParams(
        EditorFixture.id(bar), new Range(position, position), new CodeActionContext(List.of()));
    return editor.await(editor.server().getTextDocumentService().codeAction(params)).stream()
        .map(either -> either.getRight())
        .toList();
  }

  private static List<TextEdit> edits(WorkspaceEdit edit, String uri) {
    return edit.getChanges().getOrDefault(uri, List.of());
  }

  private JsonObject command(String name, String argument) throws Exception {
    Object answer = editor.await(editor
        .server()
        .getWorkspaceService()
        .executeCommand(new ExecuteCommandParams(name, List.of(JsonParser.parseString(argument)))));
    return new Gson().toJsonTree(answer).getAsJsonObject();
  }
}
