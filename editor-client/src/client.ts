/** Owns the connection to the server: one at a time, started, stopped and renewed in order. */

import * as vscode from 'vscode';
import {
  DidChangeConfigurationNotification,
  ExecuteCommandRequest,
  LanguageClient,
  type LanguageClientOptions,
} from 'vscode-languageclient/node';
import { Config, NEEDS_RESTART, SECTION } from './config';
import { CLIENT_COMMANDS } from './protocol';
import { findJava, launchCommand, type LaunchCommand } from './server';

const OPEN_SETTINGS = 'Open Settings';
const TRY_AGAIN = 'Try Again';

export class Connection implements vscode.Disposable {
  private client: LanguageClient | undefined;
  private queue: Promise<void> = Promise.resolve();
  private readonly output = vscode.window.createOutputChannel('Kettlemark', { log: true });
  private readonly trace = vscode.window.createOutputChannel('Kettlemark Trace', { log: true });
  private readonly watcher = vscode.workspace.createFileSystemWatcher('**/*.kettle');
  private readonly owned = [
    this.output,
    this.trace,
    this.watcher,
    vscode.workspace.onDidChangeConfiguration((change) => {
      if (NEEDS_RESTART.some((name) => change.affectsConfiguration(`${SECTION}.${name}`))) {
        void this.restart();
      } else if (change.affectsConfiguration(SECTION)) {
        void this.inOrder(() => this.tellSettings());
      }
    }),
  ];

  /** `folder` is where the extension is installed; `jar` is the server in it. */
  constructor(
    private readonly folder: string,
    private readonly jar: string,
  ) {}

  /** Starts the server, or a new one in place of the old. */
  restart(): Promise<void> {
    return this.inOrder(async () => {
      await this.close();
      await this.open();
    });
  }

  stop(): Promise<void> {
    return this.inOrder(() => this.close());
  }

  /** The running client; undefined, said to the writer, when there is none. */
  running(): LanguageClient | undefined {
    if (this.client?.isRunning() !== true) {
      void vscode.window.showWarningMessage('The Kettlemark server is not running.');
      return undefined;
    }
    return this.client;
  }

  showOutput(): void {
    this.output.show();
  }

  dispose(): void {
    vscode.Disposable.from(...this.owned).dispose();
  }

  private async open(): Promise<void> {
    const config = settingsNow();
    const search = await findJava({
      javaHome: config.get('java.home'),
      environment: process.env,
      platform: process.platform,
    });
    if (search.kind === 'unusable') {
      this.output.error(search.message);
      void this.offerHelp(search.message);
      return;
    }
    const { program, origin, version } = search.java;
    this.output.info(`Java ${version.toString()} at ${program} (${origin})`);
    await this.connect(
      launchCommand(search.java, this.jar, config.get('server.jvmArguments')),
      config,
    );
  }

  private async connect(launch: LaunchCommand, config: Config): Promise<void> {
    const client = new LanguageClient(
      SECTION,
      'Kettlemark',
      // The server runs in the extension's folder, so that no workspace can put a file in its way.
      { command: launch.command, args: launch.args, options: { cwd: this.folder } },
      this.options(config),
    );
    this.client = client;
    try {
      await client.start();
    } catch (error) {
      // The client has shown the failure already; the next restart begins afresh.
      this.output.error(`The server did not start: ${String(error)}`);
    }
  }

  private options(config: Config): LanguageClientOptions {
    return {
      documentSelector: [
        { scheme: 'file', language: 'kettlemark' },
        { scheme: 'untitled', language: 'kettlemark' },
      ],
      // The server offers the commands of this client only to a client that names them.
      initializationOptions: { ...config.forServer(), commands: Object.values(CLIENT_COMMANDS) },
      outputChannel: this.output,
      traceOutputChannel: this.trace,
      synchronize: { fileEvents: this.watcher },
    };
  }

  /** Tells new settings to a server that is pushed to; one that asks for them is woken by it. */
  private async tellSettings(): Promise<void> {
    const settings = { [SECTION]: settingsNow().forServer() };
    if (this.client?.isRunning() === true) {
      await this.client.sendNotification(DidChangeConfigurationNotification.type, { settings });
    }
  }

  private async close(): Promise<void> {
    const client = this.client;
    this.client = undefined;
    if (client?.needsStop() === true) {
      await client.dispose();
    }
  }

  private async offerHelp(message: string): Promise<void> {
    const answer = await vscode.window.showErrorMessage(message, OPEN_SETTINGS, TRY_AGAIN);
    if (answer === OPEN_SETTINGS) {
      await vscode.commands.executeCommand('workbench.action.openSettings', `${SECTION}.java.home`);
    } else if (answer === TRY_AGAIN) {
      await this.restart();
    }
  }

  private inOrder(step: () => Promise<void>): Promise<void> {
    const result = this.queue.then(step);
    // A failed step is its caller's to report; the steps after it still run.
    this.queue = result.catch(() => undefined);
    return result;
  }
}

/** Runs a command of the server; a refusal is shown to the writer and gives undefined. */
export async function execute(
  client: LanguageClient,
  command: string,
  argument: object,
): Promise<unknown> {
  try {
    return await client.sendRequest(ExecuteCommandRequest.type, {
      command,
      arguments: [argument],
    });
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    void vscode.window.showErrorMessage(`Kettlemark: ${reason}`);
    return undefined;
  }
}

function settingsNow(): Config {
  return new Config(vscode.workspace.getConfiguration(SECTION));
}
