/** Entry point of the extension: starts the server and registers the commands. */

import * as vscode from 'vscode';
import { Connection, javaNow } from './client';
import { changes, compare, explainRule, formulaPage, scale, used, whatIf } from './commands';
import { SECTION } from './config';
import { t, useTranslator } from './l10n';
import { Pages } from './pages';
import { CLIENT_COMMANDS, SERVER_COMMANDS } from './protocol';
import { PREVIEW_COMMANDS, Previews } from './preview';
import { openSamples } from './samples';
import type { Java } from './server';
import { MENU_COMMAND } from './status';
import { CheckTasks } from './tasks';

type Command = (connection: Connection, pages: Pages, argument: unknown) => Promise<void> | void;

const COMMANDS: Readonly<Record<string, Command>> = {
  [CLIENT_COMMANDS.askScale]: scale,
  [CLIENT_COMMANDS.openShow]: formulaPage(SERVER_COMMANDS.show, (formula) => formula),
  'kettlemark.explain.open': formulaPage(SERVER_COMMANDS.explain, (formula) =>
    t('How the figures of {0} came about', formula),
  ),
  'kettlemark.label.open': formulaPage(SERVER_COMMANDS.label, (formula) =>
    t('Label of {0}', formula),
  ),
  'kettlemark.trials.open': formulaPage(SERVER_COMMANDS.trials, (formula) =>
    t('Trials of {0}', formula),
  ),
  'kettlemark.used.open': used,
  'kettlemark.explainRule.open': explainRule,
  'kettlemark.changes.open': changes,
  [CLIENT_COMMANDS.openWhatIf]: whatIf,
  [CLIENT_COMMANDS.openCompare]: compare,
  'kettlemark.restartServer': (connection) => connection.restart(),
  'kettlemark.showOutput': (connection) => {
    connection.showOutput();
  },
  [MENU_COMMAND]: (connection) => connection.showMenu(),
};

let connection: Connection | undefined;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  useTranslator((message, ...values) => vscode.l10n.t(message, ...values));
  const pages = new Pages();
  const jar = context.asAbsolutePath('server/kettlemark.jar');
  const opened = new Connection(context.extensionPath, jar, context.globalStorageUri.fsPath);
  connection = opened;
  context.subscriptions.push(
    pages,
    opened,
    vscode.tasks.registerTaskProvider(SECTION, new CheckTasks(jar, usableJava)),
    ...previews(context, opened),
    vscode.commands.registerCommand('kettlemark.openSamples', () =>
      openSamples(context.extensionUri),
    ),
  );
  for (const [name, run] of Object.entries(COMMANDS)) {
    context.subscriptions.push(
      vscode.commands.registerCommand(name, (argument: unknown) => run(opened, pages, argument)),
    );
  }
  await opened.restart();
}

function previews(context: vscode.ExtensionContext, opened: Connection): { dispose(): unknown }[] {
  const shown = new Previews(opened, context.asAbsolutePath('dist/preview.js'));
  const commands = Object.entries(PREVIEW_COMMANDS).map(([name, view]) =>
    vscode.commands.registerCommand(name, () => shown.open(view)),
  );
  return [shown, ...commands];
}

async function usableJava(): Promise<Java | undefined> {
  const search = await javaNow();
  return search.kind === 'found' ? search.java : undefined;
}

export async function deactivate(): Promise<void> {
  await connection?.stop();
}
