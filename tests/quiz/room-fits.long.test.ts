/** The room for every question where it is tightest, and at every size and in every form for the longest answers of each kind. */
import { afterEach, describe, expect, it } from 'vitest';
import { Stills } from '../tui/still.js';
import { COLOURED, FIVE, OTHER_FORMS } from '../tui/walk.js';
import { FULLEST, faultsOf, handout, TIGHTEST } from './room-walk.js';

let stills: Stills | undefined;
afterEach(() => stills?.close());

const SIZES = [TIGHTEST, ...FIVE];

it('has room for every question at 60 by 18', () => {
  stills = new Stills();
  const all = handout.questions.map((_, place) => place);
  expect(faultsOf(TIGHTEST, COLOURED, all, stills)).toEqual([]);
});

describe.each([COLOURED, ...OTHER_FORMS])('with $name', (form) => {
  it.each(SIZES)('has room at $columns by $rows', (size) => {
    stills = new Stills(form.isSpoken);
    expect(faultsOf(size, form, FULLEST, stills)).toEqual([]);
  });
});
