/** Every way in which the server can take a formula to a batch; the list to weigh by comes before the text changes. */

import type { WorkspaceEdit } from 'vscode-languageserver-protocol';
import { button, h } from './dom';
import type { Figures } from './figures';
import { ofMarkdown } from './safe';

export interface Scaled {
  readonly edit: WorkspaceEdit;
  readonly title: string;
  readonly weighingList: string;
}

export function isScaled(value: unknown): value is Scaled {
  const { edit, title, weighingList } = (value ?? {}) as Partial<Scaled>;
  return typeof edit === 'object' && typeof title === 'string' && typeof weighingList === 'string';
}

export type Field = 'grams' | 'pieces' | 'pieceGrams' | 'lossPercent' | 'count' | 'name';

interface Way {
  readonly kind: string;
  readonly label: string;
  readonly fields: readonly Field[];
  readonly named: string;
  readonly names: (figures: Figures) => readonly string[];
}

const NONE = (): readonly string[] => [];

export const WAYS: readonly Way[] = [
  way('pieces', 'Pieces of one weight', ['pieces', 'pieceGrams', 'lossPercent']),
  way('charge', 'Charge, all that is weighed in', ['grams']),
  way('finished', 'Finished weight', ['grams', 'lossPercent']),
  way('moulds', 'Moulds filled', ['name', 'count', 'lossPercent'], 'Mould', ({ moulds }) => moulds),
  way('frames', 'Frames filled', ['name', 'count', 'lossPercent'], 'Frame', ({ frames }) => frames),
  way('bowl', 'As much as a bowl whips', ['name'], 'Bowl', ({ bowls }) => bowls),
  way(
    'ingredient',
    'Ingredient in hand',
    ['name', 'grams'],
    'Ingredient',
    ({ ingredients }) => ingredients,
  ),
];

function way(
  kind: string,
  label: string,
  fields: readonly Field[],
  named = '',
  names: Way['names'] = NONE,
): Way {
  return { kind, label, fields, named, names };
}

const LABELS: Readonly<Record<Exclude<Field, 'name'>, string>> = {
  grams: 'Grams',
  pieces: 'Pieces',
  pieceGrams: 'Grams of one piece',
  lossPercent: 'Loss in handling, %',
  count: 'How many',
};

/** Reads a plain decimal number; a comma is refused, for it may mean thousands or decimals. */
export function readNumber(text: string): number | undefined {
  return /^(\d+(\.\d+)?|\.\d+)$/.test(text.trim()) ? Number(text) : undefined;
}

/** What the server is asked for; a word that says what is missing if it cannot be asked yet. */
export function targetOf(
  kind: string,
  values: ReadonlyMap<Field, string>,
): Record<string, string | number> | string {
  const way = WAYS.find((one) => one.kind === kind);
  if (way === undefined) {
    return 'there is no such way to scale';
  }
  const target: Record<string, string | number> = { kind };
  for (const field of way.fields) {
    const text = (values.get(field) ?? '').trim();
    if (field === 'name') {
      if (text === '') {
        return `the house declares no ${way.named.toLowerCase()}`;
      }
      target[field] = text;
    } else if (text !== '' || field !== 'lossPercent') {
      const number = readNumber(text);
      if (number === undefined) {
        return `${LABELS[field]}: write a number such as 37 or 30.5`;
      }
      target[field] = number;
    }
  }
  return target;
}

export interface ScalingActions {
  ask(formula: string, target: Record<string, string | number>): Promise<Scaled>;
  write(scaled: Scaled): Promise<boolean>;
}

export class ScalingPanel {
  readonly element: HTMLElement;
  private readonly heading = h('h2', {}, 'Scale');
  private readonly ways = h('select', { id: 'scale-way' });
  private readonly fields = h('div', { class: 'fields' });
  private readonly answer = h('div', { class: 'answer' });
  private readonly problem = h('p', { class: 'problem', role: 'alert' });
  private figures: Figures | undefined;

  constructor(private readonly actions: ScalingActions) {
    this.ways.append(...WAYS.map(({ kind, label }) => h('option', { value: kind }, label)));
    this.ways.addEventListener('change', () => {
      this.ask();
    });
    const form = h(
      'form',
      {
        submit: (event) => {
          event.preventDefault();
          void this.submit();
        },
      },
      h('label', { for: 'scale-way' }, 'Take it to'),
      this.ways,
      this.fields,
      h('button', { type: 'submit', class: 'main' }, 'Show the weighing list'),
    );
    this.element = h(
      'div',
      { class: 'panel scaling' },
      this.heading,
      form,
      this.problem,
      this.answer,
    );
    this.ask();
  }

  show(figures: Figures | undefined): void {
    const fresh = figures?.formula !== this.figures?.formula;
    this.figures = figures;
    this.heading.textContent = figures === undefined ? 'Scale' : `Scale ${figures.formula}`;
    if (fresh) {
      this.answer.replaceChildren();
      this.ask();
    }
  }

  private ask(): void {
    const way = WAYS.find(({ kind }) => kind === this.ways.value);
    this.problem.textContent = '';
    this.answer.replaceChildren();
    this.fields.replaceChildren(
      ...(way?.fields ?? []).map((field) =>
        this.field(field, way?.named ?? '', way?.names ?? NONE),
      ),
    );
  }

  private field(field: Field, named: string, names: Way['names']): HTMLElement {
    const id = `scale-${field}`;
    if (field === 'name') {
      const options = this.figures === undefined ? [] : names(this.figures);
      return h(
        'div',
        {},
        h('label', { for: id }, named),
        h(
          'select',
          { id, name: field },
          ...options.map((name) => h('option', { value: name }, name)),
        ),
      );
    }
    return h(
      'div',
      {},
      h('label', { for: id }, LABELS[field]),
      h('input', { id, name: field, inputmode: 'decimal', autocomplete: 'off' }),
    );
  }

  private async submit(): Promise<void> {
    const values = new Map(
      [...this.fields.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select')].map(
        (input) => [input.name as Field, input.value],
      ),
    );
    const target = targetOf(this.ways.value, values);
    this.answer.replaceChildren();
    if (typeof target === 'string' || this.figures === undefined) {
      this.problem.textContent = typeof target === 'string' ? target : 'open a formula first';
      return;
    }
    this.problem.textContent = '';
    try {
      this.list(await this.actions.ask(this.figures.formula, target));
    } catch (refused) {
      this.problem.textContent = refused instanceof Error ? refused.message : String(refused);
    }
  }

  private list(scaled: Scaled): void {
    const write = button(
      'Write into the text',
      () => {
        void this.write(scaled);
      },
      { class: 'main' },
    );
    this.answer.replaceChildren(
      h('h3', { tabindex: '-1' }, scaled.title),
      write,
      h('div', { class: 'page' }, ofMarkdown(scaled.weighingList)),
    );
    this.answer.querySelector('h3')?.focus();
  }

  private async write(scaled: Scaled): Promise<void> {
    this.problem.textContent = (await this.actions.write(scaled))
      ? ''
      : 'the text has changed meanwhile; show the list again';
  }
}
