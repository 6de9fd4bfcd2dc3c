/** What the commands of the extension do; each asks, calls the server and shows the answer. */

import * as vscode from 'vscode';
import { execute, type Connection } from './client';
import { SECTION } from './config';
import { chooseFormula } from './formulas';
import { t } from './l10n';
import type { Pages } from './pages';
import {
  SERVER_COMMANDS,
  isCompare,
  isFormulaPlace,
  isScaleAnswer,
  isWhatIf,
  type ChangesArgument,
  type CompareArgument,
  type ExplainRuleArgument,
  type FormulaPlace,
  type ScaleArgument,
  type UsedArgument,
  type WhatIfArgument,
} from './protocol';
import { askTarget, type Asker } from './scalePrompt';

/** Asks for a target, shows the weighing list and, once confirmed, writes the new batch. */
export async function scale(
  connection: Connection,
  pages: Pages,
  argument: unknown,
): Promise<void> {
  const client = connection.running();
  const place = client && (await placeOrChoice(argument));
  const target = place && (await askTarget(ASKER));
  if (client === undefined || place === undefined || target === undefined) {
    return;
  }
  const asked: ScaleArgument = { uri: place.uri, formula: place.formula, target };
  const before = openVersions();
  const answer = await execute(client, SERVER_COMMANDS.scale, asked);
  if (!isScaleAnswer(answer)) {
    return;
  }
  await pages.show(t('Weighing list of {0}', place.formula), answer.weighingList);
  const apply = t('Write into the text');
  const choice = await vscode.window.showQuickPick([apply, t('Leave the text as it is')], {
    title: answer.title,
    placeHolder: t('Charge {0}, finished {1}', grams(answer.charge), grams(answer.finished)),
    ignoreFocusOut: true,
  });
  if (choice !== apply) {
    return;
  }
  const edit = await client.protocol2CodeConverter.asWorkspaceEdit(answer.edit);
  if (isStale(edit, before)) {
    void vscode.window.showWarningMessage(t('The text has changed meanwhile; scale again.'));
    return;
  }
  if (!(await vscode.workspace.applyEdit(edit))) {
    void vscode.window.showErrorMessage(t('The new batch could not be written.'));
  }
}

/** Opens a page about a formula: the one of the argument, the one at the cursor, or one that is picked. */
export function formulaPage(
  command: string,
  title: (formula: string) => string,
): (connection: Connection, pages: Pages, argument: unknown) => Promise<void> {
  return async (connection, pages, argument) => {
    const client = connection.running();
    const place = client && (await placeOrChoice(argument));
    if (client === undefined || place === undefined) {
      return;
    }
    const asked: FormulaPlace = { uri: place.uri, formula: place.formula };
    const markdown = await execute(client, command, asked);
    if (typeof markdown === 'string') {
      await pages.show(title(place.formula), markdown);
    }
  };
}

/** Shows where an ingredient, a formula or a stage is used; proposes the word at the cursor. */
export async function used(connection: Connection, pages: Pages): Promise<void> {
  const client = connection.running();
  const editor = vscode.window.activeTextEditor;
  if (client === undefined || editor === undefined) {
    return;
  }
  const { document, selection } = editor;
  const word = document.getWordRangeAtPosition(selection.active);
  const name = await enterName(
    t('Where is it used?'),
    t('Ingredient, formula or stage'),
    word && document.getText(word),
  );
  if (name === undefined) {
    return;
  }
  const asked: UsedArgument = { uri: document.uri.toString(), name };
  const markdown = await execute(client, SERVER_COMMANDS.used, asked);
  if (typeof markdown === 'string') {
    await pages.show(t('Where {0} is used', name), markdown);
  }
}

/** Shows what another material in the place of one would change. */
export async function whatIf(
  connection: Connection,
  pages: Pages,
  argument: unknown,
): Promise<void> {
  const client = connection.running();
  const asked = client && (isWhatIf(argument) ? argument : await askWhatIf());
  if (client === undefined || asked === undefined) {
    return;
  }
  const markdown = await execute(client, SERVER_COMMANDS.whatIf, asked);
  if (typeof markdown === 'string') {
    await pages.show(`${asked.replace} or ${asked.by}`, markdown);
  }
}

/** Shows two formulas side by side. */
export async function compare(
  connection: Connection,
  pages: Pages,
  argument: unknown,
): Promise<void> {
  const client = connection.running();
  const asked = client && (isCompare(argument) ? argument : await askCompare());
  if (client === undefined || asked === undefined) {
    return;
  }
  const markdown = await execute(client, SERVER_COMMANDS.compare, asked);
  if (typeof markdown === 'string') {
    await pages.show(`${asked.formula} compared`, markdown);
  }
}

async function askCompare(): Promise<CompareArgument | undefined> {
  const place = await chooseFormula();
  const other = place && (await enterName(t('Compare'), t('The other formula')));
  return place && other ? { uri: place.uri, formula: place.formula, with: other } : undefined;
}

async function askWhatIf(): Promise<WhatIfArgument | undefined> {
  const place = await chooseFormula();
  const title = t('What if');
  const replace = place && (await enterName(title, t('Material of the formula')));
  const by = replace && (await enterName(title, t('Material in its place')));
  return place && replace && by
    ? { uri: place.uri, formula: place.formula, replace, by }
    : undefined;
}

async function enterName(
  title: string,
  prompt: string,
  value?: string,
): Promise<string | undefined> {
  const entered = await vscode.window.showInputBox({ title, prompt, value: value ?? '' });
  return entered?.trim() === '' ? undefined : entered?.trim();
}

/** Shows the page of the rule behind a finding at the cursor, or of any finding in the text. */
export async function explainRule(connection: Connection, pages: Pages): Promise<void> {
  const client = connection.running();
  const rule = client && (await chooseRule());
  if (client === undefined || rule === undefined) {
    return;
  }
  const asked: ExplainRuleArgument = { rule };
  const markdown = await execute(client, SERVER_COMMANDS.explainRule, asked);
  if (typeof markdown === 'string') {
    await pages.show(rule, markdown);
  }
}

/** Shows what the unsaved texts of the library would change, and in which formulas. */
export async function changes(connection: Connection, pages: Pages): Promise<void> {
  const client = connection.running();
  const editor = vscode.window.activeTextEditor;
  if (client === undefined || editor === undefined) {
    return;
  }
  const uri = client.code2ProtocolConverter.asUri(editor.document.uri);
  const asked: ChangesArgument = { uri };
  const markdown = await execute(client, SERVER_COMMANDS.changes, asked);
  if (typeof markdown === 'string') {
    await pages.show(t('Unsaved changes'), markdown);
  }
}

const ASKER: Asker = {
  async choose(title, choices) {
    const picked = await vscode.window.showQuickPick(choices, { title });
    return picked?.value;
  },
  async enter(title, prompt, problem) {
    return vscode.window.showInputBox({ title, prompt, validateInput: problem });
  },
};

async function placeOrChoice(argument: unknown): Promise<FormulaPlace | undefined> {
  return isFormulaPlace(argument) ? argument : chooseFormula();
}

async function chooseRule(): Promise<string | undefined> {
  const editor = vscode.window.activeTextEditor;
  if (editor === undefined) {
    return undefined;
  }
  const findings = vscode.languages
    .getDiagnostics(editor.document.uri)
    .filter(({ source }) => source === SECTION);
  const atCursor = findings.filter(({ range }) => range.intersection(editor.selection));
  const rules = [...new Set((atCursor.length > 0 ? atCursor : findings).flatMap(ruleOf))];
  if (rules.length === 0) {
    void vscode.window.showInformationMessage(t('There is no finding in this text.'));
  }
  return rules.length > 1
    ? vscode.window.showQuickPick(rules, { title: t('Rule to explain') })
    : rules[0];
}

function ruleOf({ code }: vscode.Diagnostic): string[] {
  const value = typeof code === 'object' ? code.value : code;
  return value === undefined ? [] : [String(value)];
}

function openVersions(): Map<string, number> {
  return new Map(vscode.workspace.textDocuments.map((open) => [open.uri.toString(), open.version]));
}

function isStale(edit: vscode.WorkspaceEdit, before: ReadonlyMap<string, number>): boolean {
  const now = openVersions();
  return edit.entries().some(([uri]) => {
    const key = uri.toString();
    // A text that was closed before counts as unchanged: the server read it from disk.
    return before.has(key) && before.get(key) !== now.get(key);
  });
}

function grams(value: number): string {
  return `${value.toLocaleString('en', { maximumFractionDigits: 2, useGrouping: false })} g`;
}
