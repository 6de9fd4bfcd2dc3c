// Takes the pictures of README and walkthrough of the real thing: VS Code with the packed extension.
//
//   CODE_SERVER=folder [PATIENCE=factor] node scripts/pictures.mjs [NAME...]
//
// Needs chromium, the fonts of fonts-dejavu-core, and pngquant.
import { cpSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { homedir, tmpdir } from 'node:os';
import { join } from 'node:path';
import { startHost } from '../test/vscode/host.mjs';

const CODE_SERVER = process.env.CODE_SERVER ?? join(homedir(), '.cache/kettlemark/code-server');
const MOST_BYTES = 150_000;

const SETTINGS = {
  'workbench.activityBar.location': 'hidden',
  'workbench.layoutControl.enabled': false,
  'workbench.editor.showTabs': 'single',
  'workbench.editor.editorActionsLocation': 'hidden',
  'workbench.statusBar.visible': false,
  'window.commandCenter': false,
  'breadcrumbs.enabled': false,
  'editor.minimap.enabled': false,
  'editor.stickyScroll.enabled': false,
  'editor.overviewRulerBorder': false,
  'editor.fontFamily': 'DejaVu Sans Mono',
  'editor.fontSize': 14,
  'editor.lightbulb.enabled': 'on',
  'editor.renderLineHighlight': 'none',
  'markdown.preview.fontFamily': 'DejaVu Sans',
  'markdown.preview.fontSize': 13,
  'markdown.preview.lineHeight': 1.3,
};

const PICTURES = {
  async editor(page) {
    await open(page, 'heather-nougat.kettle');
    await page.locator('.codelens-decoration').first().waitFor();
  },

  async finding(page) {
    await open(page, 'white-fondant.kettle');
    await page.locator('.squiggly-error').first().waitFor();
    await word(page, '248').click();
    await settled(page, 2000);
    await page.keyboard.press('Control+.');
    await page.locator('.action-widget').waitFor();
  },

  async mistake(page) {
    await open(page, 'white-fondant.kettle');
    await page.locator('.squiggly-error').first().waitFor();
    await word(page, '248').hover();
    await page.locator('.monaco-hover:visible', { hasText: 'burns at' }).first().waitFor();
  },

  async hover(page) {
    await open(page, 'heather-nougat.kettle');
    await word(page, 'glucose-syrup-42').hover();
    await page.locator('.monaco-hover:visible .hover-contents').first().waitFor();
  },

  async scale(page) {
    await open(page, 'heather-nougat.kettle');
    await command(page, 'Kettlemark: Scale Formula');
    await choose(page, 'Pieces');
    for (const answer of ['60', '30', '4']) {
      await page.locator('.quick-input-box input').fill(answer);
      await settled(page);
      await page.keyboard.press('Enter');
      await settled(page);
    }
    await page.locator('.quick-input-widget', { hasText: 'Write into the text' }).waitFor();
    await preview(page, 'white-sugar');
    // Away from the border between the two, which would light up.
    await page.mouse.move(400, 600);
  },

  async table(page) {
    await open(page, 'heather-nougat.kettle');
    await command(page, 'Kettlemark: Show Formula as Table');
    await preview(page, 'white-sugar');
  },

  async preview(page) {
    await open(page, 'heather-nougat.kettle');
    await command(page, 'Kettlemark: Show the Sheet Beside the Text');
    const frame = page.frameLocator('iframe.webview').frameLocator('iframe#active-frame');
    await frame.locator('#shown h1').waitFor();
    await word(page, 'glucose-syrup-42').click();
    await frame.locator('.here').first().waitFor();
    await page.mouse.move(400, 600);
  },
};

const wanted = process.argv.slice(2);
for (const [name, show] of Object.entries(PICTURES)) {
  if (wanted.length === 0 || wanted.includes(name)) {
    await take(name, show);
  }
}

/** Each in a host of its own, so that no picture holds what the one before left. */
async function take(name, show) {
  const work = mkdtempSync(join(tmpdir(), 'kettlemark-picture-'));
  const library = join(work, 'gannet-slip');
  cpSync('../samples/gannet-slip', library, { recursive: true });
  spoil(join(library, 'white-fondant.kettle'), 'to 118 °C', 'to 248 °C');
  const host = await startHost({
    codeServer: CODE_SERVER,
    folder: join(work, 'host'),
    extensions: ['target/kettlemark.vsix'],
    settings: SETTINGS,
  });
  const path = `pictures/${name}.png`;
  try {
    const page = await host.open(library);
    page.setDefaultTimeout(30_000 * Number(process.env.PATIENCE ?? 1));
    try {
      await show(page);
      await settled(page, 1500);
    } catch (error) {
      // What went wrong is looked at, and does not take the place of a picture.
      await page.screenshot({ path: 'target/picture-failed.png' });
      throw error;
    }
    await page.screenshot({ path });
  } finally {
    await host.close();
    rmSync(work, { recursive: true, force: true });
  }
  spawnSync('pngquant', ['--force', '--ext', '.png', '--nofs', '128', path], { stdio: 'inherit' });
  const { size } = statSync(path);
  console.log(`${path}: ${Math.round(size / 1000)} kB`);
  if (size > MOST_BYTES) {
    console.error(`${path} is larger than ${MOST_BYTES / 1000} kB`);
    process.exitCode = 1;
  }
}

/** The mistake that one of the pictures shows. */
function spoil(file, right, wrong) {
  writeFileSync(file, readFileSync(file, 'utf8').replace(right, wrong));
}

async function open(page, file) {
  await page.locator('.explorer-folders-view .monaco-list-row', { hasText: file }).dblclick();
  await page.locator('.monaco-editor .view-line').first().waitFor();
  await page.locator('.codelens-decoration').first().waitFor();
  await page.keyboard.press('Control+b');
  await settled(page);
}

function word(page, text) {
  return page.locator('.view-line span span', { hasText: new RegExp(`^${text}$`) }).first();
}

async function command(page, title) {
  await page.locator('.view-line').nth(3).click();
  await page.keyboard.press('F1');
  await page.locator('.quick-input-box input').fill(`>${title}`);
  await page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first().waitFor();
  await settled(page);
  await page.keyboard.press('Enter');
}

async function choose(page, label) {
  await page.locator('.quick-input-list .monaco-list-row', { hasText: label }).first().click();
}

/** The preview lies in a frame within a frame. */
async function preview(page, text) {
  const frame = page.frameLocator('iframe.webview').frameLocator('iframe#active-frame');
  await frame.getByText(text).first().waitFor();
}

function settled(page, milliseconds = 400) {
  return page.waitForTimeout(milliseconds);
}
