'use strict';

/** How long the text must rest before it is drawn anew, in milliseconds. Chosen: a pause between two words. */
const rest = 400;

/** The drawing beside the text. While a text cannot be drawn, the last one that could stays. */
exports.Preview = class Preview {
  #vscode;
  #ask;
  #panel;
  #address;
  #timer;

  /** @param ask Gives the drawing of a text, by its address, as SVG. */
  constructor(vscode, ask) {
    this.#vscode = vscode;
    this.#ask = ask;
  }

  /** Draws a text, and follows it from then on. */
  async draw(address) {
    this.show({ address, drawing: await this.#ask(address) });
  }

  show({ address, drawing }) {
    this.#address = address;
    if (!this.#panel) {
      this.#panel = this.#vscode.window.createWebviewPanel(
        'wiretext', 'Wiring', { viewColumn: this.#vscode.ViewColumn.Beside, preserveFocus: true }, { enableScripts: false },
      );
      this.#panel.onDidDispose(() => {
        this.#panel = undefined;
      });
    }

    this.#panel.webview.html = page(drawing);
  }

  /** Draws the text anew when it is the one that is shown, as soon as it rests. */
  follow(address) {
    if (this.#panel && address === this.#address) {
      clearTimeout(this.#timer);
      this.#timer = setTimeout(() => this.draw(address).catch(() => {}), rest);
    }
  }

  dispose() {
    clearTimeout(this.#timer);
    this.#panel?.dispose();
  }
};

/** A page that shows the drawing and does nothing. */
function page(drawing) {
  const image = `data:image/svg+xml;base64,${Buffer.from(drawing, 'utf8').toString('base64')}`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">
<title>Wiring</title>
<style>body { margin: 0; background: #FCFBF8; } img { display: block; width: 100%; height: auto; }</style>
</head>
<body><img src="${image}" alt="The drawing of the wiring beside this text"></body>
</html>
`;
}
