// Packs a folder as a zip whose bytes follow from its files alone: sorted, and no entry with a time of its own.
// usage: node .ci/zip.mjs FOLDER OUT.zip   Needs what `npm ci --prefix grammar/vscode` has installed.
import { createRequire } from 'node:module';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { basename, join, relative, resolve } from 'node:path';

const { zipSync } = createRequire(new URL('../grammar/vscode/build.mjs', import.meta.url))('fflate');
const [folder, out] = process.argv.slice(2);
const files = readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter((one) => one.isFile())
  .map((one) => relative(folder, join(one.parentPath, one.name)).replaceAll('\\', '/'))
  .sort();
const entries = Object.fromEntries(files.map((name) => [`${basename(resolve(folder))}/${name}`, readFileSync(join(folder, name))]));
writeFileSync(out, zipSync(entries, { mtime: new Date(1980, 0, 1) }));
