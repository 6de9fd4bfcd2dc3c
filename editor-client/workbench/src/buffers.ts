/** The texts that are open, each with its history, whether it is in front or not. */

import { LSPPlugin, Workspace, type LSPClient, type WorkspaceFile } from '@codemirror/lsp-client';
import { ChangeSet, Text, type EditorState, type TransactionSpec } from '@codemirror/state';
import type { EditorView } from '@codemirror/view';
import type { Held } from './api';
import type { Lined } from './lines';

export const LANGUAGE = 'kettlemark';

/** One open file. */
export class Buffer implements WorkspaceFile {
  readonly languageId = LANGUAGE;
  version = 0;
  /** What the server knows. */
  doc: Text;
  /** What was done since, while the text was not in front. */
  pending: ChangeSet;
  view: EditorView | null = null;
  /** What the disk holds now, where somebody else has changed it under unsaved text. */
  foreign: Held | undefined;
  /** Whether the file is gone from the disk. */
  gone = false;

  constructor(
    readonly path: string,
    readonly uri: string,
    /** What was last read or saved, with LF. */
    public saved: string,
    public tag: string,
    public end: Lined['end'],
    private own: EditorState,
  ) {
    this.doc = own.doc;
    this.pending = ChangeSet.empty(own.doc.length);
  }

  get state(): EditorState {
    return this.view?.state ?? this.own;
  }

  get text(): string {
    return this.state.doc.toString();
  }

  get isDirty(): boolean {
    const { doc } = this.state;
    return doc.length !== this.saved.length || doc.toString() !== this.saved;
  }

  getView(): EditorView | null {
    return this.view;
  }

  /** Nobody has been told of the text yet. */
  begin(): void {
    this.doc = this.state.doc;
    this.pending = ChangeSet.empty(this.doc.length);
  }

  /** Takes the text back from the view that showed it. */
  leave(): void {
    if (this.view !== null) {
      this.own = this.view.state;
      this.view = null;
    }
  }

  change(spec: TransactionSpec): void {
    if (this.view !== null) {
      this.view.dispatch(spec);
      return;
    }
    const transaction = this.own.update(spec);
    this.own = transaction.state;
    this.pending = this.pending.compose(transaction.changes);
  }
}

/** What the client of the language server knows of them. */
export class Buffers extends Workspace {
  files: Buffer[] = [];
  /** Whether there is a session to which changes can be sent. */
  online = false;

  constructor(
    client: LSPClient,
    private readonly display: (uri: string) => Promise<EditorView | null>,
    private readonly open: (uri: string) => Promise<Buffer | null>,
  ) {
    super(client);
  }

  override getFile(uri: string): Buffer | null {
    return this.files.find((file) => file.uri === uri) ?? null;
  }

  override requestFile(uri: string): Promise<Buffer | null> {
    return this.open(uri);
  }

  override syncFiles(): { file: Buffer; prevDoc: Text; changes: ChangeSet }[] {
    if (!this.online) {
      return [];
    }
    return this.files.flatMap((file) => {
      const plugin = file.view === null ? null : LSPPlugin.get(file.view);
      const changes = plugin === null ? file.pending : plugin.unsyncedChanges;
      if (changes.empty) {
        return [];
      }
      const prevDoc = file.doc;
      this.settle(file, plugin);
      return [{ file, prevDoc, changes }];
    });
  }

  add(file: Buffer): void {
    this.files.push(file);
    if (this.online) {
      this.client.didOpen(file);
    }
  }

  override openFile(uri: string, _language: string, view: EditorView): void {
    const file = this.getFile(uri);
    if (file !== null) {
      file.view = view;
    }
  }

  /** A text stays open for the server when another one comes in front. */
  override closeFile(): void {
    // Buffer.leave has taken the text back already.
  }

  override connected(): void {
    this.online = true;
    for (const file of this.files) {
      this.settle(file, file.view === null ? null : LSPPlugin.get(file.view));
      this.client.didOpen(file);
    }
  }

  override disconnected(): void {
    this.online = false;
  }

  override updateFile(uri: string, update: TransactionSpec): void {
    this.getFile(uri)?.change(update);
  }

  override displayFile(uri: string): Promise<EditorView | null> {
    return this.display(uri);
  }

  private settle(file: Buffer, plugin: LSPPlugin | null): void {
    file.begin();
    file.version++;
    plugin?.clear();
  }
}
