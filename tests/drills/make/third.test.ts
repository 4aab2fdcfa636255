import { describe, expect, test } from 'vitest';
import type { MixDrill } from '../../../src/drills/kinds/mix/schema.js';
import { generateDrill } from '../../../src/drills/make/index.js';
import { seeAlone, seeLaid } from '../../../src/washes/index.js';
import { casesOf } from '../../cases.js';
import { kindOf, paintOf, STUDIO } from '../../studio.js';
import { ALL } from './made.js';

const SEEDS = Array.from({ length: casesOf(24, 12) }, (_, seed) => seed);
const known = new Map<string, MixDrill[]>();
const made = (family: string): MixDrill[] => {
  const drills =
    known.get(family) ??
    SEEDS.map((seed) => {
      const level = 1 + (seed % 5);
      return generateDrill(STUDIO, { seed, family, level, palette: ALL }) as MixDrill;
    });
  known.set(family, drills);
  return drills;
};
const ofTwo = (drills: readonly MixDrill[]): MixDrill[] =>
  drills.filter(({ start }) => Object.keys(start.paints).length === 2);
const bestOf = (drill: MixDrill): string => kindOf(drill).best(drill)['second'] ?? (drill.tray[0] as string);

// The three uses of a third paint, common practice, no source.
describe('made drills that begin with two paints', () => {
  const families = ['grey-lean', 'neutraliser', 'dull-on-purpose', 'deep-dark'];

  test.each(families)('%s: some do, not all; the third is none of the two, and is called so', (family) => {
    const drills = made(family);
    const two = ofTwo(drills);
    expect(two.length).toBeGreaterThanOrEqual(3);
    expect(two.length).toBeLessThan(drills.length);
    for (const drill of two) {
      expect(drill.tray.filter((id) => id in drill.start.paints)).toEqual([]);
      expect(drill.ask).not.toMatch(/second paint/);
      const row = kindOf(drill)
        .fields(drill)
        .find(({ id }) => id === 'second');
      expect(row?.label ?? 'third paint').toBe('third paint');
    }
  });

  test('a grey to be leaned begins as a grey, and ends as one with a lean', () => {
    for (const drill of ofTwo(made('grey-lean'))) {
      expect(seeLaid(STUDIO, drill.start).colour.chroma, drill.id).toBeLessThan(5);
      const { chroma } = kindOf(drill).grade(drill, kindOf(drill).best(drill));
      expect(chroma?.after, drill.id).toBeGreaterThan(3);
    }
  });

  test('a green is tied in with a red that the painting has', () => {
    for (const drill of ofTwo(made('dull-on-purpose'))) {
      const best = bestOf(drill);
      expect(drill.painting, drill.id).toContain(best);
      // Colour Index: pigment red, or violet 19, a rose.
      expect(paintOf(best).ci.join(), drill.id).toMatch(/^P(R\d|V19|Br7)/);
      expect(drill.painting?.length, drill.id).toBeGreaterThan(3);
      const hue = seeLaid(STUDIO, drill.start).colour.hue;
      expect(hue, drill.id).toBeGreaterThan(100);
      expect(hue, drill.id).toBeLessThan(185);
    }
  });

  test('a dark of three is deeper than each of its three alone, as thick', () => {
    for (const drill of ofTwo(made('deep-dark'))) {
      const { value } = kindOf(drill).grade(drill, kindOf(drill).best(drill));
      for (const id of Object.keys(drill.start.paints)) {
        const alone = seeAlone(STUDIO, id, drill.start.strength).colour.step;
        expect(value?.after, `${drill.id} ${id}`).toBeGreaterThan(alone);
      }
    }
  });
});
