// Walks through a published site from the disk: its links, and the search of its list.
//
// Every link leads to a page, and to a place on it, that is there. Each word finds some of the list and not
// all of it, what does not hold it is out of sight, and without a script the whole list is there.
import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

/** A telephone shows the list otherwise than a desk, and hides the same rows. */
const WIDTHS = [1280, 360];

/** All pages that the list leads to, each with its ids; read as a browser reads them, but not laid out. */
async function walk(page, from, faults) {
  const seen = new Map();
  const waiting = [from];
  for (let url = waiting.pop(); url !== undefined; url = waiting.pop()) {
    const { ids, links } = await page.evaluate(
      ([text, base]) => {
        const read = new DOMParser().parseFromString(text, 'text/html');
        return {
          ids: [...read.querySelectorAll('[id]')].map((one) => one.id),
          links: [...read.querySelectorAll('a[href]')].map(
            (one) => new URL(one.getAttribute('href'), base).href,
          ),
        };
      },
      [readFileSync(fileURLToPath(url), 'utf8'), url],
    );
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
  return seen;
}

/** A row is seen just where it holds the word. */
async function search(page, words, faults) {
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

/** The list as it is without a script. */
async function still(browser, list, faults) {
  const plain = await browser.newContext({ offline: true, javaScriptEnabled: false });
  const page = await plain.newPage();
  await page.goto(list);
  for (const row of await page.locator('tr[data-words]').all()) {
    if (!(await row.isVisible())) {
      faults.push('without a script part of the list is out of sight');
    }
  }
  if (await page.locator('#words').isVisible()) {
    faults.push('without a script there is a search that finds nothing');
  }
  await plain.close();
}

/** All of a site: what is wrong with it, and how much of it there is. */
export async function tour(browser, folder, words) {
  const list = pathToFileURL(resolve(join(folder, 'index.html'))).href;
  const faults = [];
  const context = await browser.newContext({ offline: true });
  const page = await context.newPage();
  page.on('pageerror', (error) => faults.push(String(error)));
  await page.goto(list);
  const seen = await walk(page, list, faults);
  let rows = 0;
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 900 });
    rows = await search(page, words, faults);
  }
  await context.close();
  await still(browser, list, faults);
  if (seen.size <= 3 || rows === 0) {
    faults.push(`only ${seen.size} pages with ${rows} rows`);
  }
  return { faults, pages: seen.size, rows };
}
