// Compares what the package holds with test/vsix/contents.txt: nothing forgotten, nothing of ours alone.
import { readFileSync } from 'node:fs';

const PACKAGE = 'target/kettlemark.vsix';
const LIST = 'test/vsix/contents.txt';

const held = names(readFileSync(PACKAGE)).sort();
const listed = readFileSync(LIST, 'utf8').split('\n').filter(Boolean);
const missing = listed.filter((name) => !held.includes(name));
const more = held.filter((name) => !listed.includes(name));
for (const name of missing) {
  console.error(`${PACKAGE} lacks ${name}`);
}
for (const name of more) {
  console.error(`${PACKAGE} holds ${name}, which ${LIST} does not list`);
}
process.exit(missing.length + more.length === 0 ? 0 : 1);

/** The names in the central directory of a ZIP file, as APPNOTE.TXT describes it, section 4.3.12. */
function names(zip) {
  const end = zip.lastIndexOf(Buffer.from('PK\x05\x06', 'latin1'));
  const found = [];
  let at = zip.readUInt32LE(end + 16);
  for (let entry = zip.readUInt16LE(end + 10); entry > 0; entry--) {
    const [name, extra, comment] = [28, 30, 32].map((field) => zip.readUInt16LE(at + field));
    found.push(zip.toString('utf8', at + 46, at + 46 + name));
    at += 46 + name + extra + comment;
  }
  return found;
}
