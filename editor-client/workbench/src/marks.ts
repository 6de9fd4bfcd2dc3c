/** What the server says of the text, shown in it: colours by meaning, grams beside percents, totals above formulas, folds. */

import { codeFolding, foldGutter, foldKeymap, foldService } from '@codemirror/language';
import {
  RangeSetBuilder,
  StateEffect,
  StateField,
  type Extension,
  type Text,
} from '@codemirror/state';
import { Decoration, EditorView, WidgetType, keymap, type DecorationSet } from '@codemirror/view';
import type { CodeLens, Command, FoldingRange, InlayHint } from 'vscode-languageserver-protocol';
import { offsetOf } from './edits';
import type { Token } from './tokens';

const setTokens = StateEffect.define<DecorationSet>();
const setHints = StateEffect.define<DecorationSet>();
const setLenses = StateEffect.define<DecorationSet>();
const setFolds = StateEffect.define<ReadonlyMap<number, number>>();

/** Everything that follows keeps its place while the text changes under it, until the server has told anew. */
function decorations(effect: typeof setTokens): StateField<DecorationSet> {
  return StateField.define<DecorationSet>({
    create: () => Decoration.none,
    update(marks, transaction) {
      const told = transaction.effects.filter((one) => one.is(effect)).pop();
      return told === undefined ? marks.map(transaction.changes) : told.value;
    },
    provide: (field) => EditorView.decorations.from(field),
  });
}

const folds = StateField.define<ReadonlyMap<number, number>>({
  create: () => new Map(),
  update: (known, transaction) =>
    transaction.effects.filter((one) => one.is(setFolds)).pop()?.value ?? known,
});

/** Shows marks and lets a lens be pressed. */
export function marks(): Extension {
  return [
    decorations(setTokens),
    decorations(setHints),
    decorations(setLenses),
    folds,
    codeFolding(),
    foldGutter({ openText: '▾', closedText: '▸' }),
    foldService.of((state, from) => {
      const first = state.doc.lineAt(from);
      const last = state.field(folds).get(first.number);
      return last !== undefined && last <= state.doc.lines && last > first.number
        ? { from: first.to, to: state.doc.line(last).to }
        : null;
    }),
    keymap.of(foldKeymap),
  ];
}

export function tokenEffect(tokens: readonly Token[]): StateEffect<DecorationSet> {
  const set = new RangeSetBuilder<Decoration>();
  for (const { from, to, type } of tokens) {
    set.add(from, to, colour(type));
  }
  return setTokens.of(set.finish());
}

export function hintEffect(doc: Text, hints: readonly InlayHint[]): StateEffect<DecorationSet> {
  return setHints.of(
    Decoration.set(
      hints.map((hint) =>
        Decoration.widget({ widget: new Aside(labelOf(hint)), side: 1 }).range(
          offsetOf(doc, hint.position),
        ),
      ),
      true,
    ),
  );
}

export function lensEffect(
  doc: Text,
  lenses: readonly CodeLens[],
  run: (command: Command) => void,
): StateEffect<DecorationSet> {
  return setLenses.of(
    Decoration.set(
      lenses.flatMap(({ range, command }) =>
        command === undefined
          ? []
          : [
              Decoration.widget({
                widget: new Lens(command, run),
                side: -1,
                block: true,
              }).range(doc.lineAt(offsetOf(doc, range.start)).from),
            ],
      ),
      true,
    ),
  );
}

export function foldEffect(
  ranges: readonly FoldingRange[],
): StateEffect<ReadonlyMap<number, number>> {
  return setFolds.of(new Map(ranges.map(({ startLine, endLine }) => [startLine + 1, endLine + 1])));
}

function labelOf({ label }: InlayHint): string {
  return typeof label === 'string' ? label : label.map(({ value }) => value).join('');
}

const colours = new Map<string, Decoration>();

function colour(type: string): Decoration {
  const known = colours.get(type) ?? Decoration.mark({ class: `word-${type}` });
  colours.set(type, known);
  return known;
}

/** Not part of the text, and said in the hover as well, so a screen reader may pass it over. */
class Aside extends WidgetType {
  constructor(private readonly text: string) {
    super();
  }

  override eq(other: Aside): boolean {
    return other.text === this.text;
  }

  override toDOM(): HTMLElement {
    const aside = document.createElement('span');
    aside.className = 'aside';
    aside.setAttribute('aria-hidden', 'true');
    aside.textContent = this.text;
    return aside;
  }
}

class Lens extends WidgetType {
  constructor(
    private readonly command: Command,
    private readonly run: (command: Command) => void,
  ) {
    super();
  }

  override eq(other: Lens): boolean {
    return (
      other.command.title === this.command.title &&
      JSON.stringify(other.command.arguments) === JSON.stringify(this.command.arguments)
    );
  }

  override toDOM(): HTMLElement {
    const lens = document.createElement('div');
    lens.className = 'lens';
    const press = document.createElement('button');
    press.type = 'button';
    press.tabIndex = -1;
    press.textContent = this.command.title;
    press.addEventListener('click', () => {
      this.run(this.command);
    });
    lens.append(press);
    return lens;
  }

  override ignoreEvent(): boolean {
    return true;
  }
}
