import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { describe, test } from 'node:test';
import { t } from '../../src/l10n';

type Texts = Readonly<Record<string, string>>;

const ENGLISH = read('l10n/bundle.l10n.json');
const MANIFEST = read('package.nls.json');
const LANGUAGES = ['de'];

function read(file: string): Texts {
  return JSON.parse(readFileSync(file, 'utf8')) as Texts;
}

/** Every text that the code asks a translation for. */
function textsOfCode(): string[] {
  const code = readdirSync('src').map((name) => readFileSync(`src/${name}`, 'utf8'));
  const calls = code.flatMap((text) => [
    ...text.matchAll(/\bt\(\s*(?:'((?:[^'\\]|\\.)*)'|"((?:[^"\\]|\\.)*)")/g),
  ]);
  return [...new Set(calls.map(([, single, double]) => single ?? double ?? ''))];
}

function places(text: string): string[] {
  return [...text.matchAll(/\{\d+\}/g)].map(([place]) => place).sort();
}

test('the bundle holds the texts of the code and no others', () => {
  assert.deepEqual(Object.keys(ENGLISH).sort(), textsOfCode().sort());
});

test('package.json asks for the texts of package.nls.json and no others', () => {
  const asked = [...readFileSync('package.json', 'utf8').matchAll(/"%([^%"]+)%"/g)];
  assert.deepEqual([...new Set(asked.map(([, key]) => key))].sort(), Object.keys(MANIFEST).sort());
});

for (const language of LANGUAGES) {
  describe(language, () => {
    for (const [english, file] of [
      [ENGLISH, `l10n/bundle.l10n.${language}.json`],
      [MANIFEST, `package.nls.${language}.json`],
    ] as const) {
      test(`${file} says all of it, with the same places for values`, () => {
        const told = read(file);
        assert.deepEqual(Object.keys(told).sort(), Object.keys(english).sort());
        for (const [key, text] of Object.entries(told)) {
          assert.notEqual(text.trim(), '', key);
          assert.deepEqual(places(text), places(english[key] ?? ''), key);
        }
      });

      test(`${file} leads to the same commands`, () => {
        const commands = (text: string): string[] =>
          [...text.matchAll(/\(command:([^)]+)\)/g)].map(([, command = '']) => command);
        for (const [key, text] of Object.entries(read(file))) {
          assert.deepEqual(commands(text), commands(english[key] ?? ''), key);
        }
      });
    }
  });
}

test('values take their places', () => {
  assert.equal(t('{1} before {0}', 'a', 'b'), 'b before a');
  assert.equal(t('nothing for {3}'), 'nothing for {3}');
});
