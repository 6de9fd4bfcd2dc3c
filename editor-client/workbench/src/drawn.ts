/** The sheet and the pictures of the formula at the cursor, as the server lays them out. */

import { button, h } from './dom';
import { ofMarkdown, showDrawn } from './safe';

export interface Preview {
  readonly title: string;
  readonly html: string;
  readonly style: string;
  readonly anchors: readonly {
    readonly line: number;
    readonly id: string;
    readonly uri?: string | null;
  }[];
}

export function isPreview(value: unknown): value is Preview {
  const { html, style, anchors } = (value ?? {}) as Partial<Preview>;
  return typeof html === 'string' && typeof style === 'string' && Array.isArray(anchors);
}

/** What comes of asking for a drawing. */
export type Drawing =
  | { readonly kind: 'preview'; readonly preview: Preview }
  | { readonly kind: 'svg'; readonly svg: string }
  | { readonly kind: 'markdown'; readonly markdown: string }
  | { readonly kind: 'none'; readonly because: string };

export interface Choice {
  readonly name: string;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

/** A panel with a few choices above and a drawing below. */
export class DrawnPanel {
  readonly element: HTMLElement;
  private readonly host = h('div', { class: 'drawn' });
  private readonly plain = h('div', { class: 'page' });
  private readonly selects = new Map<string, HTMLSelectElement>();
  private anchors: Preview['anchors'] = [];

  constructor(
    id: string,
    choices: readonly Choice[],
    private readonly changed: () => void,
    private readonly go: (line: number) => void,
  ) {
    const controls = choices.map((choice) => this.choice(id, choice));
    const print = button('Print', () => {
      document.body.dataset['print'] = id;
      window.print();
    });
    this.element = h(
      'div',
      { class: `panel ${id}` },
      h('div', { class: 'controls' }, ...controls, print),
      this.host,
      this.plain,
    );
  }

  value(name: string): string {
    return this.selects.get(name)?.value ?? '';
  }

  show(drawing: Drawing, theme: string): void {
    this.anchors = drawing.kind === 'preview' ? drawing.preview.anchors : [];
    const isDrawn = drawing.kind === 'preview' || drawing.kind === 'svg';
    this.host.hidden = !isDrawn;
    this.plain.hidden = isDrawn;
    if (drawing.kind === 'preview') {
      this.lay(drawing.preview.html, drawing.preview.style, theme);
    } else if (drawing.kind === 'svg') {
      this.lay(drawing.svg, '', theme);
    } else if (drawing.kind === 'markdown') {
      this.plain.replaceChildren(ofMarkdown(drawing.markdown));
    } else {
      this.plain.replaceChildren(h('p', { class: 'quiet' }, drawing.because));
    }
  }

  /** Marks what tells a line of the text. */
  mark(line: number): void {
    const before = this.anchors
      .filter((anchor) => (anchor.uri ?? null) === null && anchor.line <= line)
      .pop();
    const root = this.host.shadowRoot;
    root?.querySelectorAll('.here').forEach((element) => {
      element.classList.remove('here');
    });
    const element = before === undefined ? null : (root?.getElementById(before.id) ?? null);
    element?.classList.add('here');
  }

  private lay(markup: string, style: string, theme: string): void {
    const { scrollTop } = this.element;
    const root = showDrawn(this.host, markup, style, theme);
    for (const { id, line, uri } of this.anchors) {
      if ((uri ?? null) === null) {
        root.getElementById(id)?.addEventListener('click', () => {
          this.go(line);
        });
      }
    }
    this.element.scrollTop = scrollTop;
  }

  private choice(id: string, { name, label, options }: Choice): HTMLElement {
    const select = h(
      'select',
      { id: `${id}-${name}`, change: this.changed },
      ...options.map((option) => h('option', { value: option.value }, option.label)),
    );
    this.selects.set(name, select);
    return h('span', {}, h('label', { for: select.id }, label), select);
  }
}
