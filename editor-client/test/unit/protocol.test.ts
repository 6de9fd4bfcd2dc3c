import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import {
  CLIENT_COMMANDS,
  SERVER_COMMANDS,
  isFormulaPlace,
  isScaleAnswer,
} from '../../src/protocol';

const ANSWER = {
  edit: { changes: {} },
  title: 'Scale to 3000 g',
  weighingList: '| sugar | 3000 g |',
  charge: 3000,
  finished: 2640.5,
};

test('an answer of the agreed shape is taken', () => {
  assert.ok(isScaleAnswer(ANSWER));
});

test('an answer that lacks a part or has it of another type is not', () => {
  for (const name of Object.keys(ANSWER)) {
    assert.ok(!isScaleAnswer({ ...ANSWER, [name]: undefined }), `without ${name}`);
    assert.ok(!isScaleAnswer({ ...ANSWER, [name]: [] }), `${name} as a list`);
  }
  assert.ok(!isScaleAnswer(null));
  assert.ok(!isScaleAnswer('text'));
});

test('a place names a document and a formula', () => {
  assert.ok(isFormulaPlace({ uri: 'file:///a.kettle', formula: 'nougat' }));
  assert.ok(!isFormulaPlace({ uri: 'file:///a.kettle' }));
  // The palette hands over no argument, a context menu hands over the address of the file.
  assert.ok(!isFormulaPlace(undefined));
  assert.ok(!isFormulaPlace({ scheme: 'file', path: '/a.kettle' }));
});

test('the client declares no command that the server registers', () => {
  // The client library registers the server's commands under their own names; twice is an error.
  const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as {
    contributes: { commands: { command: string }[] };
  };
  const declared = manifest.contributes.commands.map(({ command }) => command);
  for (const command of Object.values(SERVER_COMMANDS)) {
    assert.ok(!declared.includes(command), command);
  }
  for (const command of Object.values(CLIENT_COMMANDS)) {
    assert.ok(declared.includes(command), command);
  }
});
