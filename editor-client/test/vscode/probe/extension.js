// Works through a text in a real extension host as a writer would, and notes what works.
const vscode = require('vscode');
const assert = require('node:assert/strict');
const fs = require('node:fs');
const path = require('node:path');

const { LIBRARY, WORK, RESULTS, STORY, PATIENCE } = process.env;
const PATIENCE_MS = 20_000 * Number(PATIENCE);
const STORY_MS = 100_000 * Number(PATIENCE);
const SECTION = 'kettlemark';

exports.activate = () => {
  if (STORY === undefined) {
    return;
  }
  if (fs.existsSync(done('java'))) {
    // The window was loaded anew, to see what outlives it.
    return;
  }
  // A second window on the same folder has a host of its own, which is told from the first by this.
  void (fs.existsSync(done('whole')) ? tell('two', two) : tellAll());
};

async function tellAll() {
  await tell('whole', whole);
  await until('the second window', () => fs.existsSync(done('two')), STORY_MS);
  await tell('java', java);
}

function done(name) {
  return path.join(WORK, `${name}.done`);
}

async function tell(name, story) {
  let problem = '';
  try {
    await story();
  } catch (error) {
    problem = String(error?.stack ?? error);
  }
  fs.writeFileSync(`${done(name)}.new`, problem);
  fs.renameSync(`${done(name)}.new`, done(name));
}

function verified(feature) {
  fs.appendFileSync(RESULTS, `${feature}: ok\n`);
}

async function until(what, condition, patience = PATIENCE_MS) {
  const end = Date.now() + patience;
  for (;;) {
    const value = await condition();
    if (value) {
      return value;
    }
    assert.ok(Date.now() < end, `waited in vain for ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 40));
  }
}

async function open(file) {
  const document = await vscode.workspace.openTextDocument(file);
  await vscode.window.showTextDocument(document);
  assert.equal(document.languageId, SECTION);
  return document;
}

function place(document, line, word) {
  const text = document.getText().split('\n');
  const row = text.findIndex((one) => line.test(one));
  assert.ok(row >= 0, `no line ${line}`);
  return new vscode.Position(row, text[row].indexOf(word) + 1);
}

function lineOf(document, line) {
  return document.lineAt(place(document, line, '').line).text;
}

function errors(document) {
  return vscode.languages
    .getDiagnostics(document.uri)
    .filter(({ severity }) => severity === vscode.DiagnosticSeverity.Error);
}

function finding(document) {
  return until('a finding', () =>
    errors(document).find(({ message }) => message.includes('sugar burns at 248 °C')),
  );
}

function ask(command, ...values) {
  return vscode.commands.executeCommand(command, ...values);
}

async function hover(document, position) {
  const hovers = await ask('vscode.executeHoverProvider', document.uri, position);
  return hovers.flatMap(({ contents }) => contents.map((text) => text.value ?? text)).join('\n');
}

async function action(document, position, title) {
  const actions = await ask(
    'vscode.executeCodeActionProvider',
    document.uri,
    new vscode.Range(position, position),
    undefined,
    100,
  );
  const found = actions.find((one) => one.title.startsWith(title));
  assert.ok(found, `no action ${title} in ${actions.map((one) => one.title)}`);
  return found;
}

async function answers(document) {
  const { uri } = document;
  const sugar = place(document, /white-sugar$/, 'white-sugar');
  // By hand: 60 % of 1200 g.
  assert.match(await hover(document, sugar), /720/);
  verified('hover');
  const { items } = await ask('vscode.executeCompletionItemProvider', uri, sugar);
  assert.ok(items.some(({ label }) => (label.label ?? label) === 'white-sugar'));
  verified('completion');
  const taken = place(document, /^ {2}all of/, 'syrup');
  const [target] = await ask('vscode.executeDefinitionProvider', uri, taken);
  const range = target.range ?? target.targetSelectionRange ?? target.targetRange;
  assert.equal(range.start.line, place(document, /^stage syrup/, 'syrup').line);
  verified('definition');
  assert.ok((await ask('vscode.executeReferenceProvider', uri, taken)).length >= 3);
  verified('references');
  const [outline] = await ask('vscode.executeDocumentSymbolProvider', uri);
  assert.match(outline.name, /lemon-chews/);
  verified('outline');
  const whole = new vscode.Range(0, 0, document.lineCount, 0);
  const hints = await ask('vscode.executeInlayHintProvider', uri, whole);
  const labels = hints.map(({ label }) =>
    typeof label === 'string' ? label : label.map(({ value }) => value).join(''),
  );
  assert.ok(
    labels.some((label) => label.includes('720')),
    labels.join(),
  );
  verified('inlay hints');
  const lenses = await ask('vscode.executeCodeLensProvider', uri, 100);
  assert.ok(lenses.some(({ command }) => /1200/.test(command?.title ?? '')));
  verified('totals above formulas');
  const folds = await ask('vscode.executeFoldingRangeProvider', uri);
  assert.ok(folds.length >= 3);
  verified('folding');
  const legend = await ask('vscode.provideDocumentSemanticTokensLegend', uri);
  if (legend !== undefined) {
    const tokens = await ask('vscode.provideDocumentSemanticTokens', uri);
    assert.ok(tokens.data.length >= 5 * 20, `${tokens.data.length / 5} tokens`);
    verified('colours by meaning');
  }
}

/** The test outside looks at what is shown, and takes each step by a file. */
async function preview(document) {
  await ask('kettlemark.preview.open');
  await step('shown');
  const typed = await replaced(document, '60.00 %', '61.00 %');
  await step('typed');
  await typed.back();
  const editor = vscode.window.visibleTextEditors.find((one) => one.document === document);
  const cook = place(document, /^ {2}cook/, '248');
  editor.selection = new vscode.Selection(cook, cook);
  await step('followed');
  const glucose = place(document, /glucose-syrup-42$/, 'glucose');
  await until('the line of the click', () => {
    const { activeTextEditor: active } = vscode.window;
    return active?.document === document && active.selection.active.line === glucose.line;
  });
  verified('preview leads to the line');
  await step('drawn');
  // What was last clicked is the page; the story goes on in the text.
  await vscode.window.showTextDocument(document, vscode.ViewColumn.One);
}

async function replaced(document, old, fresh) {
  const change = async (from, to) => {
    const start = document.positionAt(document.getText().indexOf(from));
    const edit = new vscode.WorkspaceEdit();
    edit.replace(document.uri, new vscode.Range(start, start.translate(0, from.length)), to);
    assert.ok(await vscode.workspace.applyEdit(edit));
  };
  await change(old, fresh);
  return { back: () => change(fresh, old) };
}

async function check() {
  const [task] = await vscode.tasks.fetchTasks({ type: SECTION });
  assert.equal(task.name, 'check library');
  const end = new Promise((resolve) => {
    const heard = vscode.tasks.onDidEndTaskProcess((event) => {
      heard.dispose();
      resolve(event.exitCode);
    });
  });
  await vscode.tasks.executeTask(task);
  assert.equal(await end, 1);
  verified('the checker fills the list of problems');
}

async function whole() {
  const extension = vscode.extensions.getExtension('kettlemark.kettlemark');
  assert.ok(!extension.isActive, 'active before a text is open');
  const document = await open(path.join(LIBRARY, 'lemon.kettle'));
  await finding(document);
  verified('findings');
  await answers(document);
  await preview(document);
  await check();
  const cook = place(document, /^ {2}cook/, '248');
  const fix = await action(document, cook, 'Write 120 °C');
  assert.ok(await vscode.workspace.applyEdit(fix.edit));
  assert.match(lineOf(document, /^ {2}cook/), /120 °C$/);
  await until('no more errors', () => errors(document).length === 0);
  verified('fix');
  const argument = { uri: document.uri.toString(), formula: 'lemon-chews' };
  const table = await ask('kettlemark.show', argument);
  assert.match(JSON.stringify(table), /white-sugar/);
  verified('table');
  const scaled = await ask('kettlemark.scale', {
    ...argument,
    target: { kind: 'charge', grams: 2400 },
  });
  assert.match(scaled.weighingList, /2400/);
  const twice = await action(document, place(document, /^formula/, 'lemon'), 'Scale to twice');
  assert.ok(await vscode.workspace.applyEdit(twice.edit));
  assert.match(lineOf(document, /^ {2}batch/), /2400 g$/);
  verified('scaling');
  const rename = await ask(
    'vscode.executeDocumentRenameProvider',
    document.uri,
    place(document, /rook-zest$/, 'rook-zest'),
    'rook-peel',
  );
  assert.equal(rename.entries().length, 3);
  assert.ok(await vscode.workspace.applyEdit(rename));
  verified('renaming across files');
  await ask('editor.action.formatDocument');
  await until('the layout', () => lineOf(document, /^ {2}mix/) === '  mix       rook-peel, syrup');
  verified('formatting');
  assert.ok(await vscode.workspace.saveAll(false));
  await until('all saved', () => vscode.workspace.textDocuments.every((one) => !one.isDirty));
  await awkward(document);
}

async function awkward(document) {
  const mistaken = document.getText().replace('120 °C', '248 °C').replace('lemon-chews', 'other');
  const untitled = await vscode.workspace.openTextDocument({
    language: SECTION,
    content: mistaken,
  });
  await finding(untitled);
  verified('untitled text');
  const alone = path.join(WORK, 'alone');
  fs.mkdirSync(alone);
  fs.writeFileSync(path.join(alone, 'one.kettle'), mistaken);
  await finding(await open(path.join(alone, 'one.kettle')));
  verified('a file of its own');
  // Left open, it would ask whether to be saved.
  await vscode.window.showTextDocument(untitled);
  await ask('workbench.action.revertAndCloseActiveEditor');
}

async function two() {
  const document = await open(path.join(LIBRARY, 'lemon.kettle'));
  const sugar = place(document, /white-sugar$/, 'white-sugar');
  // By hand: 60 % of 2400 g.
  await until('a hover', async () => /1440/.test(await hover(document, sugar)));
  verified('two windows on one library');
}

/** The test outside reads the messages that appear, and takes each step by a file. */
async function java() {
  const settings = vscode.workspace.getConfiguration(SECTION);
  const set = (home) => settings.update('java.home', home, vscode.ConfigurationTarget.Global);
  await set(path.join(WORK, 'old'));
  const document = await open(path.join(WORK, 'alone', 'one.kettle'));
  await step('old');
  await set('/nowhere');
  await step('none');
  await set(undefined);
  await finding(document);
  verified('a new Java is taken without a restart');
  const sugar = place(document, /white-sugar$/, 'white-sugar');
  for (let crash = 1; crash <= 3; crash++) {
    process.kill(await until('the server', server), 'SIGKILL');
    await until('the next server', async () => {
      try {
        return /1440/.test(await hover(document, sugar));
      } catch {
        return false;
      }
    });
  }
  verified('a server that crashes is started again');
  process.kill(await until('the server', server), 'SIGKILL');
  // Some of these meet the pipe between the end of the server and the news of it.
  for (let request = 0; request < 60; request++) {
    hover(document, sugar).then(undefined, () => undefined);
    await new Promise((resolve) => setTimeout(resolve, 2));
  }
  await step('crashes');
}

function step(name) {
  fs.writeFileSync(path.join(WORK, `${name}.step`), '');
  return until(
    `the reading of ${name}`,
    () => !fs.existsSync(path.join(WORK, `${name}.step`)),
    STORY_MS,
  );
}

/** The server that this window's host has started. */
function server() {
  for (const pid of fs.readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    try {
      const words = fs.readFileSync(`/proc/${pid}/cmdline`, 'utf8').split('\0');
      const parent = fs.readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1].split(' ')[1];
      if (words.includes('serve') && Number(parent) === process.pid) {
        return Number(pid);
      }
    } catch {
      // It has ended meanwhile.
    }
  }
  return undefined;
}
