/** The archive of classes from which Java starts the server in a fraction of the time. */

import { execFile } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import * as path from 'node:path';
import type { Java, LaunchCommand } from './server';

/** From here on an archive holds linked classes and profiles as well (JEP 514, JEP 515). */
const WITH_PROFILES = 25;

/** Making one takes a few seconds; one that takes so long is given up. */
const PATIENCE_MS = 120_000;

const SUFFIX = '.archive';

/** The file for one Java and one server: another of either has another name. */
export function archiveOf(folder: string, java: Java, jar: string): string {
  const { size, mtimeMs } = statSync(jar);
  const mark = createHash('sha256')
    .update([java.program, String(java.version), jar, String(size), String(mtimeMs)].join('\0'))
    .digest('hex')
    .slice(0, 16);
  return path.join(folder, `${mark}${SUFFIX}`);
}

/**
 * The arguments with which Java starts from an archive; none where there is none yet.
 *
 * Where an archive does not fit, Java would say so on its output, in the middle of the protocol; so
 * it is told to keep its remarks to itself.
 */
export function archiveArguments(java: Java, archive: string): string[] {
  const option = java.version >= WITH_PROFILES ? '-XX:AOTCache=' : '-XX:SharedArchiveFile=';
  return existsSync(archive) ? ['-Xlog:disable', option + archive] : [];
}

/** The program and arguments that make an archive. */
export function prepareCommand(java: Java, jar: string, archive: string): LaunchCommand {
  return { command: java.program, args: ['-jar', jar, 'prepare', '--out', archive] };
}

/** Makes an archive where there is none, and takes away those of earlier servers. */
export async function prepare(java: Java, jar: string, archive: string): Promise<boolean> {
  if (existsSync(archive)) {
    return true;
  }
  const folder = path.dirname(archive);
  mkdirSync(folder, { recursive: true });
  for (const name of readdirSync(folder).filter((one) => one.endsWith(SUFFIX))) {
    try {
      rmSync(path.join(folder, name), { force: true });
    } catch {
      // Another window runs from it.
    }
  }
  const { command, args } = prepareCommand(java, jar, archive);
  return new Promise((resolve) => {
    execFile(command, args, { timeout: PATIENCE_MS }, (error) => {
      resolve(error === null);
    });
  });
}
