/** The numbers in which the protocol tells what words mean, as pieces of a text. */

import type { Text } from '@codemirror/state';

export interface Token {
  readonly from: number;
  readonly to: number;
  readonly type: string;
}

/** LSP 3.17, "Semantic Tokens": five numbers each, the place relative to the token before. */
export function tokensOf(doc: Text, data: readonly number[], legend: readonly string[]): Token[] {
  const tokens: Token[] = [];
  let line = 0;
  let character = 0;
  for (let i = 0; i + 4 < data.length; i += 5) {
    const [lines = 0, characters = 0, length = 0, type = 0] = data.slice(i, i + 4);
    line += lines;
    character = lines > 0 ? characters : character + characters;
    const word = legend[type];
    if (word === undefined || line >= doc.lines) {
      continue;
    }
    const at = doc.line(line + 1);
    const from = at.from + character;
    const to = Math.min(at.to, from + length);
    if (from < to) {
      tokens.push({ from, to, type: word });
    }
  }
  return tokens;
}
