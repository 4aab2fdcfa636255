/** A fault put into the built program: it is reported, the terminal is as it was, and the record holds what it held. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { cleanEnv, mudlark } from '../program/run-cli.js';
import { closeAll, Terminal } from './terminal.js';

afterEach(closeAll);

/** Runs a piece of code in the program before anything of its own. */
const injected = (code: string): Record<string, string> => ({
  NODE_OPTIONS: `--import data:text/javascript,${encodeURIComponent(code)}`,
});

const REPORTED = /^mudlark: this is a fault of the program, please report it: injected\n/;

const filesIn = (home: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(home, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((path) => [path, readFileSync(path, 'utf8')]),
  );

describe('a fault of the program', () => {
  it('while the settings are read is no damaged file: nothing is moved aside', () => {
    const env = cleanEnv();
    expect(mudlark(['settings', 'set', 'palette', 'twelve'], env).code).toBe(0);
    const before = filesIn(env['HOME'] ?? '');
    const stumbles =
      "const p = JSON.parse; JSON.parse = (text, ...more) => { if (text.includes('twelve')) throw new TypeError('injected'); return p(text, ...more); }";
    const { code, out, err } = mudlark(['settings'], { ...env, ...injected(stumbles) });
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toMatch(REPORTED);
    expect(filesIn(env['HOME'] ?? '')).toEqual(before);
  });

  it('while a file is opened is not told as the file being bad', () => {
    const stumbles =
      "import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module'; fs.fstatSync = () => { throw new RangeError('injected'); }; syncBuiltinESMExports();";
    const { code, err } = mudlark(['record', 'import', 'package.json'], {
      ...cleanEnv(),
      ...injected(stumbles),
    });
    expect(code).toBe(1);
    expect(err).toMatch(REPORTED);
  });

  it('in an event puts the terminal back and is reported on the normal screen', async () => {
    const later =
      "const t = setInterval(() => { if (globalThis.inside) { clearInterval(t); throw new RangeError('injected'); } }, 20).unref(); const w = process.stdout.write; process.stdout.write = function (text, ...more) { if (String(text).includes('Mixing bench')) globalThis.inside = true; return w.call(this, text, ...more); };";
    const terminal = new Terminal({ env: { ...cleanEnv(), ...injected(later) } });
    expect(await terminal.ended()).toEqual({ code: 1, echo: true, canonical: true });
    expect(terminal.isAlternate).toBe(false);
    expect(terminal.isCursorShown).toBe(true);
    expect(terminal.text).toMatch(/mudlark: this is a fault of the program, please report it: injected/);
  });
});
