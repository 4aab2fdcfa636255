/** In every form and at every size: the fullest drills of each kind with their results, and every other screen. */
import { afterEach, describe, expect, it } from 'vitest';
import { Stills } from './still.js';
import { COLOURED, FIVE, faultsAt, faultsElsewhere, fullest, KINDS, OTHER_FORMS } from './walk.js';

let stills: Stills | undefined;
afterEach(() => stills?.close());

it.each([COLOURED, ...OTHER_FORMS])('with $name every other screen has room', (form) => {
  stills = new Stills(form.isSpoken);
  expect(faultsElsewhere(FIVE, form, stills)).toEqual([]);
});

describe.each(OTHER_FORMS)('with $name', (form) => {
  it.each(KINDS)('the fullest drills of the kind %s have room', (kind) => {
    const all = new Stills(form.isSpoken);
    stills = all;
    expect(fullest(kind, 2).flatMap((drill) => faultsAt(drill, FIVE, form, all))).toEqual([]);
  });
});
