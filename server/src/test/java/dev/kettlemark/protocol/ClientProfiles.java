package dev.kettlemark.protocol;

import java.util.Map;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;

/** What three clients say of themselves, shortened to what a server can go by; from memory. */
final class ClientProfiles {

  private ClientProfiles() {}

  /** A client of the protocol's first years: no code actions but commands, no progress, no links. */
  static InitializeParams old() {
    return params("""
        {'processId': null, 'rootUri': null, 'capabilities': {
          'workspace': {'applyEdit': true},
          'textDocument': {'synchronization': {'didSave': true}, 'completion': {}}}}""");
  }

  /** Neovim 0.7: actions with resolve, progress, settings on request; no hints, no pull. */
  static InitializeParams neovim() {
    return params("""
        {'processId': null, 'rootUri': null, 'clientInfo': {'name': 'Neovim', 'version': '0.7.2'},
         'capabilities': {
          'workspace': {'applyEdit': true, 'configuration': true, 'workspaceFolders': true,
            'symbol': {'dynamicRegistration': false},
            'workspaceEdit': {'resourceOperations': ['rename', 'create', 'delete']}},
          'window': {'workDoneProgress': true, 'showDocument': {'support': false}},
          'textDocument': {
            'codeAction': {'isPreferredSupport': true, 'dataSupport': true,
              'resolveSupport': {'properties': ['edit']},
              'codeActionLiteralSupport': {'codeActionKind': {'valueSet': ['', 'quickfix', 'refactor', 'source']}}},
            'hover': {'contentFormat': ['markdown', 'plaintext']},
            'publishDiagnostics': {'relatedInformation': true},
            'rename': {'prepareSupport': true}}}}""");
  }

  /** VS Code with its language client, all that 3.18 has. */
  static InitializeParams vscode() {
    return params("""
        {'processId': null, 'rootUri': null, 'clientInfo': {'name': 'Visual Studio Code'},
         'initializationOptions': {'commands': ['kettlemark.show.open', 'kettlemark.scale.ask']},
         'capabilities': {
          'general': {'positionEncodings': ['utf-16']},
          'workspace': {'applyEdit': true, 'configuration': true, 'workspaceFolders': true,
            'workspaceEdit': {'documentChanges': true, 'snippetEditSupport': true},
            'didChangeConfiguration': {'dynamicRegistration': true},
            'didChangeWatchedFiles': {'dynamicRegistration': true},
            'symbol': {'resolveSupport': {'properties': ['location.range']}},
            'codeLens': {'refreshSupport': true}, 'inlayHint': {'refreshSupport': true},
            'diagnostics': {'refreshSupport': true},
            'fileOperations': {'didCreate': true, 'didRename': true, 'didDelete': true, 'willRename': true},
            'textDocumentContent': {'dynamicRegistration': true}},
          'window': {'workDoneProgress': true, 'showDocument': {'support': true}},
          'textDocument': {
            'diagnostic': {'relatedDocumentSupport': true, 'codeDescriptionSupport': true},
            'publishDiagnostics': {'relatedInformation': true, 'codeDescriptionSupport': true},
            'codeLens': {'resolveSupport': {'properties': ['command']}},
            'inlayHint': {'resolveSupport': {'properties': ['tooltip', 'label.location']}},
            'codeAction': {'isPreferredSupport': true, 'disabledSupport': true, 'dataSupport': true,
              'resolveSupport': {'properties': ['edit']},
              'codeActionLiteralSupport': {'codeActionKind': {'valueSet': ['']}}}}}}""");
  }

  static InitializeParams params(String json) {
    return new MessageJsonHandler(Map.of())
        .getGson()
        .fromJson(json.replace('\'', '"'), InitializeParams.class);
  }
}
