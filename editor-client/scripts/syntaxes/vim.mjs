import { GENERATED, TELLS_FIGURES } from './words.mjs';

const LINE = 84;

/** The syntax file of Vim and Neovim. */
export function vim(words) {
  return `" Colours of Kettlemark where the editor takes no semantic tokens from the server.
" ${GENERATED}
if exists('b:current_syntax')
  finish
endif

syntax case match
syntax iskeyword @,48-57,_,-,192-255

" A name is taken whole, so that no word within it is coloured.
syntax match kettlemarkName /[^0-9[:space:][:punct:]–—−±]\\k*/

" What may stand at the start of a line.
${list('sections', words.sections)}
${list('verbs', words.verbs)}
${list('facts', words.facts)}
function! s:head(group, words) abort
  execute 'syntax match ' .. a:group .. ' /^\\s*\\zs\\%(' .. join(split(a:words), '\\|') .. '\\)\\k\\@!/'
endfunction
call s:head('kettlemarkSection', s:sections)
call s:head('kettlemarkVerb', s:verbs)
call s:head('kettlemarkFact', s:facts)

syntax keyword kettlemarkConnective
${wrapped(words.connectives)}
syntax keyword kettlemarkAmount ${words.amounts.filter((word) => !word.endsWith('.')).join(' ')}
syntax match kettlemarkAmount /q\\.s\\./

syntax match kettlemarkNumber /\\d\\+\\%([.,/]\\d\\+\\)*/
syntax match kettlemarkDate /\\d\\{4}-\\d\\d-\\d\\d/
" A unit stands after a number, with or without a space; the longer word comes first.
${list(
  'units',
  [...words.units]
    .sort((one, other) => other.length - one.length)
    .map((unit) => unit.replace('/', '\\/')),
)}
execute 'syntax match kettlemarkUnit /\\%(\\d\\s*\\)\\@8<=\\%('
      \\ .. join(split(s:units), '\\|') .. '\\)\\k\\@!/'

${list('states', words.states)}
execute 'syntax match kettlemarkState /\\%(\\<until\\s\\+\\)\\@16<=\\%('
      \\ .. join(split(s:states), '\\|') .. '\\)\\k\\@!/'

${list('figures', words.figures)}
execute 'syntax match kettlemarkFigure /\\%(^\\s*\\%(${TELLS_FIGURES.join('\\|')}\\)\\s.*\\)\\@80<=\\<\\%('
      \\ .. join(split(s:figures), '\\|') .. '\\)\\k\\@!/'

syntax match kettlemarkText /"[^"]*"\\?/
syntax match kettlemarkComment /#.*$/

highlight default link kettlemarkSection Keyword
highlight default link kettlemarkVerb Function
highlight default link kettlemarkFact Type
highlight default link kettlemarkConnective Operator
highlight default link kettlemarkAmount Special
highlight default link kettlemarkNumber Number
highlight default link kettlemarkDate Constant
highlight default link kettlemarkUnit StorageClass
highlight default link kettlemarkState Constant
highlight default link kettlemarkFigure Identifier
highlight default link kettlemarkText String
highlight default link kettlemarkComment Comment

let b:current_syntax = 'kettlemark'
`;
}

function list(name, words) {
  const lines = filled(words);
  const text = lines.map((line, index) =>
    index === lines.length - 1 ? `'${line}'` : `'${line} ' ..`,
  );
  return `let s:${name} =\n      \\ ${text.join('\n      \\ ')}`;
}

function wrapped(words) {
  return filled(words)
    .map((line) => `      \\ ${line}`)
    .join('\n');
}

function filled(words) {
  const lines = [];
  for (const word of words) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + word.length < LINE) {
      lines[lines.length - 1] = `${last} ${word}`;
    } else {
      lines.push(word);
    }
  }
  return lines;
}
