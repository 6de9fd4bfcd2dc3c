/*
 * Shape of a text: lines, and what stands on a line.
 *
 * One statement is one line, so the line end is the recovery point of every error. Meaning (which
 * verb, which fact, which state) is not decided here: verbs, facts and states are plain names.
 */
parser grammar KettleParser;

options {
    tokenVocab = KettleLexer;
}

standaloneText
    : lines += line (NEWLINE lines += line)* EOF
    ;

line
    : keyword = sectionWord objects = list? clauses += clause*                            # sectionLine
    | measure = quantity objects = list? clauses += clause*                               # amountLine
    | measure = SUFFICIENT objects = list? clauses += clause*                             # sufficientLine
    | ALL OF source = NAME clauses += clause*                                             # takeAllLine
    | PART share = quantity OF source = NAME clauses += clause*                           # takePartLine
    | head = NAME name = NAME EQUALS members += member (COMMA members += member)*         # definitionLine
    | head = NAME objects = list? clauses += clause*                                      # statementLine
    | clauses += clause+                                                                  # headlessLine
    | first = loose objects = list? clauses += clause*                                    # looseLine
    |                                                                                     # emptyLine
    ;

member
    : name = NAME (IN place = NAME)?
    ;

clause
    : word = connective objects = list?
    ;

list
    : groups += group (COMMA groups += group)*
    ;

group
    : atoms += atom+
    ;

atom
    : quantity                                                                            # quantityAtom
    | name = NAME                                                                         # nameAtom
    | PER unit = UNIT                                                                     # rateAtom
    | loose                                                                               # looseAtom
    | word = (ALL | PART | SUFFICIENT)                                                    # reservedAtom
    | word = (HOUSE | INGREDIENT | FORMULA | VARIANT | PRODUCT | STAGE | TRIAL | SHEET)   # sectionWordAtom
    ;

loose
    : text = STRING                                                                       # textAtom
    | date = DATE                                                                         # dateAtom
    | stray = STRAY                                                                       # strayAtom
    ;

quantity
    : number = (NUMBER | RANGE | FRACTION) unit = UNIT? tolerance?
    ;

tolerance
    : TOLERANCE number = NUMBER unit = UNIT?
    ;

connective
    : OF
    | TO
    | UNTIL
    | FOR
    | OVER
    | AT
    | ABOVE
    | BELOW
    | WITHIN
    | INTO
    | IN
    | WITH
    | ON
    | BETWEEN
    | UNDER
    | WHILE
    | FROM
    | BY
    ;

sectionWord
    : HOUSE
    | INGREDIENT
    | FORMULA
    | VARIANT
    | PRODUCT
    | STAGE
    | TRIAL
    | SHEET
    ;
