/** Markdown and HTML of the server, laid into the page without anything that could act. */

import { Marked } from 'marked';

/** What a page of the server is made of; whatever is not listed is replaced by its text. */
const ELEMENTS = new Set(
  (
    'a b blockquote br code dd del div dl dt em h1 h2 h3 h4 h5 h6 hr i li ol p pre s span strong sub sup' +
    ' table tbody td th thead tr ul'
  ).split(' '),
);
const ATTRIBUTES = new Set(['align', 'colspan', 'rowspan', 'start', 'title']);

/** A picture by itself is not drawn so small that nobody can read it; its frame moves sideways instead. */
const READABLE = '.kettlemark-preview > svg { max-width: max(100%, 46rem) !important; }';

const marked = new Marked({ gfm: true, async: false });

export function ofMarkdown(markdown: string): DocumentFragment {
  return ofHtml(marked.parse(markdown, { async: false }));
}

export function ofHtml(html: string): DocumentFragment {
  const parsed = new DOMParser().parseFromString(html, 'text/html');
  const clean = document.createDocumentFragment();
  clean.append(...[...parsed.body.childNodes].flatMap(cleaned));
  return clean;
}

/** The same as text, for a component that takes no nodes. */
export function sanitized(html: string): string {
  const holder = document.createElement('div');
  holder.append(ofHtml(html));
  return holder.innerHTML;
}

function cleaned(node: Node): Node[] {
  if (node.nodeType === Node.TEXT_NODE) {
    return [document.createTextNode(node.textContent ?? '')];
  }
  if (!(node instanceof Element) || node.localName === 'script' || node.localName === 'style') {
    return [];
  }
  const children = [...node.childNodes].flatMap(cleaned);
  if (!ELEMENTS.has(node.localName)) {
    return children;
  }
  // A heading without words heads nothing; tables of Markdown have such a row where they have no headings.
  const isEmptyHead = node.localName === 'th' && node.textContent.trim() === '';
  const copy = document.createElement(isEmptyHead ? 'td' : node.localName);
  for (const { name, value } of node.attributes) {
    if (ATTRIBUTES.has(name)) {
      copy.setAttribute(name, value);
    }
  }
  copy.append(...children);
  return [copy];
}

/**
 * Shows what the server has drawn or laid out: a fragment or a picture without scripts, and its style.
 *
 * It lives in a shadow tree with a constructed style sheet, so that neither the page's style nor the
 * drawing's reaches the other, and the page's policy needs no exception for it.
 */
export function showDrawn(
  host: HTMLElement,
  markup: string,
  style: string,
  theme: string,
): ShadowRoot {
  const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
  const own: string[] = [];
  // Taken out before the text is parsed: the page's policy refuses even to parse a style element.
  const plain = markup.replace(/<style[^>]*>([^]*?)<\/style>/g, (_whole, css: string) => {
    own.push(css);
    return '';
  });
  const parsed = new DOMParser().parseFromString(plain, 'text/html');
  parsed
    .querySelectorAll('script, style, link, iframe, object, embed, base, meta, form')
    .forEach((element) => {
      element.remove();
    });
  parsed.querySelectorAll('*').forEach((element) => {
    for (const { name, value } of [...element.attributes]) {
      if (name.startsWith('on') || (name.endsWith('href') && !value.startsWith('#'))) {
        element.removeAttribute(name);
      }
    }
  });
  const sheet = new CSSStyleSheet();
  sheet.replaceSync([style, ...own, READABLE].join('\n'));
  root.adoptedStyleSheets = [sheet];
  const around = document.createElement('div');
  around.dataset['theme'] = theme;
  around.append(...[...parsed.body.childNodes].map((node) => document.adoptNode(node)));
  root.replaceChildren(around);
  return root;
}
