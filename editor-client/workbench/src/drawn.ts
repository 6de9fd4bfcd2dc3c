/** The sheet and the pictures of the formula at the cursor, as the server lays them out. */

import { lineOf, toldAt, type Anchor, type Line } from '../../src/follow';
import { button, h } from './dom';
import { showDrawn } from './safe';

export interface Preview {
  readonly name: string;
  readonly html: string;
  readonly style: string;
  readonly first?: number;
  readonly anchors: readonly Anchor[];
}

export function isPreview(value: unknown): value is Preview {
  const { name, html, style, anchors } = (value ?? {}) as Partial<Preview>;
  return (
    typeof name === 'string' &&
    typeof html === 'string' &&
    typeof style === 'string' &&
    Array.isArray(anchors)
  );
}

export interface Choice {
  readonly name: string;
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

/** A panel with a few choices above and below them what the server has laid out. */
export class DrawnPanel {
  readonly element: HTMLElement;
  private readonly host = h('div', { class: 'drawn' });
  private readonly problem = h('p', { class: 'quiet', role: 'status' });
  private readonly selects = new Map<string, HTMLSelectElement>();
  private shown: { preview: Preview; uri: string; theme: string } | undefined;
  private cursor: Line | undefined;

  constructor(
    id: string,
    choices: readonly Choice[],
    private readonly changed: () => void,
    private readonly go: (to: Line) => void,
  ) {
    const controls = choices.map((choice) => this.choice(id, choice));
    const print = button('Print', () => {
      window.print();
    });
    this.element = h(
      'div',
      { class: `panel ${id}` },
      h('div', { class: 'controls' }, ...controls, print),
      h(
        'p',
        { class: 'hidden' },
        'Enter goes to the line in the text; arrow keys go from one to the next.',
      ),
      this.problem,
      this.host,
    );
    // Listening in the tree itself: outside of it nobody is told which element was meant.
    const root = this.host.attachShadow({ mode: 'open' });
    root.addEventListener('click', ({ target }) => {
      if (target instanceof Element && window.getSelection()?.isCollapsed !== false) {
        this.lead(target.closest('[tabindex]'));
      }
    });
    root.addEventListener('keydown', (event) => {
      this.key(event as KeyboardEvent, root);
    });
  }

  value(name: string): string {
    return this.selects.get(name)?.value ?? '';
  }

  /** What was asked about a text; the same again leaves the panel as it is, with what has the focus. */
  show(preview: Preview, uri: string, theme: string): void {
    const before = this.shown;
    this.problem.textContent = '';
    this.host.hidden = false;
    if (
      before?.preview.html !== preview.html ||
      before.preview.style !== preview.style ||
      before.theme !== theme
    ) {
      const { scrollTop } = this.element;
      const focused = this.host.shadowRoot?.activeElement?.id;
      const root = showDrawn(this.host, preview.html, preview.style, theme);
      makeReachable(root, preview.anchors);
      this.element.scrollTop = before?.preview.name === preview.name ? scrollTop : 0;
      if (focused !== undefined && focused !== '') {
        root.getElementById(focused)?.focus({ preventScroll: true });
      }
    }
    this.shown = { preview, uri, theme };
  }

  nothing(because: string): void {
    this.shown = undefined;
    this.host.hidden = true;
    this.problem.textContent = because;
  }

  /** Marks what tells a line of a text, and brings it into sight where the cursor has moved. */
  mark(cursor: Line): void {
    const root = this.host.shadowRoot;
    if (root === null || this.shown === undefined || this.element.hidden) {
      return;
    }
    const hasMoved = this.cursor?.uri !== cursor.uri || this.cursor.line !== cursor.line;
    this.cursor = cursor;
    root.querySelectorAll('.here').forEach((element) => {
      element.classList.remove('here');
      element.removeAttribute('aria-current');
    });
    const { preview, uri } = this.shown;
    const told = toldAt(preview.anchors, uri, cursor, preview.first)
      .map((id) => root.getElementById(id))
      .filter((element) => element !== null);
    told.forEach((element) => {
      element.classList.add('here');
      element.setAttribute('aria-current', 'true');
    });
    if (hasMoved) {
      this.bringIntoSight(told[0]);
    }
  }

  /** Within the panel alone: on a tablet, where the page scrolls as a whole, the text must stay in sight. */
  private bringIntoSight(told: Element | undefined): void {
    if (told !== undefined && this.element.scrollHeight > this.element.clientHeight) {
      told.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    }
  }

  private key(event: KeyboardEvent, root: ShadowRoot): void {
    const at = root.activeElement;
    if (event.key === 'Enter') {
      // Else the key would be typed into the text that it leads to.
      event.preventDefault();
      this.lead(at);
    } else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
      const all = [...root.querySelectorAll<HTMLElement | SVGElement>('[tabindex]')];
      const next = all[all.findIndex((one) => one === at) + (event.key === 'ArrowDown' ? 1 : -1)];
      if (next !== undefined) {
        event.preventDefault();
        all.forEach((one) => {
          one.setAttribute('tabindex', one === next ? '0' : '-1');
        });
        next.focus();
      }
    }
  }

  private lead(told: Element | null): void {
    if (told !== null && this.shown !== undefined) {
      const to = lineOf(this.shown.preview.anchors, this.shown.uri, told.id);
      if (to !== undefined) {
        this.go(to);
      }
    }
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

/** One stop of the tabulator for all that lead to a line; from there on with the arrow keys. */
function makeReachable(root: ShadowRoot, anchors: readonly Anchor[]): void {
  let isFirst = true;
  for (const id of new Set(anchors.map((anchor) => anchor.id))) {
    const told = root.getElementById(id);
    if (told !== null) {
      told.setAttribute('tabindex', isFirst ? '0' : '-1');
      isFirst = false;
    }
  }
}
