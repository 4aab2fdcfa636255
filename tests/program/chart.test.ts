import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type ChartOptions, chartCommand } from '../../src/commands/chart.js';
import { readBox } from '../../src/commands/learner.js';
import { workBar } from '../../src/commands/work-bar.js';
import { WRITTEN } from '../../src/words/voice.js';
import { STUDIO } from '../studio.js';
import { cleanEnv, mudlark } from './run-cli.js';

const folder = mkdtempSync(join(tmpdir(), 'mudlark-chart-'));
const at = (name: string): string => join(folder, name);
const env = cleanEnv();
const run = (...args: string[]) => mudlark(['chart', ...args], env);

describe('chart, as it is built', () => {
  it('prints a box as PDF, says the cautions, and draws no bar where nobody watches', () => {
    const { code, out, err } = run('ladders', '--box', 'six', '--out', at('six.pdf'), '--size', 'letter');
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^written: six\.pdf, 2 pages\ncaution {2}cadmium yellow/);
    const text = readFileSync(at('six.pdf'), 'latin1');
    expect(text.startsWith('%PDF-1.7')).toBe(true);
    expect(text).toContain('/MediaBox [0 0 612 792]');
  });

  it('writes a page of SVG as the file that is named, several with their numbers', () => {
    expect(run('values', '--out', at('values.svg')).out).toBe('written: values.svg, 1 page\n');
    const json = run('pairs', '--box', 'six', '--out', at('pairs.svg'), '--json');
    const { schemaVersion, pages, files, paints } = JSON.parse(json.out) as Record<string, never[]> & {
      pages: number;
    };
    expect(schemaVersion).toBe(1);
    expect(paints).toHaveLength(6);
    expect(files).toHaveLength(pages);
    expect(readdirSync(folder).filter((name) => name.startsWith('pairs'))).toEqual([
      'pairs-1.svg',
      'pairs-2.svg',
      'pairs-3.svg',
    ]);
    expect(readFileSync(at('pairs-3.svg'), 'utf8')).toContain('page 3 of 3');
    // One that is in the way keeps all from being written.
    writeFileSync(at('more-2.svg'), 'mine');
    const refused = run('pairs', '--box', 'six', '--out', at('more.svg'));
    expect(refused.err).toMatch(/more-2\.svg: this file is there already/);
    expect(existsSync(at('more-1.svg'))).toBe(false);
    expect(readFileSync(at('more-2.svg'), 'utf8')).toBe('mine');
  });

  it('refuses in one line what it cannot do, and replaces nothing unasked', async () => {
    const before = readFileSync(at('six.pdf'));
    const ports = {
      voice: WRITTEN,
      nowMs: 0,
      box: readBox(STUDIO, 'six'),
      bar: { progress: () => {}, end: () => {} },
    };
    const out = at('x.pdf');
    const refused: [string, ChartOptions, RegExp][] = [
      ['pears', { out }, /no chart "pears".*Did you mean pairs\?/],
      ['pairs', {}, /needs --out FILE\.pdf/],
      ['pairs', { out: at('x.png') }, /needs --out FILE\.pdf/],
      ['pairs', { out: at('six.pdf') }, /there already.*--force/],
      ['pairs', { out, box: 'six', paints: ['burnt-sienna'] }, /--paints and --box are both given/],
      ['pairs', { out, paints: ['burnt-sienna'] }, /needs two paints/],
      ['pairs', { out, paints: ['burnt-siena,viridian'] }, /no paint is called "burnt-siena"/],
      [
        'pairs',
        { out, paints: [STUDIO.paints.map(({ id }) => id).join()] },
        /takes at most 40 paints, got 77/,
      ],
      ['pairs', { out, size: 'a3' }, /--size must be a4 or letter/],
      ['practice', { out, seed: '1.5' }, /--seed takes a whole number/],
      ['practice', { out, paints: ['ivory-black,neutral-tint'] }, /no exercise can be made of these paints/],
      ['values', { out: join(folder, 'none', 'x.pdf') }, /x\.pdf/],
    ];
    for (const [chart, options, why] of refused)
      await expect(chartCommand(STUDIO, chart, options, ports), why.source).rejects.toThrow(why);
    expect(run('pairs', '--box', 'sixx', '--out', out).err).toMatch(/no box is called "sixx".*six/);
    const { code, err } = run('pears', '--out', out);
    expect(code).toBe(2);
    expect(err.trim().split('\n')).toHaveLength(1);
    expect(existsSync(out)).toBe(false);
    expect(readFileSync(at('six.pdf')).equals(before)).toBe(true);
    const again = run('ladders', '--box', 'six', '--out', at('six.pdf'), '--force');
    expect(again.out).toMatch(/^replaced: six\.pdf/);
  });
});

describe('the bar of long work', () => {
  const watched = (isTTY: boolean, isWanted: boolean): string => {
    let shown = '';
    const bar = workBar('chart', { isTTY, write: (text: string) => (shown += text) }, isWanted);
    for (let done = 1; done <= 200; done++) bar.progress(done, 200);
    bar.end();
    return shown;
  };

  it('grows on one line of a terminal and is gone afterwards; elsewhere it never shows', () => {
    const shown = watched(true, true);
    expect(shown).not.toContain('\n');
    expect(shown).toContain('[############............] 50 %');
    // ECMA-48: the last of it clears the line.
    expect(shown.endsWith('\r\u001b[2K')).toBe(true);
    expect(shown.split('\r').length).toBeLessThan(130);
    expect(watched(false, true)).toBe('');
    expect(watched(true, false)).toBe('');
  });
});
