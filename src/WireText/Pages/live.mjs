// The page beside a text that somebody writes: what each save tells is put in, and the viewer starts anew where it stood.
import { createViewer, element, restOf, turned } from "./viewer.mjs";

/** How long what a save brought stays lit, in milliseconds. Chosen: long enough to look up from the keys. */
const litFor = 6000;

/** What is said where each save is told. */
const ofSaves = {
  now: (file) => `${file} as it was saved last`,
  changes: "Since the last save",
  all: "wiretext check tells them all",
};

const lost = "Not connected: what is shown may be old. Where wiretext watch has ended, start it again and open the address that it prints.";

/** The state of one viewer for the data of another: what is called the same stands as it stood, the rest is at rest. */
export function carried(before, state, after) {
  const rest = restOf(after);
  const placeOf = (names, name, other) => (names.includes(name) ? names.indexOf(name) : other);
  const standing = (was, now, list, at) =>
    now.map((one, i) => {
      const old = was.findIndex((other) => other.name === one.name);
      return old < 0 ? one.rest : placeOf(one[list], was[old][list][at[old]], one.rest);
    });
  const stops = standing(before.knobs, after.knobs, "stops", state.stops);
  const moved = {
    jack: placeOf(after.jacks, before.jacks[state.jack], 0),
    positions: standing(before.controls, after.controls, "positions", state.positions),
    stops,
  };
  if (after.turning !== "alone") {
    return moved;
  }
  const knob = stops.findIndex((stop, i) => stop !== after.knobs[i].rest);
  return knob < 0 ? moved : turned(after, { ...moved, stops: rest.stops }, knob, stops[knob]);
}

/** What a place of a drawing shows, and the lines of the text that say so; null where it shows nothing. */
export function linesAt(picture, shown) {
  const { lug, wire, part } = shown;
  const [kind, names] = lug !== undefined ? ["lugs", [lug]] : wire !== undefined ? ["wires", wire.split(" ")] : ["parts", [part]];
  const places = picture[kind].filter(([name]) => names.includes(name)).flatMap(([, ...lines]) => lines);
  return places.length === 0 ? null : { name: names.join(", "), lines: [...new Set(places)].map((place) => picture.lines[place]) };
}

/** Fills the page from the events: a picture as soon as there is one, the figures when they are worked out. */
export function createLive(page, events, words = ofSaves) {
  const root = page.body;
  const live = (name) => root.querySelector(`[data-live="${name}"]`);
  const colours = new page.defaultView.CSSStyleSheet();
  page.adoptedStyleSheets = [colours];
  const shown = { pictured: "", picture: null, data: null, viewer: null, said: "", litUntil: 0 };
  live("line").append(
    element("div", { role: "status", "data-live": "lines" }),
    element("button", { type: "button" }, "Close"),
  );
  live("line").querySelector("button").addEventListener("click", () => (live("line").hidden = true));

  events.addEventListener("open", () => say(shown.said));
  events.addEventListener("error", () => (live("state").textContent = lost));
  events.addEventListener("picture", (event) => showPicture(JSON.parse(event.data)));
  events.addEventListener("figures", (event) => showFigures(JSON.parse(event.data)));

  function showPicture(picture) {
    shown.picture = picture;
    page.title = picture.title ? `${picture.file} – ${picture.title}` : picture.file;
    root.classList.toggle("kept", picture.trouble !== null);
    say(wordsOf(picture, words));
    live("findings").replaceChildren(...findingsOf(picture, words));
    if (picture.trouble === null) {
      live("changes").replaceChildren(...changesOf(picture, words));
    }
    if (picture.title === null) {
      return;
    }
    live("head").replaceChildren(...parsed(picture.head));
    if (picture.drawing !== shown.pictured) {
      shown.pictured = picture.drawing;
      shown.litUntil = Date.now() + litFor;
      draw(picture);
      root.querySelector(".desk").setAttribute("aria-busy", "true");
    }
  }

  function showFigures(figures) {
    const focus = focusOf(page);
    for (const place of ["hint", "controls", "told", "response", "colours"]) {
      root.querySelector(`[data-place="${place}"]`).replaceChildren();
    }
    root.querySelector(".desk").removeAttribute("aria-busy");
    live("below").replaceChildren(...parsed(figures.below ?? ""));
    live("foot").textContent = figures.foot ?? "";
    if (figures.why !== null) {
      root.querySelector("[data-place=told]").append(element("p", { class: "remark" }, figures.why));
      return;
    }
    draw(figures);
    const kept = shown.viewer?.kept();
    const start = kept ? { ...kept, state: carried(shown.data, kept.state, figures.data) } : { isFollowed: false };
    shown.data = figures.data;
    shown.viewer = createViewer(root, figures.data, start);
    focus();
  }

  // A sheet of its own for each drawing: what listened to the one before goes with it.
  function draw(drawn) {
    colours.replaceSync(drawn.colours);
    const old = root.querySelector(".sheet");
    const [left, top, isFocused] = [old.scrollLeft, old.scrollTop, page.activeElement === old];
    const sheet = old.cloneNode(false);
    sheet.append(...parsed(drawn.drawing));
    old.replaceWith(sheet);
    sheet.scrollTo(left, top);
    if (isFocused) {
      sheet.focus({ preventScroll: true });
    }
    sheet.addEventListener("click", (event) => showLine(event.target.closest?.("[data-lug], [data-wire], [data-part]")));
    light(sheet);
  }

  function light(sheet) {
    const left = shown.litUntil - Date.now();
    const { newParts, newWires } = shown.picture;
    const fresh = [...sheet.querySelectorAll("[data-part], [data-wire]")].filter(
      ({ dataset }) => dataset.lug === undefined && (newWires.includes(dataset.wire) || (dataset.wire === undefined && newParts.includes(dataset.part))),
    );
    if (left <= 0 || fresh.length === 0) {
      return;
    }
    for (const one of fresh) {
      one.classList.add("fresh");
      one.style.setProperty("animation-delay", `${left - litFor}ms`);
    }
    setTimeout(() => fresh.forEach((one) => one.classList.remove("fresh")), left);
  }

  function showLine(place) {
    const found = place ? linesAt(shown.picture, place.dataset) : null;
    if (found !== null) {
      live("line").hidden = false;
      live("lines").replaceChildren(element("b", {}, found.name), ...found.lines.map((line) => lineOf(line)));
    }
  }

  function say(words) {
    shown.said = words;
    live("state").textContent = words;
  }
}

function wordsOf(picture, words) {
  const summary = picture.summary[0].toUpperCase() + picture.summary.slice(1);
  return picture.trouble === null
    ? `${words.now(picture.file)}: ${picture.summary}.`
    : `${picture.trouble} ${picture.title === null ? "" : "The picture is that of the last text that could be read. "}${summary}.`;
}

function findingsOf(picture, words) {
  if (picture.findings.length === 0) {
    return [];
  }
  const items = picture.findings.map((finding) =>
    element(
      "li",
      { class: finding.severity },
      element("p", {}, element("b", {}, finding.severity), ` ${finding.message} `, element("span", { class: "about" }, `[${finding.id}]`)),
      placeOf(finding),
      ...otherPlacesOf(finding),
      ...(finding.help ? [element("p", { class: "help" }, `help: ${finding.help}`)] : []),
    ),
  );
  const more = picture.more > 0 ? [element("p", { class: "remark" }, `${picture.more} more: ${words.all}.`)] : [];
  return [element("h2", {}, "Findings"), element("ol", {}, ...items), ...more];
}

function otherPlacesOf({ related }) {
  if (related.length === 0) {
    return [];
  }
  const places = related.flatMap((one) => [element("p", {}, one.message), placeOf(one)]);
  return [element("details", {}, element("summary", {}, related.length === 1 ? "another place" : `${related.length} other places`), ...places)];
}

function changesOf(picture, words) {
  if (picture.changes.length === 0) {
    return [];
  }
  return [element("h2", {}, words.changes), element("ul", {}, ...picture.changes.map((words) => element("li", {}, words)))];
}

function placeOf(place) {
  const [start, end] = [place.column - 1, place.column - 1 + place.length];
  return lineOf(place, place.text.slice(0, start), element("mark", {}, place.text.slice(start, end)), place.text.slice(end));
}

function lineOf({ file, line, text }, ...pieces) {
  const code = element("code", {}, ...(pieces.length > 0 ? pieces : [text]));
  return element("p", { class: "source", "data-file": file, "data-line": line }, element("span", { class: "about" }, `${file}:${line} `), code);
}

/** Elements of markup in which every name was escaped when it was written, as on a page for a customer. */
function parsed(markup) {
  const template = document.createElement("template");
  template.innerHTML = markup;
  return template.content.childNodes;
}

/** Gives the focus back to the control that had it and was made anew; where another stands there now, to nobody. */
function focusOf(page) {
  const controls = () => [...page.querySelectorAll("[data-place] input, [data-place] button, [data-place] select")];
  const signOf = (one) => `${one.type} ${one.value} ${one.closest("fieldset, label")?.textContent} ${one.getAttribute("aria-label")}`;
  const at = controls().indexOf(page.activeElement);
  const sign = at < 0 ? "" : signOf(page.activeElement);
  return () => {
    const now = at < 0 ? undefined : controls()[at];
    if (now !== undefined && signOf(now) === sign) {
      now.focus({ preventScroll: true });
    }
  };
}

const served = globalThis.document?.body.dataset.events;
if (served) {
  createLive(document, new EventSource(served));
}
