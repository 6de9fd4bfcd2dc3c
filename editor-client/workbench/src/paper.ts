/** The editor: one sheet of paper on which one text at a time lies. */

import { autocompletion, closeBrackets, completionKeymap } from '@codemirror/autocomplete';
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { bracketMatching, indentUnit } from '@codemirror/language';
import { lintKeymap } from '@codemirror/lint';
import {
  findReferencesKeymap,
  formatKeymap,
  hoverTooltips,
  jumpToDefinitionKeymap,
  serverCompletion,
  signatureHelp,
  type LSPClient,
} from '@codemirror/lsp-client';
import { highlightSelectionMatches, search, searchKeymap } from '@codemirror/search';
import { EditorState, type Extension } from '@codemirror/state';
import {
  EditorView,
  drawSelection,
  highlightActiveLine,
  highlightActiveLineGutter,
  highlightSpecialChars,
  keymap,
  lineNumbers,
  type KeyBinding,
} from '@codemirror/view';
import { LANGUAGE } from './buffers';
import { marks } from './marks';

export function stateOf(
  client: LSPClient,
  uri: string,
  path: string,
  text: string,
  own: Extension,
  keys: readonly KeyBinding[],
  nonce: string,
): EditorState {
  return EditorState.create({
    doc: text,
    extensions: [
      keymap.of([
        ...keys,
        ...formatKeymap,
        ...jumpToDefinitionKeymap,
        ...findReferencesKeymap,
        ...completionKeymap,
        ...lintKeymap,
        ...searchKeymap,
        ...historyKeymap,
        ...defaultKeymap,
      ]),
      EditorView.cspNonce.of(nonce),
      EditorView.contentAttributes.of({
        'aria-label': `Text of ${path}`,
        spellcheck: 'false',
        autocorrect: 'off',
        autocapitalize: 'off',
      }),
      indentUnit.of('  '),
      EditorState.tabSize.of(2),
      lineNumbers(),
      highlightActiveLineGutter(),
      highlightActiveLine(),
      highlightSpecialChars(),
      highlightSelectionMatches(),
      history(),
      drawSelection(),
      bracketMatching(),
      closeBrackets(),
      search({ top: true }),
      autocompletion({ activateOnTyping: true }),
      serverCompletion({ override: true }),
      hoverTooltips(),
      signatureHelp(),
      marks(),
      own,
      client.plugin(uri, LANGUAGE),
    ],
  });
}
