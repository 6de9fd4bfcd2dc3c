// Starts the program on a library and opens its page in a real browser.
import { spawn } from 'node:child_process';
import { appendFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { chromium } from 'playwright-core';

export const PATIENCE_MS = 60_000;
/** As the editors start it: little memory, and soon there. */
const JVM = ['-XX:+UseSerialGC', '-XX:TieredStopAtLevel=1'];
export const { LIBRARY, JAR, RESULTS } = process.env;

/** The program, serving a folder; `stop` kills it as a crash would. */
export async function serve(port, folder = LIBRARY) {
  const flags = ['--no-browser', '--port', String(port)];
  const child = spawn('java', [...JVM, '-jar', JAR, 'open', ...flags, folder]);
  // A story that fails leaves no program behind.
  process.on('exit', () => child.kill('SIGKILL'));
  child.stderr.on('data', (data) => process.stderr.write(data));
  let out = '';
  const address = await new Promise((resolve, reject) => {
    child.on('exit', (code) => reject(new Error(`the program ended with ${code}: ${out}`)));
    child.stdout.on('data', (data) => {
      out += data;
      const found = /http:\S+/.exec(out);
      if (found !== null) {
        resolve(found[0]);
      }
    });
  });
  const ended = new Promise((resolve) =>
    child.on('exit', (code, signal) => resolve(code ?? signal)),
  );
  return {
    address,
    ended,
    async again() {
      out = '';
      child.stdin.write('\n');
      return until('a fresh address', () => /http:\S+/.exec(out)?.[0]);
    },
    async stop(signal = 'SIGKILL') {
      child.kill(signal);
      return ended;
    },
  };
}

export async function freePort() {
  const server = createServer();
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address();
  await new Promise((resolve) => server.close(resolve));
  return port;
}

export async function browse(options = {}) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-timer-throttling'],
  });
  const context = await browser.newContext({ viewport: { width: 1366, height: 900 }, ...options });
  context.setDefaultTimeout(PATIENCE_MS);
  return { browser, context };
}

/** A page whose every complaint fails the test. */
export async function newPage(context, complaints = []) {
  const page = await context.newPage();
  page.on('pageerror', (error) => complaints.push(String(error.stack ?? error)));
  page.on('console', (message) => {
    if (message.type() === 'error') {
      complaints.push(message.text());
    }
  });
  page.complaints = complaints;
  return page;
}

/** Opens a file and waits until the server has told of it. */
export async function openFile(page, path) {
  await page.click('#library');
  await page.getByRole('dialog').getByRole('button', { name: path, exact: true }).click();
  await page.locator(`.cm-content[aria-label="Text of ${path}"]`).waitFor();
}

/** Puts the cursor at the first character, or the nth, of what a line holds. */
export async function goTo(page, text, inside = 0) {
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+f');
  // Typed as a person does: the panel reads each key.
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await page.keyboard.press('ArrowLeft');
  for (let i = 0; i < inside; i++) {
    await page.keyboard.press('ArrowRight');
  }
}

export function textOf(page) {
  return page.evaluate(() =>
    document.querySelector('.cm-content').cmTile.root.view.state.doc.toString(),
  );
}

export async function until(what, test, patience = PATIENCE_MS) {
  const end = Date.now() + patience;
  for (;;) {
    const value = await test();
    if (value) {
      return value;
    }
    if (Date.now() > end) {
      throw new Error(`waited for ${what}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

export function has(text, part) {
  if (!String(text).includes(part)) {
    throw new Error(`${JSON.stringify(part)} is not in ${JSON.stringify(text)}`);
  }
}

export function verified(feature) {
  appendFileSync(RESULTS, `${feature}: ok\n`);
}

export function measured(what) {
  console.log(`measured: ${what}`);
}
