// The editor package as it was unpacked into the folder EXTENSION: its own client, in an editor of which only that is there which it asks
// for by a value; whatever else it calls does nothing.
import assert from 'node:assert/strict';
import { createRequire } from 'node:module';
import Module from 'node:module';
import { join } from 'node:path';
import { test } from 'node:test';
import { example } from './client.mjs';

/** Something that can be asked for anything, called, and made anew. */
function anything(own = {}) {
  const target = class {};
  return new Proxy(target, {
    get: (_, name) =>
      name in own ? own[name]
      : name === 'then' ? undefined
      : name === 'prototype' ? target.prototype
      : name === Symbol.toPrimitive ? () => 0
      : name === Symbol.iterator ? () => [][Symbol.iterator]()
      : (own[name] = anything()),
    apply: () => anything(),
    construct: () => anything(),
    has: () => true,
    set: () => true,
  });
}

const uri = 'file:///bench/guitar.wiring';
const document = {
  languageId: 'wiring', version: 1, isClosed: false, getText: () => example('1-one-pickup.wiring'),
  uri: { toString: () => uri, scheme: 'file', fsPath: '/bench/guitar.wiring' },
};
const commands = new Map();
const panels = [];
const shown = [];
const [command, ...before] = process.env.WIRETEXT.split('\n');
const settings = { path: command, parts: [] };
const vscode = anything({
  version: '1.91.0',
  env: anything({ language: 'en', appName: 'editor' }),
  languages: anything({ match: () => 10 }),
  ViewColumn: { Beside: -2 },
  commands: anything({ registerCommand: (name, run) => { commands.set(name, run); return { dispose() {} }; } }),
  window: anything({
    activeTextEditor: { document },
    createWebviewPanel: () => { const panel = { webview: {}, onDidDispose() {}, dispose() {} }; panels.push(panel); return panel; },
    showTextDocument: async (one) => { shown.push(one.content); },
  }),
  workspace: anything({
    getConfiguration: () => ({ get: (name, usual) => settings[name] ?? usual }),
    openTextDocument: async (given) => given,
    textDocuments: [document],
    workspaceFolders: [],
  }),
});

const load = Module._load;
Module._load = (name, ...rest) => (name === 'vscode' ? vscode : load(name, ...rest));
const require = createRequire(import.meta.url);
const unpacked = join(process.env.EXTENSION, 'extension');

test('the settings say how the program is started', () => {
  const { serverOf } = require(join(unpacked, 'server.js'));
  const said = serverOf({ get: (name) => ({ path: '/opt/wiretext', parts: ['a', 'b'] })[name] });
  assert.deepEqual(said, { command: '/opt/wiretext', args: ['language-server', '--parts', 'a', '--parts', 'b'] });
});

test('the package starts the program and shows what it gives', async () => {
  assert.deepEqual(before, [], 'the package starts a program by its path alone');
  const extension = require(join(unpacked, 'client.js'));
  await extension.activate({ subscriptions: [] });
  try {
    assert.deepEqual([...commands.keys()].sort(), ['wiretext.compare', 'wiretext.draw', 'wiretext.positions', 'wiretext.preview']);
    await commands.get('wiretext.preview')();
    const [, drawing] = panels[0].webview.html.match(/src="data:image\/svg\+xml;base64,([^"]+)"/);
    assert.match(Buffer.from(drawing, 'base64').toString(), /<svg [^]*<\/svg>/);
    assert.match(panels[0].webview.html, /default-src 'none'/);
    await commands.get('wiretext.draw')(uri);
    assert.equal(panels.length, 1, 'there is one drawing, which follows');
    await commands.get('wiretext.positions')(uri);
    assert.match(shown[0], /meter/);
  } finally {
    await extension.deactivate();
  }
});
