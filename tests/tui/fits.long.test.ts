/** Every written drill and made ones of every family, with their results, and every other screen, at all sizes and in all forms. */
import { afterEach, describe, expect, it } from 'vitest';
import { GENERATED_FAMILIES } from '../../src/drills/make/index.js';
import { Stills } from './still.js';
import {
  COLOURED,
  FIVE,
  faultsAt,
  faultsElsewhere,
  fullest,
  KINDS,
  madeDrills,
  OTHER_FORMS,
  SMALL,
} from './walk.js';

let stills: Stills | undefined;
afterEach(() => stills?.close());

const EVERY = Number.POSITIVE_INFINITY;

describe('with all colours', () => {
  it.each(KINDS)('every written drill of the kind %s has room at 60 by 20', (kind) => {
    stills = new Stills();
    for (const drill of fullest(kind, EVERY)) expect(faultsAt(drill, [SMALL], COLOURED, stills)).toEqual([]);
  });

  it.each(KINDS)('the fullest of the kind %s have room at every size', (kind) => {
    stills = new Stills();
    for (const drill of fullest(kind, 4)) expect(faultsAt(drill, FIVE, COLOURED, stills)).toEqual([]);
  });

  it.each(GENERATED_FAMILIES)('drills made for %s have room at 60 by 20 and 80 by 24', (family) => {
    stills = new Stills();
    for (const drill of madeDrills([1, 2, 3, 4, 5], [family]))
      expect(faultsAt(drill, FIVE.slice(0, 2), COLOURED, stills)).toEqual([]);
  });
});

describe.each([COLOURED, ...OTHER_FORMS])('with $name', (form) => {
  it('every other screen has room at every size', () => {
    stills = new Stills(form.isSpoken);
    expect(faultsElsewhere(FIVE, form, stills)).toEqual([]);
  });

  it.each(KINDS)('the fullest drills of the kind %s have room on small screens', (kind) => {
    stills = new Stills(form.isSpoken);
    for (const drill of fullest(kind, 2)) expect(faultsAt(drill, FIVE.slice(0, 3), form, stills)).toEqual([]);
  });
});
