// Opens pages in headless Chromium and lets axe-core look for what shuts people out.
//
//   CHROMIUM=/usr/bin/chromium node test/pages/pages.mjs FILE…
//
// Each page is looked at in the light, in the dark, in print and on a narrow screen. It
// must ask for nothing but itself, and at 320 px nothing may make it scroll sideways: WCAG 2.2, success
// criterion 1.4.10, which would let tables do so.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const VIEWS = [
  ['light', { colorScheme: 'light' }, 1280],
  ['dark', { colorScheme: 'dark' }, 1280],
  ['print', { media: 'print' }, 700],
  ['narrow', { colorScheme: 'light' }, 320],
];

function told(violation) {
  const places = violation.nodes.slice(0, 3).map((node) => node.target.join(' '));
  return `${violation.id}: ${violation.help} (${places.join('; ')})`;
}

async function look(context, file) {
  const faults = [];
  const page = await context.newPage();
  const own = pathToFileURL(resolve(file)).href;
  page.on('request', (request) => {
    if (request.url() !== own && !request.url().startsWith('data:')) {
      faults.push(`asks for ${request.url()}`);
    }
  });
  await page.goto(own);
  for (const [name, media, width] of VIEWS) {
    await page.emulateMedia({ media: 'screen', colorScheme: 'light', ...media });
    await page.setViewportSize({ width, height: 900 });
    await page.evaluate(AXE);
    const result = await page.evaluate(() => globalThis.axe.run());
    faults.push(...result.violations.map((one) => `${name}: ${told(one)}`));
    if (result.passes.length < 5) {
      faults.push(`${name}: only ${result.passes.length} rules had anything to look at`);
    }
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    if (name === 'narrow' && wide > 0) {
      faults.push(`${name}: scrolls sideways by ${wide} px`);
    }
  }
  const ids = await page.evaluate(() =>
    [...document.querySelectorAll('[id]')].map((one) => one.id),
  );
  const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
  if (twice.length > 0) {
    faults.push(`ids that stand twice: ${twice.join(', ')}`);
  }
  await page.close();
  return faults;
}

/** A check that cannot fail proves nothing. */
async function isBlind(context) {
  const page = await context.newPage();
  await page.setContent('<title>x</title><main><h1>x</h1><img src="data:image/gif,"></main>');
  await page.evaluate(AXE);
  const { violations } = await page.evaluate(() => globalThis.axe.run());
  await page.close();
  return !violations.some((one) => one.id === 'image-alt');
}

const files = process.argv.slice(2);
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM,
  args: ['--no-sandbox', '--disable-gpu'],
});
let count = 0;
try {
  const context = await browser.newContext({ offline: true });
  if (await isBlind(context)) {
    console.error('axe-core tells nothing of a picture without words');
    count++;
  }
  for (const file of files) {
    for (const fault of await look(context, file)) {
      console.error(`${basename(file)}: ${fault}`);
      count++;
    }
  }
} finally {
  await browser.close();
}
console.log(`pages: ${files.length} in ${VIEWS.length} views, ${count} faults`);
process.exitCode = count === 0 && files.length > 0 ? 0 : 1;
