// Walks through a published site from the disk: its links, and the search of its list.
//
//   CHROMIUM=/usr/bin/chromium node test/pages/site.mjs FOLDER WORDS…
//
// Every link leads to a page, and to a place on it, that is there. Each of WORDS finds some of the list and not
// all of it, what does not hold it is out of sight, and without a script the whole list is there.
import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';

const [folder, ...words] = process.argv.slice(2);
const list = pathToFileURL(resolve(join(folder, 'index.html'))).href;
const faults = [];
const seen = new Map();

/** All pages that the list leads to, each with its ids. */
async function walk(page, from) {
  const waiting = [from];
  for (let url = waiting.pop(); url !== undefined; url = waiting.pop()) {
    await page.goto(url);
    const { ids, links } = await page.evaluate(() => ({
      ids: [...document.querySelectorAll('[id]')].map((one) => one.id),
      links: [...document.querySelectorAll('a[href]')].map((one) => one.href),
    }));
    seen.set(url, { ids, links });
    for (const link of links.map((one) => one.split('#')[0])) {
      if (!link.startsWith('file:') || !existsSync(fileURLToPath(link))) {
        faults.push(`${url} leads to ${link}, which is not there`);
      } else if (!seen.has(link) && !waiting.includes(link)) {
        waiting.push(link);
      }
    }
  }
  for (const [url, { links }] of seen) {
    for (const link of links.filter((one) => one.includes('#'))) {
      const [to, id] = link.split('#');
      if (!seen.get(to)?.ids.includes(decodeURIComponent(id))) {
        faults.push(`${url} leads to ${link}, which names no place there`);
      }
    }
  }
}

/** A row is seen just where it holds the word. */
async function search(page) {
  const all = await page.locator('tr[data-words]').count();
  for (const word of words) {
    await page.locator('#words').fill(word);
    const rows = await page.locator('tr[data-words]').evaluateAll((every) =>
      every.map((row) => ({
        isSeen: row.checkVisibility(),
        text: `${row.textContent} ${row.dataset.words}`.toLowerCase(),
      })),
    );
    const shown = rows.filter(({ isSeen }) => isSeen);
    if (shown.length === 0 || shown.length === all) {
      faults.push(`the word ${word} finds ${shown.length} of ${all}`);
    }
    if (rows.some(({ isSeen, text }) => isSeen !== text.includes(word.toLowerCase()))) {
      faults.push(`the word ${word} finds something else than what holds it`);
    }
    const told = (await page.locator('#found').textContent()) ?? '';
    if (!told.includes(String(shown.length))) {
      faults.push(`${shown.length} are found, but it is said: ${told}`);
    }
  }
  await page.locator('#words').fill('');
  return all;
}

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM,
  args: ['--no-sandbox', '--disable-gpu'],
});
let count = 0;
try {
  const context = await browser.newContext({ offline: true });
  const page = await context.newPage();
  page.on('pageerror', (error) => faults.push(String(error)));
  await walk(page, list);
  await page.goto(list);
  count = await search(page);
  const plain = await browser.newContext({ offline: true, javaScriptEnabled: false });
  const still = await plain.newPage();
  await still.goto(list);
  for (const row of await still.locator('tr[data-words]').all()) {
    if (!(await row.isVisible())) {
      faults.push('without a script part of the list is out of sight');
    }
  }
  if (await still.locator('#words').isVisible()) {
    faults.push('without a script there is a search that finds nothing');
  }
} finally {
  await browser.close();
}
faults.forEach((fault) => console.error(fault));
console.log(
  `site: ${seen.size} pages, ${count} rows, ${words.length} words, ${faults.length} faults`,
);
process.exitCode = faults.length === 0 && seen.size > 3 && count > 0 ? 0 : 1;
