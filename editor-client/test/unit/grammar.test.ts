import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { before, describe, test } from 'node:test';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';

const LEXER = '../grammar/src/main/antlr4/dev/kettlemark/grammar/KettleLexer.g4';
const GRAMMAR = 'syntaxes/kettlemark.tmLanguage.json';

let grammar: textmate.IGrammar;

before(async () => {
  const wasm = createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm');
  await oniguruma.loadWASM(readFileSync(wasm));
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (text) => new oniguruma.OnigString(text),
    }),
    loadGrammar: () =>
      Promise.resolve(textmate.parseRawGrammar(readFileSync(GRAMMAR, 'utf8'), GRAMMAR)),
  });
  const loaded = await registry.loadGrammar('source.kettlemark');
  assert.ok(loaded);
  grammar = loaded;
});

/** The scope of the token that covers exactly this part of the line. */
function scopeOf(line: string, part: string): string | undefined {
  const start = line.indexOf(part);
  return grammar
    .tokenizeLine(line, textmate.INITIAL)
    .tokens.find((token) => token.startIndex === start && token.endIndex === start + part.length)
    ?.scopes.at(-1);
}

/** Quoted words of one rule of the language's lexer; an optional plural counts as a second word. */
function wordsOf(lexer: string, rule: string): string[] {
  const body = new RegExp(`^${rule}\\s*:([^;]*);`, 'm').exec(lexer)?.[1];
  assert.ok(body, `no rule ${rule}`);
  return [...body.matchAll(/'([^']+)'( 's'\?)?/g)].flatMap(([, word = '', plural]) =>
    plural === undefined ? [word] : [word, `${word}s`],
  );
}

describe('every word of the lexer has its colour', () => {
  const lexer = readFileSync(LEXER, 'utf8');
  const section = [
    'HOUSE',
    'INGREDIENT',
    'FORMULA',
    'VARIANT',
    'PRODUCT',
    'STAGE',
    'TRIAL',
    'SHEET',
  ];
  const amount = ['ALL', 'PART', 'SUFFICIENT'];
  const apart = [...section, ...amount, 'UNIT', 'TOLERANCE', 'EQUALS', 'COMMA'];
  const rules = [...lexer.matchAll(/^([A-Z]+)\s*:\s*'[a-z]/gm)].map(([, rule = '']) => rule);
  const joining = rules.filter((rule) => !apart.includes(rule));

  test('section words', () => {
    for (const word of section.flatMap((rule) => wordsOf(lexer, rule))) {
      assert.equal(scopeOf(`${word} name`, word), 'keyword.control.section.kettlemark', word);
    }
  });

  test('words that open an amount', () => {
    for (const word of amount.flatMap((rule) => wordsOf(lexer, rule))) {
      assert.equal(scopeOf(`  ${word} name`, word), 'keyword.other.amount.kettlemark', word);
    }
  });

  test('words that join', () => {
    assert.ok(joining.length >= 15, joining.join());
    for (const word of joining.flatMap((rule) => wordsOf(lexer, rule))) {
      assert.equal(scopeOf(`  x ${word} name`, word), 'keyword.operator.word.kettlemark', word);
    }
  });

  test('units', () => {
    const units = wordsOf(lexer, 'UNIT');
    assert.ok(units.length >= 30, units.join());
    for (const word of units) {
      assert.equal(scopeOf(`  5 ${word}`, word), 'keyword.other.unit.kettlemark', word);
    }
  });
});

describe('every word that the server knows has its colour', () => {
  // The server's own test writes this file.
  const words = JSON.parse(readFileSync('words/words.json', 'utf8')) as Readonly<
    Record<string, readonly string[]>
  >;
  const cases: Readonly<Record<string, readonly [(word: string) => string, string]>> = {
    sections: [(word) => `${word} name`, 'keyword.control.section.kettlemark'],
    verbs: [(word) => `  ${word} foam`, 'support.function.verb.kettlemark'],
    facts: [(word) => `  ${word} foam`, 'support.type.fact.kettlemark'],
    states: [(word) => `  whip for 3 min until ${word}`, 'constant.language.state.kettlemark'],
    figures: [(word) => `  expect ${word} 5-6`, 'support.constant.figure.kettlemark'],
    connectives: [(word) => `  x ${word} name`, 'keyword.operator.word.kettlemark'],
    amounts: [(word) => `  ${word} name`, 'keyword.other.amount.kettlemark'],
    units: [(word) => `  5 ${word}`, 'keyword.other.unit.kettlemark'],
  };
  // What is both a verb and a fact of another section is coloured as a verb.
  const apart = new Set(words['verbs']);

  test('there is a case for every list', () => {
    assert.deepEqual(Object.keys(cases), Object.keys(words));
  });

  for (const [list, [line, scope]] of Object.entries(cases)) {
    test(list, () => {
      for (const word of words[list] ?? []) {
        if (list !== 'facts' || !apart.has(word)) {
          assert.equal(scopeOf(line(word), word), scope, word);
        }
      }
    });
  }

  test('a state that nobody knows is a name like any other', () => {
    assert.equal(scopeOf('  whip until fluffy', 'fluffy'), 'variable.other.kettlemark');
  });
});
