// Opens pages in headless Chromium and lets axe-core look for what shuts people out.
//
//   CHROMIUM=/usr/bin/chromium node test/pages/pages.mjs [--words WORD,…] [FOLDER…] FILE…
//
// Each file is looked at in the light, in the dark, in print and on a narrow screen. It must ask for
// nothing but itself, and at 320 px nothing may make it scroll sideways: WCAG 2.2, success
// criterion 1.4.10, which would let tables do so. Each folder is a published site, which is walked through.
import { statSync } from 'node:fs';
import { basename } from 'node:path';
import { VIEWS, blindness, look } from './axe.mjs';
import { each, withBrowser } from './browser.mjs';
import { tour } from './site.mjs';

const args = process.argv.slice(2);
const words = args[0] === '--words' ? args.splice(0, 2)[1].split(',') : [];
const sites = args.filter((path) => statSync(path).isDirectory());
const files = args.filter((path) => !sites.includes(path));

let count = 0;
function tell(name, faults) {
  faults.forEach((fault) => console.error(`${name}: ${fault}`));
  count += faults.length;
}

const start = performance.now();
await withBrowser(async (browser) => {
  const [blind, ...told] = await each(browser, [undefined, ...files], (context, file) =>
    file === undefined ? blindness(context) : look(context, file),
  );
  tell('axe-core', blind);
  files.forEach((file, at) => tell(basename(file), told[at]));
  for (const site of sites) {
    const { faults, pages, rows } = await tour(browser, site, words);
    tell(basename(site), faults);
    console.log(`site: ${pages} pages, ${rows} rows, ${words.length} words`);
  }
});
const seconds = ((performance.now() - start) / 1000).toFixed(0);
console.log(`pages: ${files.length} in ${VIEWS.length} views, ${count} faults, ${seconds} s`);
process.exitCode = count === 0 && files.length > 0 ? 0 : 1;
