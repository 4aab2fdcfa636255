// Bundles the program into dist/. Splitting keeps Ink, React and the colour libraries out of the chunks
// that `--version` and the plain commands load; see src/commands/README.md, "Start-up".
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  chmodSync,
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';

const { version } = JSON.parse(readFileSync(new URL('./package.json', import.meta.url), 'utf8'));

/** What the program is made from. */
const SOURCES = [
  'build.config.mjs',
  'package-lock.json',
  'package.json',
  'tsconfig.json',
  'src',
  'exercises',
];
const STAMP = 'dist/.made-from';

/** Names, sizes and times of all that the build is made from. */
function stamp() {
  const hash = createHash('sha256').update(process.version);
  const add = (path) => {
    const found = statSync(path, { throwIfNoEntry: false });
    if (found?.isDirectory()) for (const name of readdirSync(path).sort()) add(join(path, name));
    else if (found) hash.update(`${path} ${found.size} ${found.mtimeMs}\n`);
  };
  SOURCES.forEach(add);
  return hash.digest('hex');
}

/** What the licence file of a package says, where its description says nothing. */
const BY_FILE = { 'png-js': 'MIT' };

/** Terms under which a package may be put into the program. What asks that its source be told has that source in the notice. */
const TERMS = new Set([
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'MPL-2.0',
  '0BSD',
  'Unlicense',
]);

/**
 * The terms of every package that a part of is in the bundle, with the whole of each licence.
 * @param inputs paths of the files that were bundled
 * @throws where a package has no licence or another one
 */
function notice(inputs) {
  const folders = new Set();
  for (const path of inputs) {
    const [, folder] = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path) ?? [];
    if (folder !== undefined) folders.add(folder);
  }
  const entries = [...folders].map((folder) => {
    const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
    const { name, version, license = BY_FILE[name], repository, author } = about;
    if (!TERMS.has(license))
      throw new Error(`${name}: its licence is ${license}, which the build does not know`);
    const file = readdirSync(folder).find((each) => /^(licen[cs]e|copying)(\.|-|$)/i.test(each));
    const text =
      file === undefined
        ? `The package has no file with the text of its licence. Author: ${author?.name ?? author ?? 'see its repository'}.`
        : readFileSync(join(folder, file), 'utf8').trim();
    const source = license === 'MPL-2.0' ? `\nSource: ${repository?.url ?? repository}\n` : '';
    return { name, text: `${name} ${version} (${license})\n${source}\n${text}\n` };
  });
  const sorted = entries.sort((one, other) => (one.name < other.name ? -1 : 1));
  return [
    'Mudlark holds parts of these packages, each under its own terms.\n',
    'Not held, but installed beside it where it can be, for photographs alone: sharp (Apache-2.0), which loads',
    'libvips (LGPL-3.0-or-later) as a library of its own; both come from npm with their own licences.\n',
    'The font of printed pages is Noto Sans (OFL-1.1): fonts/LICENSE. Data of the CIE and others: src/SOURCES.md.\n',
    ...sorted.map(({ text }) => `${'-'.repeat(80)}\n${text}`),
  ].join('\n');
}

const now = stamp();
// `npm start` builds only what has changed since.
if (process.argv.includes('--if-changed') && existsSync(STAMP) && readFileSync(STAMP, 'utf8') === now)
  process.exit(0);

rmSync(new URL('./dist', import.meta.url), { recursive: true, force: true });

/**
 * string-width, and Ink with it, asks for Unicode's tables when it is loaded: a fifth of the time to the first frame. What is narrow at
 * sight is counted without them; the package itself is loaded for the first text that is not.
 */
const narrowFirst = {
  name: 'narrow-first',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^string-width$/ }, ({ pluginData, importer }) =>
      pluginData === 'whole' || importer.startsWith('narrow-first')
        ? undefined
        : { path: 'string-width', namespace: 'narrow-first' },
    );
    onLoad({ filter: /.*/, namespace: 'narrow-first' }, () => ({
      contents: `
        import { isNarrow } from './src/text/narrow.ts';
        let whole;
        export default function stringWidth(text, options) {
          if (typeof text === 'string' && options === undefined) {
            const plain = text.includes('\\u001b') ? text.replace(/\\u001b\\[[0-9;]*m/g, '') : text;
            if (isNarrow(plain)) return plain.length;
          }
          whole ??= require('string-width').default;
          return whole(text, options);
        }`,
      loader: 'js',
      resolveDir: import.meta.dirname,
      pluginData: 'whole',
    }));
  },
};

/** Bundles entry points into a folder, split into chunks. */
const bundle = (entryPoints, outdir) =>
  build({
    entryPoints,
    outdir,
    metafile: true,
    plugins: [narrowFirst],
    bundle: true,
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    jsx: 'automatic',
    // Names stay: they are what a report of a fault shows.
    minifySyntax: true,
    minifyWhitespace: true,
    legalComments: 'none',
    external: ['react-devtools-core', '@lydell/node-pty', '@xterm/headless', 'sharp'],
    define: {
      'process.env.NODE_ENV': '"production"',
      __MUDLARK_VERSION__: JSON.stringify(version),
      // Nothing here speaks to a network. yoga-layout asks whether there is a fetch, and the asking alone loads Node's HTTP client.
      fetch: 'undefined',
    },
    banner: {
      js: "#!/usr/bin/env node\nimport { createRequire as __createRequire } from 'node:module';\nconst require = __createRequire(import.meta.url);",
    },
    logLevel: 'warning',
  });

const { metafile } = await bundle({ cli: 'src/cli.ts' }, 'dist');
// What the program's makers run, apart from the program: the package leaves it out.
await bundle(
  {
    'compile-exercises': 'src/files/compile-exercises.ts',
    'rebuild-pigments': 'src/commands/rebuild-pigments.ts',
    'refit-pigments': 'src/commands/refit-pigments.ts',
    ...(existsSync('tests/bench/main.ts')
      ? {
          bench: 'tests/bench/main.ts',
          kill: 'tests/bench/kill.ts',
          keys: 'tests/bench/keys.ts',
          'painting-child': 'tests/bench/painting-child.ts',
        }
      : {}),
  },
  'dist/tools',
);
chmodSync('dist/cli.js', 0o755);
const compiled = execFileSync(process.execPath, ['dist/tools/compile-exercises.js'], { maxBuffer: 1 << 28 });
const { shipped, pictures } = JSON.parse(compiled);
writeFileSync('dist/exercises.json', JSON.stringify(shipped));
writeFileSync('dist/pictures.json', JSON.stringify(pictures));
// The font of printed pages, with its licence: it is put into every PDF.
const FONT = 'node_modules/@expo-google-fonts/noto-sans';
mkdirSync('dist/fonts');
copyFileSync(`${FONT}/400Regular/NotoSans_400Regular.ttf`, 'dist/fonts/regular.ttf');
copyFileSync(`${FONT}/700Bold/NotoSans_700Bold.ttf`, 'dist/fonts/bold.ttf');
copyFileSync(`${FONT}/LICENSE_FONT`, 'dist/fonts/LICENSE');
writeFileSync('dist/mudlark.1', execFileSync(process.execPath, ['dist/cli.js', 'manual']));
writeFileSync('dist/NOTICE', notice(Object.keys(metafile.inputs)));
writeFileSync(STAMP, now);
