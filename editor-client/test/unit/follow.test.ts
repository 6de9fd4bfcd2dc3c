import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { Latest, isWithin, lineOf, toldAt, type Anchor } from '../../src/follow';

const ASKED = 'file:///syrup.kettle';
const OTHER = 'file:///caramel.kettle';
const ANCHORS: readonly Anchor[] = [
  { line: 6, id: 'stage-weighed' },
  { line: 6, id: 'stage-told' },
  { line: 7, id: 'sugar' },
  { line: 9, id: 'boil' },
  { line: 3, id: 'caramel', uri: OTHER },
];

describe('the elements of a line', () => {
  const at = (line: number, uri = ASKED, first = 0): readonly string[] =>
    toldAt(ANCHORS, ASKED, { uri, line }, first);

  test('are those that tell it', () => {
    assert.deepEqual(at(7), ['sugar']);
    assert.deepEqual(at(6), ['stage-weighed', 'stage-told']);
  });

  test('are those of the next line above it, where none tells it', () => {
    assert.deepEqual(at(8), ['sugar']);
    assert.deepEqual(at(40), ['boil']);
  });

  test('are none above all lines, or in a text that nothing tells', () => {
    assert.deepEqual(at(2), []);
    assert.deepEqual(at(7, 'file:///nothing.kettle'), []);
  });

  test('are not those of another section further up', () => {
    assert.deepEqual(at(12, ASKED, 11), []);
  });

  test('belong to their own text', () => {
    assert.deepEqual(at(7, OTHER), ['caramel']);
  });
});

test('an element leads back to its line and text', () => {
  assert.deepEqual(lineOf(ANCHORS, ASKED, 'boil'), { uri: ASKED, line: 9 });
  assert.deepEqual(lineOf(ANCHORS, ASKED, 'caramel'), { uri: OTHER, line: 3 });
  assert.equal(lineOf(ANCHORS, ASKED, 'nothing'), undefined);
});

test('a line is within a section from the first line to the last', () => {
  assert.ok(isWithin(6, 6, 9) && isWithin(9, 6, 9));
  assert.ok(!isWithin(5, 6, 9) && !isWithin(10, 6, 9));
  assert.ok(!isWithin(6, undefined, undefined));
});

test('only the answer to the last question counts', () => {
  const latest = new Latest();
  const first = latest.begin();
  assert.ok(first());
  const second = latest.begin();
  assert.ok(!first() && second());
  latest.forget();
  assert.ok(!second());
});
