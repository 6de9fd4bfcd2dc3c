// Lets the probe tell its stories in a real VS Code, and reads the messages that a writer would see.
import { appendFileSync, existsSync, readFileSync, rmSync } from 'node:fs';
import { pack, startHost, until } from './host.mjs';

const { CODE_SERVER, WORK, LIBRARY, RESULTS, CLIENT, PATIENCE } = process.env;
const STORY_MS = 100_000 * Number(PATIENCE);
const SEEN_MS = 20_000 * Number(PATIENCE);
const VSIX = `${CLIENT}/target/kettlemark.vsix`;
const probe = await pack(`${CLIENT}/test/vscode/probe`, `${WORK}/probe.vsix`);

const host = await startHost({
  codeServer: CODE_SERVER,
  folder: `${WORK}/host`,
  extensions: [VSIX, probe],
  environment: { STORY: 'all' },
});
try {
  const page = await host.open(LIBRARY);
  page.setDefaultTimeout(SEEN_MS);
  await colours(page);
  await preview(page);
  await told('whole', page);
  const second = await host.open(LIBRARY);
  await told('two', second);
  await second.close();
  await page.bringToFront();
  await message('old', 'old Java is named', page, /needs Java 17 or newer; found Java 11 at/);
  await message('none', 'no Java is named', page, /no working Java at \/nowhere/);
  const crashes = 'a server that keeps crashing is left alone';
  await message('crashes', crashes, page, /keeps ending by itself/);
  await shown(page).locator('#status.old', { hasText: 'not running' }).waitFor();
  verified('preview says that the server is away');
  await told('java', page);
  await page.reload();
  await shown(page).locator('#shown h1', { hasText: 'Lemon chews' }).waitFor({ timeout: STORY_MS });
  verified('preview outlives a reload');
} finally {
  await host.close();
}

/** A page lies in a frame within a frame. */
function shown(page) {
  return page.frameLocator('iframe.webview').frameLocator('iframe#active-frame');
}

/** What stands beside the text, while the story changes the text. By hand: 60 % and 61 % of 1200 g. */
async function preview(page) {
  const beside = shown(page);
  const violations = [];
  page.on('console', (message) => {
    if (/Content Security Policy/.test(message.text()) && /preview|inline/.test(message.text())) {
      violations.push(message.text());
    }
  });
  await step('shown', 'whole', page, async () => {
    await beside.locator('#shown h1', { hasText: 'Lemon chews' }).waitFor();
    await beside.locator('tr', { hasText: '720' }).first().waitFor();
    await page.screenshot({ path: `${CLIENT}/target/editors/vscode-preview.png` });
    verified('preview');
  });
  await step('typed', 'whole', page, () =>
    beside.locator('tr', { hasText: '732' }).first().waitFor(),
  );
  await step('followed', 'whole', page, async () => {
    await beside.locator('li.here', { hasText: '248' }).first().waitFor();
    verified('preview follows text and cursor');
  });
  await beside
    .locator('tr[tabindex]', { hasText: /glucose/i })
    .first()
    .click();
  await step('drawn', 'whole', page, async () => {
    await beside.locator('input[value="sheet"]').focus();
    await page.keyboard.press('ArrowRight');
    await beside.locator('#shown svg g.stage').first().waitFor();
    await page.screenshot({ path: `${CLIENT}/target/editors/vscode-flow.png` });
    await beside.locator('input[value="flow"]').focus();
    await page.keyboard.press('ArrowLeft');
    await beside.locator('#shown h1').waitFor();
  });
  if (violations.length > 0) {
    throw new Error(violations.join('\n'));
  }
}

/** What the theme makes of the words, while the story goes on. */
async function colours(page) {
  const classOf = async (text) => {
    const word = page.locator('.view-line span span', { hasText: new RegExp(`^${text}$`) });
    await word.first().waitFor({ timeout: STORY_MS });
    return word.first().getAttribute('class');
  };
  const seen = [];
  for (const word of ['formula', 'lemon-chews', 'percent', 'boil']) {
    seen.push(await classOf(word));
  }
  if (new Set(seen).size < 3) {
    throw new Error(`the words look the same: ${seen}`);
  }
  verified('colours');
}

function verified(feature) {
  appendFileSync(RESULTS, `${feature}: ok\n`);
}

async function told(name, page) {
  const file = `${WORK}/${name}.done`;
  try {
    await until(`the story ${name}`, () => existsSync(file), STORY_MS);
  } catch (error) {
    await page.screenshot({ path: `${CLIENT}/target/editors/vscode-failed.png` });
    throw error;
  }
  const problem = readFileSync(file, 'utf8');
  if (problem !== '') {
    await page.screenshot({ path: `${CLIENT}/target/editors/vscode-failed.png` });
    throw new Error(problem);
  }
}

/** Waits for a step of a story, looks at it, and lets the story go on. */
async function step(name, story, page, look) {
  const file = `${WORK}/${name}.step`;
  const patience = STORY_MS;
  await until(
    `the step ${name}`,
    () => existsSync(file) || existsSync(`${WORK}/${story}.done`),
    patience,
  );
  if (!existsSync(file)) {
    await told(story, page);
  }
  try {
    await look();
  } catch (error) {
    await page.screenshot({ path: `${CLIENT}/target/editors/vscode-failed.png` });
    throw error;
  }
  rmSync(file);
}

/** Waits for a step of the story, then for its message on the page. */
function message(name, feature, page, pattern) {
  return step(name, 'java', page, async () => {
    const toast = page.locator('.notifications-toasts', { hasText: pattern });
    await toast.waitFor({ timeout: SEEN_MS });
    // Three messages are seen at once: those of the library would hide the one that helps.
    if ((await page.locator('.notifications-toasts', { hasText: /EPIPE|erroring/ }).count()) > 0) {
      throw new Error('the writer is told of pipes and connections');
    }
    verified(feature);
  });
}
