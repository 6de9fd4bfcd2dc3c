/** Edits of the protocol as changes of a text. */

import type { ChangeSpec, Text } from '@codemirror/state';
import type { Position, Range, TextEdit, WorkspaceEdit } from 'vscode-languageserver-protocol';

/** Where a position lies in a text; one beyond its line or its end is taken back to it, as the protocol asks. */
export function offsetOf(doc: Text, position: Position): number {
  if (position.line >= doc.lines) {
    return doc.length;
  }
  const line = doc.line(Math.max(0, position.line) + 1);
  return Math.min(line.to, line.from + Math.max(0, position.character));
}

export function positionOf(doc: Text, offset: number): Position {
  const line = doc.lineAt(offset);
  return { line: line.number - 1, character: offset - line.from };
}

export function rangeOf(doc: Text, from: number, to: number): Range {
  return { start: positionOf(doc, from), end: positionOf(doc, to) };
}

export function changesOf(doc: Text, edits: readonly TextEdit[]): ChangeSpec[] {
  return edits.map(({ range, newText }) => ({
    from: offsetOf(doc, range.start),
    to: offsetOf(doc, range.end),
    insert: newText,
  }));
}

/** The edits of one text, and the version of it that they are meant for where that is told. */
export interface FileEdits {
  readonly uri: string;
  readonly version: number | undefined;
  readonly edits: readonly TextEdit[];
}

/** An edit by files; one that makes, renames or deletes files is not understood. */
export function filesOf(edit: WorkspaceEdit): FileEdits[] | undefined {
  if (edit.documentChanges !== undefined) {
    const files: FileEdits[] = [];
    for (const change of edit.documentChanges) {
      if (!('textDocument' in change)) {
        return undefined;
      }
      files.push({
        uri: change.textDocument.uri,
        version: change.textDocument.version ?? undefined,
        edits: change.edits.flatMap((one) => ('newText' in one ? [one] : [])),
      });
    }
    return files;
  }
  return Object.entries(edit.changes ?? {}).map(([uri, edits]) => ({
    uri,
    version: undefined,
    edits,
  }));
}
