import assert from 'node:assert/strict';
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import * as path from 'node:path';
import { after, describe, test } from 'node:test';
import { archiveArguments, archiveOf, prepare, prepareCommand } from '../../src/archive';
import type { Java } from '../../src/server';

const ROOT = mkdtempSync(path.join(tmpdir(), 'kettlemark archive '));
after(() => {
  rmSync(ROOT, { recursive: true });
});

const JAR = path.join(ROOT, 'kettlemark.jar');
writeFileSync(JAR, 'classes');

/** A Java that writes its arguments into the file behind `--out`. */
function java(name: string, version: number, exitCode = 0): Java {
  const program = path.join(ROOT, name);
  const last = '$(for a; do :; done; echo "$a")';
  writeFileSync(
    program,
    `#!/bin/sh\n[ ${exitCode.toString()} = 0 ] && echo "$@" > "${last}"\nexit ${exitCode.toString()}\n`,
  );
  chmodSync(program, 0o755);
  return { program, origin: 'JAVA_HOME', version };
}

const JAVA_17 = java('java17', 17);
const JAVA_25 = java('java25', 25);
const BROKEN = java('broken', 17, 3);

describe('the archive of classes', () => {
  test('is another one for another Java and for another server', () => {
    const first = archiveOf(ROOT, JAVA_17, JAR);
    assert.equal(archiveOf(ROOT, JAVA_17, JAR), first);
    assert.notEqual(archiveOf(ROOT, JAVA_25, JAR), first);
    const other = path.join(ROOT, 'other.jar');
    writeFileSync(other, 'more classes');
    assert.notEqual(archiveOf(ROOT, JAVA_17, other), first);
  });

  test('is not asked for before it is there', () => {
    assert.deepEqual(archiveArguments(JAVA_17, path.join(ROOT, 'none')), []);
  });

  test('is asked for in silence, by the option that the Java knows', () => {
    const archive = path.join(ROOT, 'there');
    writeFileSync(archive, '');
    assert.deepEqual(archiveArguments(JAVA_17, archive), [
      '-Xlog:disable',
      `-XX:SharedArchiveFile=${archive}`,
    ]);
    assert.deepEqual(archiveArguments(JAVA_25, archive), [
      '-Xlog:disable',
      `-XX:AOTCache=${archive}`,
    ]);
  });

  test('is made by the server itself, once, and earlier ones go', async () => {
    const folder = path.join(ROOT, 'kept', 'classes');
    const earlier = path.join(folder, 'earlier.archive');
    const archive = path.join(folder, 'now.archive');
    assert.equal(await prepare(JAVA_17, JAR, earlier), true);
    assert.equal(await prepare(JAVA_17, JAR, archive), true);
    assert.equal(existsSync(earlier), false);
    const { args } = prepareCommand(JAVA_17, JAR, archive);
    assert.equal(readFileSync(archive, 'utf8').trim(), args.join(' '));
    writeFileSync(archive, 'as it is');
    assert.equal(await prepare(JAVA_17, JAR, archive), true);
    assert.equal(readFileSync(archive, 'utf8'), 'as it is');
  });

  test('may be refused, and nothing is there then', async () => {
    const archive = path.join(ROOT, 'refused.archive');
    assert.equal(await prepare(BROKEN, JAR, archive), false);
    assert.equal(existsSync(archive), false);
  });
});
