// With the keyboard alone, for a screen reader, in light and dark, on a tablet; and how soon it is there.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import {
  browse,
  freePort,
  goTo,
  measured,
  newPage,
  openFile,
  serve,
  until,
  verified,
} from './host.mjs';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const TABS = ['figures', 'sheet', 'flow', 'scaling', 'compare', 'pages'];
/** What a page of this size may weigh; times are told and not asserted, since machines differ. */
const MOST_BYTES = 600_000;

export async function tell() {
  const server = await serve(await freePort());
  await soon(server);
  for (const colorScheme of ['light', 'dark']) {
    const { browser, context } = await browse({ colorScheme });
    // The page's own policy refuses foreign scripts; the checker comes in by the browser's back door.
    await context.addInitScript(AXE);
    const page = await newPage(context);
    await page.goto(await server.again());
    await openFile(page, 'lemon.kettle');
    await page.locator('.finding').first().waitFor();
    for (const tab of TABS) {
      await page.click(`#tab-${tab}`);
      await page.waitForTimeout(300);
      await clean(page, `${colorScheme} ${tab}`);
    }
    await goTo(page, '248 °C');
    await page.keyboard.press('Alt+Enter');
    await page.getByRole('dialog').locator('.menu button').first().waitFor();
    await clean(page, `${colorScheme} menu`);
    await page.keyboard.press('Escape');
    await page.click('#library');
    await clean(page, `${colorScheme} library`);
    await page.keyboard.press('Escape');
    await browser.close();
  }
  verified('axe-core has nothing against it');
  await keyboard(server);
  await tablet(server);
  await server.stop('SIGINT');
}

async function clean(page, where) {
  const violations = await page.evaluate(async () => (await window.axe.run(document)).violations);
  if (violations.length > 0) {
    const told = violations.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html}\n  ${failureSummary}`),
    );
    throw new Error(`${where}:\n${told.join('\n')}`);
  }
}

/** A browser that has never seen the page, as after cloning. */
async function soon(server) {
  const { browser, context } = await browse();
  const page = await newPage(context);
  await page.goto(await server.again());
  await page.locator('.cm-line').first().waitFor();
  const { first, text, bytes } = await page.evaluate(() => ({
    first: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0,
    text: performance.now(),
    bytes: performance
      .getEntriesByType('resource')
      .reduce((sum, { encodedBodySize }) => sum + encodedBodySize, 0),
  }));
  measured(
    `first content after ${first.toFixed(0)} ms, the text after ${text.toFixed(0)} ms, ${bytes} bytes fetched`,
  );
  if (first === 0 || first >= text) {
    throw new Error(`the page was blank for ${first} ms, until the text was there`);
  }
  if (bytes > MOST_BYTES) {
    throw new Error(`the page weighs ${bytes} bytes`);
  }
  await browser.close();
}

/** From the address to a mended and saved formula without a mouse. */
async function keyboard(server) {
  const { browser, context } = await browse({ reducedMotion: 'reduce' });
  const page = await newPage(context);
  await page.goto(await server.again());
  await page.locator('.cm-line').first().waitFor();
  await page.keyboard.press('Tab');
  await focused(page, 'Go to the formula');
  await page.keyboard.press('Enter');
  await until('the paper', () => page.evaluate(() => document.activeElement.id === 'paper'));
  await page.keyboard.press('Tab');
  await page.keyboard.press('F6');
  await focused(page, 'Figures');
  for (const label of ['Sheet', 'Flow', 'Scale', 'Compare', 'Pages', 'Figures']) {
    await page.keyboard.press('ArrowRight');
    await focused(page, label);
  }
  await page.keyboard.press('F6');
  await until('the findings', () =>
    page.evaluate(() => document.querySelector('#findings').contains(document.activeElement)),
  );
  // Nothing on the page traps the focus: Tab comes round to the skip links again.
  const seen = new Set();
  for (let i = 0; i < 80 && !seen.has('Go to the formula'); i++) {
    await page.keyboard.press('Tab');
    seen.add(await page.evaluate(() => document.activeElement.textContent?.slice(0, 40)));
  }
  if (!seen.has('Go to the formula')) {
    throw new Error(`Tab did not come round: ${[...seen].join(', ')}`);
  }
  const animated = await page.evaluate(
    () => getComputedStyle(document.querySelector('.figures tr')).transitionDuration,
  );
  if (animated !== '0s') {
    throw new Error('something moves though less motion was asked for');
  }
  verified('keyboard alone');
  await browser.close();
}

async function focused(page, text) {
  await until(`focus on ${text}`, () =>
    page.evaluate((wanted) => document.activeElement.textContent === wanted, text),
  );
}

async function tablet(server) {
  const { browser, context } = await browse({
    viewport: { width: 800, height: 1100 },
    hasTouch: true,
  });
  const page = await newPage(context);
  await page.goto(await server.again());
  await openFile(page, 'lemon.kettle');
  await page.locator('.finding').first().waitFor();
  for (const tab of TABS) {
    await page.tap(`#tab-${tab}`);
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    if (wider > 0) {
      throw new Error(`${tab} is ${wider} pixels wider than the tablet`);
    }
  }
  verified('a tablet of 800 by 1100');
  await browser.close();
}
