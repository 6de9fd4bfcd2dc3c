// A file of ten thousand lines is written in as smoothly as one of a hundred.
import { writeFileSync } from 'node:fs';
import {
  LIBRARY,
  browse,
  freePort,
  measured,
  newPage,
  openFile,
  serve,
  textOf,
  until,
  verified,
} from './host.mjs';

const KEYS = 60;
/** From key to paint, the long file against the short one; the paint alone differs by chance. */
const MOST_RATIO = 2;

export async function tell() {
  writeFileSync(`${LIBRARY}/short.kettle`, text('short', 100));
  writeFileSync(`${LIBRARY}/long.kettle`, text('long', 10_000));
  const server = await serve(await freePort());
  const { browser, context } = await browse();
  const page = await newPage(context);
  await page.goto(server.address);
  const short = await keys(page, 'short.kettle');
  const long = await keys(page, 'long.kettle');
  const again = await keys(page, 'short.kettle');
  const ratio = long.median / Math.min(short.median, again.median);
  measured(
    `key to paint, 100 lines ${short.median.toFixed(1)} and ${again.median.toFixed(1)} ms (95 %: ${short.most.toFixed(1)}),` +
      ` 10,000 lines ${long.median.toFixed(1)} ms (95 %: ${long.most.toFixed(1)}), ratio ${ratio.toFixed(2)}`,
  );
  if (ratio > MOST_RATIO) {
    throw new Error(`the long file is written in ${ratio} times as slowly`);
  }
  verified('a text of ten thousand lines');
  await browser.close();
  await server.stop('SIGINT');
}

async function keys(page, path) {
  await openFile(page, path);
  const name = path.split('.')[0];
  await page.locator('.word-keyword').first().waitFor();
  await page.locator('.figures h2', { hasText: name }).waitFor();
  await page.evaluate(() => {
    window.painted = [];
    window.onkeydown = () => {
      const start = performance.now();
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => window.painted.push(performance.now() - start);
        port2.postMessage('');
      });
    };
  });
  await page.locator('.cm-content').focus();
  await page.keyboard.press('Control+Home');
  await page.evaluate(() => (window.painted = []));
  for (let i = 0; i < KEYS; i++) {
    await page.keyboard.press(i % 10 === 9 ? 'Enter' : '#');
    await page.waitForTimeout(40);
  }
  const times = await page.evaluate(() => window.painted.sort((a, b) => a - b));
  if (!(await textOf(page)).startsWith('#########\n#########\n')) {
    throw new Error('a key was lost');
  }
  await until(
    'the figures to follow',
    async () => (await page.locator('.moves').innerText()) !== '',
  );
  return { median: times[times.length >> 1], most: times[Math.floor(times.length * 0.95)] };
}

/** Formulas of our own making, thirteen lines each. */
function text(name, lines) {
  const formulas = [];
  for (let i = 0; i * 13 < lines; i++) {
    formulas.push(
      `formula ${name}-${i} "Boiled ${name} number ${i}"`,
      '  percent   of charge',
      `  batch     ${1000 + i} g`,
      '  caution   hot-sugar',
      '',
      'stage syrup',
      '  60.00 %             white-sugar',
      '  20.00 %             glucose-syrup-42',
      '  20.00 %             water',
      '  boil      under lid for 3 min until dissolved',
      `  cook      to ${118 + (i % 30)} °C`,
      '  deposit   syrup',
      '',
    );
  }
  return `${formulas.join('\n')}\n`;
}
