import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Drafts, type Store } from '../../src/drafts';

class Shelf implements Store {
  readonly kept = new Map<string, string>();
  full = false;

  get length(): number {
    return this.kept.size;
  }

  key(index: number): string | null {
    return [...this.kept.keys()][index] ?? null;
  }

  getItem(key: string): string | null {
    return this.kept.get(key) ?? null;
  }

  setItem(key: string, value: string): void {
    if (this.full) {
      throw new Error('no room');
    }
    this.kept.set(key, value);
  }

  removeItem(key: string): void {
    this.kept.delete(key);
  }
}

const DRAFT = { text: 'mine', tag: 'a', at: 1 };
const NOBODY = new Set<string>();

void test('a window finds its own draft again', () => {
  const shelf = new Shelf();
  new Drafts(shelf, 'one').keep('trials/a.kettle', DRAFT);
  assert.deepEqual(new Drafts(shelf, 'one').take('trials/a.kettle', NOBODY), DRAFT);
  assert.equal(new Drafts(shelf, 'one').take('a.kettle', NOBODY), undefined);
});

void test('a window leaves the draft of one that lives alone', () => {
  const shelf = new Shelf();
  new Drafts(shelf, 'one').keep('a.kettle', DRAFT);
  const two = new Drafts(shelf, 'two');
  assert.equal(two.take('a.kettle', new Set(['one', 'two'])), undefined);
  assert.deepEqual(two.paths(new Set(['one', 'two'])), []);
  assert.deepEqual(two.paths(NOBODY), ['a.kettle']);
});

void test('a window takes over the latest draft of those that are gone, and loses none', () => {
  const shelf = new Shelf();
  new Drafts(shelf, 'old').keep('a.kettle', DRAFT);
  new Drafts(shelf, 'newer').keep('a.kettle', { text: 'later', tag: 'a', at: 2 });
  const own = new Drafts(shelf, 'own');
  assert.equal(own.take('a.kettle', NOBODY)?.text, 'later');
  own.forget('a.kettle');
  assert.equal(own.take('a.kettle', NOBODY)?.text, 'mine');
});

void test('a full browser is told, and what is not a draft is passed over', () => {
  const shelf = new Shelf();
  shelf.kept.set('kettlemark-draft/gone/a.kettle', '{"text":1}');
  shelf.kept.set('kettlemark-draft/other/a.kettle', 'no JSON');
  const drafts = new Drafts(shelf, 'one');
  assert.equal(drafts.take('a.kettle', NOBODY), undefined);
  shelf.full = true;
  assert.equal(drafts.keep('a.kettle', DRAFT), false);
});
