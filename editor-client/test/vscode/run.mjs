// Lets the probe tell its stories in a real VS Code, and reads the messages that a writer would see.
import { appendFileSync, existsSync, readFileSync, rmSync } from 'node:fs';
import { pack, startHost, until } from './host.mjs';

const { CODE_SERVER, WORK, LIBRARY, RESULTS, CLIENT } = process.env;
const STORY_MS = 100_000;
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
  await colours(page);
  await told('whole', page);
  const second = await host.open(LIBRARY);
  await told('two', second);
  await second.close();
  await page.bringToFront();
  await message('old', 'old Java is named', page, /needs Java 17 or newer; found Java 11 at/);
  await message('none', 'no Java is named', page, /no working Java at \/nowhere/);
  const crashes = 'a server that keeps crashing is left alone';
  await message('crashes', crashes, page, /keeps ending by itself/);
  await told('java', page);
} finally {
  await host.close();
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
  appendFileSync(RESULTS, 'colours: ok\n');
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

/** Waits for a step of the story, then for its message on the page, and lets the story go on. */
async function message(step, feature, page, pattern) {
  const file = `${WORK}/${step}.step`;
  await until(`the step ${step}`, () => existsSync(file) || existsSync(`${WORK}/java.done`));
  if (!existsSync(file)) {
    await told('java', page);
  }
  const shown = page.locator('.notifications-toasts', { hasText: pattern });
  await shown.waitFor({ timeout: 20_000 });
  appendFileSync(RESULTS, `${feature}: ok\n`);
  rmSync(file);
}
