import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { test } from 'node:test';

const SERVER = '../server/src/main/java/dev/kettlemark/protocol';

test('pages of the extension have a scheme that the server does not answer for', () => {
  const own = /SCHEME = '([\w-]+)'/.exec(readFileSync('src/pages.ts', 'utf8'))?.[1];
  assert.ok(own !== undefined);
  const ofServer = readdirSync(SERVER)
    .filter((name) => name.endsWith('.java'))
    .flatMap((name) => [
      ...readFileSync(`${SERVER}/${name}`, 'utf8').matchAll(/SCHEME = "([\w-]+)"/g),
    ])
    .map(([, scheme]) => scheme);
  assert.ok(ofServer.includes('kettlemark-page'), ofServer.join());
  assert.ok(!ofServer.includes(own), own);
});
