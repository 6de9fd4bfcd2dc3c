/** The right-hand side: figures, sheet, flow, scaling, comparison and pages of the formula at the cursor. */

import type { WorkspaceEdit, WorkspaceSymbol } from 'vscode-languageserver-protocol';
import { Latest, type Line } from '../../src/follow';
import { h } from './dom';
import { DrawnPanel, isPreview } from './drawn';
import { FiguresPanel, Ledger, isFigures, moves, type Figures } from './figures';
import type { Lamp } from './lamp';
import { LANGUAGES } from './languages';
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
  go(to: Line): void;
}

const READERS = [
  { value: '', label: 'Whom the text names' },
  { value: 'chef', label: 'Chef' },
  { value: 'home', label: 'Home cook' },
  { value: 'production', label: 'Production' },
  { value: 'bench', label: 'Bench card' },
];

const LOCALES = [{ value: '', label: 'As the text says' }, ...LANGUAGES];

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
  private readonly drawing = new Latest();
  private round = 0;
  /** How often something was written, and how much of that has been told. */
  private edits = 0;
  private told = 0;
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
    const go = (to: Line): void => {
      actions.go(to);
    };
    this.sheet = new DrawnPanel(
      'sheet',
      [
        { name: 'reader', label: 'For', options: READERS },
        { name: 'locale', label: 'In', options: LOCALES },
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
      formulas: async () => {
        const symbols = await server.ask<WorkspaceSymbol[] | null>('workspace/symbol', {
          query: '',
        });
        return (symbols ?? []).filter(isFormula).map(({ name }) => name);
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
    this.told = this.edits;
    this.refresh();
  }

  /** The text is another one now; its figures are asked for when the writer rests, and not before. */
  written(): void {
    this.edits++;
    clearTimeout(this.following);
  }

  moved(line: number): void {
    const uri = this.actions.place()?.uri;
    if (uri !== undefined) {
      this.sheet.mark({ uri, line });
      this.flow.mark({ uri, line });
    }
    clearTimeout(this.following);
    this.following = setTimeout(() => {
      this.refresh();
    }, 200);
  }

  /** Asks for the figures anew. Whoever asks first after an edit tells what has moved with it. */
  refresh(): void {
    const round = ++this.round;
    const { edits } = this;
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
            this.take(answer, place.dirty, edits);
          }
        },
        (refused: unknown) => {
          if (round === this.round) {
            this.figures.nothing(refused instanceof Error ? refused.message : String(refused));
            this.about_(undefined);
            void this.draw();
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

  private take(figures: Figures, dirty: boolean, edits: number): void {
    const moved = this.ledger.enter(figures, dirty);
    this.figures.show(figures);
    this.about_(figures);
    if (edits > this.told) {
      this.told = edits;
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
    const isLast = this.drawing.begin();
    const panel = shown === 'sheet' ? this.sheet : this.flow;
    try {
      const preview = await this.server.run('kettlemark.preview', {
        uri: place.uri,
        position: { line: place.line, character: 0 },
        view: shown === 'sheet' ? 'sheet' : panel.value('view'),
        reader: panel.value('reader'),
        locale: panel.value('locale'),
      });
      if (!isPreview(preview)) {
        throw new Error('the server gave nothing to show');
      }
      if (isLast()) {
        panel.show(preview, place.uri, this.lamp.theme);
        panel.mark(place);
      }
    } catch (refused) {
      if (isLast()) {
        panel.nothing(refused instanceof Error ? refused.message : String(refused));
      }
    }
  }
}

/** As the protocol numbers its kinds: the server tells a formula as a class, a variant as an interface. */
const CLASS = 5;
const INTERFACE = 11;

function isFormula({ kind }: WorkspaceSymbol): boolean {
  return kind === CLASS || kind === INTERFACE;
}
