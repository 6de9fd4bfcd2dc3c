// Lays the files of the extension out in target/vsix and packs them into target/kettlemark.vsix.
// Only what is listed here is shipped, so no ignore list can forget a file.
import { cpSync, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { createVSIX } from '@vscode/vsce';

const JAR = '../server/target/kettlemark.jar';
const FILES = [
  ['package.json', 'package.json'],
  ['package.nls.json', 'package.nls.json'],
  ['package.nls.de.json', 'package.nls.de.json'],
  ['l10n', 'l10n'],
  ['icon.png', 'icon.png'],
  ['icons', 'icons'],
  ['pictures', 'pictures'],
  ['../samples/gannet-slip', 'samples'],
  ['README.md', 'README.md'],
  ['../LICENSE', 'LICENSE'],
  ['language-configuration.json', 'language-configuration.json'],
  ['syntaxes', 'syntaxes'],
  ['snippets', 'snippets'],
  ['dist', 'dist'],
  [JAR, 'server/kettlemark.jar'],
];
const STAGE = 'target/vsix';
const PACKAGE = 'target/kettlemark.vsix';

if (!existsSync(JAR)) {
  console.error(`${JAR} is missing: build the server first, with mvn -pl server -am package`);
  process.exit(1);
}
rmSync(STAGE, { recursive: true, force: true });
mkdirSync(STAGE, { recursive: true });
for (const [from, to] of FILES) {
  cpSync(from, `${STAGE}/${to}`, { recursive: true });
}
// The packer asks for an ignore list; nothing that is laid out is to be left out.
writeFileSync(`${STAGE}/.vscodeignore`, '');
// Two builds of one source give the same bytes: the time of the build is that of pom.xml, 2026-01-01.
process.env.SOURCE_DATE_EPOCH ??= '1767225600';
// The bundle holds every dependency, and the project has no public address to link to.
await createVSIX({
  cwd: STAGE,
  packagePath: PACKAGE,
  dependencies: false,
  allowMissingRepository: true,
});
