// Writes the syntax files of all editors from words/words.json, which the server's own tests write.
//
//   node scripts/syntaxes.mjs           writes them anew
//   node scripts/syntaxes.mjs --check   ends with 1 where one says something else
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { emacsLists } from './syntaxes/emacs.mjs';
import { kate } from './syntaxes/kate.mjs';
import { sublime } from './syntaxes/sublime.mjs';
import { textMate } from './syntaxes/textmate.mjs';
import { vim } from './syntaxes/vim.mjs';

const words = JSON.parse(readFileSync('words/words.json', 'utf8'));

const FILES = {
  'syntaxes/kettlemark.tmLanguage.json': textMate(words),
  'neovim/syntax/kettlemark.vim': vim(words),
  'vim/syntax/kettlemark.vim': vim(words),
  'kate/kettlemark.xml': kate(words),
  'sublime/kettlemark.sublime-syntax': sublime(words),
  'emacs/kettlemark-mode.el': between(
    read('emacs/kettlemark-mode.el'),
    /(;; Words of the language.*\n)[^]*?(\n;; End of the words\.)/,
    emacsLists(words),
  ),
};

const stale = Object.entries(FILES).filter(([file, text]) => read(file) !== text);
if (process.argv.includes('--check')) {
  for (const [file] of stale) {
    console.error(`${file} is out of date: run npm run syntaxes`);
  }
  process.exit(stale.length === 0 ? 0 : 1);
}
for (const [file, text] of stale) {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
  console.log(file);
}

function read(file) {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}

/** The text with something else between two of its lines. */
function between(text, marks, inner) {
  if (text === undefined || !marks.test(text)) {
    throw new Error(`there is no place for ${marks}`);
  }
  return text.replace(marks, (_all, head, foot) => head + inner + foot);
}
