// What the viewer works out by itself, without a page: places in lists, and levels from letters.
import assert from "node:assert/strict";
import { test } from "node:test";
import { barsOf, decodeLevels, moved, placeOf, restOf, toldOf, turned, wordsOf } from "../../src/WireText/Pages/viewer.mjs";

const data = {
  jacks: [],
  controls: [
    { name: "sel", positions: ["neck", "both", "bridge"], rest: 1, closed: [[0], [0, 1], [1]] },
    { name: "mute", positions: ["up", "down"], rest: 0, closed: [[], [2]] },
  ],
  knobs: [
    { name: "vol", stops: ["0", "5", "10"], rest: 2 },
    { name: "tone", stops: ["0", "4", "5", "10"], rest: 1 },
  ],
  turning: "together",
  labels: ["heard", "level"],
  texts: ["neck", "0.0 dB", "", "silence", "-"],
  curves: ["_gA", ""],
  told: [
    [0, 1, 2, 2, 0, 1, 1],
    [3, 4, 2, 2, 1, 1, 1],
  ],
  live: [[[], [], [], [1]]],
};
const alone = { ...data, turning: "alone" };

test("a level is two letters after the last letter of the alphabet, then differences", () => {
  // 'g' is letter 32: 32 times 64 less 2048 is 0. 'f' is no change, 'g' a tenth up, 'A' 3.1 dB down.
  assert.deepEqual(decodeLevels("_gAfgA"), [0, 0, 1, -30]);
  assert.deepEqual(decodeLevels("_AA_gB"), [-2048, 1]);
  assert.deepEqual(decodeLevels(""), []);
});

test("the last knob changes from each state to the next, the first control last", () => {
  const first = { jack: 0, positions: [0, 0], stops: [0, 0] };
  assert.equal(placeOf(data, first), 0);
  assert.equal(placeOf(data, { ...first, stops: [0, 1] }), 1);
  assert.equal(placeOf(data, { ...first, stops: [1, 0] }), 4);
  assert.equal(placeOf(data, { ...first, positions: [0, 1] }), 12);
  assert.equal(placeOf(data, { ...first, positions: [1, 0] }), 24);
  assert.equal(placeOf(data, { ...first, jack: 1 }), 72);
});

test("places of all states are all places", () => {
  const places = new Set();
  for (const a of [0, 1, 2]) {
    for (const b of [0, 1]) {
      for (const stops of [0, 1, 2].flatMap((vol) => [0, 1, 2, 3].map((tone) => [vol, tone]))) {
        places.add(placeOf(data, { jack: 0, positions: [a, b], stops }));
      }
    }
  }
  assert.deepEqual([...places].sort((one, other) => one - other), Array.from({ length: 72 }, (_, i) => i));
});

test("where knobs turn alone rest comes first, then the other stops of each knob", () => {
  const at = (stops) => placeOf(alone, { jack: 0, positions: [0, 0], stops });
  assert.deepEqual(
    [[2, 1], [0, 1], [1, 1], [2, 0], [2, 2], [2, 3]].map(at),
    [0, 1, 2, 3, 4, 5],
  );
  assert.equal(placeOf(alone, { jack: 0, positions: [0, 1], stops: [2, 1] }), 6);
});

test("a knob that turns alone puts the others to rest", () => {
  const state = { ...restOf(data), stops: [0, 3] };
  assert.deepEqual(turned(data, state, 0, 1).stops, [1, 3]);
  assert.deepEqual(turned(alone, state, 0, 1).stops, [1, 1]);
});

test("a state is said with the knobs that are turned", () => {
  assert.equal(wordsOf(data, restOf(data)), "sel both, mute up");
  assert.equal(wordsOf(data, turned(data, moved(restOf(data), 1, 1), 0, 1)), "sel both, mute down, vol 5");
  assert.equal(wordsOf({ ...data, controls: [] }, { jack: 0, positions: [], stops: [2, 1] }), "everything at rest");
});

test("nothing is changed in place", () => {
  const state = restOf(data);
  moved(state, 0, 2);
  turned(data, state, 0, 0);
  assert.deepEqual(state, restOf(data));
});

test("what is told is looked up; a jack that was not there has nothing", () => {
  const places = new Array(72).fill(1);
  places[placeOf(data, restOf(data))] = 0;
  assert.deepEqual(toldOf(data, places, restOf(data)), {
    cells: ["neck", "0.0 dB"],
    assumed: "",
    unknown: "",
    curve: "_gA",
    least: "",
    most: "",
  });
  assert.equal(toldOf(data, new Array(72).fill(-1), restOf(data)), null);
});

test("closed contacts are drawn, those of the signal apart", () => {
  const bars = barsOf({ ...data, liveAt: new Array(72).fill(0) }, restOf(data));
  assert.deepEqual([...bars.closed], [0, 1]);
  assert.deepEqual([...bars.live], [1]);
});
