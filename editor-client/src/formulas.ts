/**
 * Finds the formula that a command of the palette is about.
 *
 * The client knows nothing of the language: it asks the server for the code actions at the cursor,
 * then for the code lenses of the document, and takes the formulas that they name.
 */

import * as vscode from 'vscode';
import { t } from './l10n';
import { CLIENT_COMMANDS, isFormulaPlace, type FormulaPlace } from './protocol';

const NAMING_COMMANDS: readonly string[] = Object.values(CLIENT_COMMANDS);

/** The formula at the cursor, or one that the writer picks; undefined when there is none. */
export async function chooseFormula(): Promise<FormulaPlace | undefined> {
  const editor = vscode.window.activeTextEditor;
  if (editor === undefined) {
    return undefined;
  }
  const { document, selection } = editor;
  const atCursor = distinct((await actionsAt(document, selection)).flatMap(placeOf));
  if (atCursor[0] !== undefined) {
    return atCursor[0];
  }
  const places = distinct((await lensesOf(document)).flatMap(placeOf));
  if (places.length === 0) {
    void vscode.window.showInformationMessage(t('There is no formula at the cursor.'));
    return undefined;
  }
  const picked = await vscode.window.showQuickPick(
    places.map((place) => ({ label: place.formula, place })),
    { title: t('Formula') },
  );
  return picked?.place;
}

async function actionsAt(
  document: vscode.TextDocument,
  range: vscode.Range,
): Promise<(vscode.Command | undefined)[]> {
  const actions =
    (await vscode.commands.executeCommand<(vscode.Command | vscode.CodeAction)[] | undefined>(
      'vscode.executeCodeActionProvider',
      document.uri,
      range,
    )) ?? [];
  return actions.map((action) =>
    typeof action.command === 'object' ? action.command : commandItself(action),
  );
}

async function lensesOf(document: vscode.TextDocument): Promise<(vscode.Command | undefined)[]> {
  const lenses =
    (await vscode.commands.executeCommand<vscode.CodeLens[] | undefined>(
      'vscode.executeCodeLensProvider',
      document.uri,
      document.lineCount,
    )) ?? [];
  return lenses.map(({ command }) => command);
}

function commandItself(action: vscode.Command | vscode.CodeAction): vscode.Command | undefined {
  return typeof action.command === 'string' ? (action as vscode.Command) : undefined;
}

function placeOf(command: vscode.Command | undefined): FormulaPlace[] {
  const argument: unknown = command?.arguments?.[0];
  return command !== undefined &&
    NAMING_COMMANDS.includes(command.command) &&
    isFormulaPlace(argument)
    ? [argument]
    : [];
}

function distinct(places: readonly FormulaPlace[]): FormulaPlace[] {
  return [...new Map(places.map((place) => [place.formula, place])).values()];
}
