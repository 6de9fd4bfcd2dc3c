import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';

interface Matcher {
  readonly pattern: Readonly<Record<string, number>> & { readonly regexp: string };
}

const MANIFEST = JSON.parse(readFileSync('package.json', 'utf8')) as {
  readonly contributes: { readonly problemMatchers: readonly [Matcher] };
};

// What the checker writes, pinned by the server's own test.
const WRITTEN = '../server/src/test/resources/dev/kettlemark/cli/check-lines.txt';

test('the problem matcher reads every line that the checker writes', () => {
  const { pattern } = MANIFEST.contributes.problemMatchers[0];
  const lines = readFileSync(WRITTEN, 'utf8').trimEnd().split('\n');
  for (const line of lines) {
    const found = new RegExp(pattern.regexp).exec(line);
    assert.ok(found, line);
    const part = (name: string): string => found[pattern[name] ?? 0] ?? '';
    assert.equal(
      `${part('file')}:${part('line')}:${part('column')}: ` +
        `${part('severity')}: ${part('message')} [${part('code')}]`,
      line,
    );
  }
});

test('a path may hold colons and spaces', () => {
  const { pattern } = MANIFEST.contributes.problemMatchers[0];
  const found = new RegExp(pattern.regexp).exec(
    'C:\\Rook Haven\\a b.kettle:17:16: error: sugar burns at 248 °C [burning-syrup]',
  );
  assert.equal(found?.[pattern['file'] ?? 0], 'C:\\Rook Haven\\a b.kettle');
});
