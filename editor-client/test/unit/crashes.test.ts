import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Crashes } from '../../src/crashes';

const MINUTE = 60_000;

test('three crashes within five minutes are mended, the fourth is not', () => {
  let now = 0;
  const crashes = new Crashes(() => now);
  for (let crash = 1; crash <= 3; crash++) {
    assert.ok(crashes.mayRestart(), crash.toString());
    now += MINUTE;
  }
  assert.ok(!crashes.mayRestart());
});

test('a crash now and then is always mended', () => {
  let now = 0;
  const crashes = new Crashes(() => now);
  for (let crash = 1; crash <= 20; crash++) {
    assert.ok(crashes.mayRestart(), crash.toString());
    now += 2 * MINUTE;
  }
});

test('whoever restarts the server begins anew', () => {
  const crashes = new Crashes(() => 0);
  for (let crash = 1; crash <= 4; crash++) {
    crashes.mayRestart();
  }
  assert.ok(!crashes.mayRestart());
  crashes.forget();
  assert.ok(crashes.mayRestart());
});
