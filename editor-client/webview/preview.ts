/** The program of the preview's page: swaps what is shown, marks where the writer is, and sends clicks back. */

import { lineOf, toldAt, type Line } from '../src/follow';
import type { Choice, FromPage, Kept, ToPage } from '../src/previewMessages';
import type { PreviewReader, PreviewView } from '../src/protocol';

interface Host {
  postMessage(message: FromPage): void;
  setState(state: Kept): void;
}

declare function acquireVsCodeApi(): Host;

type Show = Extract<ToPage, { kind: 'show' }>;

const host = acquireVsCodeApi();
const form = element('choice', HTMLFormElement);
const status = element('status', HTMLElement);
const shown = element('shown', HTMLElement);
const look = element('look', HTMLStyleElement);

let last: Show | undefined;
let cursor: Line | undefined;

function element<T extends Element>(id: string, type: new () => T): T {
  const found = document.getElementById(id);
  if (!(found instanceof type)) {
    throw new Error(`the page has no ${id}`);
  }
  return found;
}

window.addEventListener('message', ({ data }: MessageEvent<ToPage>) => {
  switch (data.kind) {
    case 'show':
      show(data);
      break;
    case 'cursor':
      follow(data.cursor);
      break;
    case 'old':
      say(data.status, true);
      break;
  }
});

/** Another content in the same place: the page does not move, and what had the focus has it again. */
function show(message: Show): void {
  const { scrollX, scrollY } = window;
  const focused = shown.contains(document.activeElement) ? document.activeElement?.id : undefined;
  const isOther =
    last?.answer.name !== message.answer.name || last.answer.view !== message.answer.view;
  last = message;
  look.textContent = message.answer.style;
  const content = document.createElement('template');
  content.innerHTML = message.answer.html;
  shown.replaceChildren(content.content);
  makeReachable(message);
  choose(message);
  say(message.status, false);
  window.scrollTo(scrollX, isOther ? 0 : scrollY);
  if (focused !== undefined && focused !== '') {
    document.getElementById(focused)?.focus({ preventScroll: true });
  }
  host.setState({ uri: message.uri, name: message.answer.name, choice: message.choice });
  const isSame = cursor?.uri === message.cursor?.uri && cursor?.line === message.cursor?.line;
  cursor = message.cursor ?? cursor;
  mark(isOther || !isSame);
}

function say(text: string, isOld: boolean): void {
  // The same words again would be read out again.
  if (status.textContent !== text) {
    status.textContent = text;
  }
  status.classList.toggle('old', isOld);
  shown.classList.toggle('old', isOld);
}

function choose({ answer, choice }: Show): void {
  check('view', answer.view);
  check('reader', answer.reader ?? '');
  element('readers', HTMLFieldSetElement).hidden = answer.view !== 'sheet';
  element('languages', HTMLElement).hidden = answer.view !== 'sheet';
  const locale = form.elements.namedItem('locale');
  if (locale instanceof HTMLSelectElement) {
    locale.value = choice.locale ?? '';
  }
}

function check(name: string, value: string): void {
  for (const radio of document.getElementsByName(name)) {
    if (radio instanceof HTMLInputElement) {
      radio.checked = radio.value === value;
    }
  }
}

form.addEventListener('submit', (event) => {
  event.preventDefault();
});

form.addEventListener('change', ({ target }) => {
  const data = new FormData(form);
  const before = last?.choice;
  const isOf = (name: string): boolean =>
    (target instanceof HTMLInputElement || target instanceof HTMLSelectElement) &&
    target.name === name;
  const reader = isOf('reader') ? text(data, 'reader') : before?.reader;
  const locale = text(data, 'locale');
  const choice: Choice = {
    view: (text(data, 'view') ?? 'sheet') as PreviewView,
    ...(reader === undefined ? {} : { reader: reader as PreviewReader }),
    ...(locale === undefined ? {} : { locale }),
  };
  host.postMessage({ kind: 'choose', choice });
});

function text(data: FormData, name: string): string | undefined {
  const value = data.get(name);
  return typeof value === 'string' && value !== '' ? value : undefined;
}

/** One stop of the tabulator for all that lead to a line; from there on with the arrow keys. */
function makeReachable({ answer }: Show): void {
  let isFirst = true;
  for (const id of new Set(answer.anchors.map((anchor) => anchor.id))) {
    const told = document.getElementById(id);
    if (told !== null) {
      told.setAttribute('tabindex', isFirst ? '0' : '-1');
      told.setAttribute('aria-describedby', 'hint');
      isFirst = false;
    }
  }
}

shown.addEventListener('click', ({ target }) => {
  if (target instanceof Element && window.getSelection()?.isCollapsed !== false) {
    go(target.closest('[tabindex]'));
  }
});

shown.addEventListener('keydown', (event) => {
  const at = document.activeElement;
  if (event.key === 'Enter') {
    go(at);
  } else if (event.key === 'ArrowDown' || event.key === 'ArrowUp') {
    const all = [...shown.querySelectorAll<HTMLElement | SVGElement>('[tabindex]')];
    const next = all[all.findIndex((one) => one === at) + (event.key === 'ArrowDown' ? 1 : -1)];
    if (next !== undefined) {
      event.preventDefault();
      all.forEach((one) => {
        one.setAttribute('tabindex', one === next ? '0' : '-1');
      });
      next.focus();
    }
  }
});

function go(told: Element | null): void {
  const to = told && last && lineOf(last.answer.anchors, last.uri, told.id);
  if (to) {
    host.postMessage({ kind: 'go', to });
  }
}

function follow(to: Line): void {
  cursor = to;
  mark(true);
}

/** Marks what tells the line of the cursor, and brings it into sight where the writer has moved. */
function mark(isToBeSeen: boolean): void {
  shown.querySelectorAll('.here').forEach((one) => {
    one.classList.remove('here');
    one.removeAttribute('aria-current');
  });
  if (last === undefined || cursor === undefined) {
    return;
  }
  const told = toldAt(last.answer.anchors, last.uri, cursor, last.answer.first)
    .map((id) => document.getElementById(id))
    .filter((one) => one !== null);
  told.forEach((one) => {
    one.classList.add('here');
    one.setAttribute('aria-current', 'true');
  });
  if (isToBeSeen) {
    told[0]?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }
}

/** The editor tells its theme by a class of the body. */
function theme(): void {
  const kinds = document.body.classList;
  document.documentElement.dataset['theme'] = kinds.contains('vscode-high-contrast-light')
    ? 'contrast-light'
    : kinds.contains('vscode-high-contrast')
      ? 'contrast-dark'
      : kinds.contains('vscode-dark')
        ? 'dark'
        : 'light';
}

new MutationObserver(theme).observe(document.body, { attributeFilter: ['class'] });
theme();
host.postMessage({ kind: 'ready' });
