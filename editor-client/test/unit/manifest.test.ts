import assert from 'node:assert/strict';
import { existsSync, readFileSync } from 'node:fs';
import { test } from 'node:test';

interface Step {
  readonly media: { readonly image: string };
  readonly completionEvents: readonly string[];
}

interface Entry {
  readonly command: string;
  readonly alt?: string;
  readonly when: string;
}

const MANIFEST = JSON.parse(readFileSync('package.json', 'utf8')) as {
  readonly icon: string;
  readonly activationEvents: readonly string[];
  readonly contributes: {
    readonly commands: readonly { readonly command: string }[];
    readonly menus: Readonly<Record<string, readonly Entry[]>>;
    readonly walkthroughs: readonly { readonly steps: readonly Step[] }[];
    readonly languages: readonly { readonly icon: Readonly<Record<string, string>> }[];
  };
};

const { contributes } = MANIFEST;

test('the pictures that package.json names lie where it says', () => {
  const named = [
    MANIFEST.icon,
    ...contributes.languages.flatMap(({ icon }) => Object.values(icon)),
    ...contributes.walkthroughs.flatMap(({ steps }) => steps.map(({ media }) => media.image)),
  ];
  assert.ok(named.length >= 8);
  for (const file of named) {
    assert.ok(existsSync(file), file);
  }
});

test('the walkthrough and the extension code know the same commands', () => {
  const declared = contributes.commands.map(({ command }) => command);
  const events = contributes.walkthroughs
    .flatMap(({ steps }) => steps)
    .flatMap(({ completionEvents }) => completionEvents)
    .map((event) => event.replace('onCommand:', ''))
    .filter((command) => command.startsWith('kettlemark.'));
  for (const command of events) {
    assert.ok(declared.includes(command), command);
  }
});

test('nothing is started before a text of the language, a command or a kept preview asks for it', () => {
  assert.deepEqual(MANIFEST.activationEvents, ['onWebviewPanel:kettlemark.preview']);
});

test('every entry of a menu is a command that is declared, and is shown for the language only', () => {
  const declared = contributes.commands.map(({ command }) => command);
  const entries = Object.values(contributes.menus).flat();
  assert.ok(entries.length >= 10);
  for (const { command, alt, when } of entries) {
    assert.ok(declared.includes(command), command);
    assert.ok(alt === undefined || declared.includes(alt), alt);
    assert.equal(when, 'editorLangId == kettlemark', command);
  }
});
