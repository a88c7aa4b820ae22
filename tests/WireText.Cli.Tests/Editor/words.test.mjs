// What may follow, what a word means, what a line leads to: as an editor shows it while somebody writes.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Editor, edited, example, protocol, textIn } from './client.mjs';

const name = '2-two-pickups-mute.wiring';
const text = example(name);
const everything = { start: { line: 0, character: 0 }, end: { line: 9999, character: 0 } };

/** An editor with the example and a line written below it, up to the place where somebody writes. */
async function written(line, run) {
  await Editor.with(async (editor) => {
    const whole = `${text}${line}`;
    await editor.open(name, whole);
    const lines = whole.split('\n');
    await run(editor, { line: lines.length - 1, character: lines.at(-1).length }, { uri: editor.address(name) });
  });
}

test('what may follow is offered, and put in where it belongs', async () => {
  await written('wire vol.', async (editor, position, textDocument) => {
    const complete = async (line) => {
      await editor.change(name, editor.version = (editor.version ?? 1) + 1, `${text}${line}`);
      return editor.ask(protocol.CompletionRequest.type, {
        textDocument, position: { line: position.line + line.split('\n').length - 1, character: line.split('\n').at(-1).length },
      });
    };
    const lugs = await complete('wire vol.');
    assert.deepEqual(lugs.map((one) => one.label), ['1', '2', '3', 'case']);
    assert.match(lugs[1].detail, /^wiper/);
    const after = edited(`${text}wire vol.`, [lugs[3].textEdit]);
    assert.ok(after.endsWith('wire vol.case'));

    const colours = (await complete('wire vol.1 to vol.case b')).filter((one) => one.kind === protocol.CompletionItemKind.Color);
    assert.match(colours.find((one) => one.label === 'black').documentation, /^#[0-9A-F]{6}$/);

    const labels = async (line) => (await complete(line)).map((one) => one.label);
    assert.ok((await labels('')).includes('expect') && (await labels('')).includes('pickup'));
    assert.deepEqual(await labels('expect sel='), ['bridge', 'both', 'neck', 'any']);
    assert.ok((await labels('expect sel=both: ')).includes('hum-cancelling'));
    assert.ok((await labels('pot blend ')).includes('concentric'));
    assert.ok((await labels('pickup x single-coil mag')).includes('magnet='));
    assert.deepEqual(await labels('pickup x single-coil magnet='), ['north', 'south', 'none']);
    assert.ok((await labels('allow ')).includes('floating-ground'));
    assert.deepEqual(await labels('remark "wire '), []);
  });
});

test('what a word means is told', async () => {
  await written('allow floating-ground at saddle "x"', async (editor, position, textDocument) => {
    const hover = async (pattern) => {
      const lines = `${text}allow floating-ground at saddle "x"`.split('\n');
      const line = lines.findIndex((one) => pattern.test(one));
      const told = await editor.ask(protocol.HoverRequest.type, {
        textDocument, position: { line, character: lines[line].match(pattern).index },
      });
      return told?.contents.value;
    };
    assert.match(await hover(/floating-ground/), /^# floating-ground\n[^]*## To mend it/);
    assert.match(await hover(/(?<=^pot     )vol/), /vol: pot 250k audio[^]*from behind/);
    assert.match(await hover(/(?<=to sel\.)A1/), /^```text\nsel\.A1: bridge: A0[^]*one net with bridge\.hot[^]*sel=bridge mute=up: on the way of the signal\n/);
    assert.match(await hover(/(?<=expect  sel=)bridge/), /sel=bridge: bridge · 7\.\d+ kΩ/);
    assert.match(await hover(/(?<=^wire    .*)yellow/), /yellow, YE, #/);
    assert.match(await hover(/lever-3way/), /switch lever-3way/);
    assert.match(await hover(/^wire/), /a run of wire/);
  });
});

test('what is found comes with the edit that mends it', async () => {
  await Editor.with(async (editor) => {
    const wrong = example('mistakes/names-exchanged.wiring');
    const slip = wrong.replace('to vol.case', 'to vol.cas');
    for (const [version, broken] of [[1, slip], [2, wrong]]) {
      const found = version === 1
        ? await editor.open('a.wiring', broken)
        : (await Promise.all([editor.heard(editor.address('a.wiring'), 2), editor.change('a.wiring', 2, broken)]))[0].diagnostics;
      const actions = await editor.ask(protocol.CodeActionRequest.type, {
        textDocument: { uri: editor.address('a.wiring') }, range: everything, context: { diagnostics: found },
      });
      assert.ok(actions.length > 0, `nothing mends ${broken}`);
      const mended = edited(broken, actions[0].edit.changes[editor.address('a.wiring')]);
      await editor.open('b.wiring', mended, version);
      const left = editor.allTold(editor.address('b.wiring')).at(-1).diagnostics;
      assert.ok(!left.some((one) => one.message === actions[0].diagnostics[0].message), actions[0].title);
    }
    const none = await editor.ask(protocol.CodeActionRequest.type, {
      textDocument: { uri: editor.address('a.wiring') }, range: everything, context: { diagnostics: [], only: ['refactor'] },
    });
    assert.deepEqual(none, []);
  });
});

test('each word has its colour', async () => {
  await Editor.with(async (editor) => {
    const odd = `circuit "𝄞"\n${example('9-four-pole-lever.wiring')}`;
    await editor.open('a.wiring', odd);
    const { tokenTypes } = editor.said.capabilities.semanticTokensProvider.legend;
    const { data } = await editor.ask(protocol.SemanticTokensRequest.type, { textDocument: { uri: editor.address('a.wiring') } });
    const words = [];
    let [line, character] = [0, 0];
    for (let i = 0; i < data.length; i += 5) {
      character = data[i] ? data[i + 1] : character + data[i + 1];
      line += data[i];
      const range = { start: { line, character }, end: { line, character: character + data[i + 2] } };
      words.push(`${tokenTypes[data[i + 3]]} ${textIn(odd, range)}`);
    }
    for (const word of ['keyword circuit', 'string "𝄞"', 'type pickup', 'variable neck', 'class humbucker-4', 'parameter dcr', 'number 7.6k',
      'property A1', 'keyword to', 'macro red', 'enumMember bridge-cut', 'keyword hum-cancelling']) {
      assert.ok(words.includes(word), `${word} is missing`);
    }
    assert.ok(words.some((word) => word.startsWith('comment # pole A')));
  });
});

test('what a line leads to stands behind it', async () => {
  await written('', async (editor, position, textDocument) => {
    const hints = await editor.ask(protocol.InlayHintRequest.type, { textDocument, range: everything });
    const lines = text.split('\n');
    const of = (start) => hints.find((hint) => lines[hint.position.line].startsWith(start))?.label;
    const [, ohms] = of('expect  sel=bridge:').match(/^bridge · ([0-9.]+) kΩ · peak [0-9.]+ kHz$/);
    assert.ok(Math.abs(ohms / 7.1 - 1) < 0.03, 'the line claims 7.1k, and 3 % is what a claim allows');
    assert.equal(of('cap'), '473');
    assert.equal(of('expect  mute=down others=any:'), undefined);
    const first = await editor.ask(protocol.InlayHintRequest.type, {
      textDocument, range: { start: { line: 0, character: 0 }, end: { line: 1, character: 0 } },
    });
    assert.deepEqual(first, []);
  });
});

test('what can be done with a text is offered above it, and done', async () => {
  await Editor.with(async (editor) => {
    editor.put('stock.wiring', example('mods/stock.wiring'));
    await editor.open('mod.wiring', example('mods/mute-and-capacitor.wiring'));
    const lenses = await editor.ask(protocol.CodeLensRequest.type, { textDocument: { uri: editor.address('mod.wiring') } });
    assert.deepEqual(lenses.map((lens) => lens.command.title), ['draw', 'positions', 'compare with the base']);
    const [drawn, told, compared] = await Promise.all(lenses.map(({ command }) =>
      editor.ask(protocol.ExecuteCommandRequest.type, { command: command.command, arguments: command.arguments })));
    assert.match(drawn, /<svg [^]*<\/svg>/);
    assert.match(told, /neck/);
    assert.match(compared, /mute/);
    await assert.rejects(editor.ask(protocol.ExecuteCommandRequest.type, { command: 'wiretext.fly', arguments: [] }), /no command/);
  });
});

test('what is cancelled is given up', async () => {
  await Editor.with(async (editor) => {
    await editor.open(name, text);
    const cancelling = new protocol.CancellationTokenSource();
    const asked = editor.ask(protocol.ExecuteCommandRequest.type, {
      command: 'wiretext.draw', arguments: [editor.address(name)],
    }, cancelling.token);
    cancelling.cancel();
    await assert.rejects(asked, { code: protocol.LSPErrorCodes.RequestCancelled });
    assert.ok((await editor.ask(protocol.DocumentSymbolRequest.type, { textDocument: { uri: editor.address(name) } })).length > 0);
  });
});
