package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.Gson;
import com.google.gson.JsonParser;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.junit.jupiter.api.Test;

class ResentDiagnosticTest {

  private static final Gson JSON =
      new MessageJsonHandler(Map.of(), ResentDiagnostic::register).getGson();

  @Test
  void isSentLikeAnyOtherTheFirstTimeAndAgain() {
    Diagnostic plain = filled(new Diagnostic());
    Diagnostic resent = filled(new ResentDiagnostic());
    String expected = sent(plain);
    assertEquals(expected, sent(resent));
    assertEquals(expected, sent(resent));
    assertEquals(JSON.toJsonTree(plain), JSON.toJsonTree(resent));
  }

  private static String sent(Diagnostic diagnostic) {
    String json =
        JSON.toJson(new PublishDiagnosticsParams("file:///a.kettle", List.of(diagnostic)));
    assertTrue(JsonParser.parseString(json).isJsonObject());
    return json;
  }

  private static Diagnostic filled(Diagnostic diagnostic) {
    diagnostic.setRange(new Range(new Position(3, 2), new Position(3, 9)));
    diagnostic.setSeverity(DiagnosticSeverity.Warning);
    diagnostic.setCode("below-boiling");
    diagnostic.setMessage("\"Nougat\" <at> 90 °C\n\uD83C\uDF6F");
    return diagnostic;
  }
}
