/** Tabs after the pattern of the ARIA Authoring Practices: one stop of the Tab key, arrows between. */

import { h } from './dom';

export interface Tab {
  readonly id: string;
  readonly label: string;
  readonly panel: HTMLElement;
  /** Called when it becomes the one that is seen. */
  shown(): void;
}

export class Tabs {
  private readonly buttons: HTMLButtonElement[];
  private current = 0;

  constructor(
    host: HTMLElement,
    label: string,
    private readonly tabs: readonly Tab[],
  ) {
    this.buttons = tabs.map((tab, index) => this.button(tab, index));
    tabs.forEach((tab) => {
      tab.panel.id = `panel-${tab.id}`;
      tab.panel.setAttribute('role', 'tabpanel');
      tab.panel.setAttribute('aria-labelledby', `tab-${tab.id}`);
      tab.panel.tabIndex = 0;
    });
    host.append(
      h('div', { role: 'tablist', 'aria-label': label }, ...this.buttons),
      ...tabs.map(({ panel }) => panel),
    );
    this.mark(0);
  }

  get shown(): string {
    return this.tabs[this.current]?.id ?? '';
  }

  show(id: string, focus = false): void {
    const index = this.tabs.findIndex((tab) => tab.id === id);
    if (index >= 0) {
      this.mark(index);
      this.tabs[index]?.shown();
      if (focus) {
        this.buttons[index]?.focus();
      }
    }
  }

  private button(tab: Tab, index: number): HTMLButtonElement {
    return h(
      'button',
      {
        type: 'button',
        role: 'tab',
        id: `tab-${tab.id}`,
        'aria-controls': `panel-${tab.id}`,
        click: () => {
          this.show(tab.id);
        },
        keydown: (event) => {
          this.key(event as KeyboardEvent, index);
        },
      },
      tab.label,
    );
  }

  private key(event: KeyboardEvent, index: number): void {
    const count = this.tabs.length;
    const next = {
      ArrowRight: (index + 1) % count,
      ArrowLeft: (index + count - 1) % count,
      Home: 0,
      End: count - 1,
    }[event.key];
    const tab = next === undefined ? undefined : this.tabs[next];
    if (tab !== undefined) {
      event.preventDefault();
      this.show(tab.id, true);
    }
  }

  private mark(index: number): void {
    this.current = index;
    this.buttons.forEach((button, i) => {
      button.setAttribute('aria-selected', String(i === index));
      button.tabIndex = i === index ? 0 : -1;
    });
    this.tabs.forEach(({ panel }, i) => {
      panel.hidden = i !== index;
    });
  }
}
