/** Shared by all that write a syntax file. */

/** An alternation in which no word hides a longer one. */
export function oneOf(words, escape = escapeRegex) {
  return [...words]
    .sort((one, other) => other.length - one.length || (one < other ? -1 : 1))
    .map(escape)
    .join('|');
}

export function escapeRegex(word) {
  return word.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
}

export function escapeXml(text) {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

/** Units that are read as words; the percent sign and what begins with it end on no letter. */
export function wordUnits(words) {
  return words.units.filter((unit) => !unit.startsWith('%'));
}

/** Facts whose objects may be figures. */
export const TELLS_FIGURES = ['expect', 'measured', 'withdraw'];

export const GENERATED = 'Written by scripts/syntaxes.mjs from words/words.json.';
