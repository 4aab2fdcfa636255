/** What `mudlark painting` refuses: one line, and its exit code. */
import { mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { file, flat } from '../painting/made-files.js';
import { cleanEnv, mudlark } from './run-cli.js';

const folder = mkdtempSync(join(tmpdir(), 'mudlark-painting-'));
const demo = join(folder, 'demo');
const at = (name: string): string => join(demo, name);
const env = cleanEnv();
const run = (...args: string[]) => mudlark(['painting', ...args], env);

function refused(code: number, ...args: string[]): string {
  const { code: ended, out, err } = run(...args);
  expect([ended, out]).toEqual([code, '']);
  expect(err.trimEnd().split('\n')).toHaveLength(1);
  return err;
}

beforeAll(() => {
  const { code, err } = run('--demo', demo);
  expect([code, err]).toEqual([0, '']);
});

describe('refusals', () => {
  it.each([
    [[], /painting needs a photograph/],
    [['harbour-before.jpg', '--white', '0.5'], /--white takes x,y or x,y=V/],
    [['harbour-before.jpg', '--paints', 'no-such'], /no paint is called "no-such"/],
    [['harbour-before.jpg', '--paints', 'burnt-sienna', '--box', 'six'], /--paints and --box are both given/],
    [['harbour-before.jpg', '--mass', '99', '--grey'], /--mass takes 1 to \d here, got 99/],
    [['harbour-before.jpg', '--json', '--text'], /--json and --text are both given/],
    [['harbour-before.jpg', '--demo', 'somewhere'], /--demo writes pictures and reads none/],
  ] as const)('%j', ([picture, ...args], line) => {
    const before = readdirSync(demo);
    expect(refused(2, ...(picture === undefined ? [] : [at(picture), ...args]))).toMatch(line);
    expect(readdirSync(demo)).toEqual(before);
  });

  it('files that are none, in one line and with exit code 1', async () => {
    expect(refused(1, join(folder, 'missing.jpg'))).toMatch(/there is no such file; check the name/);
    expect(refused(1, file('x\u001b[31m.jpg', 'hello'))).toMatch(
      /x\.jpg: this is no photograph that is read/,
    );
    const bytes = await flat([9, 99, 200], 600, 400).jpeg().toBuffer();
    expect(refused(1, file('cut.jpg', bytes.subarray(0, 700)), '--grey')).toMatch(/damaged or cut short/);
    expect(readdirSync(folder).filter((name) => /cut/.test(name))).toEqual([]);
  });
});
