import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import type { ScaleTarget } from '../../src/protocol';
import { askTarget, readNumber, type Asker } from '../../src/scalePrompt';

const BACK = undefined;

/** Answers as a writer would: first the kind, then one text a question; refuses as the editor does. */
class Writer implements Asker {
  readonly problems: string[] = [];
  private next = 0;

  constructor(
    private readonly kind: ScaleTarget['kind'] | undefined,
    private readonly answers: readonly (string | undefined)[],
  ) {}

  choose: Asker['choose'] = (_title, choices) =>
    Promise.resolve(choices.find(({ value }) => value === this.kind)?.value);

  enter: Asker['enter'] = (_title, _prompt, problem) => {
    assert.ok(this.next < this.answers.length, 'asked once too often');
    const text = this.answers[this.next];
    this.next += 1;
    const refusal = text === undefined ? undefined : problem(text);
    if (refusal !== undefined) {
      this.problems.push(refusal);
      return Promise.resolve(BACK);
    }
    return Promise.resolve(text);
  };

  get unasked(): number {
    return this.answers.length - this.next;
  }
}

describe('the answers become the target', () => {
  const cases: readonly (readonly [readonly string[], ScaleTarget])[] = [
    [['3000'], { kind: 'charge', grams: 3000 }],
    [['1618.75'], { kind: 'finished', grams: 1618.75 }],
    [['37', '42', '4'], { kind: 'pieces', pieces: 37, pieceGrams: 42, lossPercent: 4 }],
    [['37', '42', '0'], { kind: 'pieces', pieces: 37, pieceGrams: 42, lossPercent: 0 }],
    [['37', '42', ''], { kind: 'pieces', pieces: 37, pieceGrams: 42 }],
    [['2', 'half-sphere'], { kind: 'moulds', count: 2, name: 'half-sphere' }],
    [['2', ' '], { kind: 'moulds', count: 2 }],
    [['1', 'slab'], { kind: 'frames', count: 1, name: 'slab' }],
    [['planetary'], { kind: 'bowl', name: 'planetary' }],
    [[''], { kind: 'bowl' }],
    [[' honey ', '.5'], { kind: 'ingredient', name: 'honey', grams: 0.5 }],
  ];
  for (const [answers, target] of cases) {
    test(`${target.kind}: ${answers.join(' / ')}`, async () => {
      const writer = new Writer(target.kind, answers);
      assert.deepEqual(await askTarget(writer), target);
      assert.deepEqual(writer.problems, []);
      assert.equal(writer.unasked, 0);
    });
  }
});

describe('turning back at any question gives up', () => {
  const cases: readonly (readonly [
    ScaleTarget['kind'] | undefined,
    readonly (string | undefined)[],
  ])[] = [
    [undefined, []],
    ['charge', [BACK]],
    ['finished', [BACK]],
    ['pieces', [BACK]],
    ['pieces', ['37', BACK]],
    ['pieces', ['37', '42', BACK]],
    ['moulds', [BACK]],
    ['moulds', ['2', BACK]],
    ['frames', ['2', BACK]],
    ['bowl', [BACK]],
    ['ingredient', [BACK]],
    ['ingredient', ['honey', BACK]],
  ];
  for (const [kind, answers] of cases) {
    test(`${kind ?? 'no kind'}, question ${answers.length.toString()}`, async () => {
      const writer = new Writer(kind, answers);
      assert.equal(await askTarget(writer), undefined);
      assert.equal(writer.unasked, 0);
    });
  }
});

describe('an answer that will not do is refused with a reason', () => {
  const cases: readonly (readonly [ScaleTarget['kind'], readonly string[], RegExp])[] = [
    ['charge', ['1,200'], /grams as a number above 0/],
    ['charge', ['0'], /grams as a number above 0/],
    ['charge', ['-5'], /grams as a number above 0/],
    ['charge', ['1e9'], /grams as a number above 0/],
    ['finished', ['a lot'], /grams as a number above 0/],
    ['pieces', ['1.5'], /whole number above 0/],
    ['pieces', ['37', ''], /grams as a number above 0/],
    ['pieces', ['37', '42', '100'], /percent as a number from 0 to below 100/],
    ['moulds', ['0'], /whole number above 0/],
    ['ingredient', [' '], /the name that the formula uses/],
  ];
  for (const [kind, answers, reason] of cases) {
    test(`${kind}: ${answers.join(' / ')}`, async () => {
      const writer = new Writer(kind, answers);
      assert.equal(await askTarget(writer), undefined);
      assert.match(writer.problems.join(), reason);
    });
  }
});

test('numbers have a point and no thousands mark', () => {
  assert.equal(readNumber(' 1618.75 '), 1618.75);
  assert.equal(readNumber('.5'), 0.5);
  for (const text of ['', '.', '1,2', '1.2.3', '1 200', '+5', '0x10', 'Infinity']) {
    assert.equal(readNumber(text), undefined, text);
  }
});
