/** Asks the server for all that is shown of a text, shortly after each edit; only the latest answer counts. */

import { LSPPlugin } from '@codemirror/lsp-client';
import { ViewPlugin, type EditorView, type ViewUpdate } from '@codemirror/view';
import type {
  CodeLens,
  Command,
  Diagnostic,
  FoldingRange,
  InlayHint,
  SemanticTokens,
} from 'vscode-languageserver-protocol';
import { positionOf } from './edits';
import { foldEffect, hintEffect, lensEffect, tokenEffect } from './marks';
import type { Server } from './server';
import { tokensOf } from './tokens';

/** After the last key of a burst; answers are there before the hand is off the keyboard. */
const AFTER_EDIT = 120;
const AFTER_SCROLL = 60;
/** The whole folder's findings follow when the writer pauses. */
const AFTER_PAUSE = 700;

export interface AskingEvents {
  /** Something was written; what is asked from now on is about another text. */
  written(): void;
  /** The writer rests; figures and drawings are out of date. */
  edited(): void;
  /** The cursor is on another line. */
  moved(line: number): void;
  findings(view: EditorView, diagnostics: readonly Diagnostic[]): void;
  folderFindings(): void;
  run(command: Command): void;
}

export class Asking {
  private timer: ReturnType<typeof setTimeout> | undefined;
  private scroll: ReturnType<typeof setTimeout> | undefined;
  private pause: ReturnType<typeof setTimeout> | undefined;
  private line = -1;

  constructor(
    private readonly server: Server,
    private readonly events: AskingEvents,
  ) {}

  extension(): ViewPlugin<object> {
    const hear = (update: ViewUpdate): void => {
      this.hear(update);
    };
    return ViewPlugin.define(() => ({ update: hear }));
  }

  /** Asks for everything anew; an edit that waits for the writer to rest is told of all the same. */
  all(view: EditorView): void {
    void this.text(view);
    void this.seen(view);
    this.later();
  }

  private hear(update: ViewUpdate): void {
    const { view } = update;
    if (update.docChanged) {
      this.events.written();
      clearTimeout(this.timer);
      this.timer = setTimeout(() => {
        this.events.edited();
        this.all(view);
      }, AFTER_EDIT);
    } else if (update.viewportChanged) {
      clearTimeout(this.scroll);
      this.scroll = setTimeout(() => {
        void this.seen(view);
      }, AFTER_SCROLL);
    }
    const line = update.state.doc.lineAt(update.state.selection.main.head).number - 1;
    if (line !== this.line) {
      this.line = line;
      this.events.moved(line);
    }
  }

  private later(): void {
    clearTimeout(this.pause);
    this.pause = setTimeout(() => {
      this.events.folderFindings();
    }, AFTER_PAUSE);
  }

  /** What is about the whole text. */
  private async text(view: EditorView): Promise<void> {
    const textDocument = identifier(view);
    if (textDocument === undefined) {
      return;
    }
    const { doc } = view.state;
    const fresh = (): boolean => view.state.doc === doc;
    await Promise.allSettled([
      this.server
        .ask<{ items?: Diagnostic[] }>('textDocument/diagnostic', { textDocument })
        .then(({ items }) => {
          if (fresh()) {
            this.events.findings(view, items ?? []);
          }
        }),
      this.server
        .ask<CodeLens[] | null>('textDocument/codeLens', { textDocument })
        .then((lenses) => {
          if (fresh()) {
            view.dispatch({
              effects: lensEffect(doc, lenses ?? [], (command) => {
                this.events.run(command);
              }),
            });
          }
        }),
      this.server
        .ask<FoldingRange[] | null>('textDocument/foldingRange', { textDocument })
        .then((ranges) => {
          if (fresh()) {
            view.dispatch({ effects: foldEffect(ranges ?? []) });
          }
        }),
    ]);
  }

  /** What is only needed where the text is seen; a long text costs no more than a short one. */
  private async seen(view: EditorView): Promise<void> {
    const textDocument = identifier(view);
    if (textDocument === undefined) {
      return;
    }
    const { doc } = view.state;
    const { from, to } = view.viewport;
    const range = { start: positionOf(doc, from), end: positionOf(doc, to) };
    const fresh = (): boolean => view.state.doc === doc;
    await Promise.allSettled([
      this.server
        .ask<SemanticTokens | null>('textDocument/semanticTokens/range', { textDocument, range })
        .then((tokens) => {
          if (fresh()) {
            view.dispatch({
              effects: tokenEffect(tokensOf(doc, tokens?.data ?? [], this.server.legend)),
            });
          }
        }),
      this.server
        .ask<InlayHint[] | null>('textDocument/inlayHint', { textDocument, range })
        .then((hints) => {
          if (fresh()) {
            view.dispatch({ effects: hintEffect(doc, hints ?? []) });
          }
        }),
    ]);
  }
}

function identifier(view: EditorView): { uri: string } | undefined {
  const plugin = LSPPlugin.get(view);
  return plugin === null ? undefined : { uri: plugin.uri };
}
