const LISTS = [
  'sections',
  'verbs',
  'facts',
  'states',
  'figures',
  'connectives',
  'amounts',
  'units',
];
const LINE = 78;

/** The lists of words within kettlemark-mode.el. */
export function emacsLists(words) {
  return LISTS.map((name) => constant(name, words[name])).join('\n');
}

function constant(name, words) {
  const lines = [''];
  for (const word of words.map((text) => `"${text}"`)) {
    const last = lines.at(-1);
    if (last.length + word.length + 8 > LINE) {
      lines.push(word);
    } else {
      lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
    }
  }
  return `(defconst kettlemark-${name}\n  '(${lines.join('\n    ')}))`;
}
