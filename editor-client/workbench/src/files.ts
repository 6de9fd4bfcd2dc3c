/** Opening, saving and watching files; a change on the disk is never written over unseen. */

import type { EditorState } from '@codemirror/state';
import { Refusal, listFiles, readFile, writeFile, type Folder, type Listed } from './api';
import { Buffer } from './buffers';
import type { Drafts } from './drafts';
import { livingWindows } from './drafts';
import { lined, replacement, withEnds } from './lines';

export interface FileEvents {
  /** The folder holds other files than before, or others have changed them. */
  listed(folder: Folder, changes: readonly DiskChange[]): void;
  /** Somebody else has changed a text that is open here. */
  changedOnDisk(buffer: Buffer): void;
  saved(buffer: Buffer): void;
  /** A text that was not saved was found and put back. */
  broughtBack(buffer: Buffer, at: Date): void;
  noRoomForDraft(buffer: Buffer): void;
  /** The workbench's own server cannot be reached, or does not know this browser any more. */
  away(why: string): void;
}

export interface DiskChange {
  readonly uri: string;
  /** LSP 3.17, "FileChangeType": created, changed, deleted. */
  readonly type: 1 | 2 | 3;
}

export type SaveOutcome = 'saved' | 'conflict' | 'failed';

export class Files {
  private known = new Map<string, Listed>();
  /** Answers to a look at the folder that began before this count are out of date. */
  private writes = 0;

  constructor(
    private readonly drafts: Drafts,
    private readonly state: (uri: string, text: string) => EditorState,
    private readonly events: FileEvents,
    private readonly buffers: () => readonly Buffer[],
  ) {}

  get list(): readonly Listed[] {
    return [...this.known.values()];
  }

  byUri(uri: string): Listed | undefined {
    return this.list.find((file) => file.uri === uri);
  }

  /** Reads a file; what this window, or one that is gone, had not saved of it is put back as an edit. */
  async open(file: Listed): Promise<Buffer> {
    const { text: raw, tag } = await readFile(file.path);
    const { text, end } = lined(raw);
    const buffer = new Buffer(file.path, file.uri, text, tag, end, this.state(file.uri, text));
    const draft = this.drafts.take(file.path, await livingWindows());
    const change = draft === undefined ? undefined : replacement(text, draft.text);
    if (draft === undefined || change === undefined) {
      this.drafts.forget(file.path);
      return buffer;
    }
    buffer.change({ changes: change });
    buffer.begin();
    if (draft.tag !== tag) {
      buffer.foreign = { text, tag };
      buffer.tag = draft.tag;
    }
    this.events.broughtBack(buffer, new Date(draft.at));
    return buffer;
  }

  /** Keeps what is not saved; called after each edit. */
  keep(buffer: Buffer): void {
    if (!buffer.isDirty) {
      this.drafts.forget(buffer.path);
      return;
    }
    const draft = { text: buffer.text, tag: buffer.tag, at: Date.now() };
    if (!this.drafts.keep(buffer.path, draft)) {
      this.events.noRoomForDraft(buffer);
    }
  }

  async save(buffer: Buffer): Promise<SaveOutcome> {
    const { text } = buffer;
    this.writes++;
    try {
      const saved = await writeFile(
        buffer.path,
        withEnds(text, buffer.end),
        buffer.gone ? undefined : buffer.tag,
      );
      if (saved.kind === 'conflict') {
        const { text: disk } = lined(saved.disk.text);
        buffer.foreign = { text: disk, tag: saved.disk.tag };
        buffer.gone = false;
        this.events.changedOnDisk(buffer);
        return 'conflict';
      }
      this.settle(buffer, text, saved.tag);
      this.events.saved(buffer);
      return 'saved';
    } catch (failure) {
      this.events.away(whyOf(failure));
      return 'failed';
    } finally {
      this.writes++;
    }
  }

  /** Lets the next save write over what is on the disk now; the text there was shown. */
  keepMine(buffer: Buffer): void {
    if (buffer.foreign !== undefined) {
      buffer.tag = buffer.foreign.tag;
      buffer.saved = buffer.foreign.text;
      buffer.foreign = undefined;
      this.keep(buffer);
    }
  }

  /** Takes what is on the disk; one's own text is one undo away. */
  takeTheirs(buffer: Buffer): void {
    const { foreign } = buffer;
    if (foreign !== undefined) {
      this.settle(buffer, foreign.text, foreign.tag);
      const change = replacement(buffer.text, foreign.text);
      if (change !== undefined) {
        buffer.change({ changes: change });
      }
      this.keep(buffer);
    }
  }

  async create(path: string, text: string): Promise<boolean> {
    this.writes++;
    const made = await writeFile(path, text, undefined);
    this.writes++;
    return made.kind === 'saved';
  }

  /** Looks at the folder; tells what differs from the last look. */
  async look(): Promise<void> {
    const { writes } = this;
    try {
      const folder = await listFiles();
      if (writes !== this.writes) {
        return;
      }
      const before = this.known;
      this.known = new Map(folder.files.map((file) => [file.uri, file]));
      this.events.listed(folder, changesBetween(before, this.known));
      for (const buffer of this.buffers()) {
        await this.compare(buffer);
      }
    } catch (failure) {
      this.events.away(whyOf(failure));
    }
  }

  private async compare(buffer: Buffer): Promise<void> {
    const listed = this.known.get(buffer.uri);
    if (listed === undefined) {
      if (!buffer.gone) {
        buffer.gone = true;
        this.events.changedOnDisk(buffer);
      }
      return;
    }
    const seen = buffer.foreign?.tag ?? buffer.tag;
    if (listed.tag === seen && !buffer.gone) {
      return;
    }
    const { writes } = this;
    const { text: raw, tag } = await readFile(buffer.path);
    if (writes !== this.writes) {
      return;
    }
    const { text, end } = lined(raw);
    buffer.gone = false;
    const mine = buffer.text;
    if (!buffer.isDirty || mine === text) {
      buffer.end = end;
      this.settle(buffer, text, tag);
      const change = replacement(mine, text);
      if (change !== undefined) {
        buffer.change({ changes: change });
      }
      this.drafts.forget(buffer.path);
    } else {
      buffer.foreign = { text, tag };
    }
    this.events.changedOnDisk(buffer);
  }

  private settle(buffer: Buffer, text: string, tag: string): void {
    buffer.saved = text;
    buffer.tag = tag;
    buffer.foreign = undefined;
    buffer.gone = false;
    this.keep(buffer);
  }
}

function changesBetween(
  before: ReadonlyMap<string, Listed>,
  after: ReadonlyMap<string, Listed>,
): DiskChange[] {
  const changes: DiskChange[] = [];
  for (const [uri, { tag }] of after) {
    const old = before.get(uri);
    if (old === undefined) {
      changes.push({ uri, type: 1 });
    } else if (old.tag !== tag) {
      changes.push({ uri, type: 2 });
    }
  }
  for (const uri of before.keys()) {
    if (!after.has(uri)) {
      changes.push({ uri, type: 3 });
    }
  }
  return changes;
}

function whyOf(failure: unknown): string {
  return failure instanceof Refusal
    ? failure.message
    : 'The workbench on this machine does not answer. Start kettlemark open again; nothing that you typed is lost.';
}
