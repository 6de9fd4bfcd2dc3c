// The program is killed in the middle of a sentence and started again: nothing that was typed is lost.
import { readFileSync } from 'node:fs';
import {
  LIBRARY,
  browse,
  freePort,
  newPage,
  openFile,
  serve,
  textOf,
  until,
  verified,
} from './host.mjs';

export async function tell() {
  const port = await freePort();
  const first = await serve(port);
  const { browser, context } = await browse();
  const page = await newPage(context);
  await page.goto(first.address);
  await openFile(page, 'lemon.kettle');
  await page.locator('.finding', { hasText: '248' }).first().waitFor();
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+Home');
  await page.keyboard.type('# typed before ');
  await first.stop();
  await page.keyboard.type('and after the end');
  await page.locator('.notice', { hasText: 'server is away' }).waitFor();
  await page.keyboard.press('Control+s');
  await page.locator('.notice', { hasText: 'does not answer' }).waitFor();
  const typed = await textOf(page);
  if (!typed.startsWith('# typed before and after the end')) {
    throw new Error(`typed was ${JSON.stringify(typed.slice(0, 60))}`);
  }

  const second = await serve(port);
  const door = await newPage(context);
  await door.goto(second.address);
  await door.locator('.cm-content').waitFor();
  await door.close();
  await page.bringToFront();
  await until(
    'the connection',
    async () => (await page.locator('[data-notice=link]').count()) === 0,
  );
  // The new session knows the text as it is, not as it was saved: line 17 has become line 17 of the new text.
  await page.keyboard.press('Enter');
  await page.locator('.finding', { hasText: 'line 18' }).first().waitFor();
  if (!(await textOf(page)).startsWith('# typed before and after the end\n')) {
    throw new Error('what was typed is lost');
  }
  await page.keyboard.press('Control+s');
  await until('the save', () =>
    readFileSync(`${LIBRARY}/lemon.kettle`, 'utf8').startsWith(
      '# typed before and after the end\n',
    ),
  );
  verified('a server that crashes is started again');

  await page.keyboard.type('# again');
  await page.locator('#state', { hasText: 'is not saved' }).waitFor();
  await page.waitForTimeout(400);
  await second.stop();
  await page.close();
  const third = await serve(port);
  const later = await newPage(context);
  await later.goto(`${third.address}#lemon.kettle`);
  await later.locator('.notice', { hasText: 'did not save is back' }).waitFor();
  await until('the text', async () => (await textOf(later)).includes('# again'));
  verified('unsaved text outlives the end of the program');
  await browser.close();
  await third.stop('SIGINT');
}
