/** Making and filling elements. */

type Child = Node | string;
type Attributes = Readonly<Record<string, string | boolean | ((event: Event) => void)>>;

/** An element; attributes that are functions listen to the event of their name. */
export function h<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') {
      element.addEventListener(name, value);
    } else if (typeof value === 'boolean') {
      element.toggleAttribute(name, value);
    } else {
      element.setAttribute(name, value);
    }
  }
  element.append(...children);
  return element;
}

export function byId(id: string): HTMLElement {
  const element = document.getElementById(id);
  if (element === null) {
    throw new Error(`the page has no #${id}`);
  }
  return element;
}

export function button(
  label: string,
  press: () => void,
  attributes: Attributes = {},
): HTMLButtonElement {
  return h('button', { type: 'button', click: press, ...attributes }, label);
}

/** Asks in a dialog of the page; Escape gives the first word of the answer that does nothing. */
export function openDialog(
  title: string,
  content: readonly Child[],
  wide = false,
): HTMLDialogElement {
  const heading = h('h2', { id: `dialog-${String(++dialogs)}` }, title);
  const close = button(
    'Close',
    () => {
      dialog.close();
    },
    { class: 'close' },
  );
  const dialog = h(
    'dialog',
    { 'aria-labelledby': heading.id, class: wide ? 'wide' : '' },
    h('div', { class: 'dialog-head' }, heading, close),
    ...content,
  );
  dialog.addEventListener('close', () => {
    dialog.remove();
  });
  document.body.append(dialog);
  dialog.showModal();
  return dialog;
}

let dialogs = 0;
