// The playground: the text on one side, what comes of it on the other. The viewer is that of the page for a customer.
import { createCore, createLatest } from "./core.mjs";
import { createEditor } from "./editor.mjs";
import { createGuide } from "./guide.mjs";
import { linkOf, mostLetters, textOf } from "./link.mjs";
import { fileNameOf, pngOf, save } from "./save.mjs";
import { createLive, linesAt } from "../../WireText/Pages/live.mjs";

const kept = "wiring-text";
const find = (selector) => document.querySelector(selector);
const say = (words) => (find("#said").textContent = words);

const wordsHere = { now: () => "This text", changes: "Since the last change", all: "mend these first" };
const events = new EventTarget();
createLive(document, events, wordsHere);
const tell = (kind, value) => events.dispatchEvent(new MessageEvent(kind, { data: JSON.stringify(value) }));

const startCore = () => createCore(new Worker(new URL("worker.js", document.baseURI), { type: "module" }));
const prompt = startCore();
let thorough = null;
let now = { text: null, picture: null };

const examples = await (await fetch("examples.json")).json();
const carried = await textOf(location.hash);
const draft = carried ?? stored();
const editor = createEditor(
  find("#editor"),
  draft ?? "",
  {
    complete: async (text, at) => JSON.parse(await prompt.ask("Complete", text, at)),
    explain: (text, at) => prompt.ask("Explain", text, at),
  },
  changed,
);
const guide = createGuide(find("#guide"), (write) => editor.replace(write(editor.text())));
if (draft === null) {
  guide.open();
}

const show = createLatest(async (text, isOld) => {
  const told = JSON.parse(await prompt.ask("Show", text, isDark() ? "dark" : "light"));
  if (isOld()) {
    return;
  }
  now = { text, picture: told.picture };
  editor.colour(told.tokens);
  put(told.picture, told.mends);
  guide.see(now);
  document.body.dataset.shown = performance.now();
  explore(text);
});

/** What takes longer: the edits that are searched for, and what each state does. */
const explore = createLatest(async (text, isOld) => {
  thorough ??= startCore();
  await thorough.ready;
  if (isOld()) {
    return;
  }
  const told = JSON.parse(await thorough.ask("Tell", text));
  if (isOld() || now.text !== text) {
    return;
  }
  put({ ...now.picture, findings: told.picture.findings, more: told.picture.more, summary: told.picture.summary }, told.mends);
  if (told.figures === null || now.picture.trouble !== null) {
    return;
  }
  const drawn = JSON.parse(await prompt.ask("Draw", told.figures.bars ?? []));
  if (now.text === text) {
    tell("figures", { ...told.figures, ...drawn });
    document.body.dataset.explored = performance.now();
  }
});

/** Shows a picture, with a button for each edit that mends what is found. */
function put(picture, mends) {
  tell("picture", picture);
  const findings = picture.findings.map((finding, i) => ({ ...finding, mends: mends[i] ?? [] }));
  editor.mark(findings, mend);
  document.querySelectorAll("[data-live=findings] > ol > li").forEach((item, i) => {
    item.querySelector(".source")?.classList.add("reached");
    for (const one of findings[i].mends) {
      const button = document.createElement("button");
      button.type = "button";
      button.className = "mend";
      button.textContent = one.title;
      button.addEventListener("click", () => mend(one));
      item.append(button);
    }
  });

  function mend(one) {
    if (editor.text() === now.text) {
      editor.edit(one.edits);
      say(`Mended: ${one.title}`);
    }
  }
}

function changed(text) {
  try {
    localStorage.setItem(kept, text);
  } catch {
    // A browser that keeps nothing: the text is gone with the page.
  }
  show(text);
}

function stored() {
  try {
    return localStorage.getItem(kept);
  } catch {
    return null;
  }
}

function isDark() {
  const chosen = document.documentElement.dataset.colours;
  return chosen ? chosen === "dark" : matchMedia("(prefers-color-scheme: dark)").matches;
}

// The bar.

const chooser = find("#example");
chooser.append(new Option("choose one", ""), ...examples.map(({ title }, i) => new Option(title, i)));
chooser.addEventListener("change", () => {
  if (chooser.value !== "") {
    find("#guide").hidden = true;
    editor.replace(examples[chooser.value].text);
    say(`${examples[chooser.value].title}: undo brings your text back.`);
    chooser.value = "";
  }
});

find("#guide-open").addEventListener("click", () => {
  editor.replace("");
  guide.open();
  say("The guide begins with an empty text: undo brings yours back.");
  editor.focus();
});

find("#format").addEventListener("click", async () => editor.replace(await prompt.ask("Format", editor.text())));

find("#link").addEventListener("click", async () => {
  const link = await linkOf(editor.text());
  if (link === null) {
    say(`The text is too long for a link, which carries ${mostLetters} letters. Save it as text.`);
    return;
  }
  history.replaceState(null, "", link);
  try {
    await navigator.clipboard.writeText(location.href);
    say("The link is copied. It carries the text itself.");
  } catch {
    say("The link stands in the address bar. It carries the text itself.");
  }
});

const files = {
  svg: async (name) => save(name, await need(prompt.ask("Svg", editor.text())), "image/svg+xml"),
  png: async (name) => save(name, await pngOf(await need(prompt.ask("Svg", editor.text()))), "image/png"),
  text: async (name) => save(name, editor.text(), "text/plain"),
  page: async (name) => save(name, await need((thorough ?? prompt).ask("Page", editor.text())), "text/html"),
};
const endings = { svg: "svg", png: "png", text: "wiring", page: "html" };
for (const button of document.querySelectorAll("[data-save]")) {
  button.addEventListener("click", async () => {
    find(".save").open = false;
    const kind = button.dataset.save;
    const name = fileNameOf(now.picture?.title, endings[kind]);
    try {
      await files[kind](name);
      say(`${name} is saved.`);
    } catch (error) {
      say(error.message);
    }
  });
}

async function need(content) {
  const made = await content;
  if (made === "") {
    throw new Error("There is nothing to save: mend what is found first, and have a jack to listen at.");
  }
  return made;
}

find("#print").addEventListener("click", () => print());

// From the picture and the findings to the text.

document.addEventListener("click", (event) => {
  const source = event.target.closest?.(".source[data-line]");
  if (source) {
    editor.goTo(Number(source.dataset.line));
    return;
  }
  const place = event.target.closest?.(".sheet [data-lug], .sheet [data-wire], .sheet [data-part]");
  const found = place && now.picture ? linesAt(now.picture, place.dataset) : null;
  if (found !== null) {
    editor.goTo(found.lines[0].line);
  }
});

// Colours: the picture at each key stroke is in one theme alone.

new MutationObserver(() => show(editor.text())).observe(document.documentElement, { attributeFilter: ["data-colours"] });
matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => show(editor.text()));

addEventListener("hashchange", async () => {
  const text = await textOf(location.hash);
  if (text !== null && text !== editor.text()) {
    editor.replace(text);
  }
});

if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register(new URL("offline.js", document.baseURI)).catch(() => {});
}

try {
  await prompt.ready;
  await show(editor.text());
} catch (error) {
  find("[data-live=state]").textContent = `It cannot start here: ${error.message}`;
}
