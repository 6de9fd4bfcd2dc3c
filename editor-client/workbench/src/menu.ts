/** What can be done at a place: the server's code actions in a dialog, fixes first. */

import type { CodeAction, Command } from 'vscode-languageserver-protocol';
import { h, openDialog } from './dom';

const GROUPS: readonly { readonly title: string; readonly kind: string }[] = [
  { title: 'Fixes', kind: 'quickfix' },
  { title: 'Write otherwise', kind: 'refactor' },
  { title: 'The whole text', kind: 'source' },
  { title: 'More', kind: '' },
];

/** Actions by group, each in the first that its kind falls under; the preferred one of a group first. */
export function grouped(
  actions: readonly (CodeAction | Command)[],
): { readonly title: string; readonly actions: readonly (CodeAction | Command)[] }[] {
  const left = new Set(actions);
  return GROUPS.flatMap(({ title, kind }) => {
    const mine = [...left].filter((action) => kindOf(action).startsWith(kind));
    mine.forEach((action) => left.delete(action));
    mine.sort((a, b) => Number(isPreferred(b)) - Number(isPreferred(a)));
    return mine.length === 0 ? [] : [{ title, actions: mine }];
  });
}

function kindOf(action: CodeAction | Command): string {
  return 'kind' in action ? action.kind : '';
}

function isPreferred(action: CodeAction | Command): boolean {
  return 'isPreferred' in action && action.isPreferred;
}

export function showMenu(
  actions: readonly (CodeAction | Command)[],
  choose: (action: CodeAction | Command) => void,
): void {
  const groups = grouped(actions).flatMap(({ title, actions: ones }) => [
    h('h3', {}, title),
    h('ul', { class: 'menu' }, ...ones.map((action) => h('li', {}, item(action)))),
  ]);
  const dialog = openDialog(
    'What can be done here',
    groups.length > 0
      ? groups
      : [h('p', {}, 'Nothing is offered at this place. Put the cursor on a line or a finding.')],
  );
  dialog.querySelector<HTMLButtonElement>('.menu button:not([aria-disabled])')?.focus();

  function item(action: CodeAction | Command): HTMLElement {
    const disabled = 'disabled' in action ? action.disabled : undefined;
    const label = h(
      'button',
      { type: 'button', 'aria-disabled': disabled === undefined ? false : 'true' },
      action.title,
    );
    if (disabled !== undefined) {
      return h('span', {}, label, h('span', { class: 'quiet' }, ` ${disabled.reason}`));
    }
    label.addEventListener('click', () => {
      dialog.close();
      choose(action);
    });
    label.addEventListener('keydown', (event) => {
      step(event, label);
    });
    return label;
  }

  function step(event: KeyboardEvent, from: HTMLButtonElement): void {
    const all = [
      ...dialog.querySelectorAll<HTMLButtonElement>('.menu button:not([aria-disabled])'),
    ];
    const at = all.indexOf(from);
    const to = event.key === 'ArrowDown' ? at + 1 : event.key === 'ArrowUp' ? at - 1 : undefined;
    if (to !== undefined) {
      event.preventDefault();
      all[(to + all.length) % all.length]?.focus();
    }
  }
}
