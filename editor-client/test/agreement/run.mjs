// Holds the colours of the syntax file against the colours by meaning, on every sample: where the server
// says what a word is, the syntax file must have put it into the same class, so that nothing changes its
// colour when the server answers.
//
//   JAR=server.jar node test/agreement/run.mjs
import { spawn } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';

const JAR = process.env.JAR ?? '../server/target/kettlemark.jar';
const FOLDERS = ['../samples/gannet-slip', '../samples/mistakes'];
const GRAMMAR = 'syntaxes/kettlemark.tmLanguage.json';

/** Fewer words than this means that somebody was not asked. */
const FEWEST = 5000;

/** Scopes of each type of meaning, as the editor is told them. */
const [{ scopes: SCOPES }] = JSON.parse(readFileSync('package.json', 'utf8')).contributes
  .semanticTokenScopes;

const NAME = 'variable.other.kettlemark';

/**
 * What only the server can tell, each with its reason: type, scope of the syntax file, and which words.
 */
const ALLOWED = [
  // A name: what it names is known only to who has read the library.
  { type: 'type', scope: NAME, reason: 'a stage, where it is taken or worked on' },
  { type: 'class', scope: NAME, reason: 'another formula, where it is used' },
  { type: 'parameter', scope: NAME, reason: 'a basis' },
  { type: 'decorator', scope: NAME, reason: 'a rule behind `accept`' },
  { type: 'enumMember', scope: NAME, reason: 'a word that one fact or clause takes' },
  { type: 'property', scope: NAME, reason: 'a fact in the midst of a line, as `holds` of a bowl' },
  // What is a verb or a keyword elsewhere, at a place where the syntax file reads names.
  { type: 'function', scope: NAME, words: /^deposit$/, reason: '`until deposit`, a step to come' },
  {
    type: 'keyword',
    scope: NAME,
    words: /^(again|sheet)$/,
    reason: '`stage NAME again`, `form sheet`',
  },
  // One colour for all names in headings, and finer colours within what the server marks as one.
  {
    type: 'variable',
    scope: 'entity.name.type.kettlemark',
    reason: 'an ingredient, where it is described',
  },
  { type: 'keyword', scope: 'keyword.other.amount.kettlemark', reason: '`all of`, `q.s.`' },
  {
    type: 'enumMember',
    scope: 'support.constant.figure.kettlemark',
    reason: 'a figure behind `expect`',
  },
  { type: 'number', scope: 'constant.numeric.date.kettlemark', reason: 'a date' },
  { type: 'number', scope: 'keyword.operator.range.kettlemark', reason: 'the dash of a range' },
  {
    type: 'operator',
    scope: 'keyword.operator.tolerance.kettlemark',
    reason: 'a sign for the word',
  },
  {
    type: 'operator',
    scope: 'keyword.operator.assignment.kettlemark',
    reason: 'a sign for the word',
  },
];

const grammar = await loadGrammar();
const server = start();
const { capabilities } = await server.ask('initialize', {
  processId: process.pid,
  rootUri: null,
  capabilities: {
    textDocument: {
      semanticTokens: {
        requests: { full: true },
        formats: ['relative'],
        tokenTypes: Object.keys(SCOPES),
        tokenModifiers: [],
      },
    },
  },
});
server.tell('initialized', {});
const types = capabilities.semanticTokensProvider.legend.tokenTypes;
const differences = new Map();
let words = 0;
for (const folder of FOLDERS) {
  for (const name of readdirSync(folder).filter((file) => file.endsWith('.kettle'))) {
    await compare(`${folder}/${name}`);
  }
}
await server.ask('shutdown', null);
server.tell('exit', null);
for (const rule of ALLOWED.filter(({ used }) => used !== true)) {
  console.error(`no sample needs the exception ${rule.type} ${rule.scope}: take it out`);
  process.exitCode = 1;
}
for (const [difference, places] of [...differences].sort((a, b) => b[1].length - a[1].length)) {
  console.error(`${difference}, ${places.length} times: ${places.slice(0, 6).join('; ')}`);
  process.exitCode = 1;
}
if (words < FEWEST) {
  console.error(`only ${words} words were compared`);
  process.exitCode = 1;
}
console.log(`agreement: ${words} words`);

async function compare(file) {
  const text = readFileSync(file, 'utf8');
  const uri = pathToFileURL(resolve(file)).href;
  server.tell('textDocument/didOpen', {
    textDocument: { uri, languageId: 'kettlemark', version: 1, text },
  });
  const { data } = await server.ask('textDocument/semanticTokens/full', { textDocument: { uri } });
  const lines = text.split(/\r?\n/);
  const coloured = colours(lines);
  let line = 0;
  let start = 0;
  for (let at = 0; at < data.length; at += 5) {
    const [down, right, length, type] = data.slice(at, at + 4);
    start = down === 0 ? start + right : right;
    line += down;
    const word = lines[line].slice(start, start + length);
    words++;
    check(file, line, word, types[type], scopesOf(coloured[line], start, start + length));
  }
  server.tell('textDocument/didClose', { textDocument: { uri } });
}

function check(file, line, word, type, scopes) {
  for (const scope of scopes.filter((one) => !SCOPES[type]?.includes(one))) {
    const rule = ALLOWED.find(
      (one) => one.type === type && one.scope === scope && (one.words?.test(word) ?? true),
    );
    if (rule !== undefined) {
      rule.used = true;
      continue;
    }
    const difference = `${type} is ${scope}`;
    const places = differences.get(difference) ?? [];
    differences.set(difference, [...places, `${word} (${file.replace(/.*\//, '')}:${line + 1})`]);
  }
}

/** What the syntax file makes of each line, one state after the other as in an editor. */
function colours(lines) {
  let state = textmate.INITIAL;
  return lines.map((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
    state = ruleStack;
    return tokens;
  });
}

function scopesOf(tokens, start, end) {
  return tokens
    .filter((token) => token.startIndex < end && token.endIndex > start)
    .map((token) => token.scopes.at(-1));
}

async function loadGrammar() {
  const wasm = createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm');
  await oniguruma.loadWASM(readFileSync(wasm));
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
      createOnigString: (string) => new oniguruma.OnigString(string),
    }),
    loadGrammar: () =>
      Promise.resolve(textmate.parseRawGrammar(readFileSync(GRAMMAR, 'utf8'), GRAMMAR)),
  });
  return registry.loadGrammar('source.kettlemark');
}

/** The server on its standard streams, as the protocol's base part describes them. */
function start() {
  const child = spawn('java', ['-XX:+UseSerialGC', '-jar', JAR, 'serve'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const waiting = new Map();
  let last = 0;
  let read = Buffer.alloc(0);
  child.stdout.on('data', (data) => {
    read = Buffer.concat([read, data]);
    for (;;) {
      const head = read.indexOf('\r\n\r\n');
      const length = Number(/Content-Length: (\d+)/.exec(read.subarray(0, Math.max(head, 0)))?.[1]);
      if (head < 0 || read.length < head + 4 + length) {
        return;
      }
      const message = JSON.parse(read.subarray(head + 4, head + 4 + length).toString());
      read = read.subarray(head + 4 + length);
      if (message.method === undefined) {
        waiting.get(message.id)(message);
        waiting.delete(message.id);
      } else if (message.id !== undefined) {
        send({ id: message.id, result: null });
      }
    }
  });
  child.once('exit', (code) => {
    if (waiting.size > 0) {
      console.error(`the server ended with ${code} and left ${waiting.size} questions`);
      process.exit(1);
    }
  });
  const send = (message) => {
    const body = JSON.stringify({ jsonrpc: '2.0', ...message });
    child.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  };
  return {
    tell: (method, params) => send({ method, params }),
    ask: (method, params) =>
      new Promise((resolve, reject) => {
        const id = ++last;
        waiting.set(id, ({ result, error }) =>
          error === undefined ? resolve(result) : reject(new Error(error.message)),
        );
        send({ id, method, params });
      }),
  };
}
