// A layout case as input for other layout programs, and a run of one of them. Used by bench-layout.sh.
//
//   node bench-layout.mjs dot CASE.json             the case for Graphviz, on standard output
//   node bench-layout.mjs elk CASE.json [RUNS]      lays it out with elkjs, RUNS times in one process; prints the
//                                                   milliseconds of the fastest run
import { readFileSync } from "node:fs";

const [, , what, path, runs = "1"] = process.argv;
const graph = JSON.parse(readFileSync(path, "utf8"));

/** The upright box of a part, lugs included, in its own frame. */
function boxOf(part) {
  const xs = part.lugs.map((lug) => lug.x);
  const ys = part.lugs.map((lug) => lug.y);
  for (const shape of part.body) {
    if (shape.shape === "rect") {
      xs.push(shape.x, shape.x + shape.w);
      ys.push(shape.y, shape.y + shape.h);
    } else {
      xs.push(shape.cx - shape.r, shape.cx + shape.r);
      ys.push(shape.cy - shape.r, shape.cy + shape.r);
    }
  }
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}

const partOf = (end) => end.slice(0, end.indexOf("."));
const ends = graph.wires.map((wire) => [wire.from, wire.to]);

if (what === "dot") {
  // Graphviz has no lugs for straight-angled lines: parts are boxes of the right size at the right place.
  console.log("graph wiring {\n  splines=ortho; node [shape=box, fixedsize=true]; inputscale=72;");
  for (const part of graph.parts) {
    const { width, height } = boxOf(part);
    console.log(
      `  "${part.id}" [width=${width / 72}, height=${height / 72}, pos="${part.place.x},${-part.place.y}!"];`
    );
  }
  for (const [from, to] of ends) {
    console.log(`  "${partOf(from)}" -- "${partOf(to)}";`);
  }
  console.log("}");
} else {
  const { default: ELK } = await import("elkjs");
  const elk = new ELK();
  const problem = () => ({
    id: "root",
    layoutOptions: { "elk.algorithm": "layered", "elk.edgeRouting": "ORTHOGONAL" },
    children: graph.parts.map((part) => {
      const { left, top, width, height } = boxOf(part);
      const surfaces = part.surfaces.map((surface) => ({ id: `${part.id}.${surface.id}`, width: 2, height: 2 }));
      return {
        id: part.id,
        width,
        height,
        layoutOptions: { "elk.portConstraints": surfaces.length ? "FREE" : "FIXED_POS" },
        ports: [
          ...part.lugs.map((lug) => ({ id: `${part.id}.${lug.id}`, x: lug.x - left, y: lug.y - top, width: 2, height: 2 })),
          ...surfaces,
        ],
      };
    }),
    edges: ends.map(([from, to], i) => ({ id: `w${i}`, sources: [from], targets: [to] })),
  });
  let fastest = Infinity;
  for (let run = 0; run < Number(runs); run++) {
    const input = problem();
    const start = performance.now();
    await elk.layout(input);
    fastest = Math.min(fastest, performance.now() - start);
  }
  console.log(fastest.toFixed(1));
}
