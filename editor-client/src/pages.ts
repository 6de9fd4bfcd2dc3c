/** Shows Markdown that the server wrote, in a read-only preview beside the text. */

import * as vscode from 'vscode';

/** Not the scheme of the server's own pages: the editor would ask the server for ours. */
const SCHEME = 'kettlemark-report';

export class Pages implements vscode.TextDocumentContentProvider, vscode.Disposable {
  private readonly texts = new Map<string, string>();
  private readonly changed = new vscode.EventEmitter<vscode.Uri>();
  private readonly owned: readonly { dispose(): unknown }[];

  readonly onDidChange = this.changed.event;

  constructor() {
    this.owned = [
      this.changed,
      vscode.workspace.registerTextDocumentContentProvider(SCHEME, this),
      vscode.workspace.onDidCloseTextDocument(({ uri }) => this.texts.delete(uri.toString())),
    ];
  }

  /** Opens a page, or renews it when a page of this title is open already. */
  async show(title: string, markdown: string): Promise<void> {
    const uri = vscode.Uri.from({ scheme: SCHEME, path: `/${title.replace(/[\\/]/g, '-')}.md` });
    this.texts.set(uri.toString(), markdown);
    this.changed.fire(uri);
    await vscode.commands.executeCommand('markdown.showPreviewToSide', uri);
  }

  provideTextDocumentContent(uri: vscode.Uri): string {
    return this.texts.get(uri.toString()) ?? '';
  }

  dispose(): void {
    vscode.Disposable.from(...this.owned).dispose();
  }
}
