import { GENERATED, TELLS_FIGURES, oneOf, wordUnits } from './words.mjs';

/** The syntax file of the editors that read sublime-syntax; the scopes are those of VS Code. */
export function sublime(words) {
  return `%YAML 1.2
---
# ${GENERATED}
name: Kettlemark
file_extensions: [kettle]
scope: source.kettlemark
version: 2

variables:
  character: '[\\p{L}\\p{M}\\p{Nd}_]'
  name: '\\p{L}{{character}}*(?:[-''’]{{character}}+)*'
  word_end: '(?!{{character}}|[-''’]{{character}})'

contexts:
  main:
    - include: texts
    - match: '^\\s*((?:${oneOf(words.sections)})){{word_end}}(?:\\s+(?!(?:again|of|in|on){{word_end}})({{name}}))?'
      captures:
        1: keyword.control.section.kettlemark
        2: entity.name.type.kettlemark
    - match: '^\\s*((?:${oneOf(words.verbs)})){{word_end}}'
      captures:
        1: support.function.verb.kettlemark
    - match: '^\\s*(${oneOf(TELLS_FIGURES)}){{word_end}}'
      captures:
        1: support.type.fact.kettlemark
      push: told
    - match: '^\\s*((?:${oneOf(words.facts)})){{word_end}}'
      captures:
        1: support.type.fact.kettlemark
    - include: rest

  told:
    - match: '$'
      pop: 1
    - include: texts
    - match: '(?:${oneOf(words.figures)}){{word_end}}'
      scope: support.constant.figure.kettlemark
    - include: rest

  texts:
    - match: '#.*$'
      scope: comment.line.number-sign.kettlemark
    - match: '"[^"]*"?'
      scope: string.quoted.double.kettlemark

  rest:
    - match: '(?<!{{character}})(until){{word_end}}\\s+(${oneOf(words.states)}){{word_end}}'
      captures:
        1: keyword.operator.word.kettlemark
        2: constant.language.state.kettlemark
    - match: '(?:q\\.s\\.|(?:${oneOf(words.amounts.filter((word) => !word.endsWith('.')))}){{word_end}})'
      scope: keyword.other.amount.kettlemark
    - match: '(?:${oneOf(words.connectives)}){{word_end}}'
      scope: keyword.operator.word.kettlemark
    - match: '\\d{4}-\\d{2}-\\d{2}'
      scope: constant.numeric.date.kettlemark
    - match: '\\d+/\\d+'
      scope: constant.numeric.fraction.kettlemark
    - match: '(?<![\\d%\\p{L}])[-−]?(?:\\d+(?:[.,]\\d+)*|[.,]\\d+)|(?:\\d+(?:[.,]\\d+)*|[.,]\\d+)'
      scope: constant.numeric.kettlemark
    - match: '%RH{{word_end}}|%|(?:${oneOf(wordUnits(words))}){{word_end}}'
      scope: keyword.other.unit.kettlemark
    - match: '±|\\+/?-'
      scope: keyword.operator.tolerance.kettlemark
    - match: '[-–—−]'
      scope: keyword.operator.range.kettlemark
    - match: '='
      scope: keyword.operator.assignment.kettlemark
    - match: ','
      scope: punctuation.separator.comma.kettlemark
    - match: '{{name}}'
      scope: variable.other.kettlemark
`;
}
