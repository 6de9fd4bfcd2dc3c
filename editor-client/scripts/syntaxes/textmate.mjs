import { GENERATED, TELLS_FIGURES, oneOf, wordUnits } from './words.mjs';

const CHARACTER = '[\\p{L}\\p{M}\\p{Nd}_]';
const NAME = `\\p{L}${CHARACTER}*(?:[-'’]${CHARACTER}+)*`;
const WORD_END = `(?!${CHARACTER}|[-'’]${CHARACTER})`;
const FIGURES = '(?:\\d+(?:[.,]\\d+)*|[.,]\\d+)';

/** The grammar of VS Code and of every other editor that reads TextMate grammars. */
export function textMate(words) {
  const grammar = {
    $comment: GENERATED,
    name: 'Kettlemark',
    scopeName: 'source.kettlemark',
    fileTypes: ['kettle'],
    patterns: ['comment', 'string', 'section', 'verb', 'told', 'fact', 'state', 'rest'].map(
      include,
    ),
    repository: {
      rest: {
        patterns: ['amount', 'connective', 'date', 'number', 'unit', 'operator', 'name'].map(
          include,
        ),
      },
      comment: { name: scope('comment.line.number-sign'), match: '#.*$' },
      string: { name: scope('string.quoted.double'), match: '"[^"]*"?' },
      section: {
        comment:
          'A section word counts at the start of a line only; the name after it is what the section defines.',
        match:
          `^\\s*((?:${oneOf(words.sections)}))${WORD_END}` +
          `(?:\\s+(?!(?:again|of|in|on)${WORD_END})(${NAME}))?`,
        captures: {
          1: { name: scope('keyword.control.section') },
          2: { name: scope('entity.name.type') },
        },
      },
      verb: head(words.verbs, 'support.function.verb'),
      told: {
        comment: 'Lines that speak of figures.',
        begin: `^\\s*(${oneOf(TELLS_FIGURES)})${WORD_END}`,
        beginCaptures: { 1: { name: scope('support.type.fact') } },
        end: '$',
        patterns: [
          include('comment'),
          include('string'),
          {
            name: scope('support.constant.figure'),
            match: `(?:${oneOf(words.figures)})${WORD_END}`,
          },
          include('rest'),
        ],
      },
      fact: head(words.facts, 'support.type.fact'),
      state: {
        match: `(?<!${CHARACTER})(until)${WORD_END}` + `\\s+(${oneOf(words.states)})${WORD_END}`,
        captures: {
          1: { name: scope('keyword.operator.word') },
          2: { name: scope('constant.language.state') },
        },
      },
      amount: {
        name: scope('keyword.other.amount'),
        match: `(?:${oneOf(words.amounts.filter(isAbbreviation))}|(?:${oneOf(
          words.amounts.filter((word) => !isAbbreviation(word)),
        )})${WORD_END})`,
      },
      connective: {
        name: scope('keyword.operator.word'),
        match: `(?:${oneOf(words.connectives)})${WORD_END}`,
      },
      date: { name: scope('constant.numeric.date'), match: '\\d{4}-\\d{2}-\\d{2}' },
      number: {
        patterns: [
          {
            comment: 'Shares are whole numbers: part 1/3.',
            name: scope('constant.numeric.fraction'),
            match: '\\d+/\\d+',
          },
          {
            name: scope('constant.numeric'),
            match: `(?<![\\d%\\p{L}])[-−]?${FIGURES}|${FIGURES}`,
          },
        ],
      },
      unit: {
        patterns: [
          { name: scope('keyword.other.unit'), match: `%RH${WORD_END}|%` },
          { name: scope('keyword.other.unit'), match: `(?:${oneOf(wordUnits(words))})${WORD_END}` },
        ],
      },
      operator: {
        patterns: [
          { name: scope('keyword.operator.tolerance'), match: '±|\\+/?-' },
          { name: scope('keyword.operator.range'), match: '[-–—−]' },
          { name: scope('keyword.operator.assignment'), match: '=' },
          { name: scope('punctuation.separator.comma'), match: ',' },
        ],
      },
      name: { name: scope('variable.other'), match: NAME },
    },
  };
  return `${JSON.stringify(grammar, undefined, 2)}\n`;
}

/** A word that opens a line. */
function head(words, kind) {
  return {
    match: `^\\s*((?:${oneOf(words)}))${WORD_END}`,
    captures: { 1: { name: scope(kind) } },
  };
}

function isAbbreviation(word) {
  return word.endsWith('.');
}

function scope(kind) {
  return `${kind}.kettlemark`;
}

function include(name) {
  return { include: `#${name}` };
}
