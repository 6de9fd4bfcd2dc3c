/**
 * Texts that are not saved yet, kept by the browser.
 *
 * Each window keeps its own, so that two windows on one file do not overwrite each other's. What a
 * window that is gone has left behind may be taken over.
 */

export interface Draft {
  readonly text: string;
  /** The tag of what the text was begun on. */
  readonly tag: string;
  /** Milliseconds since 1970. */
  readonly at: number;
}

/** As much of the browser's storage as is needed here. */
export interface Store {
  readonly length: number;
  key(index: number): string | null;
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}

const PREFIX = 'kettlemark-draft/';

export class Drafts {
  constructor(
    private readonly store: Store,
    private readonly window: string,
  ) {}

  /** Keeps a text; says whether the browser had room for it. */
  keep(path: string, draft: Draft): boolean {
    try {
      this.store.setItem(this.key(this.window, path), JSON.stringify(draft));
      return true;
    } catch {
      return false;
    }
  }

  forget(path: string): void {
    this.store.removeItem(this.key(this.window, path));
  }

  /** The latest draft of a file by this window or one that is gone; that one's then belongs to this. */
  take(path: string, living: ReadonlySet<string>): Draft | undefined {
    const ours = this.owners(path)
      .filter((owner) => owner === this.window || !living.has(owner))
      .map((owner) => ({ owner, draft: this.read(owner, path) }));
    const latest = ours
      .flatMap(({ draft }) => (draft === undefined ? [] : [draft]))
      .sort((a, b) => b.at - a.at)[0];
    if (latest !== undefined && this.keep(path, latest)) {
      ours
        .filter(({ owner, draft }) => owner !== this.window && draft?.text === latest.text)
        .forEach(({ owner }) => {
          this.store.removeItem(this.key(owner, path));
        });
    }
    return latest;
  }

  /** The files that have a draft which this window may take. */
  paths(living: ReadonlySet<string>): string[] {
    const found = this.keys().flatMap((key) => {
      const [owner, path] = split(key);
      return owner === this.window || !living.has(owner) ? [path] : [];
    });
    return [...new Set(found)];
  }

  private owners(path: string): string[] {
    return this.keys().flatMap((key) => {
      const [owner, of] = split(key);
      return of === path ? [owner] : [];
    });
  }

  private keys(): string[] {
    return Array.from(
      { length: this.store.length },
      (_, index) => this.store.key(index) ?? '',
    ).filter((key) => key.startsWith(PREFIX));
  }

  private read(owner: string, path: string): Draft | undefined {
    try {
      const value: unknown = JSON.parse(this.store.getItem(this.key(owner, path)) ?? 'null');
      return isDraft(value) ? value : undefined;
    } catch {
      return undefined;
    }
  }

  private key(owner: string, path: string): string {
    return `${PREFIX}${owner}/${path}`;
  }
}

function split(key: string): [string, string] {
  const rest = key.slice(PREFIX.length);
  const slash = rest.indexOf('/');
  return [rest.slice(0, slash), rest.slice(slash + 1)];
}

function isDraft(value: unknown): value is Draft {
  if (typeof value !== 'object' || value === null) {
    return false;
  }
  const { text, tag, at } = value as Record<string, unknown>;
  return typeof text === 'string' && typeof tag === 'string' && typeof at === 'number';
}

const LOCK = 'kettlemark-window/';

/**
 * The name of this window, the same after a reload, and held for as long as it lives.
 *
 * A window that was duplicated has its twin's name in storage; the lock tells.
 */
export async function nameOfWindow(): Promise<string> {
  const last = sessionStorage.getItem(LOCK);
  const name = last !== null && (await hold(last)) ? last : crypto.randomUUID();
  if (name !== last) {
    await hold(name);
    sessionStorage.setItem(LOCK, name);
  }
  return name;
}

export async function livingWindows(): Promise<Set<string>> {
  const { held = [] } = await navigator.locks.query();
  return new Set(
    held.flatMap(({ name }) => (name?.startsWith(LOCK) === true ? [name.slice(LOCK.length)] : [])),
  );
}

function hold(name: string): Promise<boolean> {
  return new Promise((resolve) => {
    void navigator.locks.request(LOCK + name, { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      // The promise stays open as long as the window: so does the lock.
      return lock === null ? undefined : new Promise(() => undefined);
    });
  });
}
