// Lists what is handed out and what is in it: a table for people, and an SPDX 2.3 document for programs.
// usage: node .ci/inside.mjs OUT COMMIT SECONDS [RUNTIME…]
//   OUT has the files; SECONDS is when COMMIT was made; a RUNTIME is a runtime package that is built in, which no lock file has
// Reads the lock files, and the licence that each package itself states in its manifest in the restored cache.
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const [out, commit, seconds, ...runtimes] = process.argv.slice(2);
const cache = process.env.NUGET_PACKAGES ?? join(homedir(), '.nuget', 'packages');
const read = (...path) => readFileSync(join(root, ...path), 'utf8');
const version = read('Directory.Build.props').match(/<Version>(.*)<\/Version>/)[1];

/** What may be handed out with the program. Another licence stops the build until somebody has read what it asks. */
const allowed = ['0BSD', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', 'BlueOak-1.0.0', 'ISC', 'MIT', 'MS-PL', 'OFL-1.1'];

/** What works at build time alone: nothing of it is in what is handed out. */
const buildTools = /^(Meziantou\.Analyzer|Microsoft\.CodeAnalysis\..*|Microsoft\.NET\.ILLink\.Tasks|Microsoft\.NET\.Sdk\.WebAssembly\.Pack|esbuild|@esbuild\/.*|fflate)$/;

/** Whose manifest states no expression, and where the licence stands that was read instead. */
const statedElsewhere = { 'Sprache/2.3.1': ['MIT', 'the text that its manifest names'] };

/** What is taken out of a package whose own licence is another. */
const takenOut = [{ name: 'Inter', version: '3.019', licence: 'OFL-1.1', from: 'Avalonia.Fonts.Inter', kind: 'nuget', where: 'the name table of the font' }];

const licenceOf = (name, number) => {
  const elsewhere = statedElsewhere[`${name}/${number}`];
  if (elsewhere) {
    return elsewhere;
  }
  const manifest = join(cache, name.toLowerCase(), number, `${name.toLowerCase()}.nuspec`);
  if (!existsSync(manifest)) {
    throw new Error(`${name} ${number} is in a lock file and not restored: run dotnet restore first`);
  }
  const stated = readFileSync(manifest, 'utf8').match(/<license type="expression">(.*?)<\/license>/)?.[1];
  if (!stated) {
    throw new Error(`${name} ${number} states no licence expression: read its licence and write it into .ci/inside.mjs`);
  }
  return [stated, 'its manifest'];
};

/** The packages of one lock file of .NET. */
const nuget = (project) =>
  Object.values(JSON.parse(read('src', project, 'packages.lock.json')).dependencies)
    .flatMap((packages) => Object.entries(packages))
    .filter(([, one]) => one.type !== 'Project')
    .map(([name, one]) => {
      const [licence, where] = licenceOf(name, one.resolved);
      return { name, version: one.resolved, licence, where, kind: 'nuget' };
    });

/** The runtimes that are built in are of the same version as the compiler in the lock file. */
const runtimeVersion = JSON.parse(read('src', 'WireText.Cli', 'packages.lock.json')).dependencies['net10.0']['Microsoft.DotNet.ILCompiler'].resolved;
const builtIn = runtimes.map((name) => {
  const [licence, where] = licenceOf(name, runtimeVersion);
  return { name, version: runtimeVersion, licence, where, kind: 'nuget' };
});

/** The packages of one lock file of npm. */
const npm = (...folder) =>
  Object.entries(JSON.parse(read(...folder, 'package-lock.json')).packages)
    .filter(([path]) => path !== '')
    .map(([path, one]) => ({ name: path.split('node_modules/').at(-1), version: one.version, licence: one.license, where: 'the lock file', kind: 'npm', isOptional: one.optional === true }));

const sources = {
  'the program': nuget('WireText.Cli'),
  'the library': nuget('WireText'),
  'the playground': [...nuget('WireText.Playground'), ...npm('src', 'WireText.Playground', 'site')],
  'the editor package': npm('grammar', 'vscode'),
};
sources['the program'].push(...takenOut, ...builtIn.filter((one) => !one.name.endsWith('wasm')));
sources['the playground'].push(...builtIn.filter((one) => one.name.endsWith('wasm')));

/** Each package once, with all that it is in. */
const packages = new Map();
for (const [where, list] of Object.entries(sources)) {
  for (const one of list) {
    const key = `${one.kind}/${one.name}/${one.version}`;
    const known = packages.get(key) ?? { ...one, isTool: buildTools.test(one.name), users: new Set() };
    known.users.add(where);
    packages.set(key, known);
  }
}
const order = (a, b) => (a < b ? -1 : a > b ? 1 : 0);
const listed = [...packages.entries()].sort(([a], [b]) => order(a, b)).map(([, one]) => one);
for (const one of listed) {
  const words = (one.licence ?? 'none').split(/[() ]+/).filter((word) => word !== '' && word !== 'AND' && word !== 'OR' && word !== 'WITH');
  const unknown = words.filter((word) => !allowed.includes(word));
  if (unknown.length > 0) {
    throw new Error(`${one.name} ${one.version} is under ${one.licence}: read what ${unknown} asks, say it in docs/notices.md, and add it to .ci/inside.mjs`);
  }
}

const files = readdirSync(out)
  .filter((name) => !/^(SHA256SUMS|INSIDE\.md|.*\.spdx\.json)$/.test(name))
  .sort(order)
  .map((name) => ({ name, size: statSync(join(out, name)).size, sum: createHash('sha256').update(readFileSync(join(out, name))).digest('hex') }));

// SPDX 2.3: identifiers are letters, digits, dots and dashes (clause 7.2), packages of registries are named by package URLs (7.21).
const idOf = (text) => `SPDXRef-${text.replaceAll(/[^A-Za-z0-9.-]/g, '-')}`;
const ours = files.map((one) => ({
  name: one.name,
  SPDXID: idOf(`File-${one.name}`),
  versionInfo: version,
  downloadLocation: 'NOASSERTION',
  filesAnalyzed: false,
  licenseConcluded: 'NOASSERTION',
  licenseDeclared: 'MIT',
  copyrightText: 'Copyright (c) 2026 The WireText authors',
  checksums: [{ algorithm: 'SHA256', checksumValue: one.sum }],
}));
const source = {
  name: 'WireText',
  SPDXID: 'SPDXRef-WireText',
  versionInfo: version,
  downloadLocation: 'NOASSERTION',
  filesAnalyzed: false,
  licenseConcluded: 'MIT',
  licenseDeclared: 'MIT',
  copyrightText: 'Copyright (c) 2026 The WireText authors',
  sourceInfo: `commit ${commit}`,
};
const theirs = listed.map((one) => ({
  name: one.name,
  SPDXID: idOf(`${one.kind}-${one.name}-${one.version}`),
  versionInfo: one.version,
  downloadLocation: 'NOASSERTION',
  filesAnalyzed: false,
  licenseConcluded: 'NOASSERTION',
  licenseDeclared: one.licence,
  licenseComments: `as stated by ${one.where}`,
  copyrightText: 'NOASSERTION',
  ...(one.from
    ? { comment: `taken out of ${one.from}` }
    : {
        externalRefs: [
          { referenceCategory: 'PACKAGE-MANAGER', referenceType: 'purl', referenceLocator: `pkg:${one.kind}/${one.name.replace('@', '%40')}@${one.version}` },
        ],
      }),
}));
const relations = [
  { spdxElementId: 'SPDXRef-DOCUMENT', relationshipType: 'DESCRIBES', relatedSpdxElement: source.SPDXID },
  ...ours.map((one) => ({ spdxElementId: one.SPDXID, relationshipType: 'GENERATED_FROM', relatedSpdxElement: source.SPDXID })),
  ...theirs.map((one, i) =>
    listed[i].isTool
      ? { spdxElementId: one.SPDXID, relationshipType: 'BUILD_TOOL_OF', relatedSpdxElement: source.SPDXID }
      : { spdxElementId: source.SPDXID, relationshipType: 'DEPENDS_ON', relatedSpdxElement: one.SPDXID },
  ),
];
const bill = {
  spdxVersion: 'SPDX-2.3',
  dataLicense: 'CC0-1.0',
  SPDXID: 'SPDXRef-DOCUMENT',
  name: `WireText ${version}`,
  documentNamespace: `https://spdx.org/spdxdocs/wiretext-${version}-${commit}`,
  creationInfo: { created: new Date(seconds * 1000).toISOString().replace('.000', ''), creators: ['Tool: .ci/inside.mjs', 'Organization: The WireText authors'] },
  packages: [source, ...ours, ...theirs],
  relationships: relations,
};
writeFileSync(join(out, `wiretext-${version}.spdx.json`), `${JSON.stringify(bill, null, 2)}\n`);

const grouped = (number) => String(number).replaceAll(/\B(?=(\d{3})+$)/g, ',');
const row = (one) => `| ${one.name} | ${one.version} | ${one.licence} | ${[...one.users].join(', ')} |`;
const table = (list) => ['| package | version | licence | in |', '| --- | --- | --- | --- |', ...list.map(row)];
writeFileSync(
  join(out, 'INSIDE.md'),
  [
    `# WireText ${version}`,
    '',
    `Built from commit ${commit}. SHA256SUMS has the checksums, wiretext-${version}.spdx.json the same list for programs (SPDX 2.3).`,
    '',
    '| file | bytes |',
    '| --- | ---: |',
    ...files.map((one) => `| ${one.name} | ${grouped(one.size)} |`),
    '',
    '## What it stands on',
    '',
    'Licences are SPDX expressions, as the packages state them. What they ask is in NOTICES.md, beside the program.',
    '',
    ...table(listed.filter((one) => !one.isTool)),
    '',
    '## What built it',
    '',
    'Nothing of these is in the files. Of tools that come once for each machine, the other list has every one.',
    '',
    ...table(listed.filter((one) => one.isTool && !one.isOptional)),
    '',
  ].join('\n'),
);
console.log(`${files.length} files, ${listed.filter((one) => !one.isTool).length} packages in them`);
