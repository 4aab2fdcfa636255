/** Made drills show nothing absurd, whatever their seed, and a set of eight shows nothing twice. */
import { describe, expect, test } from 'vitest';
import { seedOf } from '../../../src/chance/draw.js';
import type { Drill } from '../../../src/drills/kinds/index.js';
import { SUBJECTS } from '../../../src/drills/lexicon.js';
import { generateDrill, usedBefore } from '../../../src/drills/make/index.js';
import { bare, usedBy } from '../../../src/drills/make/sentences.js';
import { STUDIO } from '../../studio.js';
import { BOXES, MIX_FAMILIES, madeFaults, someDrills } from './lexicon-drills.js';

test('a drill of each family and level is sound, and a colour of what it shows', () => {
  expect([...someDrills(75)].flatMap(madeFaults)).toEqual([]);
});

test('what a thing is called fits a line of choices', () => {
  expect(SUBJECTS.filter((subject) => bare(subject).length > 20)).toEqual([]);
});

describe('eight made in a row', () => {
  const row = (n: number, families: readonly string[], level: number, box: number): Drill[] => {
    const drills: Drill[] = [];
    for (let i = 0; i < 8; i++) {
      drills.push(
        generateDrill(STUDIO, {
          seed: seedOf(n, i),
          family: families[i % families.length] as string,
          level,
          palette: BOXES[box] as readonly string[],
          avoid: usedBefore(drills),
        }),
      );
    }
    return drills;
  };
  /** Subjects of mix drills and sentences, each as often as it was used. */
  const repeated = (drills: readonly Drill[]): string[] => {
    const used = drills.flatMap((drill) => [
      ...(drill.kind === 'mix' ? [drill.subject ?? ''] : []),
      ...usedBy(drill).filter((key) => key.includes('/')),
    ]);
    return used.filter((key, at) => used.indexOf(key) !== at);
  };

  test.each(MIX_FAMILIES)('of %s share no subject, no sentence and no opening', (family) => {
    // Every measured paint: a box of six has too few colours for eight subjects of one family.
    expect(repeated(row(1, [family], 3, 4))).toEqual([]);
    expect(repeated(row(2, [family], 2, 3))).toEqual([]);
  });

  test('of mixed families share none either, from the smallest box', () => {
    expect(repeated(row(3, MIX_FAMILIES, 3, 0))).toEqual([]);
  });

  test('are the same on every machine', () => {
    const ids = (drills: readonly Drill[]): string => JSON.stringify(drills);
    expect(ids(row(4, MIX_FAMILIES, 2, 1))).toBe(ids(row(4, MIX_FAMILIES, 2, 1)));
  });
});

test('of a hundred neighbouring seeds no subject opens more often than chance would have it', () => {
  const subjectOf = (seed: number): string => {
    const drill = generateDrill(STUDIO, {
      seed,
      family: 'neutraliser',
      level: 2,
      palette: BOXES[1] as readonly string[],
    });
    return drill.kind === 'mix' ? (drill.subject ?? '') : '';
  };
  const counts = new Map<string, number>();
  for (let seed = 0; seed < 100; seed++) {
    const id = subjectOf(seed);
    counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  // Fourteen greys, about seven in a hundred each; twenty-one or more come once in a hundred thousand such hundreds (binomial).
  for (const count of counts.values()) expect(count).toBeLessThan(21);
  expect(counts.size).toBeGreaterThan(8);
});

test('a scene says which sentence, subject and paints it used', () => {
  for (const drill of someDrills(30, MIX_FAMILIES)) {
    if (drill.kind !== 'mix') throw new Error('not a mix drill');
    const used = usedBy(drill);
    expect(used).toContain(drill.subject);
    expect(used.filter((key) => key.includes('/') && !key.startsWith('light/')).length).toBe(1);
    for (const paint of Object.keys(drill.start.paints)) expect(used).toContain(paint);
  }
});
