// What the page beside a text works out by itself: how the viewer stands after a save, and which lines say what was clicked.
import assert from "node:assert/strict";
import { test } from "node:test";
import { carried, linesAt } from "../../src/WireText/Pages/live.mjs";

const before = {
  jacks: ["out", "second"],
  controls: [
    { name: "sel", positions: ["neck", "both", "bridge"], rest: 0 },
    { name: "mute", positions: ["up", "down"], rest: 0 },
  ],
  knobs: [
    { name: "vol", stops: ["0", "5", "10"], rest: 2 },
    { name: "tone", stops: ["0", "5", "10"], rest: 2 },
  ],
  turning: "together",
};

test("what is called the same stands as it stood", () => {
  const state = { jack: 1, positions: [2, 1], stops: [1, 0] };
  assert.deepEqual(carried(before, state, before), state);
});

test("what is new, or has lost its position, is at rest; the order does not matter", () => {
  const after = {
    ...before,
    jacks: ["second"],
    controls: [
      { name: "phase", positions: ["in", "out"], rest: 1 },
      { name: "mute", positions: ["up", "down"], rest: 0 },
      { name: "sel", positions: ["neck", "both"], rest: 1 },
    ],
    knobs: [{ name: "vol", stops: ["0", "1", "2", "3", "4", "5", "10"], rest: 6 }],
  };
  assert.deepEqual(carried(before, { jack: 1, positions: [2, 1], stops: [1, 0] }, after), {
    jack: 0,
    positions: [1, 1, 1],
    stops: [5],
  });
  assert.deepEqual(carried(before, { jack: 0, positions: [1, 0], stops: [2, 2] }, after).positions, [1, 0, 1]);
});

test("where one knob is turned at a time, one stays turned", () => {
  const after = { ...before, turning: "alone" };
  const at = (stops) => carried(before, { jack: 0, positions: [0, 0], stops }, after).stops;
  assert.deepEqual(at([1, 0]), [1, 2]);
  assert.deepEqual(at([2, 0]), [2, 0]);
  assert.deepEqual(at([2, 2]), [2, 2]);
});

const picture = {
  lines: [{ line: 1 }, { line: 2 }, { line: 3 }],
  parts: [["vol", 0], ["constructor", 0]],
  lugs: [["vol.1", 1, 2]],
  wires: [["a--b", 1], ["c--d", 2]],
};

test("a lug is told before the part that it is of, a joint of wires by its lug", () => {
  assert.deepEqual(linesAt(picture, { lug: "vol.1", part: "vol", wire: "a--b" }), { name: "vol.1", lines: [{ line: 2 }, { line: 3 }] });
  assert.deepEqual(linesAt(picture, { part: "vol" }), { name: "vol", lines: [{ line: 1 }] });
  assert.deepEqual(linesAt(picture, { wire: "c--d a--b" }).lines, [{ line: 2 }, { line: 3 }]);
});

test("a name is a word, whatever word it is", () => {
  assert.deepEqual(linesAt(picture, { part: "constructor" }).lines, [{ line: 1 }]);
  assert.equal(linesAt(picture, { part: "toString" }), null);
});
