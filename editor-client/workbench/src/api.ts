/** What the workbench's own server keeps: the formula files of one folder. */

export interface Listed {
  readonly path: string;
  readonly uri: string;
  readonly tag: string;
}

export interface Folder {
  readonly folder: string;
  readonly root: string;
  readonly files: readonly Listed[];
}

export interface Held {
  readonly text: string;
  readonly tag: string;
}

export type Saved =
  | { readonly kind: 'saved'; readonly tag: string }
  | { readonly kind: 'conflict'; readonly disk: Held };

/** A refusal of the server in its own words. */
export class Refusal extends Error {
  constructor(
    readonly status: number,
    message: string,
  ) {
    super(message);
  }
}

export async function listFiles(): Promise<Folder> {
  const json = await jsonOf(await fetch('/api/files'));
  const files = json['files'];
  if (
    typeof json['folder'] !== 'string' ||
    typeof json['root'] !== 'string' ||
    !Array.isArray(files)
  ) {
    throw new Refusal(500, 'the list of files is malformed');
  }
  return { folder: json['folder'], root: json['root'], files: files.map(listed) };
}

export async function readFile(path: string): Promise<Held> {
  return held(await jsonOf(await fetch(address(path))));
}

/** Saves over what was seen; `seen` undefined makes a new file. */
export async function writeFile(
  path: string,
  text: string,
  seen: string | undefined,
): Promise<Saved> {
  const condition: Record<string, string> =
    seen === undefined ? { 'If-None-Match': '*' } : { 'If-Match': `"${seen}"` };
  const response = await fetch(address(path), {
    method: 'PUT',
    headers: { 'Content-Type': 'text/plain;charset=utf-8', ...condition },
    body: text,
  });
  if (response.status === 409) {
    return { kind: 'conflict', disk: held(asObject(await response.json())) };
  }
  return { kind: 'saved', tag: held(await jsonOf(response)).tag };
}

export async function endServer(): Promise<void> {
  await fetch('/api/end', { method: 'POST' });
}

function address(path: string): string {
  return `/api/file?path=${encodeURIComponent(path)}`;
}

async function jsonOf(response: Response): Promise<Record<string, unknown>> {
  if (!response.ok) {
    throw new Refusal(response.status, (await response.text()).trim());
  }
  return asObject(await response.json());
}

function asObject(value: unknown): Record<string, unknown> {
  if (typeof value !== 'object' || value === null) {
    throw new Refusal(500, 'the answer is malformed');
  }
  return value as Record<string, unknown>;
}

function held(json: Record<string, unknown>): Held {
  const { text, tag } = json;
  if (typeof text !== 'string' || typeof tag !== 'string') {
    throw new Refusal(500, 'the file is malformed');
  }
  return { text, tag };
}

function listed(value: unknown): Listed {
  const { path, uri, tag } = asObject(value);
  if (typeof path !== 'string' || typeof uri !== 'string' || typeof tag !== 'string') {
    throw new Refusal(500, 'the list of files is malformed');
  }
  return { path, uri, tag };
}
