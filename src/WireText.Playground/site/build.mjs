// Puts the site together: the bundled page, the published core, the examples, and the script that keeps it all for later.
// usage: node build.mjs CORE OUT   where CORE is the folder _framework of the published project
import { createHash } from "node:crypto";
import { cpSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { brotliCompressSync } from "node:zlib";
import esbuild from "esbuild";

const here = dirname(fileURLToPath(import.meta.url));
const [core, out] = process.argv.slice(2);
const root = join(here, "../../..");
const pages = join(root, "src/WireText/Pages");
const put = (name, content) => writeFileSync(join(out, name), content);

rmSync(out, { recursive: true, force: true });
mkdirSync(join(out, "_framework"), { recursive: true });
for (const name of readdirSync(core).filter((name) => /\.(js|wasm)$/.test(name))) {
  cpSync(join(core, name), join(out, "_framework", name));
}

const bundle = (entry, more = {}) =>
  esbuild.build({
    absWorkingDir: here,
    entryPoints: [entry],
    bundle: true,
    format: "esm",
    target: "es2022",
    minify: true,
    legalComments: "none",
    metafile: true,
    write: false,
    ...more,
  });

const main = await bundle("main.mjs");
put("main.js", main.outputFiles[0].contents);
put("worker.js", (await bundle("worker.mjs", { external: ["./_framework/*"] })).outputFiles[0].contents);
for (const name of ["index.html", "playground.css", "colours.css"]) {
  cpSync(join(here, name), join(out, name));
}
for (const name of ["page.css", "live.css"]) {
  cpSync(join(pages, name), join(out, name));
}

const examples = readdirSync(join(root, "examples"))
  .filter((name) => name.endsWith(".wiring"))
  .sort()
  .map((name) => {
    const text = readFileSync(join(root, "examples", name), "utf8");
    return { title: text.match(/^circuit\s+"(.*?)"/m)?.[1] ?? name, text };
  });
put("examples.json", JSON.stringify(examples));

/** The licences of the packages that are in the bundle, each whole. */
const packages = [...new Set(Object.keys(main.metafile.inputs).map((path) => path.match(/.*node_modules\/(?:@[^/]+\/)?[^/]+/)?.[0]))];
const licences = packages
  .filter((path) => path !== undefined)
  .sort()
  .map((path) => {
    const folder = join(here, path);
    const name = readdirSync(folder).find((file) => /^licen[cs]e/i.test(file));
    return `${path.split("node_modules/").at(-1)}\n\n${readFileSync(join(folder, name), "utf8").trim()}\n`;
  });
const own = readFileSync(join(root, "LICENSE"), "utf8").trim();
put(
  "licences.txt",
  [
    `WireText\n\n${own}\n`,
    "Below _framework: the .NET runtime and its class library (MIT), and Sprache (MIT), as their packages have them.\n",
    ...licences,
  ].join("\n---\n\n"),
);

const all = (folder) =>
  readdirSync(folder, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? all(join(folder, one.name)) : [join(folder, one.name)]));
const files = all(out)
  .map((path) => relative(out, path).replaceAll("\\", "/"))
  .sort();
const hash = createHash("sha256");
for (const file of files) {
  hash.update(file).update(readFileSync(join(out, file)));
}
const kept = ["./", ...files.filter((file) => file !== "index.html" && file !== "licences.txt")];
put(
  "offline.js",
  readFileSync(join(here, "offline.mjs"), "utf8")
    .replace('"@version"', JSON.stringify(`wiretext-${hash.digest("hex").slice(0, 16)}`))
    .replace('["@files"]', JSON.stringify(kept)),
);

// Beside each file the same, compressed, for hosts that hand such files out.
const packed = [...files, "offline.js"].map((file) => {
  const bytes = brotliCompressSync(readFileSync(join(out, file)));
  put(`${file}.br`, bytes);
  return [file, bytes.length];
});
for (const [file, bytes] of packed) {
  console.log(`${String(bytes).padStart(9)}  ${file}`);
}
console.log(`${String(packed.reduce((sum, [, bytes]) => sum + bytes, 0)).padStart(9)}  bytes in all, compressed with brotli`);
