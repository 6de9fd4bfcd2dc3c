/*
 * Words of the formula language.
 *
 * Lexing is loose on purpose and total: every text gives tokens. A malformed number, an unclosed
 * quote or a foreign character stays one token, and the reader of the tree says what is wrong with it.
 */
lexer grammar KettleLexer;

// Section words. At the start of a line they open a section or, for `stage`, a part of one.

HOUSE      : 'house';
INGREDIENT : 'ingredient';
FORMULA    : 'formula';
VARIANT    : 'variant';
PRODUCT    : 'product';
STAGE      : 'stage';
TRIAL      : 'trial';
SHEET      : 'sheet';

// Small words that join the parts of a line.

OF      : 'of';
TO      : 'to';
UNTIL   : 'until';
FOR     : 'for';
OVER    : 'over';
AT      : 'at';
ABOVE   : 'above';
BELOW   : 'below';
WITHIN  : 'within';
INTO    : 'into';
IN      : 'in';
WITH    : 'with';
ON      : 'on';
BETWEEN : 'between';
UNDER   : 'under';
WHILE   : 'while';
FROM    : 'from';
BY      : 'by';
PER     : 'per';

// Small words that open an amount.

ALL        : 'all';
PART       : 'part';
SUFFICIENT : 'q.s.';

UNIT
    : '%'
    | 'ppm'
    | 'kg'
    | 'g'
    | 'mg'
    | 'L'
    | 'mL'
    | 'lb'
    | 'oz'
    | 'fl-oz'
    | 'cup' 's'?
    | 'tbsp'
    | 'tsp'
    | 'each'
    | '°C'
    | 'degC'
    | '°F'
    | 'degF'
    | 's'
    | 'min'
    | 'h'
    | 'day' 's'?
    | 'week' 's'?
    | 'month' 's'?
    | 'm'
    | 'cm'
    | 'mm'
    | 'g/mL'
    | '%RH'
    | 'piece' 's'?
    | 'Brix'
    | 'pH'
    | 'aw'
    ;

DATE     : DIGIT DIGIT DIGIT DIGIT '-' DIGIT DIGIT '-' DIGIT DIGIT;
RANGE    : SIGN? FIGURES GAP* DASH GAP* SIGN? FIGURES;
FRACTION : DIGIT+ '/' DIGIT+;
NUMBER   : SIGN? FIGURES;

TOLERANCE : '±' | '+-' | '+/-';
EQUALS    : '=';
COMMA     : ',';

NAME   : LETTER CHARACTER* (('-' | '\'' | '’') CHARACTER+)*;
STRING : '"' ~["\r\n]* '"'?;

COMMENT : '#' ~[\r\n]* -> channel(HIDDEN);
SPACE   : GAP+ -> channel(HIDDEN);
NEWLINE : '\r\n' | '\n' | '\r';

/** Anything else; the last rule, so that the lexer never fails. */
STRAY : .;

fragment DIGIT     : [0-9];
fragment FIGURES   : DIGIT+ ([.,] DIGIT+)* | ([.,] DIGIT+)+;
fragment SIGN      : '-' | '−';
fragment DASH      : '-' | '–' | '—' | '−';
fragment LETTER    : [\p{L}];
fragment CHARACTER : [\p{L}\p{M}\p{Nd}_];
fragment GAP       : [\p{Zs}\t\f\u000B\u200B\uFEFF];
