// Holds what Kettlemark writes for other programs against types that say what may stand there.
//
//   node test/pages/data.mjs FOLDER     with data/NAME.TYPE.json, pages and sheets of the sites with linked data in them
//
// Linked data is held against schema.org as package schema-dts has it, whose types are generated from the
// vocabulary; SARIF against version 2.1.0 of OASIS as package @types/sarif has it; the rest against
// outputs.d.ts. TypeScript tells a property of no name that the type knows, and a value of another kind.
import { readFileSync, readdirSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const HERE = dirname(fileURLToPath(import.meta.url));
const CLIENT = resolve(HERE, '../..');
const OPTIONS = {
  strict: true,
  noEmit: true,
  skipLibCheck: true,
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.ESNext,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  types: [],
};

const FROM = {
  Sarif: ["import type { Log } from 'sarif';", 'Log'],
  Linked: ["import type { Recipe, WithContext } from 'schema-dts';", 'WithContext<Recipe>'],
};

function program(name, type, json) {
  const [line, written] = FROM[type] ?? [`import type { ${type} } from './outputs';`, type];
  return [join(HERE, `${name}.check.ts`), `${line}\nexport const data: ${written} = ${json};\n`];
}

function linked(page) {
  const found = /<script type="application\/ld\+json">([^]*?)<\/script>/.exec(page);
  return found === null ? [] : [found[1]];
}

/** What TypeScript has to say of texts that are on no disk. */
function faults(texts) {
  const host = ts.createCompilerHost(OPTIONS);
  const read = host.readFile.bind(host);
  const exists = host.fileExists.bind(host);
  host.readFile = (file) => texts.get(file) ?? read(file);
  host.fileExists = (file) => texts.has(file) || exists(file);
  host.getSourceFile = (file, language) => {
    const text = host.readFile(file);
    return text === undefined ? undefined : ts.createSourceFile(file, text, language, true);
  };
  host.getCurrentDirectory = () => CLIENT;
  return ts.getPreEmitDiagnostics(ts.createProgram([...texts.keys()], OPTIONS, host)).map((one) => {
    const where = one.file?.getLineAndCharacterOfPosition(one.start ?? 0).line ?? 0;
    const said = ts.flattenDiagnosticMessageText(one.messageText, '\n');
    return `${basename(one.file?.fileName ?? '?')}:${where}: ${said.slice(0, 600)}`;
  });
}

/** A check that cannot fail proves nothing: each kind must be told a word that it does not know. */
const WRONG = new Map([
  program('wrong-sarif', 'Sarif', '{ "version": "2.1.0", "runs": [{ "tool": { "drive": {} } }] }'),
  program(
    'wrong-linked',
    'Linked',
    '{ "@context": "https://schema.org", "@type": "Recipe", "yields": "9" }',
  ),
  program(
    'wrong-findings',
    'Findings',
    '{ "findings": [], "accepted": [], "unreadable": [], "sums": 1 }',
  ),
]);

const folder = process.argv[2];
const texts = new Map();
for (const file of readdirSync(join(folder, 'data'))) {
  const [name, type] = file.split('.');
  texts.set(...program(name, type, readFileSync(join(folder, 'data', file), 'utf8')));
}
for (const pages of ['pages', 'site-en-GB/sheets', 'site-de-DE/sheets']) {
  for (const file of readdirSync(join(folder, pages))) {
    for (const json of linked(readFileSync(join(folder, pages, file), 'utf8'))) {
      texts.set(
        ...program(`${basename(file, '.html')}-${basename(dirname(pages))}`, 'Linked', json),
      );
    }
  }
}
// All in one program: most of the work is to read the vocabularies.
const told = faults(new Map([...texts, ...WRONG]));
const isOf = (file) => (line) => line.startsWith(`${basename(file)}:`);
const missed = [...WRONG.keys()].filter((file) => !told.some(isOf(file)));
const found = [
  ...missed.map((file) => `${basename(file)}: nothing is told of it`),
  ...told.filter((line) => ![...WRONG.keys()].some((file) => isOf(file)(line))),
];
found.forEach((line) => console.error(line));
console.log(`data: ${texts.size} texts, ${found.length} faults`);
process.exitCode = found.length === 0 && texts.size > 0 ? 0 : 1;
