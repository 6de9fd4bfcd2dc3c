/** Shows the sheet, or a picture, of what is written on, beside the text and as the text stands. */

import { randomBytes } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import * as vscode from 'vscode';
import { ExecuteCommandRequest, type LanguageClient } from 'vscode-languageclient/node';
import type { Connection } from './client';
import { SECTION } from './config';
import { Latest, isWithin, type Line } from './follow';
import { t } from './l10n';
import { isFromPage, isKept, type Choice, type ToPage } from './previewMessages';
import { previewPage, viewTitle } from './previewPage';
import {
  SERVER_COMMANDS,
  isPreviewAnswer,
  type PreviewAnswer,
  type PreviewArgument,
  type PreviewView,
} from './protocol';

const TYPE = 'kettlemark.preview';

/** A burst of keys asks once. */
const PAUSE_MS = 120;

export const PREVIEW_COMMANDS: Readonly<Record<string, PreviewView>> = {
  'kettlemark.preview.open': 'sheet',
  'kettlemark.preview.openFlow': 'flow',
};

export class Previews implements vscode.WebviewPanelSerializer, vscode.Disposable {
  private preview: Preview | undefined;
  private readonly serializer = vscode.window.registerWebviewPanelSerializer(TYPE, this);

  /** `script` is the file with the program of the page. */
  constructor(
    private readonly connection: Connection,
    private readonly script: string,
  ) {}

  async open(view: PreviewView): Promise<void> {
    if (this.preview !== undefined) {
      this.preview.reveal(view);
      return;
    }
    const panel = vscode.window.createWebviewPanel(
      TYPE,
      viewTitle(view),
      { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
      { enableFindWidget: true },
    );
    await this.fill(panel, { view }, whereTheWriterIs());
  }

  async deserializeWebviewPanel(panel: vscode.WebviewPanel, state: unknown): Promise<void> {
    this.preview?.dispose();
    if (isKept(state)) {
      const at = { uri: vscode.Uri.parse(state.uri, true), name: state.name };
      await this.fill(panel, state.choice, at);
    } else {
      await this.fill(panel, { view: 'sheet' }, whereTheWriterIs());
    }
  }

  dispose(): void {
    this.preview?.dispose();
    this.serializer.dispose();
  }

  private async fill(
    panel: vscode.WebviewPanel,
    choice: Choice,
    at: Subject | undefined,
  ): Promise<void> {
    const preview = new Preview(panel, this.connection, choice, at);
    this.preview = preview;
    panel.onDidDispose(() => {
      preview.dispose();
      if (this.preview === preview) {
        this.preview = undefined;
      }
    });
    preview.begin(await readFile(this.script, 'utf8'));
  }
}

/** What is shown: what stands at a position, or has a name. */
interface Subject {
  readonly uri: vscode.Uri;
  readonly position?: vscode.Position;
  readonly name?: string;
}

interface Shown {
  readonly uri: vscode.Uri;
  readonly answer: PreviewAnswer;
}

class Preview implements vscode.Disposable {
  private readonly latest = new Latest();
  private asking = new vscode.CancellationTokenSource();
  private timer: NodeJS.Timeout | undefined;
  private shown: Shown | undefined;
  private readonly owned: readonly { dispose(): unknown }[];

  constructor(
    private readonly panel: vscode.WebviewPanel,
    private readonly connection: Connection,
    private choice: Choice,
    private subject: Subject | undefined,
  ) {
    this.owned = [
      panel,
      panel.webview.onDidReceiveMessage((message: unknown) => this.hear(message)),
      panel.onDidChangeViewState(() => {
        this.refreshSoon();
      }),
      vscode.window.onDidChangeActiveTextEditor((editor) => {
        this.follow(editor);
      }),
      vscode.window.onDidChangeTextEditorSelection(({ textEditor }) => {
        if (textEditor === vscode.window.activeTextEditor) {
          this.follow(textEditor);
        }
      }),
      vscode.workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
        if (isOurs(document) && contentChanges.length > 0) {
          this.refreshSoon();
        }
      }),
      connection.onDidChange(() => {
        this.refreshSoon();
      }),
    ];
  }

  begin(script: string): void {
    const { webview } = this.panel;
    webview.options = { enableScripts: true, localResourceRoots: [] };
    webview.html = previewPage(randomBytes(18).toString('hex'), script, vscode.env.language);
  }

  reveal(view: PreviewView): void {
    this.choice = { ...this.choice, view };
    this.subject = whereTheWriterIs() ?? this.subject;
    this.panel.reveal(undefined, true);
    this.refreshSoon();
  }

  dispose(): void {
    this.latest.forget();
    this.asking.cancel();
    clearTimeout(this.timer);
    vscode.Disposable.from(...this.owned).dispose();
  }

  private async hear(message: unknown): Promise<void> {
    if (!isFromPage(message)) {
      return;
    }
    switch (message.kind) {
      case 'ready':
        // A page that was hidden begins anew.
        await this.refresh();
        break;
      case 'choose':
        this.choice = message.choice;
        await this.refresh();
        break;
      case 'go':
        await this.go(message.to);
        break;
    }
  }

  /** Within one section nothing new is to be asked: the page itself marks the line. */
  private follow(editor: vscode.TextEditor | undefined): void {
    if (editor === undefined || !isOurs(editor.document)) {
      return;
    }
    const { uri } = editor.document;
    const { active } = editor.selection;
    this.subject = { uri, position: active };
    const isSame = this.shown?.uri.toString() === uri.toString();
    const { first, last } = this.shown?.answer ?? {};
    if (isSame && isWithin(active.line, first, last)) {
      void this.tell({ kind: 'cursor', cursor: this.lineOf(this.subject) });
    } else {
      this.refreshSoon();
    }
  }

  private refreshSoon(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.refresh(), PAUSE_MS);
  }

  private async refresh(): Promise<void> {
    clearTimeout(this.timer);
    const isLatest = this.latest.begin();
    this.asking.cancel();
    const asking = (this.asking = new vscode.CancellationTokenSource());
    const { subject, choice } = this;
    const client = this.connection.present();
    if (client === undefined || subject === undefined) {
      await this.tell({ kind: 'old', status: this.reason(subject) });
      return;
    }
    let found: Shown | undefined;
    try {
      found = await this.found(client, subject, choice, asking.token);
    } catch (error) {
      if (isLatest()) {
        const reason = error instanceof Error ? error.message : String(error);
        await this.tell({ kind: 'old', status: t('This may be old: {0}', reason) });
      }
      return;
    }
    if (!isLatest() || found === undefined) {
      return;
    }
    if (isStale(found)) {
      this.refreshSoon();
      return;
    }
    await this.show(client, found, subject, choice);
  }

  /** Where nothing of a sheet stands, what was shown stays and tells what the text there makes of it. */
  private async found(
    client: LanguageClient,
    subject: Subject,
    choice: Choice,
    token: vscode.CancellationToken,
  ): Promise<Shown | undefined> {
    const at = await ask(client, subject, choice, token);
    const before = this.shown;
    if (at?.answer.name === '' && before !== undefined && before.answer.name !== '') {
      const kept = { uri: before.uri, name: before.answer.name };
      const again = await ask(client, kept, choice, token);
      return again === undefined || again.answer.name === '' ? at : again;
    }
    return at;
  }

  private async show(
    client: LanguageClient,
    found: Shown,
    subject: Subject,
    choice: Choice,
  ): Promise<void> {
    this.shown = found;
    const { answer } = found;
    this.panel.title = answer.title === '' ? viewTitle(choice.view) : answer.title;
    await this.tell({
      kind: 'show',
      uri: client.code2ProtocolConverter.asUri(found.uri),
      answer,
      choice,
      cursor: this.lineOf(subject),
      status: statusOf(answer),
    });
  }

  private lineOf({ uri, position }: Subject): Line {
    const client = this.connection.present();
    const spelled = client?.code2ProtocolConverter.asUri(uri) ?? uri.toString();
    return { uri: spelled, line: position?.line ?? -1 };
  }

  private reason(subject: Subject | undefined): string {
    return subject === undefined
      ? t('Open a text of a library to see its sheet.')
      : t('The server is not running; what you see may be old.');
  }

  private async go(to: Line): Promise<void> {
    const uri = vscode.Uri.parse(to.uri, true);
    const open = vscode.window.visibleTextEditors.find(
      ({ document }) => document.uri.toString() === uri.toString(),
    );
    const document = open?.document ?? (await vscode.workspace.openTextDocument(uri));
    const line = document.lineAt(Math.min(Math.max(to.line, 0), document.lineCount - 1));
    const start = new vscode.Position(line.lineNumber, line.firstNonWhitespaceCharacterIndex);
    await vscode.window.showTextDocument(document, {
      viewColumn: open?.viewColumn ?? vscode.ViewColumn.One,
      selection: new vscode.Range(start, start),
    });
  }

  private async tell(message: ToPage): Promise<void> {
    await this.panel.webview.postMessage(message);
  }
}

async function ask(
  client: LanguageClient,
  { uri, position, name }: Subject,
  { view, reader, locale }: Choice,
  token: vscode.CancellationToken,
): Promise<Shown | undefined> {
  const argument: PreviewArgument = {
    uri: client.code2ProtocolConverter.asUri(uri),
    view,
    ...(position && { position: client.code2ProtocolConverter.asPosition(position) }),
    ...(name !== undefined && { name }),
    ...(reader && { reader }),
    ...(locale !== undefined && { locale }),
  };
  const answer: unknown = await client.sendRequest(
    ExecuteCommandRequest.type,
    { command: SERVER_COMMANDS.preview, arguments: [argument] },
    token,
  );
  return isPreviewAnswer(answer) ? { uri, answer } : undefined;
}

/** The title of a picture says what kind of picture it is. */
function statusOf({ name, title, view }: PreviewAnswer): string {
  if (name === '') {
    return '';
  }
  return view === 'sheet'
    ? t('Sheet: {0}, as the text stands', title)
    : t('{0}, as the text stands', title);
}

/** Whether the text has changed since the server looked at it. */
function isStale({ uri, answer }: Shown): boolean {
  const open = vscode.workspace.textDocuments.find((one) => one.uri.toString() === uri.toString());
  return open !== undefined && answer.version !== undefined && open.version !== answer.version;
}

function whereTheWriterIs(): Subject | undefined {
  const editor =
    vscode.window.activeTextEditor ??
    vscode.window.visibleTextEditors.find(({ document }) => isOurs(document));
  return editor && isOurs(editor.document)
    ? { uri: editor.document.uri, position: editor.selection.active }
    : undefined;
}

function isOurs(document: vscode.TextDocument): boolean {
  return document.languageId === SECTION;
}
