/** The figures of the formula at the cursor, and what the last change has moved. */

import { h } from './dom';

export interface Figure {
  readonly word: string;
  readonly name: string;
  readonly text: string;
  readonly because: string;
}

export interface Figures {
  readonly formula: string;
  readonly title: string;
  readonly circumstances: string;
  readonly figures: readonly Figure[];
  readonly ingredients: readonly string[];
  readonly bowls: readonly string[];
  readonly moulds: readonly string[];
  readonly frames: readonly string[];
}

export function isFigures(value: unknown): value is Figures {
  const { formula, figures } = (value ?? {}) as Partial<Figures>;
  return typeof formula === 'string' && Array.isArray(figures);
}

export interface Moved {
  readonly word: string;
  readonly name: string;
  readonly before: string;
  readonly after: string;
}

/** What looks different; figures are compared as they are shown, so rounding hides what nobody could weigh. */
export function moved(before: readonly Figure[], after: readonly Figure[]): Moved[] {
  const known = new Map(before.map((figure) => [figure.word, shown(figure)]));
  return after.flatMap((figure) => {
    const old = known.get(figure.word) ?? 'none';
    return old === shown(figure)
      ? []
      : [{ word: figure.word, name: figure.name, before: old, after: shown(figure) }];
  });
}

/** More than these nobody hears out; the table has them all. */
const MOST_TOLD = 3;

/** What has moved in one sentence, for a glance and for a screen reader. */
export function moves(moved: readonly Moved[]): string {
  if (moved.length === 0) {
    return 'Nothing moved.';
  }
  const told = moved
    .slice(0, MOST_TOLD)
    .map(({ name, before, after }) => `${name} ${before} → ${after}`);
  const rest = moved.length - told.length;
  return `Moved: ${told.join('; ')}${rest > 0 ? `; and ${String(rest)} more` : ''}`;
}

function shown({ text, because }: Figure): string {
  return because === '' ? text : 'unknown';
}

export type Against = 'change' | 'saved';

/** Remembers each formula as it was, so that a change can be held against it. */
export class Ledger {
  private readonly last = new Map<string, readonly Figure[]>();
  private readonly saved = new Map<string, readonly Figure[]>();
  private readonly moves = new Map<string, readonly Moved[]>();

  /**
   * Takes down what the server has told.
   *
   * @param dirty whether it is about text that is not saved
   * @returns what has moved with this very change
   */
  enter(figures: Figures, dirty: boolean): readonly Moved[] {
    const { formula } = figures;
    const before = this.last.get(formula);
    this.last.set(formula, figures.figures);
    if (!dirty) {
      this.saved.set(formula, figures.figures);
    }
    const now = before === undefined ? [] : moved(before, figures.figures);
    if (now.length > 0) {
      this.moves.set(formula, now);
    }
    return now;
  }

  /** What is to be shown beside the figures of a formula. */
  movedOf({ formula, figures }: Figures, against: Against): readonly Moved[] {
    return against === 'change'
      ? (this.moves.get(formula) ?? [])
      : moved(this.saved.get(formula) ?? figures, figures);
  }
}

/** The panel: one row for each figure, and beside it what it was. */
export class FiguresPanel {
  readonly element: HTMLElement;
  private readonly head = h('div', { class: 'formula-head' });
  private readonly body = h('tbody');
  private readonly beforeHead = h('th', { scope: 'col' });
  private figures: Figures | undefined;
  private against: Against = 'change';

  constructor(
    private readonly ledger: Ledger,
    private readonly explain: (formula: string, word: string) => void,
  ) {
    this.element = h(
      'div',
      { class: 'panel figures' },
      this.head,
      h(
        'fieldset',
        { class: 'choice' },
        h('legend', {}, 'Held against'),
        this.radio('change', 'the text before the last change', true),
        this.radio('saved', 'the saved text', false),
      ),
      h(
        'table',
        {},
        h('caption', { class: 'hidden' }, 'Figures of the formula at the cursor'),
        h(
          'thead',
          {},
          h(
            'tr',
            {},
            h('th', { scope: 'col' }, 'Figure'),
            h('th', { scope: 'col' }, 'Now'),
            this.beforeHead,
          ),
        ),
        this.body,
      ),
    );
    this.nothing('The library is being read.');
  }

  get current(): Figures | undefined {
    return this.figures;
  }

  nothing(why: string): void {
    this.figures = undefined;
    this.head.replaceChildren(h('p', { class: 'quiet' }, why));
    this.body.replaceChildren();
  }

  show(figures: Figures): void {
    this.figures = figures;
    this.head.replaceChildren(
      h('h2', {}, figures.title === '' ? figures.formula : figures.title),
      h('p', { class: 'quiet' }, figures.circumstances),
    );
    const moves = new Map(
      this.ledger.movedOf(figures, this.against).map((move) => [move.word, move]),
    );
    this.beforeHead.textContent = this.against === 'change' ? 'Before' : 'Saved';
    this.body.replaceChildren(
      ...figures.figures.map((figure) => this.row(figures, figure, moves.get(figure.word))),
    );
  }

  private row(figures: Figures, figure: Figure, move: Moved | undefined): HTMLElement {
    return h(
      'tr',
      { class: move === undefined ? '' : 'moved', 'data-figure': figure.word },
      h('th', { scope: 'row' }, this.name(figures, figure)),
      h(
        'td',
        {},
        figure.because === ''
          ? figure.text
          : h('span', { class: 'unknown' }, `unknown: ${figure.because}`),
      ),
      h('td', { class: 'before' }, move === undefined ? '' : move.before),
    );
  }

  private name(figures: Figures, figure: Figure): HTMLElement {
    return h(
      'button',
      {
        type: 'button',
        class: 'plain',
        title: `How ${figure.name} came about`,
        click: () => {
          this.explain(figures.formula, figure.word);
        },
      },
      figure.name,
    );
  }

  private radio(value: Against, label: string, checked: boolean): HTMLElement {
    return h(
      'label',
      {},
      h('input', {
        type: 'radio',
        name: 'against',
        value,
        checked,
        change: () => {
          this.against = value;
          if (this.figures !== undefined) {
            this.show(this.figures);
          }
        },
      }),
      ` ${label}`,
    );
  }
}
