// One headless Chromium for all pages, several of them looked at side by side.
import { availableParallelism } from 'node:os';
import { chromium } from 'playwright-core';

/** Starts the browser, lends it to `use`, and ends it however that comes out. */
export async function withBrowser(use) {
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM,
    args: ['--no-sandbox', '--disable-gpu'],
  });
  try {
    return await use(browser);
  } finally {
    await browser.close();
  }
}

/**
 * Does some work for each item, as many at a time as the machine has processors; the answers in the order
 * of the items. Each worker has a context of its own, and with it a process of the browser.
 */
export async function each(browser, items, work, options = {}) {
  const answers = [];
  let next = 0;
  const worker = async () => {
    const context = await browser.newContext({ offline: true, ...options });
    while (next < items.length) {
      const at = next++;
      answers[at] = await work(context, items[at]);
    }
    await context.close();
  };
  await Promise.all(
    Array.from({ length: Math.min(items.length, availableParallelism()) }, () => worker()),
  );
  return answers;
}
