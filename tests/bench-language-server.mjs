// How long an editor waits for the language server: the first answer after a start, and each answer about a file of about 100 stretches
// of wire after a keystroke in it. The times are those that the editor's side sees. Run by bench-language-server.sh.
import { performance } from 'node:perf_hooks';
import { Editor, protocol } from './WireText.Cli.Tests/Editor/client.mjs';

const starts = 15;
const keystrokes = 40;

function median(times) {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)];
}

function row(what, times) {
  console.log(`| ${what} | ${median(times).toFixed(1)} ms | ${Math.max(...times).toFixed(1)} ms |`);
}

async function timed(times, work) {
  const before = performance.now();
  const result = await work();
  times.push(performance.now() - before);
  return result;
}

/** Channels of pickup, pots and switch on one jack, every lug of them wired: five parts and 25 wires each. */
function grown(channels) {
  const lines = ['circuit "bench"', 'switch sel lever-3way', 'jack out mono', 'positions sel one two three', 'wire sel.A0 to out.tip white'];
  for (let n = 1; n <= channels; n++) {
    lines.push(`pickup p${n} humbucker-4 dcr=8k l=4.5H c=40p`, `pot vol${n} 500k audio`, `pot tone${n} 500k audio`,
      `cap dark${n} 22n from tone${n}.2 to tone${n}.case`, `splice link${n}`);
  }
  for (let n = 1; n <= channels; n++) {
    const earth = n === 1 ? 'out.sleeve' : `vol${n - 1}.case`;
    lines.push(`wire p${n}.n-start to vol${n}.3 red`, `wire p${n}.n-finish to link${n} white`, `wire p${n}.s-finish to link${n} black`,
      `wire p${n}.s-start to vol${n}.case green`, `wire p${n}.shield to vol${n}.case bare`, `wire vol${n}.3 to tone${n}.1 orange`,
      `wire vol${n}.2 to sel.A${((n - 1) % 3) + 1} blue`, `wire vol${n}.1 to vol${n}.case bare`, `wire tone${n}.case to vol${n}.case black`,
      `wire vol${n}.case to ${earth} black`);
  }
  lines.push('expect sel=one: p1 parallel p4 parallel p7 parallel p10', 'expect vol1=0 sel=one: silence');
  return `${lines.join('\n')}\n`;
}

const first = [];
for (let i = 0; i < starts; i++) {
  const editor = await timed(first, () => Editor.begin());
  await editor.end();
}

console.log('| answer | median | longest |\n| --- | --- | --- |');
row(`initialize, after a start (${starts} starts)`, first);

const text = grown(10);
const wires = text.split('\n').filter((line) => line.startsWith('wire')).length;
await Editor.with(async (editor) => {
  const uri = editor.address('a.wiring');
  const textDocument = { uri };
  const everything = { start: { line: 0, character: 0 }, end: { line: 9999, character: 0 } };
  const last = text.split('\n').length - 1;
  const asked = {
    'diagnostics': null,
    'diagnostics of a half-written line': null,
    'diagnostics with a refuted claim': null,
    'completion, lugs': [protocol.CompletionRequest.type, { textDocument, position: { line: last, character: 10 } }],
    'hover on a lug': [protocol.HoverRequest.type, { textDocument, position: { line: 5 + 50, character: 10 } }],
    'definition': [protocol.DefinitionRequest.type, { textDocument, position: { line: 5 + 50, character: 6 } }],
    'references': [protocol.ReferencesRequest.type, { textDocument, position: { line: 5 + 50, character: 6 }, context: { includeDeclaration: true } }],
    'rename': [protocol.RenameRequest.type, { textDocument, position: { line: 5 + 50, character: 6 }, newName: 'other' }],
    'outline': [protocol.DocumentSymbolRequest.type, { textDocument }],
    'folding': [protocol.FoldingRangeRequest.type, { textDocument }],
    'semantic tokens': [protocol.SemanticTokensRequest.type, { textDocument }],
    'formatting': [protocol.DocumentFormattingRequest.type, { textDocument, options: { tabSize: 4, insertSpaces: true } }],
    'inlay hints': [protocol.InlayHintRequest.type, { textDocument, range: everything }],
    'quick fixes': [protocol.CodeActionRequest.type, { textDocument, range: everything, context: { diagnostics: [] } }],
    'code lens': [protocol.CodeLensRequest.type, { textDocument }],
  };
  let version = 1;
  await editor.open('a.wiring', text, version);
  for (const [what, request] of Object.entries(asked)) {
    const times = [];
    for (let i = 0; i < keystrokes; i++) {
      // Each keystroke makes another circuit: a wire more, in one place or another.
      const wire = `wire vol${(i % 9) + 1}.case to tone${(i % 10) + 1}.case black`;
      const line = what.includes('half') ? wire.slice(0, 10 + (i % 3)) : what.includes('refuted') ? `${wire}\nexpect sel=two: p${(i % 10) + 1}` : wire;
      version++;
      const heard = editor.heard(uri, version);
      await timed(times, async () => {
        await editor.change('a.wiring', version, text + line);
        await (request ? editor.ask(...request) : heard);
      });
      await heard;
    }
    row(`${what}, after a keystroke (${wires} wires)`, times);
  }
});
