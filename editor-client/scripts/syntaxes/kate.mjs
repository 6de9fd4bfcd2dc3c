import { GENERATED, TELLS_FIGURES, escapeXml, oneOf, wordUnits } from './words.mjs';

const CHARACTER = '[\\p{L}\\p{M}\\p{Nd}_]';
const NAME = `\\p{L}${CHARACTER}*(?:[-'’]${CHARACTER}+)*`;
const WORD_END = `(?!${CHARACTER}|[-'’]${CHARACTER})`;

/** The syntax file of Kate and of every other editor on KSyntaxHighlighting. */
export function kate(words) {
  const heads = [
    ['Section', words.sections, 'Declared'],
    ['Verb', words.verbs, '#stay'],
    ['Fact', TELLS_FIGURES, 'Told'],
    ['Fact', words.facts, '#stay'],
  ];
  return `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE language>
<!-- ${GENERATED} -->
<language name="Kettlemark" section="Markup" version="1" kateversion="5.62" extensions="*.kettle" mimetype="" casesensitive="1" license="Apache-2.0">
  <highlighting>
    <contexts>
      <context name="Line" attribute="Normal" lineEndContext="#stay">
${heads.map(([kind, list, context]) => rule(kind, `(?:${oneOf(list)})${WORD_END}`, context, ' firstNonSpace="true"')).join('\n')}
        <IncludeRules context="Rest"/>
      </context>
      <context name="Declared" attribute="Normal" lineEndContext="#pop">
        <DetectSpaces attribute="Normal" context="#stay"/>
${rule('Connective', `(?:again|${oneOf(words.connectives)})${WORD_END}`, '#pop')}
${rule('Declaration', NAME, '#pop')}
        <RegExpr attribute="Normal" context="#pop" String="(?=.)" lookAhead="true"/>
      </context>
      <context name="Told" attribute="Normal" lineEndContext="#pop">
${rule('Figure', `(?:${oneOf(words.figures)})${WORD_END}`, '#stay')}
        <IncludeRules context="Rest"/>
      </context>
      <context name="Until" attribute="Normal" lineEndContext="#pop">
        <DetectSpaces attribute="Normal" context="#stay"/>
${rule('State', `(?:${oneOf(words.states)})${WORD_END}`, '#pop')}
        <RegExpr attribute="Normal" context="#pop" String="(?=.)" lookAhead="true"/>
      </context>
      <context name="Rest" attribute="Normal" lineEndContext="#stay">
        <RegExpr attribute="Comment" context="#stay" String="#.*$"/>
        <RegExpr attribute="Text" context="#stay" String="&quot;[^&quot;]*&quot;?"/>
${rule('Connective', `until${WORD_END}`, 'Until')}
${rule('Connective', `(?:${oneOf(words.connectives)})${WORD_END}`, '#stay')}
${rule('Amount', `q\\.s\\.|(?:${oneOf(words.amounts.filter((word) => !word.endsWith('.')))})${WORD_END}`, '#stay')}
${rule('Date', '\\d{4}-\\d\\d-\\d\\d', '#stay')}
${rule('Number', '\\d+/\\d+|\\d+(?:[.,]\\d+)*|[.,]\\d+', '#stay')}
${rule('Unit', `%RH${WORD_END}|%|(?:${oneOf(wordUnits(words))})${WORD_END}`, '#stay')}
${rule('Operator', '±|\\+/?-|[-–—−=,]', '#stay')}
${rule('Name', NAME, '#stay')}
      </context>
    </contexts>
    <itemDatas>
      <itemData name="Normal" defStyleNum="dsNormal"/>
      <itemData name="Section" defStyleNum="dsControlFlow"/>
      <itemData name="Declaration" defStyleNum="dsDataType"/>
      <itemData name="Verb" defStyleNum="dsFunction"/>
      <itemData name="Fact" defStyleNum="dsKeyword"/>
      <itemData name="Figure" defStyleNum="dsBuiltIn"/>
      <itemData name="State" defStyleNum="dsConstant"/>
      <itemData name="Connective" defStyleNum="dsOperator"/>
      <itemData name="Amount" defStyleNum="dsSpecialChar"/>
      <itemData name="Date" defStyleNum="dsConstant"/>
      <itemData name="Number" defStyleNum="dsDecVal"/>
      <itemData name="Unit" defStyleNum="dsAttribute"/>
      <itemData name="Operator" defStyleNum="dsOperator"/>
      <itemData name="Name" defStyleNum="dsNormal"/>
      <itemData name="Text" defStyleNum="dsString" spellChecking="true"/>
      <itemData name="Comment" defStyleNum="dsComment" spellChecking="true"/>
    </itemDatas>
  </highlighting>
  <general>
    <comments>
      <comment name="singleLine" start="#"/>
    </comments>
    <keywords casesensitive="1" additionalDeliminator="'" weakDeliminator="-"/>
  </general>
</language>
`;
}

function rule(kind, regex, context, more = '') {
  return `        <RegExpr attribute="${kind}" context="${context}" String="${escapeXml(regex)}"${more}/>`;
}
