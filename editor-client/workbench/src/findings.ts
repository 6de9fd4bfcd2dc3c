/** The findings of the whole folder: in a list below the paper, and underlined in the text. */

import { setDiagnostics, type Diagnostic as Underline } from '@codemirror/lint';
import type { EditorView } from '@codemirror/view';
import type { Diagnostic } from 'vscode-languageserver-protocol';
import { button, h } from './dom';
import { offsetOf } from './edits';

export interface Placed {
  readonly uri: string;
  readonly path: string;
  readonly diagnostic: Diagnostic;
}

const WORDS = ['error', 'error', 'warning', 'note', 'hint'] as const;
const UNDERLINES = ['error', 'error', 'warning', 'info', 'hint'] as const;

export function severityWord({ severity }: Diagnostic): string {
  return WORDS[severity ?? 1];
}

/** {@code 1 error, 2 warnings}; what there is none of is left out. */
export function tally(diagnostics: readonly Diagnostic[]): string {
  const counts = new Map<string, number>();
  diagnostics.forEach((diagnostic) => {
    const word = severityWord(diagnostic);
    counts.set(word, (counts.get(word) ?? 0) + 1);
  });
  const told = ['error', 'warning', 'note', 'hint'].flatMap((word) => {
    const count = counts.get(word) ?? 0;
    return count === 0 ? [] : [`${String(count)} ${word}${count === 1 ? '' : 's'}`];
  });
  return told.length === 0 ? 'no findings' : told.join(', ');
}

export function underline(
  view: EditorView,
  diagnostics: readonly Diagnostic[],
  fixes: (at: number) => void,
): void {
  const { doc } = view.state;
  view.dispatch(
    setDiagnostics(
      view.state,
      diagnostics.map((diagnostic): Underline => {
        const from = offsetOf(doc, diagnostic.range.start);
        const message =
          typeof diagnostic.message === 'string' ? diagnostic.message : diagnostic.message.value;
        return {
          from,
          to: Math.max(from, offsetOf(doc, diagnostic.range.end)),
          severity: UNDERLINES[diagnostic.severity ?? 1],
          message,
          source: String(diagnostic.code ?? ''),
          actions: [
            {
              name: 'Fixes',
              apply: (_view, at) => {
                fixes(at);
              },
            },
          ],
        };
      }),
    ),
  );
}

export interface FindingActions {
  go(finding: Placed): void;
  fixes(finding: Placed): void;
  explain(rule: string): void;
}

/** More than this nobody reads; the count says how many there are. */
const MOST_SHOWN = 200;

export class FindingsList {
  private last = '';

  constructor(
    private readonly title: HTMLElement,
    private readonly list: HTMLElement,
    private readonly told: HTMLElement,
    private readonly actions: FindingActions,
  ) {}

  /** @param isLookedAt whether the server has told of the current text; before that nothing is known of it */
  show(findings: readonly Placed[], current: string | undefined, isLookedAt: boolean): void {
    const own = findings.filter(({ uri }) => uri === current);
    const others = findings.filter(({ uri }) => uri !== current);
    const here = isLookedAt ? tally(own.map(({ diagnostic }) => diagnostic)) : 'being looked for';
    const said =
      others.length === 0 ? here : `${here}; other files ${tally(others.map((o) => o.diagnostic))}`;
    this.title.textContent =
      said === 'no findings'
        ? 'No findings'
        : `Findings: ${said.replace(/^no findings/, 'none here')}`;
    const sorted = [...own, ...others];
    const key = JSON.stringify(sorted);
    if (key !== this.last) {
      this.last = key;
      this.list.replaceChildren(
        ...sorted.slice(0, MOST_SHOWN).map((finding) => this.row(finding, finding.uri === current)),
        ...(sorted.length > MOST_SHOWN
          ? [h('li', { class: 'quiet' }, `and ${String(sorted.length - MOST_SHOWN)} more`)]
          : []),
      );
    }
    if (this.told.textContent !== said) {
      this.told.textContent = said;
    }
  }

  private row(finding: Placed, here: boolean): HTMLElement {
    const { diagnostic, path } = finding;
    const text =
      typeof diagnostic.message === 'string' ? diagnostic.message : diagnostic.message.value;
    const [message = '', ...because] = text.split('\n');
    const word = severityWord(diagnostic);
    const place = `line ${String(diagnostic.range.start.line + 1)}`;
    return h(
      'li',
      { class: `finding ${word}` },
      h('span', { class: 'severity' }, word),
      h(
        'button',
        {
          type: 'button',
          class: 'plain go',
          click: () => {
            this.actions.go(finding);
          },
        },
        h('span', { class: 'place' }, here ? place : `${path}, ${place}`),
        ` ${message}`,
      ),
      h('span', { class: 'because' }, because.join(' ')),
      h(
        'span',
        { class: 'finding-tools' },
        button(
          'Fixes',
          () => {
            this.actions.fixes(finding);
          },
          { 'aria-label': `Fixes for ${message}` },
        ),
        button(
          'Why',
          () => {
            this.actions.explain(String(diagnostic.code ?? ''));
          },
          { 'aria-label': `Why ${String(diagnostic.code ?? 'this')} matters` },
        ),
      ),
    );
  }
}
