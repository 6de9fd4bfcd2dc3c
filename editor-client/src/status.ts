/** Tells beside the language's name how the server is and what it finds; a click leads on. */

import * as vscode from 'vscode';
import { SECTION } from './config';
import { t } from './l10n';

export type ServerState =
  | { readonly kind: 'starting' }
  | { readonly kind: 'running'; readonly java: string }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly reason: string };

export const MENU_COMMAND = 'kettlemark.serverMenu';

export class Status implements vscode.Disposable {
  private readonly server = item('server', t('Kettlemark server'));
  private readonly library = item('library', t('Kettlemark library'));
  private readonly owned: readonly { dispose(): unknown }[];
  private counting: Promise<void> = Promise.resolve();

  constructor(watcher: vscode.FileSystemWatcher) {
    this.server.command = { command: MENU_COMMAND, title: t('Server') };
    this.library.command = { command: 'workbench.actions.view.problems', title: t('Findings') };
    const recount = (): void => {
      this.counting = this.counting.then(() => this.count());
    };
    this.owned = [
      this.server,
      this.library,
      watcher.onDidCreate(recount),
      watcher.onDidDelete(recount),
      vscode.languages.onDidChangeDiagnostics(recount),
    ];
    this.tell({ kind: 'stopped' });
    recount();
  }

  tell(state: ServerState): void {
    this.server.busy = state.kind === 'starting';
    this.server.severity =
      state.kind === 'failed'
        ? vscode.LanguageStatusSeverity.Error
        : vscode.LanguageStatusSeverity.Information;
    this.server.text = textOf(state);
    this.server.detail = detailOf(state);
  }

  dispose(): void {
    vscode.Disposable.from(...this.owned).dispose();
  }

  private async count(): Promise<void> {
    const files = await vscode.workspace.findFiles('**/*.kettle', undefined, MOST_COUNTED);
    const findings = vscode.languages
      .getDiagnostics()
      .flatMap(([, list]) => list)
      .filter(({ source }) => source === SECTION);
    const number = (severity: vscode.DiagnosticSeverity): string =>
      findings.filter((finding) => finding.severity === severity).length.toString();
    this.library.text = t('{0} files', files.length.toString());
    this.library.detail = t(
      '{0} errors, {1} warnings',
      number(vscode.DiagnosticSeverity.Error),
      number(vscode.DiagnosticSeverity.Warning),
    );
  }
}

/** A count beyond this would only cost time. */
const MOST_COUNTED = 10_000;

function item(id: string, name: string): vscode.LanguageStatusItem {
  const made = vscode.languages.createLanguageStatusItem(`${SECTION}.${id}`, {
    language: SECTION,
  });
  made.name = name;
  return made;
}

function textOf(state: ServerState): string {
  switch (state.kind) {
    case 'starting':
      return t('Server is starting');
    case 'running':
      return t('Server is running');
    case 'stopped':
      return t('Server is stopped');
    case 'failed':
      return t('Server is not running');
  }
}

function detailOf(state: ServerState): string {
  switch (state.kind) {
    case 'running':
      return state.java;
    case 'failed':
      return state.reason;
    case 'starting':
    case 'stopped':
      return '';
  }
}
