/** Owns the connection to the server: one at a time, started, stopped and renewed in order. */

import * as vscode from 'vscode';
import {
  CloseAction,
  DidChangeConfigurationNotification,
  ErrorAction,
  ExecuteCommandRequest,
  State,
  type ErrorHandler,
  type LanguageClient,
  type LanguageClientOptions,
} from 'vscode-languageclient/node';
import { archiveArguments, archiveOf, prepare } from './archive';
import { CalmClient } from './calmClient';
import { Config, NEEDS_RESTART, SECTION } from './config';
import { CLIENT_COMMANDS } from './protocol';
import { Crashes } from './crashes';
import { t } from './l10n';
import { findJava, launchCommand, type Java, type JavaSearch, type LaunchCommand } from './server';
import { Status } from './status';

/** This many messages that cannot be read or written are passed over. */
const MOST_GARBLED = 3;

export class Connection implements vscode.Disposable {
  private client: LanguageClient | undefined;
  private queue: Promise<void> = Promise.resolve();
  private readonly output = vscode.window.createOutputChannel('Kettlemark', { log: true });
  private readonly trace = vscode.window.createOutputChannel('Kettlemark Trace', { log: true });
  private readonly watcher = vscode.workspace.createFileSystemWatcher('**/*.kettle');
  private readonly status = new Status(this.watcher);
  private readonly crashes = new Crashes();
  private readonly changed = new vscode.EventEmitter<void>();

  /** The server has come or gone. */
  readonly onDidChange = this.changed.event;

  private readonly owned = [
    this.changed,
    this.output,
    this.trace,
    this.status,
    this.watcher,
    vscode.workspace.onDidChangeConfiguration((change) => {
      if (NEEDS_RESTART.some((name) => change.affectsConfiguration(`${SECTION}.${name}`))) {
        void this.restart();
      } else if (change.affectsConfiguration(SECTION)) {
        void this.inOrder(() => this.tellSettings());
      }
    }),
  ];

  /**
   * `folder` is where the extension is installed; `jar` is the server in it; `kept` is where the
   * extension may keep what it can make again.
   */
  constructor(
    private readonly folder: string,
    private readonly jar: string,
    private readonly kept: string,
  ) {}

  /** Starts the server, or a new one in place of the old. */
  restart(): Promise<void> {
    this.crashes.forget();
    return this.inOrder(async () => {
      await this.close();
      await this.open();
    });
  }

  stop(): Promise<void> {
    return this.inOrder(() => this.close());
  }

  /** The running client; undefined when there is none. */
  present(): LanguageClient | undefined {
    return this.client?.isRunning() === true ? this.client : undefined;
  }

  /** The running client; undefined, said to the writer, when there is none. */
  running(): LanguageClient | undefined {
    const client = this.present();
    if (client === undefined) {
      void vscode.window.showWarningMessage(t('The Kettlemark server is not running.'));
    }
    return client;
  }

  showOutput(): void {
    this.output.show();
  }

  /** What can be done about the server, from the menu of its status. */
  async showMenu(): Promise<void> {
    const restart = t('Restart Server');
    const show = t('Show Output');
    const trace = t('Show Trace');
    const choice = await vscode.window.showQuickPick([show, restart, trace], {
      title: t('Kettlemark server'),
    });
    if (choice === restart) {
      await this.restart();
    } else if (choice === show) {
      this.showOutput();
    } else if (choice === trace) {
      this.trace.show();
    }
  }

  dispose(): void {
    vscode.Disposable.from(...this.owned).dispose();
  }

  private async open(): Promise<void> {
    const config = settingsNow();
    this.status.tell({ kind: 'starting' });
    const search = await javaNow();
    if (search.kind === 'unusable') {
      this.status.tell({ kind: 'failed', reason: search.message });
      this.output.error(search.message);
      void this.offerHelp(search.message);
      return;
    }
    const { program, origin, version } = search.java;
    this.output.info(`Java ${version.toString()} at ${program} (${origin})`);
    const archive = archiveOf(this.kept, search.java, this.jar);
    const machine = [
      ...config.get('server.jvmArguments'),
      ...archiveArguments(search.java, archive),
    ];
    await this.connect(
      launchCommand(search.java, this.jar, machine),
      config,
      t('Java {0} at {1}', version.toString(), program),
    );
    void this.prepareNext(search.java, archive);
  }

  /** The next start is faster; this one must not wait for it. */
  private async prepareNext(java: Java, archive: string): Promise<void> {
    const isMade = await prepare(java, this.jar, archive).catch(() => false);
    if (!isMade) {
      this.output.info('This Java makes no archive of classes; the server starts without one.');
    }
  }

  private async connect(launch: LaunchCommand, config: Config, java: string): Promise<void> {
    const client = new CalmClient(
      SECTION,
      'Kettlemark',
      // The server runs in the extension's folder, so that no workspace can put a file in its way.
      { command: launch.command, args: launch.args, options: { cwd: this.folder } },
      this.options(config),
    );
    this.client = client;
    client.onDidChangeState(({ newState }) => {
      // A client that was replaced has nothing more to say.
      if (this.client === client) {
        this.tellState(newState, java);
      }
    });
    try {
      await client.start();
    } catch (error) {
      this.status.tell({ kind: 'failed', reason: String(error) });
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
      errorHandler: this.errorHandler(),
    };
  }

  private tellState(state: State, java: string): void {
    this.changed.fire();
    if (state === State.Running) {
      this.status.tell({ kind: 'running', java });
    } else if (state === State.Starting) {
      this.status.tell({ kind: 'starting' });
    } else {
      this.status.tell({ kind: 'stopped' });
    }
  }

  private errorHandler(): ErrorHandler {
    return {
      // What is passed over stands in the log; only what ends the server is shown.
      error: (_error, _message, count) =>
        (count ?? 0) <= MOST_GARBLED
          ? { action: ErrorAction.Continue, handled: true }
          : { action: ErrorAction.Shutdown },
      closed: () => {
        if (this.crashes.mayRestart()) {
          this.output.warn('The server ended by itself and is started again.');
          return { action: CloseAction.Restart, handled: true };
        }
        const reason = t('The Kettlemark server keeps ending by itself and is not started again.');
        this.status.tell({ kind: 'failed', reason });
        void this.offerRestart(reason);
        return { action: CloseAction.DoNotRestart, handled: true };
      },
    };
  }

  private async offerRestart(message: string): Promise<void> {
    const restart = t('Restart Server');
    const show = t('Show Output');
    const answer = await vscode.window.showErrorMessage(message, restart, show);
    if (answer === restart) {
      await this.restart();
    } else if (answer === show) {
      this.showOutput();
    }
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
    this.status.tell({ kind: 'stopped' });
    if (client?.needsStop() === true) {
      await client.dispose();
    }
  }

  private async offerHelp(message: string): Promise<void> {
    const openSettings = t('Open Settings');
    const tryAgain = t('Try Again');
    const answer = await vscode.window.showErrorMessage(message, openSettings, tryAgain);
    if (answer === openSettings) {
      await vscode.commands.executeCommand('workbench.action.openSettings', `${SECTION}.java.home`);
    } else if (answer === tryAgain) {
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

/** The Java runtime that the settings and the machine offer now. */
export function javaNow(): Promise<JavaSearch> {
  return findJava({
    javaHome: settingsNow().get('java.home'),
    environment: process.env,
    platform: process.platform,
  });
}

function settingsNow(): Config {
  return new Config(vscode.workspace.getConfiguration(SECTION));
}
