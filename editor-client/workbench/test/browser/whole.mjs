// The story that every editor is told, with the page's own ways: keys and buttons, no inner calls.
import {
  browse,
  freePort,
  goTo,
  has,
  newPage,
  openFile,
  serve,
  textOf,
  until,
  verified,
} from './host.mjs';

export async function tell() {
  const server = await serve(await freePort());
  const { browser, context } = await browse();
  const page = await newPage(context);
  const list = page.locator('#findings-list');
  await page.goto(server.address);
  await openFile(page, 'lemon.kettle');

  await list.getByText('sugar burns at 248 °C').first().waitFor();
  await page.locator('.cm-lintRange-error').waitFor();
  verified('findings');
  await page.locator('.word-keyword', { hasText: 'formula' }).first().waitFor();
  await page.locator('.word-comment').first().waitFor();
  verified('colours');
  verified('colours by meaning');

  // By hand: 60 % of 1200 g.
  await page.locator('.cm-line', { hasText: 'white-sugar' }).getByText('white-sugar').hover();
  has(await page.locator('.cm-tooltip-hover').innerText(), '720');
  verified('hover');
  await page.mouse.move(0, 0);
  await page.locator('.aside', { hasText: '720.0 g' }).first().waitFor();
  verified('inlay hints');
  await page.locator('.lens button', { hasText: 'charge 1200 g' }).waitFor();
  verified('totals above formulas');

  await completes(page);
  await goTo(page, 'all of              syrup', 20);
  await page.keyboard.press('F12');
  await until('the stage', async () => /stage syrup/.test(await lineAtCursor(page)));
  verified('definition');
  await page.keyboard.press('Shift+F12');
  await page.locator('.cm-lsp-reference-panel').waitFor();
  verified('references');
  await page.keyboard.press('Escape');
  await folds(page);

  await goTo(page, '248 °C');
  await page.keyboard.press('Alt+Enter');
  await page.getByRole('dialog').getByRole('button', { name: 'Write 120 °C' }).click();
  await until('the fix', async () => (await textOf(page)).includes('cook      to 120 °C'));
  await until('the end of the error', async () => (await list.locator('.error').count()) === 0);
  verified('fix');
  await page.locator('.moves', { hasText: 'Moved: ' }).waitFor();
  await page.locator('.figures tr.moved').first().waitFor();
  verified('figures with what has moved');

  await scales(page);
  await page.locator('.lens button').first().click();
  await page.locator('.panel.pages .page', { hasText: 'white-sugar' }).waitFor();
  verified('table');

  await goTo(page, 'rook-zest', 2);
  await page.keyboard.press('F2');
  await page.fill('#new-name', 'rook-peel');
  await page.keyboard.press('Enter');
  await until('the new name', async () => (await textOf(page)).includes('mix   rook-peel'));
  verified('renaming across files');
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Shift+Alt+f');
  await until('the columns', async () =>
    (await textOf(page)).includes('mix       rook-peel, syrup'),
  );
  verified('formatting');
  await sheetAndFlow(page);
  await compares(page);

  await page.keyboard.press('Control+s');
  await page.locator('#state', { hasText: 'lemon.kettle is saved' }).waitFor();
  await until('all cards saved', async () => (await page.locator('.card.dirty').count()) === 0);
  await page.reload();
  await page.locator('.cm-content', { hasText: '2400 g' }).waitFor();

  await page.click('#end');
  if ((await server.ended) !== 0) {
    throw new Error('the program did not end well');
  }
  verified('the server ends with the editor');
  await browser.close();
  // The socket is cut off by the end; nothing else may go wrong.
  const complaints = page.complaints.filter((one) => !/ERR_CONNECTION|WebSocket/.test(one));
  if (complaints.length > 0) {
    throw new Error(`the page complained: ${complaints.join('\n')}`);
  }
}

async function completes(page) {
  await goTo(page, 'white-sugar', 5);
  await page.keyboard.press('Control+Space');
  await page.locator('.cm-tooltip-autocomplete', { hasText: 'white-sugar' }).waitFor();
  verified('completion');
  await page.keyboard.press('Escape');
}

async function folds(page) {
  await goTo(page, 'stage slab');
  await page.keyboard.press('Control+Shift+BracketLeft');
  await page.locator('.cm-foldPlaceholder').first().waitFor();
  await page.keyboard.press('Control+Shift+BracketRight');
  await until(
    'the fold to open',
    async () => (await page.locator('.cm-foldPlaceholder').count()) === 0,
  );
  verified('folding');
}

async function scales(page) {
  await page.click('#tab-scaling');
  await page.selectOption('#scale-way', 'pieces');
  await page.fill('#scale-pieces', '37');
  await page.fill('#scale-pieceGrams', '12');
  await page.getByRole('button', { name: 'Show the weighing list' }).click();
  // By hand: 37 pieces of 12 g are 444 g.
  await page.locator('.scaling .page', { hasText: '444' }).waitFor();
  has(await textOf(page), 'batch     1200 g');
  verified('weighing list of 37 pieces');
  await page.selectOption('#scale-way', 'charge');
  await page.fill('#scale-grams', '2400');
  await page.keyboard.press('Enter');
  await page.locator('.scaling .page', { hasText: '2400' }).waitFor();
  await page.getByRole('button', { name: 'Write into the text' }).click();
  await until('the batch', async () => (await textOf(page)).includes('batch     2400 g'));
  verified('scaling');
}

async function sheetAndFlow(page) {
  const sheet = page.locator('.panel.sheet .drawn');
  const here = sheet.locator('.here');
  await page.click('#tab-sheet');
  await sheet.locator('h1', { hasText: 'Lemon chews' }).waitFor();
  verified('preview');
  await goTo(page, 'glucose-syrup-42');
  await here.filter({ hasText: 'glucose' }).first().waitFor();
  await goTo(page, 'cook      to 120 °C');
  await here.filter({ hasText: '120' }).first().waitFor();
  verified('preview follows text and cursor');
  await sheet.locator('tr[tabindex]', { hasText: 'glucose' }).first().click();
  await until('the line of the click', async () => /glucose/.test(await lineAtCursor(page)));
  // With the keys: on to the next element that tells a line, and from there into the text.
  await here.first().focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await until('the line of the key', async () => /water/.test(await lineAtCursor(page)));
  verified('preview leads to the line');
  for (const [reader, locale, words] of [
    ['home', 'de-DE', 'Arbeitsgang'],
    ['production', 'fr-FR', 'Points de contrôle'],
  ]) {
    await page.selectOption('#sheet-reader', reader);
    await page.selectOption('#sheet-locale', locale);
    await sheet.getByText(words).first().waitFor();
  }
  await page.selectOption('#sheet-reader', '');
  await page.selectOption('#sheet-locale', '');
  await onPaper(page);
  await page.click('#tab-flow');
  for (const view of ['flow', 'time', 'shares']) {
    await page.selectOption('#flow-view', view);
    await page.locator('.panel.flow .drawn svg').first().waitFor();
  }
  verified('sheet and flow');
}

/** Printed is the sheet alone, dark on white though the lamp is dark, and without the mark of the cursor. */
async function onPaper(page) {
  await page.click('#theme');
  await page.locator('html[data-theme="dark"]').waitFor({ state: 'attached' });
  await page.emulateMedia({ media: 'print' });
  const printed = await page.evaluate(() => {
    const isSeen = (one) => one.checkVisibility();
    const sheet = document.querySelector('.panel.sheet .drawn').shadowRoot;
    const light = (colour) =>
      colour
        .match(/[\d.]+/g)
        .slice(0, 3)
        .reduce((sum, part) => sum + Number(part), 0) / 765;
    const leaf = getComputedStyle(sheet.querySelector('.kettlemark-preview'));
    const here = sheet.querySelector('.here');
    return {
      panels: [...document.querySelectorAll('[role=tabpanel]')].filter(isSeen).map(({ id }) => id),
      others: [...document.querySelectorAll('#paper, #findings, .shelf, footer, .controls')]
        .filter(isSeen)
        .map(({ id, className }) => id || className),
      ink: light(leaf.color),
      ground: light(leaf.backgroundColor),
      mark: here === null ? 'none' : getComputedStyle(here).outlineStyle,
    };
  });
  await page.emulateMedia({ media: 'screen' });
  await page.click('#theme');
  if (
    printed.panels.join() !== 'panel-sheet' ||
    printed.others.length > 0 ||
    printed.ink > 0.3 ||
    printed.ground < 0.9 ||
    printed.mark !== 'none'
  ) {
    throw new Error(`on paper: ${JSON.stringify(printed)}`);
  }
  verified('a printed sheet is dark on white');
}

/** A variant with its parent, two formulas in another language, and a name that nobody has. */
async function compares(page) {
  const panel = page.locator('.panel.compare');
  await page.click('#tab-compare');
  await page.selectOption('#compare-kind', 'kettlemark.compare');
  await panel.getByRole('button', { name: 'Show', exact: true }).click();
  await panel.locator('.problem', { hasText: 'is no variant' }).waitFor();
  await page.locator('#page-with-list option[value="zest-fondant"]').waitFor({ state: 'attached' });
  await page.fill('#page-with', 'zest-fondant');
  await page.keyboard.press('Enter');
  await panel.locator('.page table', { hasText: 'White sugar' }).first().waitFor();
  await page.selectOption('#page-language', 'de-DE');
  await panel.getByRole('button', { name: 'Show', exact: true }).click();
  await panel.locator('.page', { hasText: 'nebeneinander' }).first().waitFor();
  verified('two formulas side by side');
}

function lineAtCursor(page) {
  return page.locator('.cm-activeLine').innerText();
}
