/** What the extension and the page of the preview say to each other. */

import type { Line } from './follow';
import type { PreviewAnswer, PreviewReader, PreviewView } from './protocol';

export const VIEWS: readonly PreviewView[] = ['sheet', 'flow', 'time', 'shares'];

export const READERS: readonly PreviewReader[] = ['chef', 'home', 'production', 'bench'];

export const LOCALES: readonly string[] = ['en-GB', 'en-US', 'de-DE', 'fr-FR'];

/** What the writer has chosen; without a reader or a language, as the text says. */
export interface Choice {
  readonly view: PreviewView;
  readonly reader?: PreviewReader;
  readonly locale?: string;
}

export type ToPage =
  /** `cursor` is where the writer is; the same page is shown again after each key. */
  | {
      readonly kind: 'show';
      readonly uri: string;
      readonly answer: PreviewAnswer;
      readonly choice: Choice;
      readonly cursor?: Line;
      readonly status: string;
    }
  | { readonly kind: 'cursor'; readonly cursor: Line }
  /** What is shown may be old, for this reason. */
  | { readonly kind: 'old'; readonly status: string };

export type FromPage =
  | { readonly kind: 'ready' }
  | { readonly kind: 'choose'; readonly choice: Choice }
  | { readonly kind: 'go'; readonly to: Line };

/** What outlives a reload of the window. */
export interface Kept {
  readonly uri: string;
  readonly name: string;
  readonly choice: Choice;
}

export function isFromPage(value: unknown): value is FromPage {
  if (!isObject(value)) {
    return false;
  }
  switch (value['kind']) {
    case 'ready':
      return true;
    case 'choose':
      return isChoice(value['choice']);
    case 'go': {
      const to = value['to'];
      return isObject(to) && typeof to['uri'] === 'string' && Number.isSafeInteger(to['line']);
    }
    default:
      return false;
  }
}

export function isKept(value: unknown): value is Kept {
  return (
    isObject(value) &&
    typeof value['uri'] === 'string' &&
    typeof value['name'] === 'string' &&
    isChoice(value['choice'])
  );
}

export function isChoice(value: unknown): value is Choice {
  return (
    isObject(value) &&
    includes(VIEWS, value['view']) &&
    (value['reader'] === undefined || includes(READERS, value['reader'])) &&
    (value['locale'] === undefined || includes(LOCALES, value['locale']))
  );
}

function includes(list: readonly string[], value: unknown): boolean {
  return typeof value === 'string' && list.includes(value);
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
