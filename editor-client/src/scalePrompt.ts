/** Asks what a formula is to be taken to, and turns the answers into the server's argument. */

import { t } from './l10n';
import type { ScaleTarget } from './protocol';

/** The two ways of asking; both give undefined when the writer turns back. */
export interface Asker {
  choose<T>(title: string, choices: readonly Choice<T>[]): Promise<T | undefined>;
  /** `problem` says what is wrong with an answer, or gives undefined when it will do. */
  enter(
    title: string,
    prompt: string,
    problem: (text: string) => string | undefined,
  ): Promise<string | undefined>;
}

export interface Choice<T> {
  readonly label: string;
  readonly detail: string;
  readonly value: T;
}

type Kind = ScaleTarget['kind'];

function kinds(): readonly Choice<Kind>[] {
  return [
    { value: 'charge', label: t('Charge'), detail: t('grams of all that is weighed in') },
    {
      value: 'finished',
      label: t('Finished weight'),
      detail: t('grams after cook-off and loss'),
    },
    {
      value: 'pieces',
      label: t('Pieces'),
      detail: t('a number of pieces of one weight, with loss'),
    },
    { value: 'moulds', label: t('Moulds'), detail: t('a number of filled moulds') },
    { value: 'frames', label: t('Frames'), detail: t('a number of filled frames') },
    { value: 'bowl', label: t('Bowl'), detail: t('as much as a bowl can whip') },
    {
      value: 'ingredient',
      label: t('Ingredient in hand'),
      detail: t('grams of one ingredient to use up'),
    },
  ];
}

/** The target that the writer asks for, or undefined when they turn back at any question. */
export async function askTarget(asker: Asker): Promise<ScaleTarget | undefined> {
  const kind = await asker.choose(t('Scale formula to'), kinds());
  return kind === undefined ? undefined : QUESTIONS[kind](asker);
}

/** Reads a plain decimal number; a comma is refused, for it may mean thousands or decimals. */
export function readNumber(text: string): number | undefined {
  return /^(\d+(\.\d+)?|\.\d+)$/.test(text.trim()) ? Number(text) : undefined;
}

const QUESTIONS: Readonly<Record<Kind, (asker: Asker) => Promise<ScaleTarget | undefined>>> = {
  async charge(asker) {
    const grams = await enterWeight(asker, t('Charge in grams'));
    return grams === undefined ? undefined : { kind: 'charge', grams };
  },

  async finished(asker) {
    const grams = await enterWeight(asker, t('Finished weight in grams'));
    return grams === undefined ? undefined : { kind: 'finished', grams };
  },

  async pieces(asker) {
    const pieces = await enterCount(asker, t('Number of pieces'));
    if (pieces === undefined) {
      return undefined;
    }
    const pieceGrams = await enterWeight(asker, t('Weight of one piece in grams'));
    if (pieceGrams === undefined) {
      return undefined;
    }
    const loss = await asker.enter(
      t('Scale formula'),
      t('Loss in percent; empty for what is declared'),
      (text) => (text.trim() === '' ? undefined : lossProblem(text)),
    );
    if (loss === undefined) {
      return undefined;
    }
    const lossPercent = readNumber(loss);
    return lossPercent === undefined
      ? { kind: 'pieces', pieces, pieceGrams }
      : { kind: 'pieces', pieces, pieceGrams, lossPercent };
  },

  moulds: (asker) =>
    askFilled(asker, 'moulds', {
      count: t('Number of moulds'),
      name: t("Name of the mould; empty for the formula's own"),
    }),

  frames: (asker) =>
    askFilled(asker, 'frames', {
      count: t('Number of frames'),
      name: t("Name of the frame; empty for the formula's own"),
    }),

  async bowl(asker) {
    const name = await enterOptionalName(asker, t("Name of the bowl; empty for the formula's own"));
    return name === undefined ? undefined : { kind: 'bowl', ...named(name) };
  },

  async ingredient(asker) {
    const name = await asker.enter(t('Scale formula'), t('Name of the ingredient'), (text) =>
      text.trim() === '' ? t('write the name that the formula uses') : undefined,
    );
    if (name === undefined) {
      return undefined;
    }
    const grams = await enterWeight(asker, t('Grams of {0} in hand', name.trim()));
    return grams === undefined ? undefined : { kind: 'ingredient', name: name.trim(), grams };
  },
};

async function askFilled(
  asker: Asker,
  kind: 'moulds' | 'frames',
  prompts: { readonly count: string; readonly name: string },
): Promise<ScaleTarget | undefined> {
  const count = await enterCount(asker, prompts.count);
  if (count === undefined) {
    return undefined;
  }
  const name = await enterOptionalName(asker, prompts.name);
  return name === undefined ? undefined : { kind, count, ...named(name) };
}

async function enterWeight(asker: Asker, prompt: string): Promise<number | undefined> {
  return enterNumber(asker, prompt, weightProblem);
}

async function enterCount(asker: Asker, prompt: string): Promise<number | undefined> {
  return enterNumber(asker, prompt, countProblem);
}

async function enterNumber(
  asker: Asker,
  prompt: string,
  problem: (text: string) => string | undefined,
): Promise<number | undefined> {
  const text = await asker.enter(t('Scale formula'), prompt, problem);
  return text === undefined ? undefined : readNumber(text);
}

function enterOptionalName(asker: Asker, prompt: string): Promise<string | undefined> {
  return asker.enter(t('Scale formula'), prompt, () => undefined);
}

function named(name: string): { name?: string } {
  return name.trim() === '' ? {} : { name: name.trim() };
}

function weightProblem(text: string): string | undefined {
  const grams = readNumber(text);
  return grams === undefined || grams === 0
    ? t('write grams as a number above 0, such as 1500 or 0.5')
    : undefined;
}

function countProblem(text: string): string | undefined {
  const count = readNumber(text);
  return count === undefined || count === 0 || !Number.isInteger(count)
    ? t('write a whole number above 0, such as 24')
    : undefined;
}

function lossProblem(text: string): string | undefined {
  const loss = readNumber(text);
  return loss === undefined || loss >= 100
    ? t('write percent as a number from 0 to below 100, such as 4')
    : undefined;
}
