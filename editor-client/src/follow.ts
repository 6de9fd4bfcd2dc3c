/** How what is shown follows the text: which element tells which line, and which answer still counts. */

/** A line of a text and the element that tells it; without `uri`, of the text that was asked about. */
export interface Anchor {
  readonly line: number;
  readonly id: string;
  readonly uri?: string;
}

/** A line of a text. */
export interface Line {
  readonly uri: string;
  readonly line: number;
}

/**
 * The elements that tell the line of the cursor, or the nearest line above it that anything tells.
 *
 * `asked` is the text that was asked about; `first` is the line that its section begins at.
 */
export function toldAt(
  anchors: readonly Anchor[],
  asked: string,
  at: Line,
  first = 0,
): readonly string[] {
  const above = anchors.filter(
    ({ uri = asked, line }) =>
      uri === at.uri && line <= at.line && (uri !== asked || line >= first),
  );
  const nearest = Math.max(...above.map(({ line }) => line));
  return above.filter(({ line }) => line === nearest).map(({ id }) => id);
}

/** The line that an element tells; undefined for an element that tells none. */
export function lineOf(anchors: readonly Anchor[], asked: string, id: string): Line | undefined {
  const anchor = anchors.find((one) => one.id === id);
  return anchor && { uri: anchor.uri ?? asked, line: anchor.line };
}

/** Whether a line belongs to the section that an answer is about, so that nothing else is to be shown. */
export function isWithin(
  line: number,
  first: number | undefined,
  last: number | undefined,
): boolean {
  return first !== undefined && last !== undefined && line >= first && line <= last;
}

/** Of many questions only the last one's answer counts. */
export class Latest {
  private turn = 0;

  /** Begins a question; what is returned says whether it is still the last one. */
  begin(): () => boolean {
    const mine = ++this.turn;
    return () => mine === this.turn;
  }

  /** No answer to what was asked so far counts any more. */
  forget(): void {
    this.turn++;
  }
}
