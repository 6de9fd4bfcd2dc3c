// Ctrl-C in the terminal while somebody saves: the program ends, and leaves no half of anything.
import { readFileSync, readdirSync } from 'node:fs';
import { createServer } from 'node:net';
import { LIBRARY, browse, freePort, newPage, openFile, serve, verified } from './host.mjs';

/** 128 and the number of SIGINT, as a shell counts a program that was interrupted: POSIX.1-2017, 2.8.2. */
const INTERRUPTED = 130;
const FILE = 'ended.kettle';
/** Long enough to be met in the middle, and below what a file may hold. */
const LETTERS = 1_500_000;

export async function tell() {
  const before = readdirSync(LIBRARY);
  const port = await freePort();
  const server = await serve(port);
  const { browser, context } = await browse();
  const page = await newPage(context);
  await page.goto(server.address);
  await openFile(page, 'lemon.kettle');
  await page.evaluate(saveOverAndOver, [FILE, LETTERS]);
  await page.waitForFunction(() => window.saved > 2);

  const code = await server.stop('SIGINT');
  if (code !== INTERRUPTED) {
    throw new Error(`the program ended with ${code}`);
  }
  await page.locator('.notice', { hasText: 'server is away' }).waitFor();
  await isFree(port);
  const left = readdirSync(LIBRARY).filter((name) => !before.includes(name));
  if (left.join() !== FILE) {
    throw new Error(`there lies ${left.join(', ')}`);
  }
  const text = readFileSync(`${LIBRARY}/${FILE}`, 'utf8');
  if (!/^# (a+|b+)\n$/.test(text) || text.length !== LETTERS + 3) {
    throw new Error(`half a file of ${text.length} letters`);
  }
  verified('Ctrl-C ends it, and no file is half written');
  await browser.close();
}

/** Runs in the page, which alone may save: one text after the other, until nobody answers. */
function saveOverAndOver([path, letters]) {
  const address = `/api/file?path=${encodeURIComponent(path)}`;
  window.saved = 0;
  const save = async (condition) => {
    const body = `# ${(window.saved % 2 === 0 ? 'a' : 'b').repeat(letters)}\n`;
    const headers = { 'Content-Type': 'text/plain;charset=utf-8', ...condition };
    const { tag } = await (await fetch(address, { method: 'PUT', headers, body })).json();
    window.saved++;
    await save({ 'If-Match': `"${tag}"` });
  };
  save({ 'If-None-Match': '*' }).catch(() => undefined);
}

async function isFree(port) {
  const next = createServer();
  await new Promise((resolve, reject) => {
    next.on('error', reject);
    next.listen({ port, host: '127.0.0.1', exclusive: true }, resolve);
  });
  await new Promise((resolve) => next.close(resolve));
}
