// Starts a real VS Code (code-server) with the extension in it, and opens it in Chromium.
import { spawn, spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { createVSIX } from '@vscode/vsce';
import { chromium } from 'playwright-core';

const PATIENCE_MS = 60_000;

const SETTINGS = {
  'workbench.startupEditor': 'none',
  'workbench.tips.enabled': false,
  'workbench.colorTheme': 'Default Light Modern',
  'window.menuBarVisibility': 'hidden',
  'security.workspace.trust.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'update.mode': 'none',
  'git.enabled': false,
  'chat.disableAIFeatures': true,
  'chat.commandCenter.enabled': false,
  'editor.accessibilitySupport': 'off',
};

const BROWSER = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // A page behind another is to go on as in a window of its own.
  '--disable-background-timer-throttling',
  '--disable-backgrounding-occluded-windows',
  '--disable-renderer-backgrounding',
];

/** A host of its own in `folder`; `extensions` are packages to install, `settings` the user's. */
export async function startHost({ codeServer, folder, extensions, settings = {}, environment }) {
  const port = await freePort();
  mkdirSync(`${folder}/user/User`, { recursive: true });
  writeFileSync(`${folder}/config.yaml`, `bind-addr: 127.0.0.1:${port}\nauth: none\ncert: false\n`);
  writeFileSync(
    `${folder}/user/User/settings.json`,
    JSON.stringify({ ...SETTINGS, ...settings }, undefined, 2),
  );
  const entry = `${codeServer}/node_modules/code-server/out/node/entry.js`;
  const base = [
    ...['--user-data-dir', `${folder}/user`],
    ...['--extensions-dir', `${folder}/extensions`],
    ...['--config', `${folder}/config.yaml`],
  ];
  const env = { ...process.env, ...environment, EXTENSIONS_GALLERY: '{"serviceUrl":""}' };
  // One after the other: two at once would write one list of extensions.
  for (const extension of extensions) {
    const { status, stderr, stdout } = spawnSync(
      process.execPath,
      [entry, ...base, '--install-extension', extension],
      { env, encoding: 'utf8' },
    );
    if (status !== 0) {
      throw new Error(`${extension} was not installed: ${stdout}${stderr}`);
    }
  }
  const server = spawn(
    process.execPath,
    [entry, ...base, '--disable-telemetry', '--disable-update-check', '--disable-workspace-trust'],
    { env, detached: true, stdio: ['ignore', 'pipe', 'pipe'] },
  );
  for (const stream of [server.stdout, server.stderr]) {
    stream.on('data', (data) => process.stderr.write(data));
  }
  await answering(`http://127.0.0.1:${port}/healthz`);
  const browser = await chromium.launch({ executablePath: '/usr/bin/chromium', args: BROWSER });
  return {
    async open(library, size = { width: 1280, height: 800 }) {
      const page = await browser.newPage({ viewport: size });
      await page.goto(`http://127.0.0.1:${port}/?folder=${encodeURIComponent(library)}`);
      return page;
    },
    async close() {
      await browser.close();
      const ended = new Promise((resolve) => server.once('exit', resolve));
      process.kill(-server.pid, 'SIGTERM');
      await ended;
    },
  };
}

/** Packs a folder as an extension. */
export async function pack(folder, file) {
  await createVSIX({
    cwd: folder,
    packagePath: file,
    dependencies: false,
    allowMissingRepository: true,
    skipLicense: true,
  });
  return file;
}

export async function until(what, condition, patience = PATIENCE_MS) {
  const end = Date.now() + patience;
  for (;;) {
    const value = await condition();
    if (value) {
      return value;
    }
    if (Date.now() > end) {
      throw new Error(`waited in vain for ${what}`);
    }
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

function answering(address) {
  return until(address, async () => {
    try {
      return (await fetch(address)).ok;
    } catch {
      return false;
    }
  });
}

function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}
