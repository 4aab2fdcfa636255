/** Folders and programs for the profile tests. */
import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterEach, beforeEach } from 'vitest';
import type { HistoryEntry } from '../../src/practice/index.js';

export const START = Date.UTC(2026, 2, 2, 18);
export const DAY = 86_400_000;

/** An answer, numbered, so that no two are the same. */
export function answerNo(n: number, more: Partial<HistoryEntry> = {}): HistoryEntry {
  return {
    v: 1,
    at: new Date(START + n * 60_000).toISOString(),
    drill: `drill-${n % 40}`,
    family: `family-${n % 15}`,
    level: 1 + (n % 5),
    answer: { second: 'ultramarine', amount: '1:4' },
    mark: n % 4 === 0 ? 20 : 85,
    verdict: n % 4 === 0 ? 'off' : 'good',
    value: { before: 3.1, after: n % 4 === 0 ? 5.2 : 7, asked: [6.5, 7.5] },
    chroma: { before: 48.5, after: 36.2, kept: 0.746, asked: [30, 60] },
    hints: 0,
    try: 1,
    set: `set-${Math.floor(n / 12)}`,
    engine: '0.1.0',
    ...more,
  };
}

/** A fresh home for each test, named in the environment; the old environment comes back afterwards. */
export function freshHome(): { readonly path: string } {
  const home = { path: '' };
  const before = { ...process.env };
  beforeEach(() => {
    home.path = mkdtempSync(join(tmpdir(), 'mudlark-profile-'));
    for (const name of Object.keys(process.env)) {
      if (/^(XDG_|MUDLARK_|NO_COLOR$|FORCE_COLOR$|INK_)/.test(name)) delete process.env[name];
    }
    process.env['HOME'] = home.path;
  });
  afterEach(() => {
    for (const name of Object.keys(process.env)) if (!(name in before)) delete process.env[name];
    Object.assign(process.env, before);
    rmSync(home.path, { recursive: true, force: true });
  });
  return home;
}

/** What may lie in a record's place, each laid there. */
export const IN_PLACE: Readonly<Record<string, (record: string) => void>> = {
  'a folder': (record) => mkdirSync(record),
  'a pipe that nobody reads': (record) => execFileSync('mkfifo', [record]),
  'a device that swallows all': (record) => symlinkSync('/dev/null', record),
  'a device that is full': (record) => symlinkSync('/dev/full', record),
  'links that lead in a circle': (record) => symlinkSync(record, record),
  'a socket': (record) => {
    // Killed before it can clean up, so that the socket stays. By its name in its folder: a path takes about a hundred signs (sockaddr_un).
    const name = JSON.stringify(basename(record));
    const program = `require('node:net').createServer().listen(${name}, () => process.kill(process.pid, 'SIGKILL'))`;
    spawnSync(process.execPath, ['-e', program], { stdio: 'ignore', cwd: dirname(record) });
  },
};

/** Bundles a program of this folder to one file that node can run. */
export async function bundled(name: string, folder: string): Promise<string> {
  const outfile = join(folder, name.replace(/\.ts$/, '.mjs'));
  await build({
    entryPoints: [fileURLToPath(new URL(name, import.meta.url))],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    logLevel: 'error',
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module';\nconst require = __createRequire(import.meta.url);",
    },
  });
  return outfile;
}

/** Answers one after the other. */
export const many = (count: number, from = 0): HistoryEntry[] =>
  Array.from({ length: count }, (_, i) => answerNo(from + i));
