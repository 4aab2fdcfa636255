/** With all colours: every written drill with its results, the fullest at every size, and made ones of every family on small screens. */
import { afterEach, describe, expect, it } from 'vitest';
import { GENERATED_FAMILIES } from '../../src/drills/make/index.js';
import { Stills } from './still.js';
import { COLOURED, FIVE, faultsAt, fullest, KINDS, madeDrills, SMALL } from './walk.js';

let stills: Stills | undefined;
afterEach(() => stills?.close());

const EVERY = Number.POSITIVE_INFINITY;

describe.each(KINDS)('of the kind %s', (kind) => {
  it('every written drill has room at 60 by 20', () => {
    const all = new Stills();
    stills = all;
    expect(fullest(kind, EVERY).flatMap((drill) => faultsAt(drill, [SMALL], COLOURED, all))).toEqual([]);
  });

  it('the fullest have room at every larger size', () => {
    const all = new Stills();
    stills = all;
    expect(fullest(kind, 4).flatMap((drill) => faultsAt(drill, FIVE.slice(1), COLOURED, all))).toEqual([]);
  });
});

it.each(GENERATED_FAMILIES)('drills made for %s have room at 60 by 20 and 80 by 24', (family) => {
  const all = new Stills();
  stills = all;
  const made = madeDrills([1, 2, 3, 4, 5], family);
  expect(made.flatMap((drill) => faultsAt(drill, FIVE.slice(0, 2), COLOURED, all))).toEqual([]);
});
