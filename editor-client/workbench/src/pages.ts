/** Pages of the server about the formula at the cursor, and comparisons. */

import { button, h } from './dom';
import type { Figures } from './figures';
import { LANGUAGES } from './languages';
import { ofMarkdown } from './safe';

export interface PageActions {
  ask(command: string, argument: Record<string, string>): Promise<string>;
  /** The names of all formulas and variants. */
  formulas(): Promise<readonly string[]>;
  knows(command: string): boolean;
}

interface Field {
  readonly name: string;
  readonly label: string;
  /** What alone can be chosen; without it, anything can be written. */
  readonly options?: readonly { readonly value: string; readonly label: string }[];
}

interface Kind {
  readonly command: string;
  readonly label: string;
  readonly fields: readonly Field[];
  /** Under which name the formula at the cursor goes along; empty where it does not. */
  readonly formula: string;
}

const PAGES: readonly Kind[] = [
  { command: 'kettlemark.show', label: 'Table of the formula', fields: [], formula: 'formula' },
  {
    command: 'kettlemark.explain',
    label: 'How its figures came about',
    fields: [],
    formula: 'formula',
  },
  { command: 'kettlemark.label', label: 'Draft of its label', fields: [], formula: 'formula' },
  {
    command: 'kettlemark.trials',
    label: 'Its trials against the prediction',
    fields: [],
    formula: 'formula',
  },
  { command: 'kettlemark.used', label: 'Where it is used', fields: [], formula: 'name' },
];

const COMPARISONS: readonly Kind[] = [
  {
    command: 'kettlemark.changes',
    label: 'The unsaved text with the saved one',
    fields: [],
    formula: '',
  },
  {
    command: 'kettlemark.compare',
    label: 'It with another formula',
    fields: [
      { name: 'with', label: 'Other formula; for a variant, none is its parent' },
      { name: 'language', label: 'In', options: LANGUAGES },
    ],
    formula: 'formula',
  },
  {
    command: 'kettlemark.whatIf',
    label: 'It with another material in it',
    fields: [
      { name: 'replace', label: 'Material of the formula' },
      { name: 'by', label: 'In its place' },
    ],
    formula: 'formula',
  },
];

/** A panel in which one kind of page is chosen and shown. */
export class PagesPanel {
  readonly element: HTMLElement;
  private readonly select: HTMLSelectElement;
  private readonly fields = h('div', { class: 'fields' });
  private readonly page = h('article', { class: 'page', tabindex: '-1' });
  private readonly problem = h('p', { class: 'problem', role: 'alert' });
  private figures: Figures | undefined;

  private constructor(
    id: string,
    label: string,
    private readonly kinds: readonly Kind[],
    private readonly actions: PageActions,
  ) {
    this.select = h('select', {
      id: `${id}-kind`,
      change: () => {
        this.ask();
      },
    });
    const form = h(
      'form',
      {
        submit: (event) => {
          event.preventDefault();
          void this.submit();
        },
      },
      h('label', { for: this.select.id }, label),
      this.select,
      this.fields,
      h('button', { type: 'submit', class: 'main' }, 'Show'),
      button('Print', () => {
        window.print();
      }),
    );
    this.element = h('div', { class: `panel ${id}` }, form, this.problem, this.page);
    this.offer();
  }

  static ofPages(actions: PageActions): PagesPanel {
    return new PagesPanel('pages', 'Page', PAGES, actions);
  }

  static ofComparisons(actions: PageActions): PagesPanel {
    return new PagesPanel('compare', 'Compare', COMPARISONS, actions);
  }

  /** Offers what the server knows. */
  offer(): void {
    const known = this.kinds.filter(({ command }) => this.actions.knows(command));
    const chosen = this.select.value;
    this.select.replaceChildren(
      ...known.map(({ command, label }) => h('option', { value: command }, label)),
    );
    if (known.some(({ command }) => command === chosen)) {
      this.select.value = chosen;
    }
    this.ask();
  }

  about(figures: Figures | undefined): void {
    const other = figures?.formula !== this.figures?.formula;
    this.figures = figures;
    if (other) {
      this.ask();
    }
  }

  /** Fills in what is known and shows the page at once where nothing is left to ask. */
  async open(command: string, values: Readonly<Record<string, string>>): Promise<void> {
    this.select.value = command;
    this.ask();
    this.fields.querySelectorAll('input').forEach((input) => {
      input.value = values[input.name] ?? input.value;
    });
    await this.submit(values);
  }

  show(markdown: string): void {
    this.problem.textContent = '';
    this.page.replaceChildren(ofMarkdown(markdown));
    this.page.focus();
  }

  private ask(): void {
    this.problem.textContent = '';
    this.page.replaceChildren(h('p', { class: 'quiet' }, 'Show lays it out here.'));
    const kind = this.kinds.find(({ command }) => command === this.select.value);
    this.fields.replaceChildren(...(kind?.fields ?? []).map((field) => this.field(field)));
  }

  private field({ name, label, options }: Field): HTMLElement {
    const id = `page-${name}`;
    if (options !== undefined) {
      const all = options.map((one) => h('option', { value: one.value }, one.label));
      return h('div', {}, h('label', { for: id }, label), h('select', { id, name }, ...all));
    }
    const list = h('datalist', { id: `${id}-list` });
    const offer = (values: readonly string[]): void => {
      list.replaceChildren(...values.map((value) => h('option', { value })));
    };
    if (name === 'replace') {
      offer(this.figures?.ingredients ?? []);
    } else if (name === 'with') {
      // Names may be written all the same where the list does not come.
      void this.actions.formulas().then(offer, () => undefined);
    }
    const input = h('input', { id, name, list: list.id, autocomplete: 'off' });
    return h('div', {}, h('label', { for: id }, label), input, list);
  }

  private async submit(more: Readonly<Record<string, string>> = {}): Promise<void> {
    const kind = this.kinds.find(({ command }) => command === this.select.value);
    if (kind === undefined) {
      return;
    }
    const argument: Record<string, string> = {};
    if (kind.formula !== '' && this.figures !== undefined) {
      argument[kind.formula] = this.figures.formula;
    }
    this.fields.querySelectorAll<HTMLInputElement>('input, select').forEach(({ name, value }) => {
      argument[name] = value.trim();
    });
    try {
      this.show(await this.actions.ask(kind.command, { ...argument, ...more }));
    } catch (refused) {
      this.page.replaceChildren();
      this.problem.textContent = refused instanceof Error ? refused.message : String(refused);
    }
  }
}
