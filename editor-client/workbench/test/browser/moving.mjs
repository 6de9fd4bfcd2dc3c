// What has moved is told of every edit, whoever else asks for the figures while the writer is at it.
import { writeFileSync } from 'node:fs';
import { LIBRARY, browse, freePort, newPage, openFile, serve } from './host.mjs';

/** The page follows the cursor after 200 ms and the keys after 120: an edit this late falls between. */
const BETWEEN_MS = 150;

export async function tell() {
  const server = await serve(await freePort());
  const { browser, context } = await browse();
  const page = await newPage(context);
  await page.goto(server.address);
  await openFile(page, 'lemon.kettle');
  await page.locator('.figures h2', { hasText: 'Lemon chews' }).waitFor();

  await page.evaluate(goTo, 'glucose-syrup-42');
  await page.waitForTimeout(BETWEEN_MS);
  await page.evaluate(write, ['60.00 %', '61.00 %']);
  await saysMoved(page, 'an edit right after a step of the cursor');

  await page.evaluate(write, ['20.00 %', '19.00 %']);
  await page.evaluate(goTo, 'stage syrup');
  await saysMoved(page, 'a step of the cursor right after an edit');

  writeFileSync(`${LIBRARY}/fresh.kettle`, '# nothing yet\n');
  await page.evaluate(write, ['15.00 %', '16.00 %']);
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  await saysMoved(page, 'a change on the disk right after an edit');

  await page.evaluate(write, ['# A syrup', '# Some syrup']);
  await page.locator('.moves', { hasText: 'Nothing moved.' }).waitFor();

  await page.evaluate(write, ['16.00 %', '15.00 %']);
  await openFile(page, 'second.kettle');
  await page.locator('.figures h2', { hasText: 'Fondant with zest' }).waitFor();
  await page.waitForTimeout(2 * BETWEEN_MS);
  if ((await page.locator('.moves').innerText()) !== '') {
    throw new Error('an edit of one file was told of another');
  }
  await browser.close();
  await server.stop('SIGINT');
}

/** Told after each of them, and what was told before is forgotten first. */
async function saysMoved(page, after) {
  await page
    .locator('.moves', { hasText: 'Moved: ' })
    .waitFor({ timeout: 10_000 })
    .catch(async () => {
      throw new Error(`after ${after}: ${await page.locator('.moves').innerText()}`);
    });
  await page.evaluate(() => (document.querySelector('.moves').textContent = ''));
}

function goTo(text) {
  const { view } = document.querySelector('.cm-content').cmTile.root;
  view.dispatch({ selection: { anchor: view.state.doc.toString().indexOf(text) } });
}

function write([before, after]) {
  const { view } = document.querySelector('.cm-content').cmTile.root;
  const from = view.state.doc.toString().indexOf(before);
  view.dispatch({ changes: { from, to: from + before.length, insert: after } });
}
