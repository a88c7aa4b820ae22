// A short circuit to write step by step: each step says what to do, does it when it is asked to, and sees when it is done.

const lines = {
  pickup: "pickup  bridge  single-coil",
  pot: "pot     vol     250k audio",
  jack: "jack    out     mono",
  signal: ["wire    bridge.hot     to vol.3       white", "wire    vol.2          to out.tip     blue"],
  ground: [
    "wire    bridge.ground  to vol.case    black",
    "wire    vol.1          to vol.case    bare",
    "wire    vol.case       to out.sleeve  black",
  ],
  claim: "expect  vol=0 others=any:  silence",
};

const has = (pattern) => ({ text }) => pattern.test(text);
const added = (...more) => (text) => `${text}${text === "" || text.endsWith("\n") ? "" : "\n"}${more.join("\n")}\n`;
const isRight = ({ picture }) => picture.trouble === null && picture.findings.length === 0;
const isBroken = ({ picture }) => picture.findings.some((one) => one.id === "unknown-colour" || one.severity === "error");

/** The steps in their order. Each is done by a text and what the page shows of it. */
export const steps = [
  {
    title: "Write a pickup",
    words: "A part is a line: its kind, a name that you give it, its model.",
    shown: [lines.pickup],
    write: added(lines.pickup),
    isDone: has(/^pickup\s+\S+\s+single-coil/m),
  },
  {
    title: "Write a pot",
    words: "Its value has a letter, and its taper is a word. The picture shows it from behind, as it lies when you solder.",
    shown: [lines.pot],
    write: added(lines.pot),
    isDone: has(/^pot\s+vol\s+\S+/m),
  },
  {
    title: "Write a jack",
    words: "Now everything is there. What is found says which leads still hang in the air.",
    shown: [lines.jack],
    write: added(lines.jack),
    isDone: has(/^jack\s+out\s+mono/m),
  },
  {
    title: "Lead the signal",
    words: "A wire is a line too: from a lug to a lug, and its colour. Lug 3 of a pot is where it is at 10, lug 2 is the wiper.",
    shown: lines.signal,
    write: added(...lines.signal),
    isDone: has(/^wire\s+vol\.2\s+to\s+out\.tip/m),
  },
  {
    title: "Ground it",
    words: "The ground wires meet on the case of the pot. When all are there, nothing more is found.",
    shown: lines.ground,
    write: added(...lines.ground),
    isDone: isRight,
  },
  {
    title: "Break it",
    words: "A slip of the pen: write wihte for white. The finding stands under the text, at its line, and on the picture the last that could be read.",
    shown: [lines.signal[0].replace("white", "wihte")],
    write: (text) => text.replace(/\bwhite\b/, "wihte"),
    isDone: isBroken,
  },
  {
    title: "Mend it",
    words: "Under the finding there is a button with the edit that mends it. Press it.",
    shown: [],
    write: (text) => text.replace(/\bwihte\b/, "white"),
    isDone: isRight,
  },
  {
    title: "Say what it is meant to do",
    words: "An expect line is a claim about a state. It is proven, or you are told where it fails.",
    shown: [lines.claim],
    write: added(lines.claim),
    isDone: (now) => isRight(now) && /^expect\s+vol=0\b.*silence/m.test(now.text),
  },
];

/** Where the guide stands. It goes on when a step is done, and never back. */
export function createGuide(place, write) {
  const make = (name, words) => Object.assign(place.ownerDocument.createElement(name), { textContent: words });
  const heading = make("h2", "");
  const words = make("p", "");
  const shown = make("pre", "");
  const help = make("button", "Write it for me");
  const leave = make("button", "Leave the guide");
  const acts = make("div", "");
  const status = make("p", "");
  status.setAttribute("role", "status");
  status.className = "unseen";
  acts.append(help, leave);
  place.append(heading, words, shown, acts, status);
  for (const button of [help, leave]) {
    button.type = "button";
  }
  let at = 0;
  help.addEventListener("click", () => write(steps[at].write));
  leave.addEventListener("click", () => (place.hidden = true));

  function show() {
    const step = steps[at];
    const isEnd = step === undefined;
    heading.textContent = isEnd ? "That is a whole circuit" : `${at + 1} of ${steps.length}: ${step.title}`;
    words.textContent = isEnd
      ? "Turn its knob beside the picture, choose an example above, or go on with this text: add a tone, a second pickup, a switch."
      : step.words;
    shown.textContent = isEnd ? "" : step.shown.join("\n");
    shown.hidden = isEnd || step.shown.length === 0;
    help.hidden = isEnd;
    help.textContent = step?.title === "Mend it" ? "Mend it for me" : "Write it for me";
    place.dataset.step = at;
  }

  show();
  return {
    open() {
      at = 0;
      place.hidden = false;
      show();
    },
    /** Told of each text and what is shown of it. */
    see(now) {
      const before = at;
      if (!place.hidden && at < steps.length && steps[at].isDone(now)) {
        at++;
        show();
        status.textContent = `${steps[before].title}: done. ${heading.textContent}`;
      }
    },
  };
}
