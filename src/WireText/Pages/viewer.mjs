// The viewer of a circuit: controls to move, the drawing with what is live lit, what the position does, and the response.
// It looks everything up in the data that it is given and works nothing out but where things stand on the screen.

const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
const svgSpace = "http://www.w3.org/2000/svg";
const assumedMark = " *";

/** The levels that a text of letters stands for, in tenths of a dB. */
export function decodeLevels(code) {
  const levels = [];
  let level = 0;
  for (let at = 0; at < code.length; at++) {
    const place = letters.indexOf(code[at]);
    if (place === letters.length - 1) {
      level = letters.indexOf(code[at + 1]) * letters.length + letters.indexOf(code[at + 2]) - 2048;
      at += 2;
    } else {
      level += place - 31;
    }
    levels.push(level);
  }
  return levels;
}

/** Everything at rest: the first jack, and for each control and knob the place of its position or stop. */
export function restOf(data) {
  return {
    jack: 0,
    positions: data.controls.map((control) => control.rest),
    stops: data.knobs.map((knob) => knob.rest),
  };
}

/** The place of a state in the lists of the data. */
export function placeOf(data, state) {
  const positions = data.controls.reduce((count, control) => count * control.positions.length, 1);
  const position = data.controls.reduce((place, control, i) => place * control.positions.length + state.positions[i], 0);
  const settings = settingsOf(data);
  return (state.jack * positions + position) * settings + settingOf(data, state.stops);
}

function settingsOf(data) {
  if (data.turning === "alone") {
    return data.knobs.reduce((count, knob) => count + knob.stops.length - 1, 1);
  }
  return data.knobs.reduce((count, knob) => count * knob.stops.length, 1);
}

function settingOf(data, stops) {
  if (data.turning !== "alone") {
    return data.knobs.reduce((place, knob, i) => place * knob.stops.length + stops[i], 0);
  }
  let first = 1;
  for (const [i, knob] of data.knobs.entries()) {
    if (stops[i] !== knob.rest) {
      return first + stops[i] - (stops[i] > knob.rest ? 1 : 0);
    }
    first += knob.stops.length - 1;
  }
  return 0;
}

/** The same state with a knob at a stop; where knobs turn alone the others go to rest. */
export function turned(data, state, knob, stop) {
  const stops = state.stops.map((other, i) => {
    if (i === knob) {
      return stop;
    }
    return data.turning === "alone" ? data.knobs[i].rest : other;
  });
  return { ...state, stops };
}

/** The same state with a control in a position. */
export function moved(state, control, position) {
  return { ...state, positions: state.positions.map((other, i) => (i === control ? position : other)) };
}

/** What is told of a state: a text for each label, what is assumed and unknown, and the codes of curves; null where there is nothing. */
export function toldOf(data, places, state) {
  const told = data.told[places[placeOf(data, state)]];
  if (told === undefined) {
    return null;
  }
  const [assumed, unknown, curve, least, most] = told.slice(data.labels.length);
  return {
    cells: data.labels.map((_, i) => data.texts[told[i]]),
    assumed: data.texts[assumed],
    unknown: data.texts[unknown],
    curve: data.curves[curve],
    least: data.curves[least],
    most: data.curves[most],
  };
}

/** A state in words: "sel both, vol 7"; knobs at rest are left out. */
export function wordsOf(data, state) {
  const jack = data.jacks.length > 0 ? [data.jacks[state.jack]] : [];
  const positions = data.controls.map((control, i) => `${control.name} ${control.positions[state.positions[i]]}`);
  const knobs = data.knobs.flatMap((knob, i) =>
    state.stops[i] === knob.rest ? [] : [`${knob.name} ${knob.stops[state.stops[i]]}`],
  );
  return [...jack, ...positions, ...knobs].join(", ") || "everything at rest";
}

/** The indices of the bars that are drawn for a state: all closed contacts, and those the signal goes through. */
export function barsOf(data, state) {
  const live = data.live[data.liveAt[placeOf(data, state)]][3];
  const closed = data.controls.flatMap((control, i) => control.closed[state.positions[i]]);
  return { closed: new Set([...closed, ...live]), live: new Set(live) };
}

/**
 * Fills the places below an element (data-place: drawing, hint, controls, told, response, colours); a place that is not there
 * is left out. It starts with everything at rest, or with what another viewer kept. Returns what a host needs to move things
 * itself: state() and show(state), and kept() for the viewer after it.
 */
export function createViewer(root, data, start = {}) {
  const place = (name) => root.querySelector(`[data-place="${name}"]`);
  const parts = [];
  const viewer = { state: restOf(data), isCompared: false, isFollowed: true, ...start };
  const update = (change, moved = "") => {
    Object.assign(viewer, change);
    for (const part of parts) {
      part(viewer, moved);
    }
  };

  addPart("drawing", createDrawing);
  addPart("hint", createHint);
  addPart("controls", createControls);
  addPart("told", createTold);
  addPart("response", createResponse);
  addPart("colours", createColours);
  update({});
  return { state: () => viewer.state, show: (state) => update({ state }), kept: () => ({ ...viewer }) };

  function addPart(name, create) {
    const element = place(name);
    if (element !== null) {
      parts.push(create(element, data, viewer, update) ?? (() => {}));
    }
  }
}

// Elements. Whatever stands in a name stays text: nothing is ever read as markup.

export function element(name, attributes = {}, ...children) {
  return filled(document.createElement(name), attributes, children);
}

function shape(name, attributes = {}, ...children) {
  return filled(document.createElementNS(svgSpace, name), attributes, children);
}

function filled(made, attributes, children) {
  for (const [key, value] of Object.entries(attributes)) {
    made.setAttribute(key, value);
  }
  made.append(...children);
  return made;
}

// The drawing.

function createDrawing(sheet, data, viewer, update) {
  const [wires, lugs, names] = [data.wires, data.lugs, data.parts].map(
    (list) => new Map(list.map((name, place) => [name, place])),
  );
  const followed = [];
  const bars = [];
  visit(sheet);
  sheet.addEventListener("click", (event) => {
    const name = event.target.closest?.("[data-part]")?.dataset.part;
    const control = data.controls.findIndex((one) => one.part === name);
    if (control >= 0) {
      const next = (viewer.state.positions[control] + 1) % data.controls[control].positions.length;
      update({ state: moved(viewer.state, control, next) }, `${data.controls[control].name}: `);
    }
  });
  return () => {
    const place = placeOf(data, viewer.state);
    const live = data.live[data.liveAt[place]].map((places) => new Set(places));
    for (const { shown, kind, index } of followed) {
      shown.classList.toggle("dim", viewer.isFollowed && !live[kind].has(index));
    }
    const drawn = barsOf(data, viewer.state);
    for (const bar of bars) {
      const index = Number(bar.dataset.bar);
      bar.classList.toggle("closed", drawn.closed.has(index));
      bar.classList.toggle("live", viewer.isFollowed && drawn.live.has(index));
    }
  };

  // What shows a lug, a wire or a part is lit as a whole; bars show contacts. A close-up is one more drawing of its part.
  function visit(parent) {
    for (const shown of parent.children) {
      const { lug, wire, part, bar } = shown.dataset;
      if (shown.classList.contains("close-up")) {
        visit(shown);
      } else if (bar !== undefined) {
        bars.push(shown);
      } else if (lug !== undefined) {
        followed.push({ shown, kind: 1, index: lugs.get(lug) });
      } else if (wire !== undefined) {
        followed.push({ shown, kind: 0, index: wires.get(wire) });
      } else if (part !== undefined) {
        followed.push({ shown, kind: 2, index: names.get(part) });
        shown.classList.toggle("moves", data.controls.some((control) => control.part === part));
      } else {
        visit(shown);
      }
    }
  }
}

function createHint(hint, data) {
  if (data.controls.length > 0) {
    hint.textContent = "A switch or a button on the drawing moves when it is tapped.";
  }
}

// The controls.

function createControls(section, data, viewer, update) {
  const form = element("form", { autocomplete: "off" });
  form.addEventListener("submit", (event) => event.preventDefault());
  const shown = [];
  if (data.jacks.length > 0) {
    addChoice("jack", "", data.jacks, () => viewer.state.jack, (jack) => ({ ...viewer.state, jack }));
  }
  for (const [i, control] of data.controls.entries()) {
    addChoice(
      control.name,
      control.about,
      control.positions,
      () => viewer.state.positions[i],
      (position) => moved(viewer.state, i, position),
    );
  }
  if (data.knobs.length > 0) {
    form.append(element("div", { class: "knobs" }, ...data.knobs.map(knobOf)));
  }
  form.append(switches());
  section.append(element("h2", {}, "Controls"), form);
  return () => shown.forEach((show) => show());

  function addChoice(name, about, words, at, stateAt) {
    const inputs = words.map((_, i) => {
      const input = element("input", { type: "radio", name: `choice-${shown.length}`, value: i });
      input.addEventListener("change", () => update({ state: stateAt(i) }, `${name} ${words[i]}: `));
      return input;
    });
    const labels = words.map((word, i) => element("label", {}, inputs[i], element("span", {}, word)));
    form.append(
      element(
        "fieldset",
        { class: "choice", role: "radiogroup", "aria-label": about ? `${name}, ${about}` : name },
        legend(name, about),
        element("div", { class: "options" }, ...labels),
      ),
    );
    shown.push(() => inputs.forEach((input, i) => (input.checked = i === at())));
  }

  function legend(name, about) {
    return element("legend", {}, element("b", {}, name), " ", element("span", { class: "about" }, about));
  }

  function knobOf(knob, i) {
    const pointer = shape("line", { x1: 20, y1: 20, x2: 20, y2: 6 });
    const face = shape(
      "svg",
      { class: "face", viewBox: "0 0 40 40", "aria-hidden": "true" },
      ...knob.stops.map((stop) => shape("line", { class: "mark", x1: 20, y1: 0.5, x2: 20, y2: 3, transform: turn(stop) })),
      shape("circle", { cx: 20, cy: 20, r: 15 }),
      pointer,
    );
    const slider = element("input", {
      type: "range",
      min: 0,
      max: knob.stops.length - 1,
      step: 1,
      "aria-label": knob.about ? `${knob.name}, ${knob.about}` : knob.name,
    });
    const value = element("output", { "aria-hidden": "true" });
    slider.addEventListener("input", () => {
      const stop = Number(slider.value);
      const isOnlyOne = data.turning === "alone" && viewer.state.stops.some((at, j) => j !== i && at !== data.knobs[j].rest);
      update(
        { state: turned(data, viewer.state, i, stop) },
        `${knob.name} ${knob.stops[stop]}${isOnlyOne ? ", the other knobs back at rest" : ""}: `,
      );
    });
    shown.push(() => {
      const at = viewer.state.stops[i];
      slider.value = at;
      slider.setAttribute("aria-valuetext", knob.stops[at]);
      value.textContent = knob.stops[at];
      pointer.setAttribute("transform", turn(knob.stops[at]));
    });
    return element(
      "div",
      { class: "knob" },
      element("div", { class: "name" }, element("b", {}, knob.name), " ", element("span", { class: "about" }, knob.about)),
      face,
      slider,
      value,
    );
  }

  // From 7 o'clock at 0 to 5 o'clock at 10, as a knob is seen from the front.
  function turn(stop) {
    return `rotate(${Number(stop) * 30 - 150} 20 20)`;
  }

  function switches() {
    const row = element("div", { class: "switches" });
    const rest = element("button", { type: "button" }, "All at rest");
    rest.addEventListener("click", () => update({ state: { ...restOf(data), jack: viewer.state.jack } }, "All at rest: "));
    row.append(rest, check("Follow the signal", "isFollowed", "The signal is lit: ", "Everything is lit: "));
    if (data.stock.length > 0) {
      row.append(check("Compare with before the change", "isCompared", "Compared: ", "Not compared: "));
    }
    return row;
  }

  function check(words, what, on, off) {
    const input = element("input", { type: "checkbox" });
    input.addEventListener("change", () => update({ [what]: input.checked }, input.checked ? on : off));
    shown.push(() => (input.checked = viewer[what]));
    return element("label", { class: "check" }, input, element("span", {}, words));
  }
}

// What a position does.

function createTold(section, data, viewer) {
  const heading = element("h2");
  const body = element("div");
  const status = element("p", { role: "status", class: "unseen" });
  section.append(heading, body, status);
  return (_, movedWords) => {
    const now = toldOf(data, data.now, viewer.state);
    const was = viewer.isCompared ? toldOf(data, data.stock, viewer.state) : null;
    heading.textContent = wordsOf(data, viewer.state);
    body.replaceChildren(...tableOf(now, was));
    if (movedWords) {
      status.textContent = movedWords + sentence(now, was);
    }
  };

  function tableOf(now, was) {
    const isMissing = viewer.isCompared && was === null;
    const rows = data.labels.map((label, i) => {
      const isOther = was !== null && was.cells[i] !== now.cells[i];
      return element(
        "tr",
        isOther ? { class: "other" } : {},
        element("th", { scope: "row" }, label),
        ...(was === null ? [] : [element("td", { "data-was": label }, was.cells[i])]),
        element("td", { "data-now": label }, now.cells[i], ...(isOther ? [element("span", { class: "unseen" }, " (changed)")] : [])),
      );
    });
    const head =
      was === null
        ? []
        : [element("thead", {}, element("tr", {}, element("td"), ...["before", "now"].map((word) => element("th", { scope: "col" }, word))))];
    const table = element("table", { class: "told" }, ...head, element("tbody", {}, ...rows));
    const lines = [];
    if (isMissing) {
      lines.push("Before the change this jack was not there.");
    } else if (was !== null && was.cells.every((cell, i) => cell === now.cells[i])) {
      lines.push("The change makes no difference here.");
    }
    if ([now, was].some((told) => told?.cells.some((cell) => cell.endsWith(assumedMark) || cell.includes(`${assumedMark};`)))) {
      lines.push(now.unknown || was?.unknown ? "* rests on what nobody knows, or on assumed values." : "* rests on assumed values: see the table of coils.");
    }
    return [table, ...lines.map((line) => element("p", { class: "remark" }, line))];
  }

  function sentence(now, was) {
    const [heard, ...rest] = data.labels.map((label, i) => {
      const before = was !== null && was.cells[i] !== now.cells[i] ? `, before ${was.cells[i]}` : "";
      return `${i === 0 ? "" : `${label} `}${now.cells[i]}${before}`;
    });
    return [heard, ...rest.filter((_, i) => now.cells[i + 1] !== "-")].join("; ");
  }
}

// The response.

function createResponse(section, data, viewer) {
  const [width, height] = [640, 300];
  const frame = { left: 52, right: 632, top: 12, bottom: 266 };
  const { bottom, top, step, hertz } = data.response;
  const lines = shape("svg", {
    x: frame.left,
    y: frame.top,
    width: frame.right - frame.left,
    height: frame.bottom - frame.top,
    class: "lines",
  });
  const chart = shape("svg", { class: "chart", role: "img", viewBox: `0 0 ${width} ${height}` }, ...grid(), lines);
  const below = element("p", { class: "remark" });
  section.append(element("h2", {}, "Response"), chart, below);
  return () => {
    const now = toldOf(data, data.now, viewer.state);
    const was = viewer.isCompared ? toldOf(data, data.stock, viewer.state) : null;
    const drawn = [bandOf(was, "band-was"), bandOf(now, "band"), curveOf(was, "was"), curveOf(now, "now")];
    lines.replaceChildren(...drawn.filter((line) => line !== null));
    const peak = now.cells[data.labels.indexOf("peak")];
    chart.setAttribute(
      "aria-label",
      now.curve
        ? `Level over frequency, from 20 Hz to 20 kHz; peak: ${peak}${was?.curve ? "; with the curve before the change" : ""}`
        : "Level over frequency: nothing sounds here",
    );
    below.replaceChildren(...wordsBelow(now, was));
  };

  function curveOf(told, name) {
    if (!told?.curve) {
      return null;
    }
    return shape("path", { class: name, d: `M${pointsOf(told.curve).join("L")}` });
  }

  function bandOf(told, name) {
    if (!told?.least) {
      return null;
    }
    const round = [...pointsOf(told.most), ...pointsOf(told.least).reverse()];
    return shape("path", { class: name, d: `M${round.join("L")}Z` });
  }

  function pointsOf(code) {
    return decodeLevels(code).map(
      (level, i) => `${(x(hertz[i]) - frame.left).toFixed(1)} ${(y(level / 10) - frame.top).toFixed(2)}`,
    );
  }

  function wordsBelow(now, was) {
    const words = [];
    if (was !== null) {
      words.push(lineOf("now"), " now ", lineOf("was"), was.curve ? " before " : " before: nothing sounded ");
    }
    if (!now.curve) {
      words.push("Nothing sounds here. ");
    } else if (now.assumed || was?.assumed) {
      words.push(`* with assumed values of ${now.assumed || was.assumed}. `);
    }
    if (now.unknown) {
      words.push(`The band is where it may lie, for nobody knows ${now.unknown}. `);
    }
    if (was?.unknown) {
      words.push(`The paler band is where it may have lain before, for nobody knew ${was.unknown}.`);
    }
    return words;
  }

  function lineOf(name) {
    return shape("svg", { class: "key", viewBox: "0 0 24 8", "aria-hidden": "true" }, shape("path", { class: name, d: "M0 4L24 4" }));
  }

  function x(frequency) {
    const share = Math.log(frequency / hertz[0]) / Math.log(hertz[hertz.length - 1] / hertz[0]);
    return frame.left + share * (frame.right - frame.left);
  }

  function y(level) {
    return frame.top + ((top - level) / (top - bottom)) * (frame.bottom - frame.top);
  }

  function grid() {
    const drawn = [];
    for (let level = top; level >= bottom; level -= step) {
      const isStrong = level % (2 * step) === 0;
      drawn.push(shape("line", { class: level === 0 ? "zero" : "", x1: frame.left, x2: frame.right, y1: y(level), y2: y(level) }));
      if (isStrong) {
        drawn.push(shape("text", { class: "level", x: frame.left - 6, y: y(level) + 4, "text-anchor": "end" }, String(level).replace("-", "−")));
      }
    }
    for (const [frequency, word, isMinor] of [
      [20, "20", false],
      [50, "50", true],
      [100, "100", false],
      [200, "200", true],
      [500, "500", true],
      [1000, "1k", false],
      [2000, "2k", true],
      [5000, "5k", true],
      [10000, "10k", false],
      [20000, "20k", true],
    ]) {
      const at = x(frequency);
      drawn.push(shape("line", { x1: at, x2: at, y1: frame.top, y2: frame.bottom }));
      drawn.push(
        shape("text", { class: isMinor ? "minor" : "", x: at, y: frame.bottom + 22, "text-anchor": at > frame.right - 8 ? "end" : "middle" }, word),
      );
    }
    drawn.push(shape("text", { x: frame.right - 4, y: frame.bottom - 6, "text-anchor": "end" }, "Hz"));
    drawn.push(shape("text", { x: frame.left + 4, y: frame.top + 14 }, "dB"));
    return drawn;
  }
}

// The colours of the page.

function createColours(section) {
  const page = section.ownerDocument.documentElement;
  const words = { "": "As the system", light: "Light", dark: "Dark" };
  const select = element(
    "select",
    { "aria-label": "Colours of the page" },
    ...Object.entries(words).map(([value, word]) => element("option", { value }, word)),
  );
  select.value = page.dataset.colours ?? "";
  select.addEventListener("change", () => {
    if (select.value) {
      page.dataset.colours = select.value;
    } else {
      delete page.dataset.colours;
    }
  });
  section.append(select);
}
