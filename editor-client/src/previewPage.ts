/**
 * The page that the preview is shown in: what can be chosen, and an empty place for what the server sends.
 *
 * It holds all it needs, and nothing may come from elsewhere: script and styles carry a number that is new
 * each time, and nothing else is let in.
 */

import { t } from './l10n';
import { LOCALES, READERS, VIEWS } from './previewMessages';
import type { PreviewReader, PreviewView } from './protocol';

/** `nonce` must be new for each page; `script` is the bundled program of the page. */
export function previewPage(nonce: string, script: string, language: string): string {
  return `<!DOCTYPE html>
<html lang="${escaped(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy(nonce)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Kettlemark</title>
<style nonce="${nonce}">${STYLE}</style>
<style nonce="${nonce}" id="look"></style>
</head>
<body>
<form id="choice" aria-label="${escaped(t('What is shown'))}">
${group(
  'view',
  t('View'),
  VIEWS.map((view) => [view, viewTitle(view)]),
)}
${group(
  'reader',
  t('Reader'),
  READERS.map((reader) => [reader, readerTitle(reader)]),
)}
${languages()}
</form>
<p id="status" role="status" aria-live="polite">${escaped(t('Waiting for the server'))}</p>
<p id="hint" hidden>${escaped(t('Enter goes to the line in the text; arrow keys go from one to the next.'))}</p>
<div id="shown"></div>
<script nonce="${nonce}">${script.replace(/<\/(script)/gi, '<\\/$1').replace(/<!--/g, '<\\!--')}</script>
</body>
</html>
`;
}

export function policy(nonce: string): string {
  return `default-src 'none'; style-src 'nonce-${nonce}'; script-src 'nonce-${nonce}'`;
}

export function viewTitle(view: PreviewView): string {
  switch (view) {
    case 'sheet':
      return t('Sheet');
    case 'flow':
      return t('Flow');
    case 'time':
      return t('Heat and time');
    case 'shares':
      return t('Shares');
  }
}

function readerTitle(reader: PreviewReader): string {
  switch (reader) {
    case 'chef':
      return t('Chef');
    case 'home':
      return t('Home cook');
    case 'production':
      return t('Production');
    case 'bench':
      return t('Bench card');
  }
}

function group(name: string, legend: string, items: (readonly [string, string])[]): string {
  const radios = items.map(
    ([value, title]) =>
      `<label><input type="radio" name="${name}" value="${value}"><span>${escaped(title)}</span></label>`,
  );
  return `<fieldset id="${name}s"><legend>${escaped(legend)}</legend>${radios.join('')}</fieldset>`;
}

function languages(): string {
  const options = LOCALES.map((tag) => `<option value="${tag}">${tag}</option>`);
  return `<label id="languages">${escaped(t('Language'))} <select name="locale">
<option value="">${escaped(t('as the text says'))}</option>${options.join('')}</select></label>`;
}

function escaped(text: string): string {
  return text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}

/** Our colours are those of the editor's theme; where it has none of a kind, those of the server stay. */
const STYLE = `
:root {
  --kettlemark-ink: var(--vscode-editor-foreground);
  --kettlemark-paper: var(--vscode-editor-background);
  --kettlemark-soft: var(--vscode-descriptionForeground);
  --kettlemark-warn: var(--vscode-editorError-foreground);
  --kettlemark-here: var(--vscode-editor-wordHighlightBackground);
  --kettlemark-focus: var(--vscode-focusBorder);
  --kettlemark-hair: var(--vscode-widget-border);
}
[data-theme="contrast-dark"], [data-theme="contrast-light"] {
  --kettlemark-focus: var(--vscode-contrastActiveBorder);
  --kettlemark-here: var(--vscode-editor-background);
}
html { scroll-padding-top: 4rem; }
[hidden] { display: none !important; }
#shown [tabindex] { scroll-margin: 5rem 0; }
body { margin: 0; padding: 0 1rem 2rem; background: var(--vscode-editor-background); color: var(--vscode-editor-foreground);
  font: var(--vscode-font-size, 13px) var(--vscode-font-family, sans-serif); }
#choice { position: sticky; top: 0; z-index: 1; display: flex; flex-wrap: wrap; gap: .3rem 1rem; align-items: center;
  padding: .5rem 0; background: var(--vscode-editor-background, Canvas); border-bottom: 1px solid var(--vscode-widget-border, currentColor); }
fieldset { display: flex; gap: .15rem; margin: 0; padding: 0; border: 0; }
legend { float: left; padding: .15rem .4rem .15rem 0; color: var(--vscode-descriptionForeground); }
fieldset label { position: relative; }
fieldset input { position: absolute; inset: 0; margin: 0; opacity: 0; cursor: pointer; }
fieldset span { display: block; padding: .15rem .5rem; border: 1px solid transparent; border-radius: 3px; }
fieldset input:checked + span { border-color: currentColor; font-weight: 600;
  background: var(--vscode-toolbar-activeBackground, transparent); }
fieldset input:focus-visible + span, select:focus-visible { outline: 2px solid var(--vscode-focusBorder, currentColor); outline-offset: 1px; }
select { font: inherit; color: var(--vscode-dropdown-foreground, inherit); background: var(--vscode-dropdown-background, inherit);
  border: 1px solid var(--vscode-dropdown-border, currentColor); }
#status { margin: .4rem 0; min-height: 1.3em; color: var(--vscode-descriptionForeground); }
#status.old { color: var(--vscode-editorWarning-foreground); font-weight: 600; }
#shown { max-width: 52rem; }
#shown.old { opacity: .55; }
[data-theme^="contrast"] #shown.old { opacity: 1; }
`;
