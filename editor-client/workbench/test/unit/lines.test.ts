import assert from 'node:assert/strict';
import { test } from 'node:test';
import { differences, lined, replacement, withEnds } from '../../src/lines';

void test('line ends come back as they were', () => {
  for (const raw of ['a\nb\n', 'a\r\nb\r\n', '', 'a']) {
    const { text, end } = lined(raw);
    assert.ok(!text.includes('\r'));
    assert.equal(withEnds(text, end), raw);
  }
  assert.deepEqual(lined('a\r\nb\r\nc\n'), { text: 'a\nb\nc\n', end: '\r\n' });
});

void test('a replacement makes one text of the other', () => {
  const texts = ['', 'a', 'aa', 'abc', 'abxbc', 'xabc', 'abcx', 'aba', 'ababa'];
  for (const from of texts) {
    for (const to of texts) {
      const change = replacement(from, to);
      const made =
        change === undefined
          ? from
          : from.slice(0, change.from) + change.insert + from.slice(change.to);
      assert.equal(made, to);
    }
  }
  assert.deepEqual(replacement('batch 100 g', 'batch 150 g'), { from: 7, to: 8, insert: '5' });
});

/** Each side can be read off the differences, whatever the two are. */
function holds(mine: string, theirs: string): void {
  const pieces = differences(mine, theirs);
  const side = (other: string): string =>
    pieces
      .filter(({ kind }) => kind !== other)
      .flatMap(({ lines }) => lines)
      .join('\n');
  assert.equal(side('theirs'), mine);
  assert.equal(side('mine'), theirs);
}

void test('differences hold both texts in full', () => {
  let seed = 7;
  const random = (most: number): number => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return seed % most;
  };
  const some = (): string =>
    Array.from({ length: random(12) }, () => ['sugar', 'water', 'salt'][random(3)]).join('\n');
  for (let i = 0; i < 500; i++) {
    holds(some(), some());
  }
  const long = Array.from({ length: 5000 }, (_, i) => String(i));
  holds(long.join('\n'), [...long].reverse().join('\n'));
});

void test('only what differs is marked', () => {
  assert.deepEqual(differences('a\nb\nc', 'a\nx\nc'), [
    { kind: 'same', lines: ['a'] },
    { kind: 'mine', lines: ['b'] },
    { kind: 'theirs', lines: ['x'] },
    { kind: 'same', lines: ['c'] },
  ]);
});
