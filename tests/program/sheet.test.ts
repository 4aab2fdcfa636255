import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { mudlark } from './run-cli.js';

const DRILLS = `format: 1
family: darken-bright
drills:
  - id: quay-test
    level: 3
    kind: mix
    title: Quay
    scene: A quay wall.
    picture: harbour-roofs
    start: { paints: { burnt-sienna: 1 }, strength: 0.3 }
    goal: { aim: rich, value: [5.3, 6.3] }
    tray: [alizarin-crimson, ultramarine-blue, ivory-black]
    amounts: ['1:8', '1:4', '1:2', '1:1']
  - id: quay-order
    level: 2
    kind: order
    title: Quay order
    scene: Three stones.
    ask: Which is darkest?
    by: darkest
    items:
      - { id: thin, name: thin, laid: { paints: { burnt-sienna: 1 }, strength: 0.1 } }
      - { id: middle, name: middle, laid: { paints: { burnt-sienna: 1 }, strength: 0.3 } }
      - { id: thick, name: thick, laid: { paints: { burnt-sienna: 1 }, strength: 0.9 } }
`;

function folderOf(text = DRILLS): string {
  const folder = mkdtempSync(join(tmpdir(), 'mudlark-sheet-'));
  writeFileSync(join(folder, 'a.yaml'), text);
  return folder;
}

const check = (folder: string, ...flags: readonly string[]) => mudlark(['drills', 'check', folder, ...flags]);

interface Figures {
  step: number | null;
  chroma: number | null;
  hue: number | null;
}
interface Seen extends Figures {
  answer: Record<string, string>;
  mark: number;
}
interface Checked {
  id: string;
  goal: object | null;
  start: Figures | null;
  hueBound: number | null;
  shadingLine: number | null;
  best: Seen;
  bestLabel: string;
  bestMark: number;
  traps: Seen[];
  trapLabel: string;
  trapMark: number;
  luck: number;
  faults: string[];
}

describe('mudlark drills check --json', () => {
  const run = check(folderOf(), '--json');
  const { schemaVersion, checked, faulty, drills } = JSON.parse(run.out) as {
    schemaVersion: number;
    checked: number;
    faulty: number;
    drills: [Checked, Checked];
  };
  const [mix, order] = drills;

  it('passes both', () => {
    expect([run.code, run.err, schemaVersion, checked, faulty]).toEqual([0, '', 1, 2, 0]);
  });

  it('gives goal, start, best and traps of a mixture, as grading does', () => {
    expect(mix.goal).toEqual({ aim: 'rich', value: [5.3, 6.3] });
    expect(mix.start?.step).toBeCloseTo(4.3, 0);
    expect(mix.hueBound).toBe(40);
    expect(mix.shadingLine).toBeLessThan(mix.start?.chroma ?? 0);
    expect(mix.best.mark).toBe(100);
    expect(mix.bestMark).toBe(100);
    expect(mix.bestLabel).toMatch(/\d+:\d+/);
    expect(mix.best.step).toBeGreaterThanOrEqual(5.3);
    expect(new Set(mix.traps.map(({ answer }) => answer['second']))).toContain('ivory-black');
    for (const { mark, step, chroma, hue } of mix.traps) {
      expect(mark).toBeLessThan(85);
      for (const figure of [step, chroma, hue]) expect(figure).toBeTypeOf('number');
    }
    expect(Math.min(...mix.traps.map(({ mark }) => mark))).toBeLessThanOrEqual(mix.trapMark);
  });

  it('gives null for what another kind does not have', () => {
    expect([order.goal, order.start, order.hueBound, order.shadingLine]).toEqual([null, null, null, null]);
    expect(order.best).toEqual({
      answer: { order: 'thick_middle_thin' },
      mark: 100,
      step: null,
      chroma: null,
      hue: null,
    });
    expect(order.traps).toHaveLength(5);
  });
});

describe('mudlark drills check --sheet', () => {
  it('writes the page beside the report, and does not replace one unasked', () => {
    const folder = folderOf();
    const file = join(folder, 'sheet.html');
    const first = check(folder, '--sheet', file);
    expect(first.err).toBe('');
    expect(first.code).toBe(0);
    expect(first.out).toMatch(/2 drills checked, 0 with faults\nwritten: sheet\.html\n$/);
    const page = readFileSync(file, 'utf8');
    expect(page).toMatch(/^<!doctype html>/);
    expect(page).toContain('quay-test');
    expect(page).toContain('picture harbour-roofs');
    expect(page.match(/<svg [^>]*aria-label="Roofs above the harbour(, in grey)?"/g)).toHaveLength(2);
    writeFileSync(file, 'mine');
    const second = check(folder, '--sheet', file);
    expect([second.code, second.out]).toEqual([1, '']);
    expect(second.err).toMatch(/there already.*--force/);
    expect(second.err.trimEnd().split('\n')).toHaveLength(1);
    expect(readFileSync(file, 'utf8')).toBe('mine');
    const third = check(folder, '--sheet', file, '--force', '--json');
    expect(third.code).toBe(0);
    expect(JSON.parse(third.out)).toMatchObject({ written: ['replaced: sheet.html'] });
    expect(readFileSync(file, 'utf8')).toBe(page);
  });

  it('refuses a drill set in a picture that there is not', () => {
    const run = check(folderOf(DRILLS.replace('harbour-roofs', 'harbour-rofs')));
    expect([run.code, run.out]).toEqual([1, '']);
    expect(run.err).toMatch(
      /a\.yaml:9: drills\.0\.picture: no picture is called "harbour-rofs"\. Did you mean harbour-roofs/,
    );
  });

  it('never writes over a drill file that it reads', () => {
    const folder = folderOf();
    const run = check(folder, '--sheet', join(folder, 'a.yaml'), '--force');
    expect(run.code).toBe(1);
    expect(run.err).toMatch(/read here and is never written over/);
    expect(readFileSync(join(folder, 'a.yaml'), 'utf8')).toBe(DRILLS);
  });

  it('shows drills with faults all the same, and fails', () => {
    const folder = folderOf(DRILLS.replace('[5.3, 6.3]', '[9.4, 9.9]'));
    const file = join(folder, 'sheet.html');
    const run = check(folder, '--sheet', file);
    expect(run.code).toBe(1);
    expect(readFileSync(file, 'utf8')).toMatch(/class="fault">[^<]*cannot be reached/);
  });

  it('says in one line when it cannot be written', () => {
    const folder = folderOf();
    const run = check(folder, '--sheet', join(folder, 'none', 'sheet.html'));
    expect(run.code).toBe(1);
    expect(run.err.trimEnd().split('\n')).toHaveLength(1);
    expect(run.err).toMatch(/sheet\.html/);
    expect(existsSync(join(folder, 'none'))).toBe(false);
  });
});
