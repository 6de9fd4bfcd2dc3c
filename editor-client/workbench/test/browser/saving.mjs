// Two windows on one file, changes on the disk, and texts that were not saved.
import { appendFileSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
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

const FILE = `${LIBRARY}/lemon.kettle`;

export async function tell() {
  const server = await serve(await freePort());
  const { browser, context } = await browse();
  const one = await newPage(context);
  await one.goto(server.address);
  await openFile(one, 'lemon.kettle');
  const two = await newPage(context);
  await two.goto(new URL('/', server.address).href);
  await openFile(two, 'lemon.kettle');

  await write(one, '# by one\n');
  await one.keyboard.press('Control+s');
  await until('the save', () => readFileSync(FILE, 'utf8').startsWith('# by one\n'));
  await until('the other window', async () => (await textOf(two)).startsWith('# by one\n'));
  verified('two windows on one library');

  await write(two, '# by two\n');
  await write(one, '# one more\n');
  await one.keyboard.press('Control+s');
  await until('the second save', () => readFileSync(FILE, 'utf8').startsWith('# one more\n'));
  await two.locator('.notice', { hasText: 'changed on the disk while you were writing' }).waitFor();
  await two.locator('.cm-content').focus();
  await two.keyboard.press('Control+s');
  const dialog = two.getByRole('dialog');
  await dialog.locator('tr.mine', { hasText: '# by two' }).waitFor();
  await dialog.locator('tr.theirs', { hasText: '# one more' }).waitFor();
  const onDisk = readFileSync(FILE, 'utf8');
  if (!onDisk.startsWith('# one more\n')) {
    throw new Error('a conflict was written over');
  }
  await dialog.getByRole('button', { name: 'Save mine over it' }).click();
  await until('my text', () => readFileSync(FILE, 'utf8').startsWith('# by two\n'));
  await until('its way to the other', async () => (await textOf(one)).startsWith('# by two\n'));
  verified('a conflict is shown and nothing is lost');

  appendFileSync(FILE, '# by another program\n');
  await until('the change', async () => (await textOf(one)).includes('# by another program'));
  const fresh = `${LIBRARY}/fresh.kettle`;
  writeFileSync(fresh, 'formula fresh\n  batch 100 g\nstage a\n  100 % no-such-thing\n');
  await one.locator('.finding', { hasText: 'fresh.kettle' }).first().waitFor();
  rmSync(fresh);
  await until(
    'the end of its findings',
    async () => (await one.locator('.finding', { hasText: 'fresh.kettle' }).count()) === 0,
  );
  verified('changes on the disk are shown at once');

  await write(one, '# not saved\n');
  await one.locator('#state', { hasText: 'is not saved' }).waitFor();
  await one.reload();
  await one.locator('.notice', { hasText: 'did not save is back' }).waitFor();
  await until('the text', async () => (await textOf(one)).startsWith('# not saved\n'));
  await one.getByRole('button', { name: 'Back to the saved text' }).click();
  await one.locator('#state', { hasText: 'lemon.kettle is saved' }).waitFor();
  verified('unsaved text outlives a reload');

  await one.click('#library');
  await one.fill('#file-new', 'new/trial');
  await one.keyboard.press('Enter');
  await one.locator('.cm-content[aria-label="Text of new/trial.kettle"]').waitFor();
  await write(one, 'formula tried\n');
  await one.keyboard.press('Control+s');
  await until(
    'the new file',
    () => readFileSync(`${LIBRARY}/new/trial.kettle`, 'utf8') === 'formula tried\n',
  );
  verified('new text, once it is saved');
  await browser.close();
  await server.stop('SIGINT');
}

/** Types at the very beginning. */
async function write(page, text) {
  await page.bringToFront();
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+Home');
  await page.keyboard.insertText(text);
}
