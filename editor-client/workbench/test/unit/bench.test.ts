import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Ledger, isFigures, moved, moves, type Figures } from '../../src/figures';
import { WAYS, isScaled, readNumber, targetOf, type Field } from '../../src/scaling';

function figures(formula: string, texts: Readonly<Record<string, string>>): Figures {
  return {
    formula,
    title: '',
    circumstances: '',
    figures: Object.entries(texts).map(([word, text]) => ({
      word,
      name: word,
      text,
      because: text === '' ? 'nobody says' : '',
    })),
    ingredients: [],
    bowls: [],
    moulds: [],
    frames: [],
  };
}

void test('what looks the same has not moved, what became unknown has', () => {
  const before = figures('a', { yield: '80 %', moisture: '10 %', density: '' }).figures;
  const after = figures('a', { yield: '80 %', moisture: '', density: '' }).figures;
  assert.deepEqual(moved(before, after), [
    { word: 'moisture', name: 'moisture', before: '10 %', after: 'unknown' },
  ]);
});

void test('what moved is told in a sentence that ends', () => {
  const change = (name: string) => ({ word: name, name, before: '1', after: '2' });
  assert.equal(moves([]), 'Nothing moved.');
  assert.equal(moves([change('yield')]), 'Moved: yield 1 → 2');
  assert.equal(
    moves(['a', 'b', 'c', 'd', 'e'].map(change)),
    'Moved: a 1 → 2; b 1 → 2; c 1 → 2; and 2 more',
  );
});

void test('a change is held against the text before it, or against the saved one', () => {
  const ledger = new Ledger();
  ledger.enter(figures('a', { yield: '80 %' }), false);
  assert.equal(ledger.enter(figures('a', { yield: '81 %' }), true).length, 1);
  const last = figures('a', { yield: '82 %' });
  ledger.enter(last, true);
  assert.equal(ledger.movedOf(last, 'change')[0]?.before, '81 %');
  assert.equal(ledger.movedOf(last, 'saved')[0]?.before, '80 %');
  ledger.enter(last, false);
  assert.deepEqual(ledger.movedOf(last, 'saved'), []);
  assert.deepEqual(ledger.movedOf(figures('b', { yield: '1 %' }), 'change'), []);
});

void test('a number is plain; a comma may mean two things', () => {
  assert.equal(readNumber(' 30.5 '), 30.5);
  assert.equal(readNumber('.5'), 0.5);
  for (const text of ['', '1,5', '1e3', '-1', 'x', '1.']) {
    assert.equal(readNumber(text), undefined);
  }
});

void test('every way asks for what it needs and no more', () => {
  const full = new Map<Field, string>([
    ['grams', '500'],
    ['pieces', '37'],
    ['pieceGrams', '30'],
    ['lossPercent', ''],
    ['count', '2'],
    ['name', 'frame-a'],
  ]);
  for (const { kind, fields } of WAYS) {
    const target = targetOf(kind, full);
    assert.ok(typeof target === 'object', kind);
    assert.equal(target['kind'], kind);
    for (const field of fields.filter((one) => one !== 'lossPercent')) {
      const less = new Map(full);
      less.delete(field);
      assert.equal(typeof targetOf(kind, less), 'string', `${kind} without ${field}`);
    }
  }
  assert.deepEqual(targetOf('pieces', full), { kind: 'pieces', pieces: 37, pieceGrams: 30 });
  const refused = targetOf('charge', new Map([['grams', '1,5']]));
  assert.ok(typeof refused === 'string' && refused.includes('write a number'));
});

void test('answers of another shape are not taken', () => {
  assert.ok(isFigures(figures('a', {})));
  for (const wrong of [null, undefined, 'x', [], {}, { formula: 'a' }, { figures: [] }]) {
    assert.ok(!isFigures(wrong));
    assert.ok(!isScaled(wrong));
  }
});
