package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;
import org.junit.jupiter.api.Test;

/** What remembers its form is sent like any other, the first time and again. */
@SuppressWarnings("deprecation") // The protocol still names the older symbol type beside ours.
class ResentTest {

  private static final MessageJsonHandler HANDLER =
      new MessageJsonHandler(Map.of(), Resent::register);
  private static final Gson JSON = HANDLER.getGson();

  @Test
  void diagnostics() {
    Diagnostic plain = filled(new Diagnostic());
    Diagnostic resent = filled(new ResentDiagnostic());
    String expected = sent(plain);
    assertEquals(expected, sent(resent));
    assertEquals(expected, sent(resent));
    assertEquals(JSON.toJsonTree(plain), JSON.toJsonTree(resent));
  }

  @Test
  void symbolsWithAllBelowThem() {
    DocumentSymbol plain = filled(new DocumentSymbol());
    DocumentSymbol resent = filled(new ResentSymbol());
    String expected = answered(plain);
    assertTrue(expected.contains("foam"), expected);
    assertEquals(expected, answered(resent));
    assertEquals(expected, answered(resent));
    assertEquals(JSON.toJsonTree(plain), JSON.toJsonTree(resent));
  }

  /** Whoever remembers must have been asked: otherwise each answer would be written anew. */
  @Test
  void onceSentTheFormStays() {
    DocumentSymbol symbol = filled(new ResentSymbol());
    String first = answered(symbol);
    symbol.setName("another");
    assertEquals(first, answered(symbol));
  }

  private static String sent(Diagnostic diagnostic) {
    String json =
        JSON.toJson(new PublishDiagnosticsParams("file:///a.kettle", List.of(diagnostic)));
    assertTrue(JsonParser.parseString(json).isJsonObject());
    return json;
  }

  private static String answered(DocumentSymbol symbol) {
    ResponseMessage answer = new ResponseMessage();
    answer.setId(7);
    answer.setResult(List.of(Either.<SymbolInformation, DocumentSymbol>forRight(symbol)));
    String json = HANDLER.serialize(answer);
    assertTrue(JsonParser.parseString(json).isJsonObject());
    return json;
  }

  private static Diagnostic filled(Diagnostic diagnostic) {
    diagnostic.setRange(range(3));
    diagnostic.setSeverity(DiagnosticSeverity.Warning);
    diagnostic.setCode("below-boiling");
    diagnostic.setMessage("\"Nougat\" <at> 90 °C\n\uD83C\uDF6F");
    return diagnostic;
  }

  private static DocumentSymbol filled(DocumentSymbol symbol) {
    symbol.setName("quay-nougat");
    symbol.setDetail("\"Nougat\" \uD83C\uDF6F");
    symbol.setKind(SymbolKind.Class);
    symbol.setRange(range(3));
    symbol.setSelectionRange(range(3));
    symbol.setChildren(
        List.of(new DocumentSymbol("foam", SymbolKind.Method, range(4), range(4), "")));
    return symbol;
  }

  private static Range range(int line) {
    return new Range(new Position(line, 2), new Position(line, 9));
  }
}
