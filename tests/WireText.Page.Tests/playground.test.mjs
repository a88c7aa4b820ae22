// What the playground works out by itself: links, the guide, and which of many texts is worked on.
import assert from "node:assert/strict";
import { test } from "node:test";
import { createLatest } from "../../src/WireText.Playground/site/core.mjs";
import { steps } from "../../src/WireText.Playground/site/guide.mjs";
import { linkOf, mostLetters, mostPacked, textOf } from "../../src/WireText.Playground/site/link.mjs";

test("a link carries any text, letter for letter", async () => {
  for (const text of ["", "pickup neck single-coil\n", "Ω µ → 🎸 \u2028\r\n", "<script>", "#text="]) {
    assert.equal(await textOf(await linkOf(text)), text);
  }
});

test("a link has letters alone that stay as they are in an address", async () => {
  const text = Array.from({ length: 2000 }, (_, i) => String.fromCharCode(33 + ((i * 7919) % 90))).join("");
  assert.match(await linkOf(text), /^#text=[A-Za-z0-9_-]+$/);
});

test("a text that is too long has no link", async () => {
  assert.notEqual(await linkOf("x".repeat(mostLetters)), null);
  assert.equal(await linkOf("x".repeat(mostLetters + 1)), null);
});

test("what is no link is no text", async () => {
  for (const link of ["", "#", "#positions", "#text=", "#text=%%%", "#text=AAAA", `#text=${"A".repeat(mostPacked)}`]) {
    assert.equal(await textOf(link), null, link);
  }
});

test("a few letters that unpack to very much are no text", async () => {
  const stream = new Blob(["x".repeat(20_000_000)]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  const packed = Buffer.from(await new Response(stream).arrayBuffer()).toString("base64url");
  assert.ok(packed.length < mostPacked);
  assert.equal(await textOf(`#text=${packed}`), null);
});

test("each step of the guide writes what it shows", () => {
  let text = "";
  for (const step of steps) {
    text = step.write(text);
    for (const line of step.shown) {
      assert.ok(text.split("\n").includes(line), `${step.title}: ${line}`);
    }
  }
  assert.equal(new Set(steps.map((step) => step.title)).size, steps.length);
});

test("no step of the guide is done before it is begun", () => {
  const right = { trouble: null, findings: [] };
  let text = "";
  for (const step of steps.filter(({ title }) => !["Ground it", "Mend it"].includes(title))) {
    assert.equal(step.isDone({ text, picture: right }), false, step.title);
    text = step.title === "Break it" ? text : step.write(text);
  }
});

test("of what comes while something is worked on, the last alone is worked on", async () => {
  const done = [];
  let go;
  const give = createLatest(async (value) => {
    done.push(value);
    await new Promise((resolve) => (go = resolve));
  });
  const all = [give(1), give(2), give(3)];
  go();
  await new Promise((resolve) => setTimeout(resolve));
  go();
  await Promise.all(all);
  assert.deepEqual(done, [1, 3]);
});
