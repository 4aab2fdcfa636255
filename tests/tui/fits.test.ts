/** Nothing is cut, out of sight or without a key that is told: the fullest drill of each kind, and every other screen. The long run has more of both. */
import { afterEach, describe, expect, it } from 'vitest';
import { some } from '../cases.js';
import { Stills } from './still.js';
import { COLOURED, faultsAt, faultsElsewhere, fullest, KINDS, OTHER_FORMS, SMALL } from './walk.js';

let stills: Stills | undefined;
afterEach(() => stills?.close());

const LARGE = { columns: 120, rows: 40 };

describe('with all colours', () => {
  it.each(some(KINDS, 2))('a drill of the kind %s and its results have room at 60 by 20', (kind) => {
    stills = new Stills();
    for (const drill of fullest(kind, 1)) expect(faultsAt(drill, [SMALL], COLOURED, stills)).toEqual([]);
  });

  it('every other screen has room on a small and a large one', () => {
    stills = new Stills();
    expect(faultsElsewhere([SMALL, LARGE], COLOURED, stills)).toEqual([]);
  });
});

it.each(some(OTHER_FORMS, 2))(
  'with $name a ladder and a mixture have room, and every other screen',
  (form) => {
    stills = new Stills(form.isSpoken);
    for (const drill of [...fullest('washes', 1), ...fullest('mix', 1)])
      expect(faultsAt(drill, [SMALL], form, stills)).toEqual([]);
    expect(faultsElsewhere([SMALL], form, stills)).toEqual([]);
  },
);
