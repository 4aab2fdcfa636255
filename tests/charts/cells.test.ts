import { converter, differenceCiede2000 } from 'culori';
import { beforeAll, describe, expect, it } from 'vitest';
import { CHARTS, type ChartId } from '../../src/charts/index.js';
import { pairsOf } from '../../src/charts/two-paints.js';
import { toScreen } from '../../src/colour/screen.js';
import { LEAST_TYPE, PAGE_SIZES, type PaperId } from '../../src/paper/types.js';
import { type Seen, seeLaid, WATERS } from '../../src/washes/index.js';
import { some } from '../cases.js';
import { PRESS } from '../paper/fixture.js';
import { type ReadPdf, wordsOf } from '../paper/pdf-reader.js';
import { STUDIO } from '../studio.js';
import { boxOf, cellsOf, printed, type ReadCell, recipeIn, requestOf } from './fixture.js';

const SIX = boxOf('six');
/** With paints whose strength is a guess, and colours that sRGB does not hold. */
const CLEAR = boxOf('clear').slice(5);
const PAPERS = some(Object.keys(PAGE_SIZES) as PaperId[], 2);

const sheets = new Map<string, ReadPdf>();
const sheet = (id: ChartId, paper: PaperId): ReadPdf => sheets.get(`${id} ${paper}`) as ReadPdf;

beforeAll(async () => {
  for (const paper of PAPERS)
    for (const id of CHARTS)
      sheets.set(`${id} ${paper}`, await printed(id, requestOf(id === 'practice' ? SIX : CLEAR), paper));
});

// CIE 142-2001 as culori has it, and its own way from sRGB to CIELAB, white to white.
const apart = differenceCiede2000();
const toLab = converter('lab65');

/** Held against the wash that its own words give, made up again. @returns whether sRGB holds it */
function checkCell({ colour, grey, value }: ReadCell, { colour: predicted }: Seen, label: string): boolean {
  const { lab, step, chroma, xyz } = predicted;
  const drawn = toLab(colour);
  const twin = toLab(grey);
  const isHeld = toScreen(xyz).inScreenGamut;
  expect(value, label).toBe(`step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}${isHeld ? '' : ' ~'}`);
  if (isHeld) expect(apart({ mode: 'lab65', ...lab }, drawn ?? ''), label).toBeLessThan(1);
  expect(Math.abs((twin?.l ?? 0) - lab.l), label).toBeLessThan(0.5);
  expect(Math.hypot(twin?.a ?? 9, twin?.b ?? 9), label).toBeLessThan(0.5);
  return isHeld;
}

describe.each(PAPERS)('charts on %s', (paper) => {
  it.each(['pairs', 'greys', 'ladders'] as const)(
    '%s: every patch is what its own words make, and what sRGB does not hold is marked',
    (id) => {
      const cells = cellsOf(sheet(id, paper).pages);
      const count = { pairs: 5 * pairsOf(CLEAR).length, ladders: CLEAR.length * WATERS.length, greys: 0 }[id];
      if (id === 'greys') expect(cells.length).toBeGreaterThan(3);
      else expect(cells).toHaveLength(count);
      const held = cells.map((cell, at) => {
        const known = recipeIn(cell.under);
        const paint = CLEAR[Math.floor(at / WATERS.length)] as string;
        const paints = id === 'ladders' ? { [paint]: 1 } : known.paints;
        expect(Object.keys(paints).length, cell.under).toBeGreaterThan(0);
        // One part of paint to w of water is 4 / (1 + w) of a masstone (src/washes/README.md).
        const seen = seeLaid(STUDIO, { paints, strength: 4 / (1 + known.water) });
        return checkCell(cell, seen, `${id} ${cell.under}`);
      });
      if (id === 'pairs') {
        expect(held.filter((each) => !each).length).toBeGreaterThan(0);
        expect(held.filter((each) => each).length).toBeGreaterThan(held.length / 2);
      }
    },
  );

  it.each(CHARTS)('%s: all of it is on the page, in type that can be read, and numbered', (id) => {
    const { pages } = sheet(id, paper);
    const { width, height } = PAGE_SIZES[paper];
    expect(pages.length).toBeGreaterThan(0);
    for (const [at, page] of pages.entries()) {
      expect([page.width, page.height]).toEqual([width, height]);
      expect(wordsOf([page])).toMatch(new RegExp(`page ${at + 1} of ${pages.length}$`));
      for (const { text, x, y, size } of page.texts) {
        expect(size).toBeGreaterThanOrEqual(LEAST_TYPE);
        expect(x).toBeGreaterThan(40);
        expect(x + PRESS.ruler(text, { size }), text).toBeLessThan(width - 40);
        expect(y).toBeGreaterThan(40);
        expect(y).toBeLessThan(height - 20);
      }
      for (const { x, y, width: wide, height: tall } of page.boxes) {
        expect(x).toBeGreaterThan(40);
        expect(x + wide).toBeLessThan(width - 40);
        expect(y).toBeGreaterThan(40);
        expect(y + tall).toBeLessThan(height - 40);
      }
      // No page but the last is left half empty.
      const lowest = Math.max(...page.texts.map(({ y }) => (y < height - 60 ? y : 0)));
      if (at < pages.length - 1) expect(lowest, `${id} page ${at + 1}`).toBeGreaterThan(0.7 * height);
    }
  });

  it('never print text over text, nor a patch over its words', () => {
    for (const id of CHARTS)
      for (const { texts, boxes } of sheet(id, paper).pages) {
        const lines = texts.map(({ text, x, y, size }) => ({
          text,
          x,
          y,
          size,
          end: x + PRESS.ruler(text, { size }),
        }));
        for (const [at, one] of lines.entries())
          for (const other of lines.slice(at + 1)) {
            const isLevel = Math.abs(one.y - other.y) < 0.7 * Math.min(one.size, other.size);
            if (isLevel)
              expect(one.end <= other.x || other.end <= one.x, `${one.text} | ${other.text}`).toBe(true);
          }
        for (const { x, y, width, height, fill } of boxes) {
          if (fill === undefined) continue;
          const hit = lines.find(
            (text) => text.y - 3 > y && text.y - 3 < y + height && text.end > x && text.x < x + width,
          );
          expect(hit?.text).toBeUndefined();
        }
      }
  });

  it('say the Colour Index code of every paint, and the cautions', () => {
    const all = wordsOf(sheet('pairs', paper).pages);
    for (const id of CLEAR) {
      const paint = STUDIO.paints.find((each) => each.id === id);
      for (const code of paint?.ci ?? []) expect(all).toContain(code);
    }
    // Cadmium yellow and red are in the box of six.
    const words = wordsOf(sheet('practice', paper).pages);
    expect(words).toContain('Cautions');
    expect(words).toMatch(/holds cadmium/);
    expect(words).toMatch(/never with the lips/);
  });
});
