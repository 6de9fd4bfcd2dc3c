// Bundles the extension into dist/, or with --tests the unit tests into out/test/.
import { readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';

const common = { bundle: true, platform: 'node', target: 'node20', logLevel: 'warning' };

if (process.argv.includes('--tests')) {
  rmSync('out', { recursive: true, force: true });
  await build({
    ...common,
    entryPoints: readdirSync('test/unit').map((name) => `test/unit/${name}`),
    outdir: 'out/test',
    format: 'esm',
    outExtension: { '.js': '.mjs' },
    packages: 'external',
    sourcemap: 'inline',
  });
} else {
  rmSync('dist', { recursive: true, force: true });
  const { metafile } = await build({
    ...common,
    entryPoints: ['src/extension.ts'],
    outfile: 'dist/extension.js',
    format: 'cjs',
    external: ['vscode'],
    minify: true,
    metafile: true,
  });
  // The page of the preview takes its program from this file into itself.
  await build({
    bundle: true,
    platform: 'browser',
    target: 'chrome120',
    logLevel: 'warning',
    entryPoints: ['webview/preview.ts'],
    outfile: 'dist/preview.js',
    format: 'iife',
    minify: true,
  });
  writeFileSync('dist/NOTICES.txt', notices(Object.keys(metafile.inputs)));
}

/** The licences of the packages in the bundle; each asks that its text goes along with the code. */
function notices(inputs) {
  const folders = inputs.flatMap(
    (input) => /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input)?.[0] ?? [],
  );
  return [...new Set(folders)].sort().map(notice).join('\n\n');
}

function notice(folder) {
  const { name, version, license } = JSON.parse(readFileSync(`${folder}/package.json`, 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e/i.test(entry));
  if (file === undefined) {
    throw new Error(`${folder} comes without the text of its licence`);
  }
  return `${name} ${version} (${license})\n\n${readFileSync(`${folder}/${file}`, 'utf8').trim()}\n`;
}
