// Bundles the program into dist/. Splitting keeps Ink, React and the colour libraries out of the chunks
// that `--version` and the plain commands load; see DEVELOPERS.md, "Start-up".
import { execFileSync } from 'node:child_process';
import { chmodSync, existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { build } from 'esbuild';

const { version } = JSON.parse(readFileSync(new URL('./package.json', import.meta.url), 'utf8'));

rmSync(new URL('./dist', import.meta.url), { recursive: true, force: true });

const entryPoints = {
  cli: 'src/cli.ts',
  'compile-exercises': 'src/files/compile-exercises.ts',
  'rebuild-pigments': 'src/commands/rebuild-pigments.ts',
  'refit-pigments': 'src/commands/refit-pigments.ts',
};
// Run by hand: the benchmark and the kill trial.
if (existsSync('tests/bench/main.ts')) {
  entryPoints['bench'] = 'tests/bench/main.ts';
  entryPoints['kill'] = 'tests/bench/kill.ts';
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
  external: ['react-devtools-core', '@lydell/node-pty', '@xterm/headless'],
  define: { 'process.env.NODE_ENV': '"production"', __MUDLARK_VERSION__: JSON.stringify(version) },
  banner: {
    js: "#!/usr/bin/env node\nimport { createRequire as __createRequire } from 'node:module';\nconst require = __createRequire(import.meta.url);",
  },
  logLevel: 'warning',
});
chmodSync('dist/cli.js', 0o755);
const compiled = execFileSync(process.execPath, ['dist/compile-exercises.js'], { maxBuffer: 1 << 28 });
const { drills, pictures } = JSON.parse(compiled);
writeFileSync('dist/exercises.json', JSON.stringify(drills));
writeFileSync('dist/pictures.json', JSON.stringify(pictures));
