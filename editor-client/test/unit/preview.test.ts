import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { READERS, VIEWS, isFromPage, isKept } from '../../src/previewMessages';
import { policy, previewPage } from '../../src/previewPage';
import { isPreviewAnswer } from '../../src/protocol';

const NONCE = '0123456789abcdef';
const PAGE = previewPage(NONCE, 'const a = 1;', 'de');

describe('the page', () => {
  // Content Security Policy Level 3, section 6: what default-src does not allow is not fetched.
  test('lets nothing in but what carries its number', () => {
    assert.ok(PAGE.includes(`content="${policy(NONCE)}"`));
    assert.match(
      policy(NONCE),
      /^default-src 'none'; style-src 'nonce-\w+'; script-src 'nonce-\w+'$/,
    );
    const opened = [...PAGE.matchAll(/<(script|style)\b[^>]*>/g)].map(([tag]) => tag);
    assert.equal(opened.length, 3);
    for (const tag of opened) {
      assert.ok(tag.includes(`nonce="${NONCE}"`), tag);
    }
    assert.ok(!/\s(?:src|href|on\w+|style)=/.test(PAGE));
  });

  // HTML, section 4.12.1.3: neither an end of the element nor the start of a comment may stand in a script.
  test('is not ended by what stands in its program', () => {
    const page = previewPage(NONCE, 'const a = "</script><!--";', 'de');
    assert.equal(page.match(/<\/script>/g)?.length, 1);
    assert.ok(!page.includes('<!--'));
  });

  test('has a labelled button for each view and reader, and says aloud what it shows', () => {
    for (const value of [...VIEWS, ...READERS]) {
      const button = new RegExp(
        `<label><input type="radio" name="\\w+" value="${value}"><span>[^<]+`,
      );
      assert.match(PAGE, button);
    }
    assert.equal(PAGE.match(/<fieldset/g)?.length, PAGE.match(/<legend>[^<]+<\/legend>/g)?.length);
    assert.match(PAGE, /<p id="status" role="status" aria-live="polite">/);
    assert.match(PAGE, /<html lang="de">/);
  });
});

describe('what comes from elsewhere is looked at', () => {
  test('messages of the page', () => {
    assert.ok(isFromPage({ kind: 'ready' }));
    assert.ok(isFromPage({ kind: 'choose', choice: { view: 'flow' } }));
    assert.ok(isFromPage({ kind: 'go', to: { uri: 'file:///a', line: 3 } }));
    for (const wrong of [
      undefined,
      'ready',
      { kind: 'choose', choice: { view: 'smell' } },
      { kind: 'choose', choice: { view: 'sheet', reader: 'cat' } },
      { kind: 'choose', choice: { view: 'sheet', locale: '<' } },
      { kind: 'go', to: { uri: 'file:///a', line: 0.5 } },
      { kind: 'go', to: 'file:///a' },
    ]) {
      assert.ok(!isFromPage(wrong), JSON.stringify(wrong));
    }
  });

  test('what a window kept', () => {
    assert.ok(isKept({ uri: 'file:///a', name: 'b', choice: { view: 'time', reader: 'bench' } }));
    assert.ok(!isKept({ uri: 'file:///a', choice: { view: 'time' } }));
    assert.ok(!isKept(undefined));
  });

  test('answers of the server', () => {
    const answer = {
      name: 'a',
      title: 'A',
      view: 'sheet',
      html: '',
      style: '',
      anchors: [{ line: 1, id: 'b' }],
    };
    assert.ok(isPreviewAnswer(answer));
    assert.ok(isPreviewAnswer({ ...answer, version: 3, first: 1, last: 4 }));
    assert.ok(!isPreviewAnswer({ ...answer, html: undefined }));
    assert.ok(!isPreviewAnswer({ ...answer, anchors: [{ line: '1', id: 'b' }] }));
  });
});
