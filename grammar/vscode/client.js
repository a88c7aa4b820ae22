'use strict';

const vscode = require('vscode');
const { LanguageClient } = require('vscode-languageclient/node');
const { Preview } = require('./preview.js');
const { serverOf } = require('./server.js');

let client;

/** What a command gives back is a text: a drawing goes beside the text that it is of, a table into an editor of its own. */
async function show(command, given, preview) {
  if (command === 'wiretext.draw') {
    preview.show(given);
  } else if (typeof given === 'string') {
    const document = await vscode.workspace.openTextDocument({ content: given, language: 'plaintext' });
    await vscode.window.showTextDocument(document, { viewColumn: vscode.ViewColumn.Beside, preview: true });
  }
}

exports.activate = async (context) => {
  const preview = new Preview(vscode, (address) =>
    client.sendRequest('workspace/executeCommand', { command: 'wiretext.draw', arguments: [address] }),
  );
  client = new LanguageClient('wiretext', 'WireText', serverOf(vscode.workspace.getConfiguration('wiretext')), {
    documentSelector: [{ language: 'wiring' }],
    middleware: {
      executeCommand: async (command, given, next) => {
        const answer = await next(command, given);
        await show(command, command === 'wiretext.draw' ? { address: given[0], drawing: answer } : answer, preview);
        return answer;
      },
    },
  });
  context.subscriptions.push(
    preview,
    vscode.commands.registerCommand('wiretext.preview', () => {
      const document = vscode.window.activeTextEditor?.document;
      return document?.languageId === 'wiring' ? preview.draw(document.uri.toString()) : undefined;
    }),
    vscode.workspace.onDidChangeTextDocument(({ document }) => preview.follow(document.uri.toString())),
  );
  await client.start();
};

exports.deactivate = () => client?.stop();
