// Writes the table of features and editors into README.md from what the editors' tests have verified.
//
//   node scripts/features.mjs           writes it anew
//   node scripts/features.mjs --check   ends with 1 where the table says something else
import { existsSync, readFileSync, writeFileSync } from 'node:fs';

const PAGE = 'README.md';
const MARKS = /(<!-- features -->\n)[^]*?(<!-- end of features -->)/;
const OK = ': ok';

const EDITORS = [
  ['VS Code', 'vscode'],
  ['Neovim', 'neovim'],
  ['Emacs', 'emacs'],
  ['Vim', 'vim'],
  ['Kate', 'kate'],
  ['Workbench', 'workbench'],
];

/** In the order of the table; a test that verifies anything else is told to name it here. */
const FEATURES = [
  'findings',
  'fix',
  'hover',
  'completion',
  'definition',
  'references',
  'outline',
  'folding',
  'inlay hints',
  'totals above formulas',
  'scaling',
  'table',
  'preview',
  'preview follows text and cursor',
  'preview leads to the line',
  'preview says that the server is away',
  'preview outlives a reload',
  'renaming across files',
  'formatting',
  'colours',
  'colours by meaning',
  'the checker fills the list of problems',
  'untitled text',
  'new text, once it is saved',
  'a file of its own',
  'read-only folder',
  'two windows on one library',
  'figures with what has moved',
  'sheet and flow',
  'a printed sheet is dark on white',
  'two formulas side by side',
  'weighing list of 37 pieces',
  'a conflict is shown and nothing is lost',
  'changes on the disk are shown at once',
  'unsaved text outlives a reload',
  'unsaved text outlives the end of the program',
  'Ctrl-C ends it, and no file is half written',
  'a text of ten thousand lines',
  'keyboard alone',
  'axe-core has nothing against it',
  'a tablet of 800 by 1100',
  'no Java is named',
  'old Java is named',
  'a new Java is taken without a restart',
  'a server that crashes is started again',
  'a server that keeps crashing is left alone',
  'the server ends with the editor',
  'same files as in every other editor',
  'no finding is left',
];

const verified = EDITORS.map(([, name]) => read(name));
const unknown = verified.flat().filter((feature) => !FEATURES.includes(feature));
if (unknown.length > 0) {
  console.error(`not in the table's list: ${unknown.join(', ')}`);
  process.exit(1);
}
const page = readFileSync(PAGE, 'utf8');
const fresh = page.replace(MARKS, (_all, head, foot) => `${head}\n${table()}\n${foot}`);
if (!process.argv.includes('--check')) {
  writeFileSync(PAGE, fresh);
} else if (page !== fresh) {
  console.error(`the table of ${PAGE} says something else than the tests:\n\n${table()}`);
  console.error('look at the difference and, if it is right, run: node scripts/features.mjs');
  process.exit(1);
}

function read(name) {
  const file = `target/editors/${name}.txt`;
  if (!existsSync(file)) {
    console.error(`${file} is missing: run test/${name}/run.sh`);
    process.exit(1);
  }
  return readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line.endsWith(OK))
    .map((line) => line.slice(0, -OK.length));
}

/** Padded as the project's own formatter of Markdown pads it. */
function table() {
  const seen = FEATURES.filter((feature) => verified.some((list) => list.includes(feature)));
  const rows = [
    ['Feature', ...EDITORS.map(([title]) => title)],
    ...seen.map((feature) => [
      feature,
      ...verified.map((list) => (list.includes(feature) ? 'yes' : '')),
    ]),
  ];
  const widths = rows[0].map((_, column) => Math.max(...rows.map((row) => row[column].length)));
  const line = (cells, fill = ' ') =>
    `| ${cells.map((cell, column) => cell.padEnd(widths[column], fill)).join(' | ')} |`;
  const [head, ...body] = rows;
  return [
    line(head),
    line(
      head.map(() => '-'),
      '-',
    ),
    ...body.map((row) => line(row)),
    '',
  ].join('\n');
}
