/** The files of the folder: open ones as cards, all of them in a dialog. */

import type { Listed } from './api';
import type { Buffer } from './buffers';
import { button, h, openDialog } from './dom';

export interface LibraryActions {
  open(path: string): void;
  create(path: string): Promise<string>;
  /** What is found in a file, in short. */
  tally(uri: string): string;
}

export function showLibrary(files: readonly Listed[], actions: LibraryActions): void {
  const list = h('ul', { class: 'menu files' });
  const filter = h('input', {
    id: 'file-filter',
    type: 'search',
    autocomplete: 'off',
    input: () => {
      fill();
    },
  });
  const name = h('input', { id: 'file-new', autocomplete: 'off', placeholder: 'name.kettle' });
  const problem = h('p', { class: 'problem', role: 'alert' });
  const dialog = openDialog('Library', [
    h('label', { for: 'file-filter' }, 'Find a file'),
    filter,
    list,
    h(
      'form',
      {
        class: 'new-file',
        submit: (event) => {
          event.preventDefault();
          void make();
        },
      },
      h('label', { for: 'file-new' }, 'New file'),
      name,
      h('button', { type: 'submit' }, 'Make'),
      problem,
    ),
  ]);
  fill();
  filter.focus();

  function fill(): void {
    const wanted = filter.value.toLowerCase();
    list.replaceChildren(
      ...files
        .filter(({ path }) => path.toLowerCase().includes(wanted))
        .map((file) =>
          h(
            'li',
            {},
            button(file.path, () => {
              dialog.close();
              actions.open(file.path);
            }),
            h('span', { class: 'quiet' }, ` ${actions.tally(file.uri)}`),
          ),
        ),
    );
  }

  async function make(): Promise<void> {
    const typed = name.value.trim();
    const path = typed.endsWith('.kettle') ? typed : `${typed}.kettle`;
    problem.textContent = await actions.create(path);
    if (problem.textContent === '') {
      dialog.close();
    }
  }
}

export function showCards(
  host: HTMLElement,
  buffers: readonly Buffer[],
  current: Buffer | undefined,
  open: (buffer: Buffer) => void,
): void {
  host.replaceChildren(
    h(
      'ul',
      {},
      ...buffers.map((buffer) => {
        const dirty = buffer.isDirty;
        const card = button(
          buffer.path.replace(/\.kettle$/, ''),
          () => {
            open(buffer);
          },
          { class: `card${dirty ? ' dirty' : ''}` },
        );
        if (buffer === current) {
          card.setAttribute('aria-current', 'page');
        }
        if (dirty) {
          card.append(h('span', { class: 'hidden' }, ', not saved'));
        }
        return h('li', {}, card);
      }),
    ),
  );
  // Where there are more cards than room, the one that lies open is in sight.
  host.querySelector('[aria-current]')?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
}
