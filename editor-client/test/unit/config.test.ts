import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { Config, DEFAULTS, NEEDS_RESTART, SECTION } from '../../src/config';

interface Manifest {
  readonly capabilities: {
    readonly untrustedWorkspaces: { readonly restrictedConfigurations: readonly string[] };
  };
  readonly contributes: {
    readonly commands: readonly { readonly command: string }[];
    readonly configuration: {
      readonly properties: Readonly<Record<string, { readonly default: unknown }>>;
    };
  };
}

const MANIFEST = JSON.parse(readFileSync('package.json', 'utf8')) as Manifest;

function configOf(values: Readonly<Record<string, unknown>>): Config {
  return new Config({ get: (name) => values[name] });
}

test('package.json declares the settings of the table with the same defaults', () => {
  const declared = Object.entries(MANIFEST.contributes.configuration.properties).map(
    ([name, property]) => [name, property.default],
  );
  const table = Object.entries(DEFAULTS).map(([name, value]) => [
    `${SECTION}.${name}`,
    value as unknown,
  ]);
  assert.deepEqual(declared, table);
});

test('an untrusted workspace cannot choose the program that runs', () => {
  assert.deepEqual(
    MANIFEST.capabilities.untrustedWorkspaces.restrictedConfigurations,
    NEEDS_RESTART.map((name) => `${SECTION}.${name}`),
  );
});

test('a setting that is set is read', () => {
  const config = configOf({
    'java.home': '/opt/java',
    'server.jvmArguments': ['-Xmx1g'],
    'inlayHints.grams': false,
  });
  assert.equal(config.get('java.home'), '/opt/java');
  assert.deepEqual(config.get('server.jvmArguments'), ['-Xmx1g']);
  assert.equal(config.get('inlayHints.grams'), false);
});

test('a setting that is unset has its default', () => {
  assert.equal(configOf({}).get('java.home'), '');
  assert.equal(configOf({}).get('codeLens.totals'), true);
});

test('a setting of a wrong type has its default', () => {
  const config = configOf({ 'java.home': 17, 'server.jvmArguments': '-Xmx1g' });
  assert.equal(config.get('java.home'), '');
  assert.deepEqual(config.get('server.jvmArguments'), DEFAULTS['server.jvmArguments']);
  assert.deepEqual(
    configOf({ 'server.jvmArguments': ['-Xmx1g', 5] }).get('server.jvmArguments'),
    DEFAULTS['server.jvmArguments'],
  );
});

test('the server gets its settings nested by their names', () => {
  assert.deepEqual(
    configOf({ 'inlayHints.percent': false, 'codeLens.totals': false }).forServer(),
    {
      inlayHints: { grams: true, percent: false, otherScale: true },
      codeLens: { totals: false },
    },
  );
});

test('the settings of the server are those that it lists itself', () => {
  // The server's own test writes this file.
  const listed = JSON.parse(readFileSync('words/settings.json', 'utf8')) as Readonly<
    Record<string, { readonly default: unknown; readonly description: string }>
  >;
  const texts = JSON.parse(readFileSync('package.nls.json', 'utf8')) as Readonly<
    Record<string, string>
  >;
  const { properties } = MANIFEST.contributes.configuration;
  for (const [name, { default: standard, description }] of Object.entries(listed)) {
    assert.equal(properties[name]?.default, standard, name);
    assert.equal(texts[name.replace(SECTION, 'setting')], description, name);
  }
  const flat = Object.entries(new Config({ get: () => undefined }).forServer()).flatMap(
    ([group, values]) => Object.keys(values as object).map((key) => `${SECTION}.${group}.${key}`),
  );
  assert.deepEqual(flat.sort(), Object.keys(listed).sort());
});
