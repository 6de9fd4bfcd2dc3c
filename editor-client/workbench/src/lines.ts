/** Line ends and differences of texts. */

export interface Lined {
  /** With LF alone. */
  readonly text: string;
  /** What most lines of the file end with. */
  readonly end: '\n' | '\r\n';
}

export function lined(raw: string): Lined {
  const long = raw.split('\r\n').length - 1;
  const short = raw.split('\n').length - 1 - long;
  return { text: raw.replace(/\r\n?/g, '\n'), end: long > short ? '\r\n' : '\n' };
}

export function withEnds(text: string, end: Lined['end']): string {
  return end === '\n' ? text : text.replace(/\n/g, end);
}

export interface Piece {
  readonly kind: 'same' | 'mine' | 'theirs';
  readonly lines: readonly string[];
}

/** Longer differences are shown as one block each; nobody reads them line by line. */
const MOST_LINES = 2000;

/** How two texts differ, line by line; what both begin and end with is found first. */
export function differences(mine: string, theirs: string): Piece[] {
  const a = mine.split('\n');
  const b = theirs.split('\n');
  let start = 0;
  while (start < a.length && start < b.length && a[start] === b[start]) {
    start++;
  }
  let tail = 0;
  while (
    tail < a.length - start &&
    tail < b.length - start &&
    a[a.length - 1 - tail] === b[b.length - 1 - tail]
  ) {
    tail++;
  }
  const pieces: Piece[] = [];
  add(pieces, 'same', a.slice(0, start));
  middle(a.slice(start, a.length - tail), b.slice(start, b.length - tail), pieces);
  add(pieces, 'same', a.slice(a.length - tail));
  return pieces;
}

function middle(a: readonly string[], b: readonly string[], pieces: Piece[]): void {
  if (a.length * b.length > MOST_LINES * MOST_LINES) {
    add(pieces, 'mine', a);
    add(pieces, 'theirs', b);
    return;
  }
  const common = longestCommon(a, b);
  let i = 0;
  let j = 0;
  while (i < a.length || j < b.length) {
    const down = common[i + 1]?.[j] ?? -1;
    const right = common[i]?.[j + 1] ?? -1;
    if (i < a.length && j < b.length && a[i] === b[j]) {
      add(pieces, 'same', a.slice(i, i + 1));
      i++;
      j++;
    } else if (i < a.length && down >= right) {
      add(pieces, 'mine', a.slice(i, i + 1));
      i++;
    } else {
      add(pieces, 'theirs', b.slice(j, j + 1));
      j++;
    }
  }
}

/** For each pair of places, how many lines the rests behind them have in common. */
function longestCommon(a: readonly string[], b: readonly string[]): Uint16Array[] {
  const table = Array.from({ length: a.length + 1 }, () => new Uint16Array(b.length + 1));
  for (let i = a.length - 1; i >= 0; i--) {
    const row = table[i];
    const below = table[i + 1];
    for (let j = b.length - 1; row !== undefined && below !== undefined && j >= 0; j--) {
      row[j] = a[i] === b[j] ? (below[j + 1] ?? 0) + 1 : Math.max(below[j] ?? 0, row[j + 1] ?? 0);
    }
  }
  return table;
}

function add(pieces: Piece[], kind: Piece['kind'], lines: readonly string[]): void {
  const last = pieces[pieces.length - 1];
  if (lines.length === 0) {
    return;
  }
  if (last?.kind === kind) {
    pieces[pieces.length - 1] = { kind, lines: [...last.lines, ...lines] };
  } else {
    pieces.push({ kind, lines });
  }
}

/** The shortest single replacement that makes one text of another. */
export function replacement(
  from: string,
  to: string,
): { readonly from: number; readonly to: number; readonly insert: string } | undefined {
  if (from === to) {
    return undefined;
  }
  let start = 0;
  while (start < from.length && start < to.length && from[start] === to[start]) {
    start++;
  }
  let tail = 0;
  while (
    tail < from.length - start &&
    tail < to.length - start &&
    from[from.length - 1 - tail] === to[to.length - 1 - tail]
  ) {
    tail++;
  }
  return { from: start, to: from.length - tail, insert: to.slice(start, to.length - tail) };
}
