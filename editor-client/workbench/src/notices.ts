/** Sentences above the paper that ask for a decision, and the comparison of two texts. */

import { button, h, openDialog } from './dom';
import { differences } from './lines';

export interface Answer {
  readonly label: string;
  readonly press: () => void;
}

export class Notices {
  private readonly shown = new Map<string, HTMLElement>();

  constructor(private readonly host: HTMLElement) {}

  /** Shows a sentence; one of the same key is replaced. */
  tell(key: string, sentence: string, answers: readonly Answer[] = []): void {
    this.take(key);
    const notice = h(
      'div',
      { class: 'notice', role: 'alert', 'data-notice': key },
      h('span', {}, sentence),
      ...answers.map(({ label, press }) =>
        button(label, () => {
          this.take(key);
          press();
        }),
      ),
    );
    this.shown.set(key, notice);
    this.host.append(notice);
  }

  take(key: string): void {
    this.shown.get(key)?.remove();
    this.shown.delete(key);
  }
}

/** Shows both texts of a conflict line by line. */
export function showConflict(
  path: string,
  mine: string,
  theirs: string,
  answers: readonly Answer[],
): void {
  const rows = differences(mine, theirs).flatMap(({ kind, lines }) => {
    const few = kind === 'same' && lines.length > 6;
    const some = few ? [...lines.slice(0, 3), '⋯', ...lines.slice(-3)] : lines;
    return some.map((line) =>
      h(
        'tr',
        { class: kind },
        h('th', { scope: 'row' }, { same: '', mine: 'yours', theirs: 'disk' }[kind]),
        h('td', {}, line),
      ),
    );
  });
  const dialog = openDialog(
    `${path} was changed by somebody else`,
    [
      h(
        'p',
        {},
        'Lines marked “yours” are only in your text, lines marked “disk” only on the disk.',
      ),
      h(
        'div',
        { class: 'diff', tabindex: '0', role: 'region', 'aria-label': 'Differences' },
        h('table', {}, h('tbody', {}, ...rows)),
      ),
      h(
        'div',
        { class: 'answers' },
        ...answers.map(({ label, press }) =>
          button(label, () => {
            dialog.close();
            press();
          }),
        ),
      ),
    ],
    true,
  );
}
