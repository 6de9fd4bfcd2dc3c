/**
 * Mirrors what the server understands beyond the Language Server Protocol.
 *
 * Commands of the server travel in `workspace/executeCommand`, each with one argument object. Answers
 * come from another process, so each is checked before it is used.
 */

import type { Position, WorkspaceEdit } from 'vscode-languageclient';
import type { Anchor } from './follow';

export const SERVER_COMMANDS = {
  scale: 'kettlemark.scale',
  show: 'kettlemark.show',
  explainRule: 'kettlemark.explainRule',
  changes: 'kettlemark.changes',
  whatIf: 'kettlemark.whatIf',
  compare: 'kettlemark.compare',
  explain: 'kettlemark.explain',
  label: 'kettlemark.label',
  trials: 'kettlemark.trials',
  used: 'kettlemark.used',
  preview: 'kettlemark.preview',
} as const;

/** Commands of this client that the server's code actions and code lenses refer to. */
export const CLIENT_COMMANDS = {
  askScale: 'kettlemark.scale.ask',
  openShow: 'kettlemark.show.open',
  openWhatIf: 'kettlemark.whatIf.open',
  openCompare: 'kettlemark.compare.open',
} as const;

/** A formula by name, and a document of its library. */
export interface FormulaPlace {
  readonly uri: string;
  readonly formula: string;
}

/** What a formula is taken to. Weights in grams, loss in percent of what is made. */
export type ScaleTarget =
  | { readonly kind: 'charge'; readonly grams: number }
  | { readonly kind: 'finished'; readonly grams: number }
  | {
      readonly kind: 'pieces';
      readonly pieces: number;
      readonly pieceGrams: number;
      readonly lossPercent?: number;
    }
  | { readonly kind: 'moulds'; readonly count: number; readonly name?: string }
  | { readonly kind: 'frames'; readonly count: number; readonly name?: string }
  | { readonly kind: 'bowl'; readonly name?: string }
  | { readonly kind: 'ingredient'; readonly name: string; readonly grams: number };

export interface ScaleArgument extends FormulaPlace {
  readonly target: ScaleTarget;
}

export interface ScaleAnswer {
  readonly edit: WorkspaceEdit;
  readonly title: string;
  /** Markdown. */
  readonly weighingList: string;
  /** Grams weighed in. */
  readonly charge: number;
  /** Grams after cook-off and handling loss. */
  readonly finished: number;
}

export interface ExplainRuleArgument {
  readonly rule: string;
}

/** A document of the library whose unsaved texts are held against the disk. */
export interface ChangesArgument {
  readonly uri: string;
}

/** A document of the library, and the name that is looked for. */
export interface UsedArgument {
  readonly uri: string;
  readonly name: string;
}

/** A material of a formula and what may stand in its place; nothing is edited. */
export interface WhatIfArgument extends FormulaPlace {
  readonly replace: string;
  readonly by: string;
}

export type PreviewView = 'sheet' | 'flow' | 'time' | 'shares';

export type PreviewReader = 'chef' | 'home' | 'production' | 'bench';

/** What is to be shown of a text: what has a name, or else what stands at a position. */
export interface PreviewArgument {
  readonly uri: string;
  readonly position?: Position;
  readonly name?: string;
  readonly view: PreviewView;
  readonly reader?: PreviewReader;
  readonly locale?: string;
}

export interface PreviewAnswer {
  /** Empty where there is nothing to show. */
  readonly name: string;
  readonly title: string;
  readonly view: PreviewView;
  readonly reader?: PreviewReader;
  /** Of the text that the server looked at; absent where no editor holds it. */
  readonly version?: number;
  /** First and last line of the section at the position. */
  readonly first?: number;
  readonly last?: number;
  /** Part of a page, without script and style. */
  readonly html: string;
  readonly style: string;
  readonly anchors: readonly Anchor[];
}

export function isPreviewAnswer(value: unknown): value is PreviewAnswer {
  return (
    isObject(value) &&
    ['name', 'title', 'view', 'html', 'style'].every((key) => typeof value[key] === 'string') &&
    Array.isArray(value['anchors']) &&
    value['anchors'].every(isAnchor)
  );
}

function isAnchor(value: unknown): value is Anchor {
  return (
    isObject(value) &&
    typeof value['line'] === 'number' &&
    typeof value['id'] === 'string' &&
    (value['uri'] === undefined || typeof value['uri'] === 'string')
  );
}

export function isWhatIf(value: unknown): value is WhatIfArgument {
  return (
    isObject(value) &&
    isFormulaPlace(value) &&
    typeof value['replace'] === 'string' &&
    typeof value['by'] === 'string'
  );
}

/** Two formulas; without the other, a variant beside its parent. */
export interface CompareArgument extends FormulaPlace {
  readonly with?: string;
}

export function isCompare(value: unknown): value is CompareArgument {
  return isObject(value) && isFormulaPlace(value) && typeof value['with'] === 'string';
}

export function isFormulaPlace(value: unknown): value is FormulaPlace {
  return (
    isObject(value) && typeof value['uri'] === 'string' && typeof value['formula'] === 'string'
  );
}

export function isScaleAnswer(value: unknown): value is ScaleAnswer {
  return (
    isObject(value) &&
    isObject(value['edit']) &&
    typeof value['title'] === 'string' &&
    typeof value['weighingList'] === 'string' &&
    typeof value['charge'] === 'number' &&
    typeof value['finished'] === 'number'
  );
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
