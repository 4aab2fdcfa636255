/** Before and after, the report and the plan, as the built program makes them. */
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parsePlan } from '../../src/quiz/plan.js';
import { demoFolder } from './demo.js';
import { cleanEnv, mudlark, mudlarkHere } from './run-cli.js';

const folder = mkdtempSync(join(tmpdir(), 'mudlark-two-'));
const at = (name: string): string => join(folder, name);
const demo = (name: string): string => join(demoFolder(), name);
const env = cleanEnv();
const run = (...args: string[]) => mudlark(['painting', ...args], env);
const here = (...args: string[]) => mudlarkHere(['painting', ...args], env);

describe('before and after', () => {
  it('are compared: the range, the colour of what was darkened, what moved', async () => {
    const { code, out, err } = run(demo('harbour-before.jpg'), demo('harbour-after.png'), '--json');
    expect([code, err]).toEqual([0, '']);
    const read = JSON.parse(out);
    expect(read).toMatchObject({ aligned: true, verdict: 'wider' });
    expect(read.kept).toBeGreaterThan(0.85);
    expect(read.after.range.dark - read.before.range.dark).toBeGreaterThan(1.5);
    expect(read.moved.length).toBeGreaterThan(2);
    const told = await here(demo('harbour-before.jpg'), demo('harbour-after.png'));
    expect(told.out).toMatch(/The range is wider/);
  });
  it('are told apart from two paintings', async () => {
    expect((await here(demo('harbour-before.jpg'), demo('quarry-after.jpg'))).out).toMatch(
      /not framed alike/,
    );
  });
  it('take nothing by hand that is of one photograph', () => {
    const { code, err } = run(demo('harbour-before.jpg'), demo('harbour-after.jpg'), '--crop', '0,0,0.5,1');
    expect([code, err.split('\n').length]).toEqual([2, 2]);
  });
});

describe('what is written', () => {
  it('is one page with the pictures in it and nothing from elsewhere', async () => {
    const { code } = await here(
      demo('harbour-before.jpg'),
      demo('harbour-after.jpg'),
      '--report',
      at('h.html'),
    );
    expect(code).toBe(0);
    const page = readFileSync(at('h.html'), 'utf8');
    const pictures = [...page.matchAll(/<img src="data:image\/png;base64,([^"]*)"/g)];
    expect(pictures).toHaveLength(6);
    for (const [, png = ''] of pictures) {
      const bytes = Buffer.from(png, 'base64').toString('latin1');
      // Whole to its last chunk (ISO/IEC 15948, 5.6), where a text of a file would be cut.
      expect(bytes.slice(-8, -4)).toBe('IEND');
      expect(bytes).not.toMatch(/exif/i);
    }
    expect(page.replace(/base64,[^"]*/g, '')).not.toMatch(/<script|https?:|Exif|GPS/);
    expect(page).toContain('The range is wider');
  });
  it('is a plan for its painter that practise reads', async () => {
    const { code } = await here(demo('quarry-before.jpg'), '--plan', at('ana.yaml'), '--learner', 'Ana');
    expect(code).toBe(0);
    const plan = parsePlan(readFileSync(at('ana.yaml'), 'utf8'), 'ana.yaml');
    expect(plan).toMatchObject({ name: 'Ana', quiz: 'the painting quarry-before.jpg' });
    expect(plan.families[0]?.family).toBe('darken-bright');
  });
  it('replaces nothing unasked, and writes nothing where one of the files cannot be', () => {
    writeFileSync(at('mine.html'), 'mine');
    const { code, err } = run(demo('quarry-before.jpg'), '--grey', '--report', at('mine.html'));
    expect([code, err]).toEqual([1, expect.stringMatching(/there already/)]);
    expect(readFileSync(at('mine.html'), 'utf8')).toBe('mine');
    expect(existsSync(at('quarry-before-grey.png'))).toBe(false);
  });
});
