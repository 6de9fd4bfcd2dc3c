/** Entry point of the extension: starts the server and registers the commands. */

import * as vscode from 'vscode';
import { Connection } from './client';
import { changes, explainRule, scale, show, whatIf } from './commands';
import { Pages } from './pages';
import { CLIENT_COMMANDS } from './protocol';

type Command = (connection: Connection, pages: Pages, argument: unknown) => Promise<void> | void;

const COMMANDS: Readonly<Record<string, Command>> = {
  [CLIENT_COMMANDS.askScale]: scale,
  [CLIENT_COMMANDS.openShow]: show,
  'kettlemark.explainRule.open': explainRule,
  'kettlemark.changes.open': changes,
  'kettlemark.whatIf.open': whatIf,
  'kettlemark.restartServer': (connection) => connection.restart(),
  'kettlemark.showOutput': (connection) => {
    connection.showOutput();
  },
};

let connection: Connection | undefined;

export async function activate(context: vscode.ExtensionContext): Promise<void> {
  const pages = new Pages();
  const opened = new Connection(
    context.extensionPath,
    context.asAbsolutePath('server/kettlemark.jar'),
  );
  connection = opened;
  context.subscriptions.push(pages, opened);
  for (const [name, run] of Object.entries(COMMANDS)) {
    context.subscriptions.push(
      vscode.commands.registerCommand(name, (argument: unknown) => run(opened, pages, argument)),
    );
  }
  await opened.restart();
}

export async function deactivate(): Promise<void> {
  await connection?.stop();
}
