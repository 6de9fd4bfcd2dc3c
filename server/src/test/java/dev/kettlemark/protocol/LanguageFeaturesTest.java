package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.features.SemanticTokens;
import dev.kettlemark.features.TokenType;
import dev.kettlemark.files.CacheFolder;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.PositionEncoding;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.eclipse.lsp4j.CallHierarchyCapabilities;
import org.eclipse.lsp4j.CallHierarchyIncomingCallsParams;
import org.eclipse.lsp4j.CallHierarchyOutgoingCallsParams;
import org.eclipse.lsp4j.CallHierarchyPrepareParams;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CompletionCapabilities;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemCapabilities;
import org.eclipse.lsp4j.CompletionItemResolveSupportCapabilities;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionListCapabilities;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionCapabilities;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DocumentHighlightKind;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.DocumentLinkParams;
import org.eclipse.lsp4j.DocumentOnTypeFormattingParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.ImplementationParams;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.SemanticTokensCapabilities;
import org.eclipse.lsp4j.SemanticTokensClientCapabilitiesRequests;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensDeltaParams;
import org.eclipse.lsp4j.SemanticTokensEdit;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.eclipse.lsp4j.SemanticTokensRangeParams;
import org.eclipse.lsp4j.SignatureHelp;
import org.eclipse.lsp4j.SignatureHelpParams;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentContentCapabilities;
import org.eclipse.lsp4j.TextDocumentContentParams;
import org.eclipse.lsp4j.TypeHierarchyCapabilities;
import org.eclipse.lsp4j.TypeHierarchyPrepareParams;
import org.eclipse.lsp4j.TypeHierarchySubtypesParams;
import org.eclipse.lsp4j.TypeHierarchySupertypesParams;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What speaks of the language, through the wire, to an editor that can everything and to one that can little. */
class LanguageFeaturesTest {

  private static final String TEXT = """
      formula nougat
        batch 1000 g
        note "see https://example.org/nougat."

      stage foam
        10 % water
        20 % crème-fraîche

      stage body
        all of foam
        70 % white-sugar
        whip on low

      variant soft of nougat
        add 5 % honey in foam

      ingredient crème-fraîche "Crème fraîche"
        contains 60 % water, 40 % fat
      """;

  @TempDir
  Path folder;

  private static ClientCapabilities everything() {
    TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
    text.setSemanticTokens(new SemanticTokensCapabilities(
        new SemanticTokensClientCapabilitiesRequests(true, true),
        List.of(),
        List.of(),
        List.of("relative")));
    text.setCallHierarchy(new CallHierarchyCapabilities());
    text.setTypeHierarchy(new TypeHierarchyCapabilities());
    DefinitionCapabilities definition = new DefinitionCapabilities();
    definition.setLinkSupport(true);
    text.setDefinition(definition);
    CompletionItemCapabilities item = new CompletionItemCapabilities(true);
    item.setResolveSupport(new CompletionItemResolveSupportCapabilities(List.of("documentation")));
    item.setInsertReplaceSupport(true);
    item.setPreselectSupport(true);
    item.setLabelDetailsSupport(true);
    CompletionCapabilities completion = new CompletionCapabilities(item);
    completion.setCompletionList(new CompletionListCapabilities(List.of("editRange")));
    text.setCompletion(completion);
    WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
    workspace.setTextDocumentContent(new TextDocumentContentCapabilities(false));
    return new ClientCapabilities(workspace, text, null);
  }

  private record Open(EditorFixture editor, String uri) implements AutoCloseable {

    TextDocumentService service() {
      return editor.server().getTextDocumentService();
    }

    Position at(String what) {
      return editor.positionOf(uri, what);
    }

    @Override
    public void close() throws IOException {
      editor.close();
    }
  }

  private Open open(ClientCapabilities capabilities) throws Exception {
    String uri = folder.resolve("nougat.kettle").toUri().toString();
    EditorFixture editor = EditorFixture.onFolder(folder, capabilities);
    editor.open(uri, TEXT);
    return new Open(editor, uri);
  }

  @Test
  void offersOnlyWhatTheClientCanShow() throws Exception {
    try (Open little = open(new ClientCapabilities());
        Open all = open(everything())) {
      var few = little.editor().initialized().getCapabilities();
      assertNull(few.getSemanticTokensProvider());
      assertNull(few.getCallHierarchyProvider());
      assertNull(few.getTypeHierarchyProvider());
      assertNull(few.getWorkspace().getTextDocumentContent());
      assertFalse(few.getCompletionProvider().getResolveProvider());
      var many = all.editor().initialized().getCapabilities();
      assertNotNull(many.getSemanticTokensProvider());
      assertTrue(many.getCallHierarchyProvider().getLeft());
      assertTrue(many.getTypeHierarchyProvider().getLeft());
      assertEquals(
          List.of("kettlemark-page", "kettlemark-pantry"),
          many.getWorkspace().getTextDocumentContent().getSchemes());
      assertTrue(many.getCompletionProvider().getResolveProvider());
    }
  }

  @Test
  void aDifferenceOfColoursMakesTheNewOnesOfTheOld() throws Exception {
    try (Open open = open(everything())) {
      EditorFixture editor = open.editor();
      var id = EditorFixture.id(open.uri());
      var first = editor.await(open.service().semanticTokensFull(new SemanticTokensParams(id)));
      editor.type(open.uri(), "20 %", "20 % of water");
      SemanticTokensDelta delta = editor
          .await(open.service()
              .semanticTokensFullDelta(new SemanticTokensDeltaParams(id, first.getResultId())))
          .getRight();
      var second = editor.await(open.service().semanticTokensFull(new SemanticTokensParams(id)));
      assertEquals(second.getData(), applied(first.getData(), delta.getEdits()));
      assertTrue(delta.getEdits().get(0).getData().size() < second.getData().size() / 2);
      // The id before the last is forgotten, so all colours come again.
      assertTrue(editor
          .await(open.service()
              .semanticTokensFullDelta(new SemanticTokensDeltaParams(id, first.getResultId())))
          .isLeft());
      Range stage = new Range(open.at("stage foam"), open.at("20 %"));
      var part = editor.await(
          open.service().semanticTokensRange(new SemanticTokensRangeParams(id, stage)));
      assertEquals(4, part.getData().get(0));
      assertEquals(TokenType.LEGEND.indexOf(TokenType.KEYWORD), part.getData().get(3));
    }
  }

  @Test
  void anyTwoTextsDifferByOneEditOfTheirColours() {
    Chance.rounds(5, LanguageFeaturesTest::assertColoursFollowEdits);
  }

  private static void assertColoursFollowEdits(Random random) {
    Document document = Document.of("a.kettle", TEXT);
    Snapshot snapshot = Snapshot.of(Library.of(List.of(document)));
    int[] before = SemanticTokens.encoded(snapshot, document, PositionEncoding.UTF16);
    for (int i = 0; i < 60; i++) {
      document = edited(document, random);
      snapshot = snapshot.with(snapshot.library().with(document));
      int[] after = SemanticTokens.encoded(snapshot, document, PositionEncoding.UTF16);
      Snapshot fresh = Snapshot.of(Library.of(List.of(document)));
      assertArrayEquals(SemanticTokens.encoded(fresh, document, PositionEncoding.UTF16), after);
      assertArrayEquals(
          after,
          applied(list(before), SemanticTokensAdapter.edits(before, after)).stream()
              .mapToInt(Integer::intValue)
              .toArray());
      before = after;
    }
  }

  private static Document edited(Document document, Random random) {
    int length = document.text().source().length();
    int start = random.nextInt(length);
    int end = Math.min(length, start + random.nextInt(20));
    String piece = List.of("", "\n", "water ", "stage x\n", "é").get(random.nextInt(5));
    Document edited = document.with(new TextEdit(new Span(start, end), piece));
    return edited.text().source().length() < 100 ? Document.of("a.kettle", TEXT) : edited;
  }

  private static List<Integer> list(int[] data) {
    List<Integer> list = new ArrayList<>();
    for (int figure : data) {
      list.add(figure);
    }
    return list;
  }

  private static List<Integer> applied(List<Integer> data, List<SemanticTokensEdit> edits) {
    List<Integer> result = new ArrayList<>(data);
    for (SemanticTokensEdit edit : edits) {
      List<Integer> stretch =
          result.subList(edit.getStart(), edit.getStart() + edit.getDeleteCount());
      stretch.clear();
      stretch.addAll(edit.getData());
    }
    return result;
  }

  @Test
  void aDefinitionInThePantryIsAPageThatTheClientAsksFor() throws Exception {
    try (Open open = open(everything())) {
      LocationLink link = open.editor()
          .await(open.service()
              .definition(
                  new DefinitionParams(EditorFixture.id(open.uri()), open.at("white-sugar"))))
          .getRight()
          .get(0);
      assertTrue(link.getTargetUri().startsWith("kettlemark-pantry:/"), link.getTargetUri());
      assertEquals(open.at("white-sugar"), link.getOriginSelectionRange().getStart());
      String page = open.editor()
          .await(open.editor()
              .server()
              .getWorkspaceService()
              .textDocumentContent(new TextDocumentContentParams(link.getTargetUri())))
          .getText();
      int line = link.getTargetSelectionRange().getStart().getLine();
      assertTrue(page.lines().toList().get(line).startsWith("ingredient white-sugar"));
    }
  }

  @Test
  void aDefinitionInThePantryIsAFileThatCannotBeEdited() throws Exception {
    try (Open open = open(new ClientCapabilities())) {
      EditorFixture editor = open.editor();
      String uri = editor
          .await(open.service()
              .definition(
                  new DefinitionParams(EditorFixture.id(open.uri()), open.at("white-sugar"))))
          .getLeft()
          .get(0)
          .getUri();
      Path file = Path.of(URI.create(uri));
      assertTrue(file.startsWith(CacheFolder.usual()), uri);
      String page = Files.readString(file);
      assertTrue(page.contains("\ningredient white-sugar"), uri);
      assertFalse(page.isEmpty());
      // Opened, typed in and closed, it is still the pantry: nothing is told of it, and nothing is
      // lost.
      editor.open(uri, page);
      editor.type(uri, "ingredient white-sugar", "ingredient black-sugar");
      editor.close(uri);
      var links = editor.await(open.service()
          .references(new ReferenceParams(
              EditorFixture.id(open.uri()), open.at("white-sugar"), new ReferenceContext(true))));
      assertTrue(links.stream().anyMatch(link -> link.getUri().equals(uri)), links.toString());
    }
  }

  @Test
  void offersShareTheirRangeAndKeepTheirDocumentation() throws Exception {
    try (Open open = open(everything())) {
      Position behind = open.at("te-sugar");
      CompletionList list = open.editor()
          .await(
              open.service().completion(new CompletionParams(EditorFixture.id(open.uri()), behind)))
          .getRight();
      var range = list.getItemDefaults().getEditRange().getRight();
      assertEquals(open.at("white-sugar"), range.getInsert().getStart());
      assertEquals(behind, range.getInsert().getEnd());
      assertEquals(
          behind.getCharacter() + "te-sugar".length(),
          range.getReplace().getEnd().getCharacter());
      assertTrue(list.getItems().get(0).getPreselect());
      CompletionItem honey = item(list, "honey");
      assertNull(honey.getDocumentation());
      assertNull(honey.getTextEdit());
      assertNotNull(honey.getLabelDetails().getDescription());
      CompletionItem resolved = open.editor().await(open.service().resolveCompletionItem(honey));
      assertTrue(resolved.getDocumentation().getRight().getValue().contains("Usual:"));
      assertEquals("crème-fraîche creme-fraiche", item(list, "crème-fraîche").getFilterText());
    }
  }

  /** What an offer is made again from stands once in the list, and the client gives it back with the offer. */
  @Test
  void offersShareWhereTheyWereMade() throws Exception {
    ClientCapabilities capabilities = everything();
    capabilities
        .getTextDocument()
        .getCompletion()
        .setCompletionList(new CompletionListCapabilities(List.of("editRange", "data")));
    try (Open open = open(capabilities)) {
      CompletionList list = open.editor()
          .await(open.service()
              .completion(new CompletionParams(EditorFixture.id(open.uri()), open.at("te-sugar"))))
          .getRight();
      CompletionItem honey = item(list, "honey");
      assertNull(honey.getData());
      honey.setData(list.getItemDefaults().getData());
      CompletionItem resolved = open.editor().await(open.service().resolveCompletionItem(honey));
      assertTrue(resolved.getDocumentation().getRight().getValue().contains("Usual:"));
    }
  }

  @Test
  void offersForAPlainClientSayAllAtOnce() throws Exception {
    try (Open open = open(new ClientCapabilities())) {
      CompletionList list = open.editor()
          .await(open.service()
              .completion(
                  new CompletionParams(EditorFixture.id(open.uri()), open.at("white-sugar"))))
          .getRight();
      assertNull(list.getItemDefaults());
      CompletionItem honey = item(list, "honey");
      assertTrue(honey.getDocumentation().getRight().getValue().contains("Usual:"));
      assertEquals("honey", honey.getTextEdit().getLeft().getNewText());
      assertNull(honey.getLabelDetails());
    }
  }

  private static CompletionItem item(CompletionList list, String label) {
    return list.getItems().stream()
        .filter(item -> item.getLabel().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError(label));
  }

  @Test
  void tellsWhatAStepTakes() throws Exception {
    try (Open open = open(new ClientCapabilities())) {
      SignatureHelp help = open.editor()
          .await(open.service()
              .signatureHelp(
                  new SignatureHelpParams(EditorFixture.id(open.uri()), open.at("low"))));
      var signature = help.getSignatures().get(0);
      assertEquals(
          "[on SPEED]",
          signature.getParameters().get(help.getActiveParameter()).getLabel().getLeft());
      assertNull(open.editor()
          .await(open.service()
              .signatureHelp(
                  new SignatureHelpParams(EditorFixture.id(open.uri()), open.at("water")))));
    }
  }

  @Test
  void tellsWhoFeedsWhom() throws Exception {
    try (Open open = open(everything())) {
      EditorFixture editor = open.editor();
      var foam = editor
          .await(open.service()
              .prepareCallHierarchy(new CallHierarchyPrepareParams(
                  EditorFixture.id(open.uri()), open.at("foam\n  10"))))
          .get(0);
      assertEquals("nougat · 300.0 g left", foam.getDetail());
      var into = editor.await(
          open.service().callHierarchyIncomingCalls(new CallHierarchyIncomingCallsParams(foam)));
      assertEquals("body", into.get(0).getFrom().getName());
      assertEquals(open.at("all of foam"), into.get(0).getFromRanges().get(0).getStart());
      var from = editor.await(
          open.service().callHierarchyOutgoingCalls(new CallHierarchyOutgoingCallsParams(foam)));
      assertEquals(
          List.of("water", "crème-fraîche"),
          from.stream().map(call -> call.getTo().getName()).toList());
      // A page of the pantry: what it feeds is asked of the library from which it was reached.
      var water = editor.await(open.service()
          .callHierarchyIncomingCalls(
              new CallHierarchyIncomingCallsParams(from.get(0).getTo())));
      assertEquals("foam", water.get(0).getFrom().getName());
    }
  }

  @Test
  void tellsWhatIsAVariantOfWhat() throws Exception {
    try (Open open = open(everything())) {
      EditorFixture editor = open.editor();
      var nougat = editor
          .await(open.service()
              .prepareTypeHierarchy(new TypeHierarchyPrepareParams(
                  EditorFixture.id(open.uri()), open.at("nougat\n  batch"))))
          .get(0);
      var soft = editor
          .await(open.service().typeHierarchySubtypes(new TypeHierarchySubtypesParams(nougat)))
          .get(0);
      assertEquals("soft", soft.getName());
      assertEquals(
          "nougat",
          editor
              .await(
                  open.service().typeHierarchySupertypes(new TypeHierarchySupertypesParams(soft)))
              .get(0)
              .getName());
      var written = editor
          .await(open.service()
              .implementation(new ImplementationParams(
                  EditorFixture.id(open.uri()), open.at("nougat\n  batch"))))
          .getRight();
      assertEquals(open.at("soft of"), written.get(0).getTargetSelectionRange().getStart());
    }
  }

  @Test
  void linksHighlightsAndTypedLineEnds() throws Exception {
    try (Open open = open(everything())) {
      EditorFixture editor = open.editor();
      var id = EditorFixture.id(open.uri());
      var link =
          editor.await(open.service().documentLink(new DocumentLinkParams(id))).get(0);
      assertEquals("https://example.org/nougat", link.getTarget());
      var marks = editor.await(
          open.service().documentHighlight(new DocumentHighlightParams(id, open.at("foam\n  10"))));
      assertEquals(
          List.of(
              DocumentHighlightKind.Write, DocumentHighlightKind.Read, DocumentHighlightKind.Read),
          marks.stream().map(mark -> Objects.requireNonNull(mark.getKind())).toList());
      editor.type(open.uri(), "10 % water\n", "10 % water\n\n");
      Position below = new Position(open.at("10 % water").getLine() + 1, 0);
      var edits = editor.await(open.service()
          .onTypeFormatting(
              new DocumentOnTypeFormattingParams(id, new FormattingOptions(2, true), below, "\n")));
      String after = EditorFixture.applied(editor.text(open.uri()), edits);
      assertTrue(after.contains("  10 %                water\n  \n"), after);
    }
  }
}
