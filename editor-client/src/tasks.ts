/** The task `kettlemark: check library`: the terminal's checker, with its findings as problems. */

import * as vscode from 'vscode';
import { SECTION } from './config';
import { t } from './l10n';
import { checkCommand, type Java } from './server';

const MATCHER = '$kettlemark';

interface CheckTask extends vscode.TaskDefinition {
  /** Folder to check, from the workspace folder; the workspace folder itself if not given. */
  readonly folder?: string;
}

export class CheckTasks implements vscode.TaskProvider {
  constructor(
    private readonly jar: string,
    private readonly java: () => Promise<Java | undefined>,
  ) {}

  async provideTasks(): Promise<vscode.Task[]> {
    const java = await this.java();
    const folders = vscode.workspace.workspaceFolders ?? [];
    return java === undefined
      ? []
      : folders.map((folder) => this.task({ type: SECTION }, folder, java));
  }

  async resolveTask(task: vscode.Task): Promise<vscode.Task | undefined> {
    const java = await this.java();
    const scope = isFolder(task.scope) ? task.scope : vscode.workspace.workspaceFolders?.[0];
    return java === undefined || scope === undefined
      ? undefined
      : this.task(task.definition, scope, java);
  }

  private task(definition: CheckTask, folder: vscode.WorkspaceFolder, java: Java): vscode.Task {
    const { command, args } = checkCommand(java, this.jar, definition.folder ?? '.');
    const task = new vscode.Task(
      definition,
      folder,
      t('check library'),
      SECTION,
      new vscode.ProcessExecution(command, args, { cwd: folder.uri.fsPath }),
      MATCHER,
    );
    task.group = vscode.TaskGroup.Test;
    task.presentationOptions = { reveal: vscode.TaskRevealKind.Silent, clear: true };
    return task;
  }
}

function isFolder(scope: vscode.Task['scope']): scope is vscode.WorkspaceFolder {
  return typeof scope === 'object';
}
