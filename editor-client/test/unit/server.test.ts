import assert from 'node:assert/strict';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { after, describe, test } from 'node:test';
import {
  checkCommand,
  findJava,
  launchCommand,
  parseVersion,
  type JavaSearch,
} from '../../src/server';

const ROOT = mkdtempSync(path.join(tmpdir(), 'kettlemark java '));
after(() => {
  rmSync(ROOT, { recursive: true });
});

/** Lays out a Java home whose program prints the given version line as real ones do, to stderr. */
function javaHome(name: string, versionLine: string, exitCode = 0): string {
  const home = path.join(ROOT, name);
  mkdirSync(path.join(home, 'bin'), { recursive: true });
  const program = path.join(home, 'bin', 'java');
  writeFileSync(program, `#!/bin/sh\necho '${versionLine}' >&2\nexit ${exitCode.toString()}\n`);
  chmodSync(program, 0o755);
  return home;
}

const JAVA_8 = javaHome('eight', 'java version "1.8.0_392"');
const JAVA_11 = javaHome('eleven', 'openjdk version "11.0.22" 2024-01-16');
const JAVA_17 = javaHome('seventeen', 'openjdk version "17.0.15" 2025-04-15');
const JAVA_25 = javaHome('twenty-five', 'openjdk version "25-ea" 2025-09-16');
const BROKEN = javaHome('broken', 'openjdk version "21.0.1"', 1);
const EMPTY = path.join(ROOT, 'nowhere');

function bin(...homes: readonly string[]): string {
  return homes.map((home) => path.join(home, 'bin')).join(path.delimiter);
}

function find(
  javaHome: string,
  environment: Readonly<Record<string, string | undefined>>,
): Promise<JavaSearch> {
  return findJava({ javaHome, environment, platform: 'linux' });
}

function messageOf(search: JavaSearch): string {
  assert.equal(search.kind, 'unusable');
  return search.message;
}

describe('the version line', () => {
  // First lines as published: JEP 223 (version strings from 9 on) and the Java 8 release notes.
  const lines: readonly (readonly [string, number | undefined])[] = [
    ['java version "1.8.0_392"', 8],
    ['openjdk version "9"', 9],
    ['openjdk version "17.0.15" 2025-04-15', 17],
    ['openjdk version "25-ea" 2025-09-16', 25],
    ['Picked up JAVA_TOOL_OPTIONS: -Xmx1g\nopenjdk version "21.0.2" 2024-01-16', 21],
    ['command not found', undefined],
  ];
  for (const [line, version] of lines) {
    test(line, () => {
      assert.equal(parseVersion(line), version);
    });
  }
});

describe('the search for Java', { skip: process.platform === 'win32' }, () => {
  test('takes the setting before everything else', async () => {
    const search = await find(JAVA_25, { JAVA_HOME: JAVA_17, PATH: bin(JAVA_17) });
    assert.deepEqual(search, {
      kind: 'found',
      java: {
        program: path.join(JAVA_25, 'bin', 'java'),
        origin: 'kettlemark.java.home',
        version: 25,
      },
    });
  });

  test('takes JAVA_HOME before the search path', async () => {
    const search = await find('', { JAVA_HOME: JAVA_17, PATH: bin(JAVA_25) });
    assert.equal(search.kind === 'found' && search.java.origin, 'JAVA_HOME');
  });

  test('passes over a JAVA_HOME that is too old', async () => {
    const search = await find('', { JAVA_HOME: JAVA_11, PATH: bin(JAVA_17) });
    assert.equal(search.kind === 'found' && search.java.version, 17);
    assert.equal(search.kind === 'found' && search.java.origin, 'the search path');
  });

  test('takes the first Java of the search path, as a shell does', async () => {
    const search = await find('', { PATH: bin(EMPTY, JAVA_17, JAVA_25) });
    assert.equal(search.kind === 'found' && search.java.version, 17);
  });

  test('leaves relative folders of the search path alone', async () => {
    const relative = path.relative(process.cwd(), path.join(JAVA_17, 'bin'));
    assert.equal((await find('', { PATH: relative })).kind, 'unusable');
  });

  test('keeps to a setting that does not serve, and says what it found there', async () => {
    const message = messageOf(await find(JAVA_8, { JAVA_HOME: JAVA_17 }));
    assert.match(message, /needs Java 17 or newer; found Java 8 at .*eight.*java\.home\)/);
  });

  test('names every Java that is too old', async () => {
    const message = messageOf(await find('', { JAVA_HOME: JAVA_8, PATH: bin(JAVA_11) }));
    assert.match(message, /Java 8 at .*\(JAVA_HOME\), Java 11 at .*\(the search path\)/);
  });

  test('says how to get one when there is none', async () => {
    const message = messageOf(await find('', { PATH: bin(EMPTY) }));
    assert.match(message, /none was found\. Install a Java runtime.*openjdk-17-jre/);
    assert.match(message, /kettlemark\.java\.home/);
  });

  test('does not take a Java that fails', async () => {
    const message = messageOf(await find(BROKEN, {}));
    assert.match(message, /no working Java at .*broken/);
  });
});

test('the server is started from its jar, arguments of the runtime first', () => {
  const java = { program: '/j/bin/java', origin: 'JAVA_HOME', version: 17 } as const;
  assert.deepEqual(launchCommand(java, '/x y/kettlemark.jar', ['-Xmx256m']), {
    command: '/j/bin/java',
    args: ['-Xmx256m', '-jar', '/x y/kettlemark.jar', 'serve'],
  });
});

test('the checker is run on a folder, one line a finding', () => {
  const java = { program: '/j/bin/java', origin: 'JAVA_HOME', version: 17 } as const;
  const { command, args } = checkCommand(java, '/x y/kettlemark.jar', '.');
  assert.equal(command, '/j/bin/java');
  assert.deepEqual(args, [
    '-XX:+UseSerialGC',
    '-XX:TieredStopAtLevel=1',
    '-jar',
    '/x y/kettlemark.jar',
    'check',
    '--format',
    'line',
    '.',
  ]);
});
