/**
 * Texts in the writer's language.
 *
 * English stands in the code; l10n/ holds the bundle of all texts and their translations. The editor
 * gives its translator at the start, so that what knows no editor can be tested without one.
 */

type Translator = (message: string, ...values: string[]) => string;

let translator: Translator = fill;

export function useTranslator(given: Translator): void {
  translator = given;
}

/** The text in the writer's language, with the values in place of {0}, {1} and so on. */
export function t(message: string, ...values: string[]): string {
  return translator(message, ...values);
}

function fill(message: string, ...values: string[]): string {
  return message.replace(/\{(\d+)\}/g, (place, index: string) => values[Number(index)] ?? place);
}
