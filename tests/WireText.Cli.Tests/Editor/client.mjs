// An editor as far as the protocol goes: the reference implementation of it, and a text or two. WIRETEXT is the program to talk to.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import protocol from 'vscode-languageserver-protocol/node';

export const root = fileURLToPath(new URL('../../../', import.meta.url));

/** Starts the program; nobody has said a word to it. */
export function start() {
  const [program, ...before] = process.env.WIRETEXT.split('\n');
  return spawn(program, [...before, 'language-server'], { stdio: ['pipe', 'pipe', 'inherit'] });
}

/** What a range of a text says. */
export function textIn(text, range) {
  const lines = text.split('\n');
  return range.start.line === range.end.line
    ? lines[range.start.line].slice(range.start.character, range.end.character)
    : [lines[range.start.line].slice(range.start.character), ...lines.slice(range.start.line + 1, range.end.line),
       lines[range.end.line].slice(0, range.end.character)].join('\n');
}

/** The text after edits, which are apart. */
export function edited(text, edits) {
  const lines = text.split('\n');
  const offset = ({ line, character }) => lines.slice(0, line).reduce((sum, one) => sum + one.length + 1, 0) + character;
  return [...edits]
    .sort((a, b) => offset(b.range.start) - offset(a.range.start))
    .reduce((now, edit) => now.slice(0, offset(edit.range.start)) + edit.newText + now.slice(offset(edit.range.end)), text);
}

export class Editor {
  #process;
  #told = new Map();
  #waiting = [];
  #registered = [];

  /** An editor that has begun to talk to the program. */
  static async begin(capabilities = {}) {
    const editor = new Editor();
    editor.#process = start();
    editor.folder = mkdtempSync(join(tmpdir(), 'wiretext-editor-'));
    editor.connection = protocol.createProtocolConnection(
      new protocol.StreamMessageReader(editor.#process.stdout),
      new protocol.StreamMessageWriter(editor.#process.stdin),
    );
    editor.connection.onNotification(protocol.PublishDiagnosticsNotification.type, (told) => editor.#hear(told));
    editor.connection.onRequest(protocol.RegistrationRequest.type, ({ registrations }) => {
      editor.#registered.push(...registrations);
    });
    editor.connection.listen();
    editor.said = await editor.ask(protocol.InitializeRequest.type, {
      processId: process.pid, rootUri: pathToFileURL(editor.folder).href, capabilities,
    });
    await editor.connection.sendNotification(protocol.InitializedNotification.type, {});
    return editor;
  }

  /** Runs something with an editor, and ends both. */
  static async with(run, capabilities) {
    const editor = await Editor.begin(capabilities);
    try {
      await run(editor);
    } finally {
      await editor.end();
    }
  }

  get registered() {
    return this.#registered;
  }

  get process() {
    return this.#process;
  }

  /** Ends as the protocol wants it. */
  async end() {
    await this.ask(protocol.ShutdownRequest.type);
    const exited = once(this.#process, 'exit');
    await this.connection.sendNotification(protocol.ExitNotification.type);
    const [code] = await exited;
    this.connection.dispose();
    return code;
  }

  ask(type, parameters, token) {
    return this.connection.sendRequest(type, parameters, token);
  }

  /** Writes a file that is not open. */
  put(name, text) {
    writeFileSync(join(this.folder, name), text);
    return this.address(name);
  }

  address(name) {
    return pathToFileURL(join(this.folder, name)).href;
  }

  /** Opens a text, saved as it is, and gives what is found in it. */
  async open(name, text, version = 1) {
    const uri = this.put(name, text);
    const heard = this.heard(uri, version);
    await this.connection.sendNotification(protocol.DidOpenTextDocumentNotification.type, {
      textDocument: { uri, languageId: 'wiring', version, text },
    });
    return (await heard).diagnostics;
  }

  openExample(name) {
    return this.open(name.split('/').at(-1), example(name));
  }

  async change(name, version, text) {
    const uri = this.address(name);
    await this.connection.sendNotification(protocol.DidChangeTextDocumentNotification.type, {
      textDocument: { uri, version }, contentChanges: [{ text }],
    });
    return uri;
  }

  /** What is told of a text from now on, in that version. */
  heard(uri, version, where = () => true) {
    return new Promise((resolve) => this.#waiting.push({ uri, version, where, resolve }));
  }

  /** Everything that was told of a text, in order. */
  allTold(uri) {
    return this.#told.get(uri) ?? [];
  }

  #hear(told) {
    this.#told.set(told.uri, [...this.allTold(told.uri), told]);
    for (const one of this.#waiting.filter((w) => w.uri === told.uri && w.version === told.version && w.where(told))) {
      this.#waiting.splice(this.#waiting.indexOf(one), 1);
      one.resolve(told);
    }
  }
}

export function example(name) {
  return readFileSync(join(root, 'examples', name), 'utf8');
}

export { protocol };
