// Builds wiretext.vsix: a package for the editor, with everything that it needs. Needs what `npm ci` has installed, and no network.
import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import esbuild from 'esbuild';
import { zipSync } from 'fflate';

const here = dirname(fileURLToPath(import.meta.url));
const target = process.argv[2] ?? join(here, 'out', 'wiretext.vsix');
const version = readFileSync(join(here, '../../Directory.Build.props'), 'utf8').match(/<Version>(.*)<\/Version>/)[1];
const manifest = { ...JSON.parse(readFileSync(join(here, 'package.json'), 'utf8')), version };
const read = (name) => readFileSync(join(here, name));

const bundled = await esbuild.build({
  absWorkingDir: here,
  entryPoints: [join(here, 'client.js')],
  bundle: true,
  external: ['vscode'],
  format: 'cjs',
  platform: 'node',
  target: 'node20',
  legalComments: 'none',
  metafile: true,
  write: false,
});

/** The licences of the packages that are in the bundle, each whole. */
const licences = [...new Set(Object.keys(bundled.metafile.inputs).map((path) => path.match(/.*node_modules\/(?:@[^/]+\/)?[^/]+/)?.[0]))]
  .filter((path) => path !== undefined)
  .sort()
  .map((path) => {
    const folder = join(here, path);
    const name = readdirSync(folder).find((file) => /^licen[cs]e/i.test(file));
    return `${path.split('node_modules/').at(-1)}\n\n${readFileSync(join(folder, name), 'utf8').trim()}\n`;
  });

const { scripts, devDependencies, private: kept, ...shipped } = manifest;
const files = {
  'package.json': Buffer.from(`${JSON.stringify(shipped, null, 2)}\n`),
  'client.js': bundled.outputFiles[0].contents,
  'server.js': read('server.js'),
  'wiretext.tmLanguage.json': read('../wiretext.tmLanguage.json'),
  'language-configuration.json': read('language-configuration.json'),
  'snippets.json': read('snippets.json'),
  'README.md': read('README.md'),
  'LICENSE.txt': read('../../LICENSE'),
  'NOTICES.txt': Buffer.from(`client.js holds code of these packages.\n\n${licences.join('\n---\n\n')}`),
};

const contentTypes = `<?xml version="1.0" encoding="utf-8"?>
<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">
<Default Extension=".json" ContentType="application/json"/>
<Default Extension=".js" ContentType="application/javascript"/>
<Default Extension=".md" ContentType="text/markdown"/>
<Default Extension=".txt" ContentType="text/plain"/>
<Default Extension=".vsixmanifest" ContentType="text/xml"/>
</Types>
`;

const vsixManifest = `<?xml version="1.0" encoding="utf-8"?>
<PackageManifest Version="2.0.0" xmlns="http://schemas.microsoft.com/developer/vsx-schema/2011">
<Metadata>
<Identity Language="en-US" Id="${manifest.name}" Version="${manifest.version}" Publisher="${manifest.publisher}"/>
<DisplayName>${manifest.displayName}</DisplayName>
<Description xml:space="preserve">${manifest.description}</Description>
<Categories>${manifest.categories.join(',')}</Categories>
<Properties>
<Property Id="Microsoft.VisualStudio.Code.Engine" Value="${manifest.engines.vscode}"/>
</Properties>
<License>extension/LICENSE.txt</License>
</Metadata>
<Installation><InstallationTarget Id="Microsoft.VisualStudio.Code"/></Installation>
<Dependencies/>
<Assets>
<Asset Type="Microsoft.VisualStudio.Code.Manifest" Path="extension/package.json" Addressable="true"/>
<Asset Type="Microsoft.VisualStudio.Services.Content.Details" Path="extension/README.md" Addressable="true"/>
<Asset Type="Microsoft.VisualStudio.Services.Content.License" Path="extension/LICENSE.txt" Addressable="true"/>
</Assets>
</PackageManifest>
`;

const entries = {
  'extension.vsixmanifest': Buffer.from(vsixManifest),
  '[Content_Types].xml': Buffer.from(contentTypes),
  ...Object.fromEntries(Object.entries(files).map(([name, bytes]) => [`extension/${name}`, bytes])),
};

// The same package whenever it is built: no entry has a time of its own.
mkdirSync(dirname(target), { recursive: true });
writeFileSync(target, zipSync(entries, { mtime: new Date(1980, 0, 1) }));
console.log(target);
