/** The right-hand side: figures, sheet, flow, scaling, comparison and pages of the formula at the cursor. */

import type { WorkspaceEdit } from 'vscode-languageserver-protocol';
import { h } from './dom';
import { DrawnPanel, isPreview, type Drawing } from './drawn';
import { FiguresPanel, Ledger, isFigures, moves, type Figures } from './figures';
import type { Lamp } from './lamp';
import { PagesPanel, type PageActions } from './pages';
import { ScalingPanel, isScaled } from './scaling';
import type { Server } from './server';
import { Tabs } from './tabs';

export interface Place {
  readonly uri: string;
  readonly line: number;
  readonly dirty: boolean;
}

export interface BenchActions {
  place(): Place | undefined;
  apply(edit: WorkspaceEdit): Promise<boolean>;
  go(line: number): void;
}

const READERS = [
  { value: 'chef', label: 'Chef' },
  { value: 'home', label: 'Home cook' },
  { value: 'production', label: 'Production' },
  { value: 'bench', label: 'Bench card' },
];

const LANGUAGES = [
  { value: 'en-GB', label: 'English' },
  { value: 'en-US', label: 'English, US' },
  { value: 'de-DE', label: 'Deutsch' },
  { value: 'fr-FR', label: 'Français' },
];

const PICTURES = [
  { value: 'flow', label: 'What feeds what' },
  { value: 'time', label: 'How warm it gets' },
  { value: 'shares', label: 'What it is made of' },
];

export class Bench {
  private readonly ledger = new Ledger();
  private readonly moves = h('p', { class: 'moves', role: 'status' });
  private readonly figures: FiguresPanel;
  private readonly sheet: DrawnPanel;
  private readonly flow: DrawnPanel;
  private readonly scaling: ScalingPanel;
  private readonly compare: PagesPanel;
  private readonly pages: PagesPanel;
  private readonly tabs: Tabs;
  private round = 0;
  private following: ReturnType<typeof setTimeout> | undefined;

  constructor(
    host: HTMLElement,
    private readonly server: Server,
    private readonly lamp: Lamp,
    private readonly actions: BenchActions,
  ) {
    this.figures = new FiguresPanel(this.ledger, (formula, word) => {
      void this.explain(formula, word);
    });
    const redraw = (): void => {
      void this.draw();
    };
    const go = (line: number): void => {
      actions.go(line);
    };
    this.sheet = new DrawnPanel(
      'sheet',
      [
        { name: 'reader', label: 'For', options: READERS },
        { name: 'locale', label: 'In', options: LANGUAGES },
      ],
      redraw,
      go,
    );
    this.flow = new DrawnPanel(
      'flow',
      [{ name: 'view', label: 'Show', options: PICTURES }],
      redraw,
      go,
    );
    this.scaling = new ScalingPanel({
      ask: async (formula, target) => {
        const scaled = await server.run('kettlemark.scale', { ...this.about(), formula, target });
        if (!isScaled(scaled)) {
          throw new Error('the server gave no list to weigh by');
        }
        return scaled;
      },
      write: ({ edit }) => actions.apply(edit),
    });
    const pages: PageActions = {
      ask: async (command, argument) => {
        const page = await server.run(command, { ...this.about(), ...argument });
        return typeof page === 'string' ? page : JSON.stringify(page, undefined, 2);
      },
      knows: (command) => server.knows(command),
    };
    this.compare = PagesPanel.ofComparisons(pages);
    this.pages = PagesPanel.ofPages(pages);
    host.append(this.moves);
    this.tabs = new Tabs(host, 'Bench', [
      { id: 'figures', label: 'Figures', panel: this.figures.element, shown: () => undefined },
      { id: 'sheet', label: 'Sheet', panel: this.sheet.element, shown: redraw },
      { id: 'flow', label: 'Flow', panel: this.flow.element, shown: redraw },
      { id: 'scaling', label: 'Scale', panel: this.scaling.element, shown: () => undefined },
      { id: 'compare', label: 'Compare', panel: this.compare.element, shown: () => undefined },
      { id: 'pages', label: 'Pages', panel: this.pages.element, shown: () => undefined },
    ]);
    lamp.onChange(redraw);
  }

  /** A session has begun; what the server knows may differ from the last one. */
  connected(): void {
    this.compare.offer();
    this.pages.offer();
  }

  opened(): void {
    this.moves.textContent = '';
    this.refresh(false);
  }

  settled(): void {
    this.refresh(false);
  }

  moved(line: number): void {
    this.sheet.mark(line);
    this.flow.mark(line);
    clearTimeout(this.following);
    this.following = setTimeout(() => {
      this.refresh(false);
    }, 200);
  }

  /**
   * Asks for the figures anew.
   *
   * @param edited whether the text has changed, so that what moves is told
   */
  refresh(edited: boolean): void {
    const round = ++this.round;
    const place = this.actions.place();
    if (place === undefined) {
      return;
    }
    void this.server
      .run('kettlemark.figures', {
        uri: place.uri,
        position: { line: place.line, character: 0 },
      })
      .then(
        (answer) => {
          if (round === this.round && isFigures(answer)) {
            this.take(answer, place.dirty, edited);
          }
        },
        (refused: unknown) => {
          if (round === this.round) {
            this.figures.nothing(refused instanceof Error ? refused.message : String(refused));
            this.about_(undefined);
          }
        },
      );
  }

  async scale(): Promise<void> {
    this.tabs.show('scaling', true);
    return Promise.resolve();
  }

  async table(values: Readonly<Record<string, string>>): Promise<void> {
    this.tabs.show('pages');
    await this.pages.open('kettlemark.show', values);
  }

  async whatIf(values: Readonly<Record<string, string>>): Promise<void> {
    this.tabs.show('compare');
    await this.compare.open('kettlemark.whatIf', values);
  }

  async rule(rule: string): Promise<void> {
    const page = await this.server.run('kettlemark.explainRule', { rule });
    this.tabs.show('pages');
    this.pages.show(String(page));
  }

  /** Shows a page of the server by its address, such as an entry of the pantry. */
  async page(uri: string): Promise<void> {
    const { text } = await this.server.ask<{ text: string }>('workspace/textDocumentContent', {
      uri,
    });
    this.tabs.show('pages');
    this.pages.show(uri.endsWith('.md') ? text : `\`\`\`\n${text}\n\`\`\``);
  }

  private async explain(formula: string, value: string): Promise<void> {
    this.tabs.show('pages');
    await this.pages.open('kettlemark.explain', { formula, value });
  }

  private take(figures: Figures, dirty: boolean, edited: boolean): void {
    const moved = this.ledger.enter(figures, dirty);
    this.figures.show(figures);
    this.about_(figures);
    if (edited) {
      this.moves.textContent = moves(moved);
    }
    void this.draw();
  }

  private about_(figures: Figures | undefined): void {
    this.scaling.show(figures);
    this.compare.about(figures);
    this.pages.about(figures);
  }

  private about(): { uri: string } {
    return { uri: this.actions.place()?.uri ?? '' };
  }

  /** Draws what is seen; what is hidden is drawn when it is looked at. */
  private async draw(): Promise<void> {
    const place = this.actions.place();
    const { shown } = this.tabs;
    if (place === undefined || (shown !== 'sheet' && shown !== 'flow')) {
      return;
    }
    const panel = shown === 'sheet' ? this.sheet : this.flow;
    const drawing = await (shown === 'sheet' ? this.sheetOf(place) : this.flowOf(place));
    panel.show(drawing, this.lamp.theme);
    panel.mark(place.line);
  }

  private async sheetOf(place: Place): Promise<Drawing> {
    if (this.server.knows('kettlemark.preview')) {
      return this.preview(place, {
        view: 'sheet',
        reader: this.sheet.value('reader'),
        locale: this.sheet.value('locale'),
      });
    }
    return this.asked(async () => ({
      kind: 'markdown',
      markdown: String(await this.server.run('kettlemark.show', this.subject(place))),
    }));
  }

  private async flowOf(place: Place): Promise<Drawing> {
    const view = this.flow.value('view');
    if (this.server.knows('kettlemark.preview')) {
      return this.preview(place, { view });
    }
    return this.asked(async () => ({
      kind: 'svg',
      svg: String(await this.server.run('kettlemark.flow', { ...this.subject(place), kind: view })),
    }));
  }

  private preview(place: Place, how: Readonly<Record<string, string>>): Promise<Drawing> {
    return this.asked(async () => {
      const preview = await this.server.run('kettlemark.preview', {
        uri: place.uri,
        position: { line: place.line, character: 0 },
        ...how,
      });
      if (!isPreview(preview)) {
        throw new Error('the server gave nothing to show');
      }
      return { kind: 'preview', preview };
    });
  }

  private subject(place: Place): { uri: string; formula: string } {
    return { uri: place.uri, formula: this.figures.current?.formula ?? '' };
  }

  private async asked(work: () => Promise<Drawing>): Promise<Drawing> {
    try {
      return await work();
    } catch (refused) {
      return {
        kind: 'none',
        because: refused instanceof Error ? refused.message : String(refused),
      };
    }
  }
}
