// Bundles the program into dist/. Splitting keeps Ink, React and the colour libraries out of the chunks
// that `--version` and the plain commands load; see DEVELOPERS.md, "Start-up".
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

const now = stamp();
// `npm start` builds only what has changed since.
if (process.argv.includes('--if-changed') && existsSync(STAMP) && readFileSync(STAMP, 'utf8') === now)
  process.exit(0);

rmSync(new URL('./dist', import.meta.url), { recursive: true, force: true });

const entryPoints = {
  cli: 'src/cli.ts',
  'compile-exercises': 'src/files/compile-exercises.ts',
  'rebuild-pigments': 'src/commands/rebuild-pigments.ts',
  'refit-pigments': 'src/commands/refit-pigments.ts',
};
// Run by hand: the benchmark with its child, and the kill trial.
if (existsSync('tests/bench/main.ts')) {
  entryPoints['bench'] = 'tests/bench/main.ts';
  entryPoints['kill'] = 'tests/bench/kill.ts';
  entryPoints['painting-child'] = 'tests/bench/painting-child.ts';
}

await build({
  entryPoints,
  outdir: 'dist',
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
chmodSync('dist/cli.js', 0o755);
const compiled = execFileSync(process.execPath, ['dist/compile-exercises.js'], { maxBuffer: 1 << 28 });
const { shipped, pictures } = JSON.parse(compiled);
writeFileSync('dist/exercises.json', JSON.stringify(shipped));
writeFileSync('dist/pictures.json', JSON.stringify(pictures));
// The font of printed pages, with its licence: it is put into every PDF.
const FONT = 'node_modules/@expo-google-fonts/noto-sans';
mkdirSync('dist/fonts');
copyFileSync(`${FONT}/400Regular/NotoSans_400Regular.ttf`, 'dist/fonts/regular.ttf');
copyFileSync(`${FONT}/700Bold/NotoSans_700Bold.ttf`, 'dist/fonts/bold.ttf');
copyFileSync(`${FONT}/LICENSE_FONT`, 'dist/fonts/LICENSE');
writeFileSync(STAMP, now);
