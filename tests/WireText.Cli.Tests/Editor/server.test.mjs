// The language server as an editor meets it, over the reference implementation of the protocol.
import assert from 'node:assert/strict';
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { test } from 'node:test';
import { Editor, edited, example, protocol, start, textIn } from './client.mjs';

const wrong = 'jack out mono\npickup neck single-coil\nwire neck.hott to out.tip white\nwire neck.ground to out.sleeve black\n';

test('a conversation ends as it should', async () => {
  const editor = await Editor.begin();
  assert.equal(editor.said.serverInfo.name, 'wiretext');
  assert.equal(editor.said.capabilities.positionEncoding, 'utf-16');
  await assert.rejects(editor.ask('initialize', {}), { code: protocol.ErrorCodes.InvalidRequest });
  assert.equal(await editor.end(), 0);
});

test('what is found is told with its place, its name and its help', async () => {
  await Editor.with(async (editor) => {
    const [found, ...others] = await editor.open('a.wiring', wrong);
    assert.deepEqual(others, []);
    assert.equal(found.code, 'unknown-lug');
    assert.equal(found.severity, protocol.DiagnosticSeverity.Error);
    assert.equal(textIn(wrong, found.range), 'hott');
    assert.match(found.message, /did you mean 'hot'\?/);
  });
});

test('what is found follows the text as it is typed', async () => {
  await Editor.with(async (editor) => {
    await editor.open('a.wiring', wrong);
    const right = wrong.replace('hott', 'hot');
    const heard = editor.heard(editor.address('a.wiring'), 7);
    for (let version = 2; version <= 7; version++) {
      await editor.change('a.wiring', version, version === 7 ? right : wrong + '#'.repeat(version));
    }
    assert.deepEqual((await heard).diagnostics, []);
    const versions = editor.allTold(editor.address('a.wiring')).map((told) => told.version);
    assert.deepEqual(versions, [...versions].sort((a, b) => a - b), 'an older text was told after a newer one');
  });
});

test('a version that comes late changes nothing', async () => {
  await Editor.with(async (editor) => {
    await editor.open('a.wiring', wrong, 5);
    await editor.change('a.wiring', 4, '');
    const symbols = await editor.ask(protocol.DocumentSymbolRequest.type, { textDocument: { uri: editor.address('a.wiring') } });
    assert.equal(symbols.length, 4);
  });
});

test('a text outside the basic plane is counted in UTF-16 units', async () => {
  await Editor.with(async (editor) => {
    const text = 'circuit "𝄞 🎸"\njack out mono\nmetal plate "🎸 𝄞"\nwire plate to out.sleve black # 🎸\nremark "🎸" 5\n';
    const found = await editor.open('a.wiring', text);
    assert.deepEqual(found.map((one) => textIn(text, one.range)), ['sleve', '5']);
    const [circuit, , plate] = await editor.ask(protocol.DocumentSymbolRequest.type, {
      textDocument: { uri: editor.address('a.wiring') },
    });
    assert.equal(textIn(text, circuit.selectionRange), '"𝄞 🎸"');
    assert.equal(textIn(text, plate.range), 'metal plate "🎸 𝄞"');
  });
});

test('a text is formatted as the command formats it', async () => {
  await Editor.with(async (editor) => {
    const text = example('9-four-pole-lever.wiring');
    const untidy = text.replace(/(?<=\S) {2,}/g, ' ').replace(/$/, '\n\n');
    await editor.open('a.wiring', untidy);
    const edits = await editor.ask(protocol.DocumentFormattingRequest.type, {
      textDocument: { uri: editor.address('a.wiring') }, options: { tabSize: 4, insertSpaces: true },
    });
    assert.notEqual(untidy, text);
    assert.equal(edited(untidy, edits), text);
    await editor.change('a.wiring', 2, text);
    assert.deepEqual(await editor.ask(protocol.DocumentFormattingRequest.type, {
      textDocument: { uri: editor.address('a.wiring') }, options: { tabSize: 4, insertSpaces: true },
    }), []);
  });
});

test('a text has an outline and folds', async () => {
  await Editor.with(async (editor) => {
    await editor.openExample('9-four-pole-lever.wiring');
    const textDocument = { uri: editor.address('9-four-pole-lever.wiring') };
    const symbols = await editor.ask(protocol.DocumentSymbolRequest.type, { textDocument });
    assert.ok(symbols.some((one) => one.name === 'sel' && one.detail === 'switch lever-5way-4pole'));
    const folds = await editor.ask(protocol.FoldingRangeRequest.type, { textDocument });
    const lines = example('9-four-pole-lever.wiring').split('\n');
    assert.ok(folds.some((fold) => lines[fold.startLine] === 'arrange'));
    assert.ok(folds.some((fold) => lines[fold.startLine].startsWith('wire') && lines[fold.endLine].startsWith('wire')));
  });
});

test('what other files say is followed, saved or not', async () => {
  await Editor.with(async (editor) => {
    editor.put('stock.wiring', example('mods/stock.wiring'));
    assert.deepEqual(await editor.open('mod.wiring', example('mods/mute-and-capacitor.wiring')), []);
    const uri = editor.address('mod.wiring');
    const heard = editor.heard(uri, 1, (told) => told.diagnostics.length > 0);
    await editor.open('stock.wiring', example('mods/stock.wiring').replace('cap     dark ', 'cap     dim '));
    const [found] = (await heard).diagnostics;
    assert.equal(textIn(example('mods/mute-and-capacitor.wiring'), found.range), 'dark');
  });
});

test('who closes a text is told nothing more of it', async () => {
  await Editor.with(async (editor) => {
    await editor.open('a.wiring', wrong);
    const uri = editor.address('a.wiring');
    const heard = editor.heard(uri, undefined);
    await editor.connection.sendNotification(protocol.DidCloseTextDocumentNotification.type, { textDocument: { uri } });
    assert.deepEqual((await heard).diagnostics, []);
    await assert.rejects(editor.ask(protocol.DocumentSymbolRequest.type, { textDocument: { uri } }), {
      code: protocol.ErrorCodes.InvalidParams,
    });
  });
});

test('garbage between messages is passed over', async () => {
  const server = start();
  const reader = new protocol.StreamMessageReader(server.stdout);
  const heard = [];
  const three = new Promise((resolve) => reader.listen((message) => heard.push(message) === 3 && resolve()));
  const send = (body) => server.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
  server.stdin.write('GET / HTTP/1.1\r\nHost: x\r\n\r\n\0\xff\xfe garbage without an end '.repeat(99));
  server.stdin.write('\r\nContent-Length: none\r\n\r\n');
  send('{"jsonrpc":"2.0","id":1,');
  send('[1,2,3]');
  send('{"jsonrpc":"2.0","id":2,"method":"initialize","params":{"capabilities":{}}}');
  await three;
  assert.deepEqual(heard.map((one) => one.error?.code), [
    protocol.ErrorCodes.ParseError, protocol.ErrorCodes.InvalidRequest, undefined,
  ]);
  assert.equal(heard[2].result.serverInfo.name, 'wiretext');
  server.kill();
});

test('a client that dies takes the program with it', async () => {
  const server = start();
  const exited = once(server, 'exit');
  const body = '{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"capabilities":{}}}';
  server.stdin.write(`Content-Length: ${body.length}\r\n\r\n${body}`);
  await once(server.stdout, 'data');
  server.stdin.write('Content-Length: 500\r\n\r\n{"jsonrpc":');
  server.stdin.destroy();
  server.stdout.destroy();
  assert.deepEqual(await exited, [1, null]);
});

test('an editor that dies takes the program with it, whoever holds its streams', async () => {
  const editor = spawn(process.execPath, ['-e', 'setInterval(() => {}, 1000)']);
  await once(editor, 'spawn');
  const server = start();
  const exited = once(server, 'exit');
  const body = `{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"processId":${editor.pid},"capabilities":{}}}`;
  server.stdin.write(`Content-Length: ${body.length}\r\n\r\n${body}`);
  await once(server.stdout, 'data');
  editor.kill('SIGKILL');
  assert.deepEqual(await exited, [1, null]);
});

test('what is not known is refused, and nothing else is harmed', async () => {
  await Editor.with(async (editor) => {
    await assert.rejects(editor.ask('textDocument/unheardOf', {}), { code: protocol.ErrorCodes.MethodNotFound });
    await assert.rejects(editor.ask('textDocument/formatting', { textDocument: 5 }), { code: protocol.ErrorCodes.InvalidParams });
    await editor.connection.sendNotification('textDocument/didChange', { textDocument: null });
    assert.deepEqual((await editor.open('a.wiring', wrong)).map((one) => one.code), ['unknown-lug']);
  });
});
