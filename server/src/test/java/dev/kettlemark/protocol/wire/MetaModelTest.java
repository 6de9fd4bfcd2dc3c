package dev.kettlemark.protocol.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The check of messages finds what is wrong and lets pass what is right. */
class MetaModelTest {

  private static final MetaModel LSP = MetaModel.lsp();

  private static JsonElement json(String text) {
    return JsonParser.parseString(text.replace('\'', '"'));
  }

  /** The right ones are the examples of the specification, shortened. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "Position | {'line': 1, 'character': 0}",
        "Range | {'start': {'line': 1, 'character': 0}, 'end': {'line': 1, 'character': 5}}",
        "MarkupContent | {'kind': 'markdown', 'value': 'x'}",
        "ProgressToken | 7",
        "ProgressToken | 'a'",
        "CodeActionKind | 'source.fixAll.own'",
        "Pattern | '**/*.x'",
        "LSPAny | {'anything': [1, 'two', null]}",
        "TextDocumentEdit | {'textDocument': {'uri': 'file:///a', 'version': null}, 'edits': []}",
        "ParameterInformation | {'label': [1, 4]}",
        "WorkspaceEdit | {'changes': {'file:///a': []}}",
        "DocumentDiagnosticReport | {'kind': 'unchanged', 'resultId': '1'}",
      })
  void letsPassWhatIsRight(String type, String value) {
    assertEquals("", LSP.value(type, json(value)).map(Object::toString).orElse(""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "Position | {'line': 1} | .character is missing",
        "Position | {'line': -1, 'character': 0} | .line is no uinteger but -1",
        "Position | {'line': 1.5, 'character': 0} | .line is no uinteger but 1.5",
        "Position | {'line': '1', 'character': 0} | .line is no uinteger but \"1\"",
        "Position | {'line': 1, 'character': 0, 'colour': 1} | .colour is no property of this type",
        "Position | [1, 2] | the value is no object but [1,2]",
        "Range | {'start': {'line': 1, 'character': 0}} | .end is missing",
        "Hover | {'contents': 'x', 'range': null} | .range is no object but null",
        "MarkupKind | 'html' | the value is no MarkupKind but \"html\"",
        "DiagnosticSeverity | 5 | the value is no DiagnosticSeverity but 5",
        "TextDocumentIdentifier | {'uri': 'a b'} | .uri is no DocumentUri but \"a b\"",
        "ProgressToken | true | the value is no integer but true",
        "ParameterInformation | {'label': [1]} | .label is no string but [1]",
        "WorkspaceEdit | {'changes': {'file:///a': [{}]}} | .changes.file:///a[0].range is missing",
        "TextDocumentEdit | {'textDocument': {'uri': 'file:///a'}, 'edits': []} | .textDocument.version is missing",
        "DocumentDiagnosticReport | {'kind': 'changed', 'items': []} | .kind is not \"full\"",
      })
  void findsWhatIsWrong(String type, String value, String fault) {
    assertEquals(fault, LSP.value(type, json(value)).map(Object::toString).orElse(""));
  }

  @Test
  void findsAWrongAnswerByWhatWasAsked() {
    MessageCheck check = new MessageCheck();
    check.saidByClient(call(1, "textDocument/hover", HOVER_AT));
    check.saidByServer(object("{'jsonrpc': '2.0', 'id': 1, 'result': {'content': 'x'}}"));
    assertEquals(1, check.faults().size());
    assertTrue(
        check.faults().get(0).contains("textDocument/hover"), check.faults().toString());
  }

  @Test
  void findsAnAnswerToNothingAndASecondOne() {
    MessageCheck check = new MessageCheck();
    check.saidByClient(call(1, "textDocument/hover", HOVER_AT));
    check.saidByServer(object("{'jsonrpc': '2.0', 'id': 1, 'result': null}"));
    assertEquals(List.of(), check.faults());
    check.saidByServer(object("{'jsonrpc': '2.0', 'id': 1, 'result': null}"));
    assertEquals(1, check.faults().size());
  }

  @Test
  void findsARequestSentAsANotification() {
    MessageCheck check = new MessageCheck();
    check.saidByServer(object("{'jsonrpc': '2.0', 'method': 'workspace/diagnostic/refresh'}"));
    check.saidByServer(object("{'jsonrpc': '2.0', 'method': 'kettlemark/own', 'params': {}}"));
    assertEquals(2, check.faults().size());
  }

  @Test
  void holdsPartsOfAResultAgainstTheRequestThatAskedForThem() {
    MessageCheck check = new MessageCheck();
    check.saidByClient(call(
        1, "workspace/symbol", "{'query': '', 'partialResultToken': 'p', 'workDoneToken': 'w'}"));
    check.saidByServer(progress("p", "[]"));
    check.saidByServer(progress("w", "{'kind': 'begin', 'title': 'x'}"));
    assertEquals(List.of(), check.faults());
    check.saidByServer(progress("p", "[{'name': 'x'}]"));
    check.saidByServer(progress("w", "{'kind': 'begin'}"));
    assertEquals(2, check.faults().size());
  }

  private static final String HOVER_AT =
      "{'textDocument': {'uri': 'file:///a'}, 'position': {'line': 0, 'character': 0}}";

  private static JsonObject call(int id, String method, String params) {
    return object(
        "{'jsonrpc': '2.0', 'id': %d, 'method': '%s', 'params': %s}".formatted(id, method, params));
  }

  private static JsonObject progress(String token, String value) {
    return object(
        "{'jsonrpc': '2.0', 'method': '$/progress', 'params': {'token': '%s', 'value': %s}}"
            .formatted(token, value));
  }

  private static JsonObject object(String text) {
    return json(text).getAsJsonObject();
  }
}
