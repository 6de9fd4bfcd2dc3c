// Lets axe-core look for what shuts people out, and looks itself at what axe-core leaves to others.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

export const VIEWS = [
  ['light', { colorScheme: 'light' }, 1280],
  ['dark', { colorScheme: 'dark' }, 1280],
  ['print', { media: 'print' }, 700],
  ['narrow', { colorScheme: 'light' }, 320],
];

/** The rules that ask for colours; they take most of the time. */
const COLOURS = ['color-contrast', 'link-in-text-block'];

/** The rules that ask where something is and how large; all others ask what stands in the page. */
const PLACES = ['css-orientation-lock', 'scrollable-region-focusable'];

/** Off by default; a finger needs it on a screen: WCAG 2.2, success criterion 2.5.8. Nobody touches paper. */
const TOUCH = 'target-size';

function told(violation) {
  const places = violation.nodes.slice(0, 3).map((node) => node.target.join(' '));
  return `${violation.id}: ${violation.help} (${places.join('; ')})`;
}

/**
 * What axe-core can see in a view: which elements are there for it, in which colours, and where. Whatever is
 * as it was in a view before is not asked again.
 */
function appearance() {
  const there = [];
  const colours = [];
  const places = [];
  for (const one of document.querySelectorAll('body, body *')) {
    const style = getComputedStyle(one);
    const box = one.getBoundingClientRect();
    // WCAG 2.2, success criterion 1.4.3: large text may be paler.
    const size = Number.parseFloat(style.fontSize);
    const isLarge = size >= 24 || (size >= 18.66 && Number(style.fontWeight) >= 700);
    there.push(one.checkVisibility({ visibilityProperty: true }) ? 1 : 0);
    colours.push(
      `${style.color} ${style.fill} ${style.backgroundColor} ${style.backgroundImage} ${style.opacity} ${isLarge}`,
    );
    places.push(`${style.overflowX} ${box.x} ${box.y} ${box.width} ${box.height}`);
  }
  return { there: there.join(''), colours: colours.join('\n'), places: places.join('\n') };
}

/** What is wrong in the view that is shown, as far as views before have not told it. */
async function run(page, now, before, isPaper) {
  const known = before.filter(({ there }) => there === now.there);
  const options = { resultTypes: ['violations'], rules: { [TOUCH]: { enabled: !isPaper } } };
  if (known.length > 0) {
    const places = isPaper ? PLACES : [...PLACES, TOUCH];
    const values = [
      ...(known.some(({ colours }) => colours === now.colours) ? [] : COLOURS),
      ...(known.some((one) => one.places === now.places) ? [] : places),
    ];
    if (values.length === 0) {
      return [];
    }
    options.runOnly = { type: 'rule', values };
  }
  const { violations, passes } = await page.evaluate(
    (wanted) => globalThis.axe.run(wanted),
    options,
  );
  return known.length === 0 && passes.length < 5
    ? [...violations.map(told), `only ${passes.length} rules had anything to look at`]
    : violations.map(told);
}

/** A page of a site that forgot how its ways to the others look, and shows them as a heap of bullets. */
function bare() {
  return [...document.querySelectorAll('nav li')]
    .filter((one) => getComputedStyle(one).listStyleType !== 'none')
    .map((one) => `${one.textContent} has no look of its own`);
}

/** Every fault of a page, in all views. */
export async function look(context, file) {
  const faults = [];
  const page = await context.newPage();
  const own = file.startsWith('data:') ? file : pathToFileURL(resolve(file)).href;
  page.on('request', (request) => {
    if (request.url() !== own && !request.url().startsWith('data:')) {
      faults.push(`asks for ${request.url()}`);
    }
  });
  await page.goto(own);
  await page.evaluate(AXE);
  const seen = [];
  for (const [name, media, width] of VIEWS) {
    await page.emulateMedia({ media: 'screen', colorScheme: 'light', ...media });
    await page.setViewportSize({ width, height: 900 });
    const now = await page.evaluate(appearance);
    const found = await run(page, now, seen, media.media === 'print');
    faults.push(...found.map((one) => `${name}: ${one}`));
    seen.push(now);
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    if (name === 'narrow' && wide > 0) {
      faults.push(`${name}: scrolls sideways by ${wide} px`);
    }
  }
  faults.push(...(await page.evaluate(bare)));
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

/** A check that cannot fail proves nothing: a page with a fault of each kind, and what must be told of it. */
const WRONG = `<!doctype html><title>x</title><style>
  @media (prefers-color-scheme: dark) { #dim { color: #eee; background: #fff } }
  @media print { #paper { display: block } } @media screen { #paper { display: none } }
  @media (max-width: 400px) { #wide { width: 600px } }
</style><nav><ul><li>way</ul></nav><main><h1>x</h1><img src="data:image/gif,"><p id="dim">dim</p><img id="paper" src="data:image/gif,">
<p id="wide">wide</p></main>`;
const MUST = [
  /^light: image-alt/,
  /^dark: color-contrast/,
  /^print: image-alt.*#paper/,
  /^narrow: scrolls sideways/,
  /^way has no look/,
];

/** What of all this is told nothing of. */
export async function blindness(context) {
  const faults = await look(context, `data:text/html,${encodeURIComponent(WRONG)}`);
  return MUST.filter((one) => !faults.some((fault) => one.test(fault))).map(
    (one) => `nothing is told of ${one.source}`,
  );
}
