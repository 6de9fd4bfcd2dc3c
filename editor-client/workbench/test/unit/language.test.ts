import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Text } from '@codemirror/state';
import { changesOf, filesOf, offsetOf, positionOf } from '../../src/edits';
import { grouped } from '../../src/menu';
import { tally } from '../../src/findings';
import { tokensOf } from '../../src/tokens';

const DOC = Text.of(['formula x', '  60 °C', '']);

void test('a position beyond its line or text is taken back to it, as LSP 3.17 asks', () => {
  assert.equal(offsetOf(DOC, { line: 0, character: 8 }), 8);
  assert.equal(offsetOf(DOC, { line: 0, character: 99 }), 9);
  assert.equal(offsetOf(DOC, { line: 9, character: 0 }), DOC.length);
  for (let at = 0; at <= DOC.length; at++) {
    assert.equal(offsetOf(DOC, positionOf(DOC, at)), at);
  }
});

/** The example of LSP 3.17, "Semantic Tokens", in its own numbers: lines 2, 2 and 5. */
void test('tokens are read as the standard writes them', () => {
  const legend = ['property', 'type', 'class'];
  const doc = Text.of(['', '', '     abc  defg', '', '', '  1234567']);
  const data = [2, 5, 3, 0, 3, 0, 5, 4, 1, 0, 3, 2, 7, 2, 0];
  assert.deepEqual(
    tokensOf(doc, data, legend).map(({ from, to, type }) => [doc.sliceString(from, to), type]),
    [
      ['abc', 'property'],
      ['defg', 'type'],
      ['1234567', 'class'],
    ],
  );
});

void test('tokens of a text that has become shorter are cut', () => {
  assert.deepEqual(tokensOf(Text.of(['ab']), [0, 1, 5, 0, 0, 3, 1, 1, 0, 0], ['number']), [
    { from: 1, to: 2, type: 'number' },
  ]);
});

void test('edits are read in both of their forms, and files are neither made nor deleted', () => {
  const edit = {
    range: { start: { line: 1, character: 2 }, end: { line: 1, character: 4 } },
    newText: '70',
  };
  assert.deepEqual(changesOf(DOC, [edit]), [{ from: 12, to: 14, insert: '70' }]);
  assert.deepEqual(filesOf({ changes: { 'file:///a': [edit] } }), [
    { uri: 'file:///a', version: undefined, edits: [edit] },
  ]);
  assert.deepEqual(
    filesOf({
      documentChanges: [{ textDocument: { uri: 'file:///a', version: 3 }, edits: [edit] }],
    }),
    [{ uri: 'file:///a', version: 3, edits: [edit] }],
  );
  assert.equal(filesOf({ documentChanges: [{ kind: 'delete', uri: 'file:///a' }] }), undefined);
});

void test('fixes come first, the preferred one before the others', () => {
  const groups = grouped([
    { title: 'scale', kind: 'refactor.rewrite' },
    { title: 'accept', kind: 'quickfix' },
    { title: 'mend', kind: 'quickfix', isPreferred: true },
    { title: 'ask', command: 'x' },
  ]);
  assert.deepEqual(
    groups.map(({ title, actions }) => [title, actions.map((action) => action.title)]),
    [
      ['Fixes', ['mend', 'accept']],
      ['Write otherwise', ['scale']],
      ['More', ['ask']],
    ],
  );
});

void test('a tally leaves out what there is none of', () => {
  const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };
  const of = (severity: 1 | 2 | 3 | 4) => ({ range, severity, message: 'x' });
  assert.equal(tally([]), 'no findings');
  assert.equal(tally([of(1), of(2), of(2), of(4)]), '1 error, 2 warnings, 1 hint');
});
