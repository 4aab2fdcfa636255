/** Made drills show nothing absurd, whatever their seed, and a set of eight shows nothing twice. */
import { describe, expect, test } from 'vitest';
import { SUBJECTS } from '../../../src/drills/lexicon.js';
import { bare, usedBy } from '../../../src/drills/make/sentences.js';
import { casesOf, some } from '../../cases.js';
import { MIX_FAMILIES, madeFaults, someDrills } from './lexicon-drills.js';
import { madeInRow, repeated } from './row.js';

test('a drill of each family and level is sound, and a colour of what it shows', () => {
  expect([...someDrills(casesOf(75, 25))].flatMap(madeFaults)).toEqual([]);
});

test('what a thing is called fits a line of choices', () => {
  expect(SUBJECTS.filter((subject) => bare(subject).length > 20)).toEqual([]);
});

describe('eight made in a row', () => {
  test.each(some(MIX_FAMILIES, 3))('of %s share no subject, no sentence and no opening', (family) => {
    // Every measured paint: a box of six has too few colours for eight subjects of one family.
    expect(repeated(madeInRow(1, [family], 3, 4))).toEqual([]);
  });

  test('of mixed families share none either, from the smallest box', () => {
    expect(repeated(madeInRow(3, MIX_FAMILIES, 3, 0))).toEqual([]);
  });
});

test('a scene says which sentence, subject and paints it used', () => {
  for (const drill of someDrills(casesOf(30, 12), MIX_FAMILIES)) {
    if (drill.kind !== 'mix') throw new Error('not a mix drill');
    const used = usedBy(drill);
    expect(used).toContain(drill.subject);
    expect(used.filter((key) => key.includes('/') && !key.startsWith('light/')).length).toBe(1);
    for (const paint of Object.keys(drill.start.paints)) expect(used).toContain(paint);
  }
});
