/**
 * Settings of the extension: their names, types and defaults in one table.
 *
 * A test compares the table with package.json, where the editor reads them from.
 */

export interface Settings {
  readonly 'java.home': string;
  readonly 'server.jvmArguments': readonly string[];
  readonly 'trace.server': string;
  readonly 'inlayHints.grams': boolean;
  readonly 'inlayHints.percent': boolean;
  readonly 'inlayHints.otherScale': boolean;
  readonly 'codeLens.totals': boolean;
}

export type SettingName = keyof Settings;

export const SECTION = 'kettlemark';

export const DEFAULTS: Settings = {
  'java.home': '',
  // The serial collector starts soonest. The second compiler stays on: it costs nothing at the
  // start and answers a long document's edits faster once warm.
  'server.jvmArguments': [
    '-XX:+UseSerialGC',
    '-XX:TieredStopAtLevel=1',
    '-XX:CompileThresholdScaling=0.1',
    '-Xms24m',
    '-Xmx256m',
  ],
  'trace.server': 'off',
  'inlayHints.grams': true,
  'inlayHints.percent': true,
  'inlayHints.otherScale': true,
  'codeLens.totals': true,
};

/** A change of one of these takes effect only in a new server process. */
export const NEEDS_RESTART: readonly SettingName[] = ['java.home', 'server.jvmArguments'];

/** Where raw values come from; the editor's own configuration object fits. */
export interface SettingsSource {
  get(name: string): unknown;
}

/** The settings that the server reads, in the shape in which it reads them. */
export interface ServerSettings {
  readonly inlayHints: {
    readonly grams: boolean;
    readonly percent: boolean;
    readonly otherScale: boolean;
  };
  readonly codeLens: { readonly totals: boolean };
}

export class Config {
  constructor(private readonly source: SettingsSource) {}

  /** The value of a setting; its default when it is unset or, edited by hand, of a wrong type. */
  get<N extends SettingName>(name: N): Settings[N] {
    const value = this.source.get(name);
    const standard = DEFAULTS[name];
    return isLike(value, standard) ? value : standard;
  }

  forServer(): ServerSettings {
    return {
      inlayHints: {
        grams: this.get('inlayHints.grams'),
        percent: this.get('inlayHints.percent'),
        otherScale: this.get('inlayHints.otherScale'),
      },
      codeLens: { totals: this.get('codeLens.totals') },
    };
  }
}

function isLike<T>(value: unknown, standard: T): value is T {
  if (Array.isArray(standard)) {
    return Array.isArray(value) && value.every((item) => typeof item === 'string');
  }
  return typeof value === typeof standard;
}
