/** Copies the sample library to a folder of the writer's choice and opens it there. */

import * as vscode from 'vscode';
import { t } from './l10n';

const NAME = 'kettlemark-samples';

export async function openSamples(extension: vscode.Uri): Promise<void> {
  const [parent] =
    (await vscode.window.showOpenDialog({
      canSelectFiles: false,
      canSelectFolders: true,
      title: t('Where shall the samples go?'),
      openLabel: t('Put the samples here'),
    })) ?? [];
  if (parent === undefined) {
    return;
  }
  const folder = vscode.Uri.joinPath(parent, NAME);
  try {
    // What lies there already may have been worked on, so it is never written over.
    await vscode.workspace.fs.copy(vscode.Uri.joinPath(extension, 'samples'), folder, {
      overwrite: false,
    });
  } catch (error) {
    if (!(error instanceof vscode.FileSystemError && error.code === 'FileExists')) {
      const reason = error instanceof Error ? error.message : String(error);
      void vscode.window.showErrorMessage(t('The samples could not be written: {0}', reason));
      return;
    }
  }
  await vscode.commands.executeCommand('vscode.openFolder', folder, { forceNewWindow: true });
}
