/** What `mudlark painting` refuses: one line, and its exit code. */
import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { file, flat } from '../painting/made-files.js';
import { demoFolder } from './demo.js';
import { cleanEnv, mudlark, mudlarkHere } from './run-cli.js';

const folder = mkdtempSync(join(tmpdir(), 'mudlark-painting-'));
const demo = demoFolder();
const at = (name: string): string => join(demo, name);
const env = cleanEnv();
const run = (...args: string[]) => mudlark(['painting', ...args], env);

async function refused(code: number, ...args: string[]): Promise<string> {
  const { code: ended, out, err } = await mudlarkHere(['painting', ...args], env);
  expect([ended, out]).toEqual([code, '']);
  expect(err.trimEnd().split('\n')).toHaveLength(1);
  return err;
}

describe('refusals', () => {
  it.each([
    [[], /painting needs a photograph/],
    [['harbour-before.jpg', '--white', '0.5'], /--white takes x,y or x,y=V/],
    [['harbour-before.jpg', '--paints', 'no-such'], /no paint is called "no-such"/],
    [['harbour-before.jpg', '--paints', 'burnt-sienna', '--box', 'six'], /--paints and --box are both given/],
    [['harbour-before.jpg', '--mass', '99', '--grey'], /--mass takes 1 to \d here, got 99/],
    [['harbour-before.jpg', '--json', '--text'], /--json and --text are both given/],
    [['harbour-before.jpg', '--demo', 'somewhere'], /--demo writes pictures and reads none/],
  ] as const)('%j', async ([picture, ...args], line) => {
    const before = readdirSync(demo);
    expect(await refused(2, ...(picture === undefined ? [] : [at(picture), ...args]))).toMatch(line);
    expect(readdirSync(demo)).toEqual(before);
  });

  it('a mass that there is not, as it is built', async () => {
    const args = [at('harbour-before.jpg'), '--mass', '99', '--grey'];
    const said = run(...args);
    expect(said.code).toBe(2);
    expect(said).toEqual(await mudlarkHere(['painting', ...args], env));
  });

  it('files that are none, in one line and with exit code 1', async () => {
    expect(await refused(1, join(folder, 'missing.jpg'))).toMatch(/there is no such file; check the name/);
    expect(await refused(1, file('x\u001b[31m.jpg', 'hello'))).toMatch(
      /x\.jpg: this is no photograph that is read/,
    );
    const bytes = await flat([9, 99, 200], 600, 400).jpeg().toBuffer();
    expect(await refused(1, file('cut.jpg', bytes.subarray(0, 700)), '--grey')).toMatch(
      /damaged or cut short/,
    );
    expect(readdirSync(folder).filter((name) => /cut/.test(name))).toEqual([]);
  });
});
