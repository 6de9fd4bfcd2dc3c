// Bundles the page into target/classes, from where it goes into the server's jar; with --tests the
// unit tests into target/unit.
import {
  cpSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

const PAGE = 'target/classes/dev/kettlemark/workbench/page';
/** A page that grows beyond this has taken something large along. */
const MOST_BYTES = 600_000;

if (process.argv.includes('--tests')) {
  rmSync('target/unit', { recursive: true, force: true });
  await build({
    bundle: true,
    platform: 'node',
    target: 'node20',
    logLevel: 'warning',
    entryPoints: readdirSync('test/unit').map((name) => `test/unit/${name}`),
    outdir: 'target/unit',
    format: 'esm',
    outExtension: { '.js': '.mjs' },
    sourcemap: 'inline',
  });
} else {
  rmSync(PAGE, { recursive: true, force: true });
  mkdirSync(PAGE, { recursive: true });
  const { metafile } = await build({
    bundle: true,
    platform: 'browser',
    target: ['chrome109', 'firefox115', 'safari16.4'],
    logLevel: 'warning',
    entryPoints: ['src/workbench.ts', 'src/workbench.css'],
    outdir: PAGE,
    format: 'esm',
    minify: true,
    metafile: true,
    legalComments: 'none',
    external: ['/mark.svg'],
    charset: 'utf8',
  });
  for (const name of ['index.html', 'mark.svg']) {
    cpSync(`src/${name}`, `${PAGE}/${name}`);
  }
  writeFileSync(`${PAGE}/notices.txt`, notices(Object.keys(metafile.inputs)));
  const script = readFileSync(`${PAGE}/workbench.js`);
  console.log(
    `workbench.js ${script.length} bytes, ${gzipSync(script).length} compressed;` +
      ` workbench.css ${statSync(`${PAGE}/workbench.css`).size} bytes`,
  );
  if (script.length > MOST_BYTES) {
    throw new Error(`the page is larger than ${MOST_BYTES} bytes`);
  }
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
