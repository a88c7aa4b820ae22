// Names, as an editor goes to them, lists them and changes them.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { test } from 'node:test';
import { Editor, edited, example, protocol, textIn } from './client.mjs';

const stock = example('mods/stock.wiring');
const mod = example('mods/mute-and-capacitor.wiring');

/** The place in a text where its nth match of a pattern starts. */
function placeOf(text, pattern, nth = 0) {
  const at = [...text.matchAll(new RegExp(pattern, 'gm'))][nth].index;
  const before = text.slice(0, at).split('\n');
  return { line: before.length - 1, character: before.at(-1).length };
}

/** The texts of the files after a change of the workspace. */
function changed(edit, texts) {
  return Object.fromEntries(Object.entries(texts).map(([uri, text]) => [uri, edited(text, edit.changes[uri] ?? [])]));
}

/** An editor that has the mod open, with the file that it stands on beside it. */
function withMod(run) {
  return Editor.with(async (editor) => {
    const base = editor.put('stock.wiring', stock);
    await editor.open('mod.wiring', mod);
    await run(editor, { base, top: editor.address('mod.wiring') });
  });
}

test('a name leads to where it is given, in whatever file that is', async () => {
  await withMod(async (editor, { base, top }) => {
    const ask = (position) => editor.ask(protocol.DefinitionRequest.type, { textDocument: { uri: top }, position });
    const here = await ask(placeOf(mod, 'mute=down'));
    assert.equal(here.uri, top);
    assert.deepEqual(here.range.start, placeOf(mod, '(?<=button  )mute'));
    const below = await ask(placeOf(mod, 'out.tip'));
    assert.equal(below.uri, base);
    assert.equal(textIn(stock, below.range), 'out');
    assert.equal(await ask(placeOf(mod, 'nitrocellulose')), null);
  });
});

test('every place that names a part is listed, from either file', async () => {
  await withMod(async (editor, { base, top }) => {
    await editor.open('stock.wiring', stock);
    const list = async (uri, position) =>
      (await editor.ask(protocol.ReferencesRequest.type, {
        textDocument: { uri }, position, context: { includeDeclaration: true },
      })).map((one) => `${one.uri === base ? 'base' : 'mod'} ${one.range.start.line}`).sort();
    const fromTop = await list(top, placeOf(mod, '(?<=vol     )tone'));
    assert.deepEqual(fromTop, await list(base, placeOf(stock, 'tone.2')));
    assert.ok(fromTop.some((one) => one.startsWith('mod')) && fromTop.some((one) => one.startsWith('base')));
  });
});

test('a part gets another name in every file that names it, open or not', async () => {
  await withMod(async (editor, { base, top }) => {
    editor.put('other.wiring', 'base "stock.wiring"\nexpect sel=neck: neck\n');
    const other = editor.address('other.wiring');
    for (const [text, uri] of [[mod, top], [stock, base]]) {
      if (uri === base) {
        await editor.open('stock.wiring', stock);
      }
      const edit = await editor.ask(protocol.RenameRequest.type, {
        textDocument: { uri }, position: placeOf(text, '(?<=[ \t])sel(?=[ \t])'), newName: 'choice',
      });
      const after = changed(edit, { [base]: stock, [top]: mod, [other]: readFileSync(fileURLToPath(other), 'utf8') });
      assert.equal(after[base], stock.replace(/\bsel\b/g, 'choice'));
      assert.equal(after[top], mod.replace(/\bsel\b/g, 'choice'));
      assert.equal(after[other], 'base "stock.wiring"\nexpect choice=neck: neck\n');
    }
  });
});

test('a position gets another name', async () => {
  await withMod(async (editor, { base }) => {
    await editor.open('stock.wiring', stock);
    const edit = await editor.ask(protocol.RenameRequest.type, {
      textDocument: { uri: base }, position: placeOf(stock, '(?<=sel=)both'), newName: 'middle',
    });
    assert.equal(changed(edit, { [base]: stock })[base], stock.replace(/\bboth\b/g, 'middle'));
  });
});

test('a name that cannot be is refused in words', async () => {
  await withMod(async (editor, { top }) => {
    const rename = (position, newName) =>
      editor.ask(protocol.RenameRequest.type, { textDocument: { uri: top }, position, newName });
    const part = placeOf(mod, '(?<=button  )mute');
    await assert.rejects(rename(part, 'vol'), /'vol' is taken in line \d+ of '.*stock\.wiring'/);
    await assert.rejects(rename(part, 'series'), /means something else in this language/);
    await assert.rejects(rename(placeOf(mod, 'black'), 'x'), /no file says where 'black' gets its name/);
    const prepared = await editor.ask(protocol.PrepareRenameRequest.type, { textDocument: { uri: top }, position: part });
    assert.equal(prepared.placeholder, 'mute');
    await assert.rejects(
      editor.ask(protocol.PrepareRenameRequest.type, { textDocument: { uri: top }, position: placeOf(mod, 'remark|^#') }),
      /there is no name here/,
    );
  });
});
