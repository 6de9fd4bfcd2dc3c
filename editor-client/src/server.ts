/** Finds a Java runtime that is new enough, and says how the server is started with it. */

import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import * as path from 'node:path';
import { t } from './l10n';

export const OLDEST_JAVA = 17;

/** A runtime that does not answer within this time is broken, not slow. */
const PATIENCE_MS = 10_000;

export type JavaOrigin = 'kettlemark.java.home' | 'JAVA_HOME' | 'the search path';

export interface Java {
  readonly program: string;
  readonly origin: JavaOrigin;
  readonly version: number;
}

export type JavaSearch =
  | { readonly kind: 'found'; readonly java: Java }
  | { readonly kind: 'unusable'; readonly message: string };

export interface JavaPlaces {
  /** The setting; empty when the writer has not set it. */
  readonly javaHome: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly platform: NodeJS.Platform;
}

export interface LaunchCommand {
  readonly command: string;
  readonly args: string[];
}

/**
 * The first runtime that is new enough: the setting, then JAVA_HOME, then the search path.
 *
 * A runtime named by the setting is the writer's choice: if it does not serve, nothing else is tried.
 */
export async function findJava(places: JavaPlaces): Promise<JavaSearch> {
  const refusals: string[] = [];
  for (const { program, origin } of candidates(places)) {
    const version = existsSync(program) ? await askVersion(program) : undefined;
    if (version !== undefined && version >= OLDEST_JAVA) {
      return { kind: 'found', java: { program, origin, version } };
    }
    refusals.push(refusal(program, origin, version));
  }
  return { kind: 'unusable', message: explain(refusals) };
}

/** The program and arguments that start the server from its jar. */
export function launchCommand(
  java: Java,
  jar: string,
  jvmArguments: readonly string[],
): LaunchCommand {
  return { command: java.program, args: [...jvmArguments, '-jar', jar, 'serve'] };
}

/** The program and arguments that check a folder, one line a finding, without the server; as `server/bin` starts it. */
export function checkCommand(java: Java, jar: string, folder: string): LaunchCommand {
  return {
    command: java.program,
    args: [
      '-XX:+UseSerialGC',
      '-XX:TieredStopAtLevel=1',
      '-jar',
      jar,
      'check',
      '--format',
      'line',
      folder,
    ],
  };
}

/** Reads the feature version from what `java -version` prints; 8 and older call themselves 1.8. */
export function parseVersion(text: string): number | undefined {
  const match = /version "(\d+)(?:\.(\d+))?/.exec(text);
  if (match === null) {
    return undefined;
  }
  const [, first, second] = match;
  return Number(first === '1' && second !== undefined ? second : first);
}

interface Candidate {
  readonly program: string;
  readonly origin: JavaOrigin;
}

function candidates({ javaHome, environment, platform }: JavaPlaces): Candidate[] {
  const name = platform === 'win32' ? 'java.exe' : 'java';
  const inHome = (home: string): string => path.join(home, 'bin', name);
  if (javaHome !== '') {
    return [{ program: inHome(javaHome), origin: 'kettlemark.java.home' }];
  }
  const found: Candidate[] = [];
  const home = environment['JAVA_HOME'];
  if (home !== undefined && home !== '') {
    found.push({ program: inHome(home), origin: 'JAVA_HOME' });
  }
  // Only absolute folders count: a relative one would let a workspace bring its own program along.
  const onPath = (environment['PATH'] ?? environment['Path'] ?? '')
    .split(path.delimiter)
    .filter((folder) => path.isAbsolute(folder))
    .map((folder) => path.join(folder, name))
    .find((program) => existsSync(program));
  if (onPath !== undefined) {
    found.push({ program: onPath, origin: 'the search path' });
  }
  return found;
}

function askVersion(program: string): Promise<number | undefined> {
  return new Promise((resolve) => {
    execFile(program, ['-version'], { timeout: PATIENCE_MS }, (error, stdout, stderr) => {
      resolve(error === null ? parseVersion(stdout + stderr) : undefined);
    });
  });
}

function refusal(program: string, origin: JavaOrigin, version: number | undefined): string {
  const place = `${program} (${origin === 'the search path' ? t('the search path') : origin})`;
  return version === undefined
    ? t('no working Java at {0}', place)
    : t('Java {0} at {1}', version.toString(), place);
}

function explain(refusals: readonly string[]): string {
  const found = refusals.length === 0 ? t('none was found') : t('found {0}', refusals.join(', '));
  return t(
    'Kettlemark needs Java {0} or newer; {1}. Install a Java runtime, for example the package "openjdk-17-jre" of Debian and Ubuntu, or set "kettlemark.java.home" to the folder of one.',
    OLDEST_JAVA.toString(),
    found,
  );
}
