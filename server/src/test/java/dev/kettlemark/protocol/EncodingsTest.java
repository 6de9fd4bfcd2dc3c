package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CodeLensParams;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DocumentDiagnosticParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentHighlightParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InlayHintParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SelectionRangeParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.junit.jupiter.api.Test;

/**
 * Every feature means the same places in utf-8, utf-16 and utf-32, on lines with text that is wider in
 * some of them: Language Server Protocol 3.17, "Text Documents".
 */
class EncodingsTest {

  private static final String URI = "untitled:siròp";

  /** An accent is two bytes and one unit, a pot of honey four bytes, two units and one code point. */
  private static final String TEXT = """
      ingredient sucré-été "\uD83C\uDF6F sucré"
        contains  100 % sucrose  from "\uD83C\uDF6F é maison"

      formula siròp-été "\uD83C\uDF6F été"
        percent   of charge
        batch     500 g

      stage poêle
        60.00     sucré-été  \uD83C\uDF6F x
        40.00 % water
        boil sucré-été,  water at 118 °C until dissolved
      """;

  /** A client that counts in its own way, and where it means things to be. */
  private record Counting(String encoding) {

    int width(String text) {
      return switch (encoding) {
        case "utf-8" -> text.getBytes(StandardCharsets.UTF_8).length;
        case "utf-16" -> text.length();
        default -> text.codePointCount(0, text.length());
      };
    }

    Position position(int offset) {
      String before = TEXT.substring(0, offset);
      int line = (int) before.chars().filter(c -> c == '\n').count();
      return new Position(line, width(before.substring(before.lastIndexOf('\n') + 1)));
    }

    Position at(String what) {
      int offset = TEXT.indexOf(what);
      assertTrue(offset >= 0, what);
      return position(offset);
    }

    /** The offset of a position, or a note that it lies within a character or behind the line. */
    String offset(int line, int character) {
      String[] lines = TEXT.split("\n", -1);
      if (line >= lines.length) {
        return "line " + line;
      }
      for (int column = 0; column <= lines[line].length(); column++) {
        boolean within =
            column < lines[line].length() && Character.isLowSurrogate(lines[line].charAt(column));
        if (!within && width(lines[line].substring(0, column)) == character) {
          return line + ":" + column;
        }
      }
      return "nowhere: " + line + ":" + character + " in " + encoding;
    }
  }

  @FunctionalInterface
  private interface Asking {
    CompletableFuture<?> of(TextDocumentService documents, Counting counting);
  }

  private static TextDocumentIdentifier id() {
    return EditorFixture.id(URI);
  }

  private static Range all() {
    return new Range(new Position(0, 0), new Position(11, 0));
  }

  private static Map<String, Asking> features() {
    Map<String, Asking> features = new LinkedHashMap<>();
    features.put("hover", (d, c) -> d.hover(new HoverParams(id(), c.at("sucré-été,  water"))));
    features.put(
        "completion", (d, c) -> d.completion(new CompletionParams(id(), c.at("-été,  water"))));
    features.put(
        "definition", (d, c) -> d.definition(new DefinitionParams(id(), c.at("-été,  water"))));
    features.put(
        "references",
        (d, c) -> d.references(
            new ReferenceParams(id(), c.at("-été,  water"), new ReferenceContext(true))));
    features.put(
        "highlights",
        (d, c) -> d.documentHighlight(new DocumentHighlightParams(id(), c.at("-été,  water"))));
    features.put("symbols", (d, c) -> d.documentSymbol(new DocumentSymbolParams(id())));
    features.put(
        "actions",
        (d, c) -> d.codeAction(new CodeActionParams(
            id(), new Range(c.at("60.00"), c.at("x\n")), new CodeActionContext(List.of()))));
    features.put("lenses", (d, c) -> d.codeLens(new CodeLensParams(id())));
    features.put("hints", (d, c) -> d.inlayHint(new InlayHintParams(id(), all())));
    features.put(
        "formatting",
        (d, c) -> d.formatting(new DocumentFormattingParams(id(), new FormattingOptions(2, true))));
    features.put(
        "range formatting",
        (d, c) -> d.rangeFormatting(new DocumentRangeFormattingParams(
            id(), new FormattingOptions(2, true), new Range(c.at("boil"), c.at("until")))));
    features.put(
        "selections",
        (d, c) -> d.selectionRange(new SelectionRangeParams(id(), List.of(c.at("-été,  water")))));
    features.put(
        "rename refused or not",
        (d, c) -> d.prepareRename(new PrepareRenameParams(id(), c.at("-été,  water"))));
    features.put(
        "rename", (d, c) -> d.rename(new RenameParams(id(), c.at("-été,  water"), "sùcre")));
    features.put("findings", (d, c) -> d.diagnostic(new DocumentDiagnosticParams(id())));
    return features;
  }

  @Test
  void everyFeatureMeansTheSamePlaces() throws Exception {
    Map<String, Map<String, String>> meant = new LinkedHashMap<>();
    for (String encoding : List.of("utf-8", "utf-16", "utf-32")) {
      Counting counting = new Counting(encoding);
      try (EditorFixture editor = EditorFixture.counting(encoding)) {
        assertEquals(encoding, editor.initialized().getCapabilities().getPositionEncoding());
        editor.open(URI, TEXT);
        for (Map.Entry<String, Asking> feature : features().entrySet()) {
          editor.said().results().clear();
          editor.await(feature.getValue().of(editor.server().getTextDocumentService(), counting));
          meant
              .computeIfAbsent(feature.getKey(), f -> new LinkedHashMap<>())
              .put(encoding, places(editor, counting));
        }
        editor.said().results().clear();
        editor.await(
            editor.server().getWorkspaceService().symbol(new WorkspaceSymbolParams("siròp")));
        meant
            .computeIfAbsent("workspace symbols", f -> new LinkedHashMap<>())
            .put(encoding, places(editor, counting));
      }
    }
    meant.forEach((feature, byEncoding) -> {
      assertTrue(
          !byEncoding.getOrDefault("utf-8", "").isEmpty(), feature + " means no place at all");
      assertEquals(1, new TreeSet<>(byEncoding.values()).size(), feature + ": " + byEncoding);
      assertTrue(!byEncoding.toString().contains("nowhere"), feature + ": " + byEncoding);
    });
  }

  private static String places(EditorFixture editor, Counting counting) throws Exception {
    List<String> found = new ArrayList<>();
    collect(RecordingClient.next(editor.said().results()), counting, found);
    return String.join(" ", found);
  }

  private static void collect(JsonElement value, Counting counting, List<String> found) {
    if (value instanceof JsonArray array) {
      array.forEach(each -> collect(each, counting, found));
    } else if (value instanceof JsonObject object) {
      if (object.has("line") && object.has("character")) {
        found.add(counting.offset(
            object.get("line").getAsInt(), object.get("character").getAsInt()));
      }
      object.entrySet().forEach(entry -> collect(entry.getValue(), counting, found));
    }
  }

  /** The same change, made by each client in its own way of counting, leaves the same text. */
  @Test
  void everyClientTypesAtTheSamePlace() throws Exception {
    TreeSet<String> left = new TreeSet<>();
    for (String encoding : List.of("utf-8", "utf-16", "utf-32")) {
      Counting counting = new Counting(encoding);
      try (EditorFixture editor = EditorFixture.counting(encoding)) {
        editor.open(URI, TEXT);
        // The stray words behind the pot of honey go, and the unit comes.
        Range stray = new Range(counting.at(" \uD83C\uDF6F x"), counting.at("\n  40.00"));
        Range unit = new Range(counting.at("    sucré-été  "), counting.at("   sucré-été  "));
        editor
            .server()
            .getTextDocumentService()
            .didChange(new DidChangeTextDocumentParams(
                new VersionedTextDocumentIdentifier(URI, 2),
                List.of(
                    new TextDocumentContentChangeEvent(stray, ""),
                    new TextDocumentContentChangeEvent(unit, " % "))));
        left.add(String.valueOf(editor
            .await(editor
                .server()
                .getTextDocumentService()
                .diagnostic(new DocumentDiagnosticParams(id())))
            .getRelatedFullDocumentDiagnosticReport()
            .getItems()
            .stream()
            .map(finding -> finding.getCode().getLeft())
            .toList()));
      }
    }
    assertEquals(1, left.size(), left.toString());
    assertTrue(!left.first().contains("missing-unit"), left.first());
  }
}
