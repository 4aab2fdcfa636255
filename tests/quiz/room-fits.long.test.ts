/** The room at every size, in every form and for every kind and family of drill. */
import { afterEach, describe, expect, it } from 'vitest';
import { Stills } from '../tui/still.js';
import { COLOURED, OTHER_FORMS } from '../tui/walk.js';
import { FULLEST, faultsOf, handout, SIZES } from './room-walk.js';

let stills: Stills | undefined;
afterEach(() => stills?.close());

describe('the room', () => {
  it.each(SIZES)('has room at $columns by $rows', (size) => {
    stills = new Stills();
    const all = handout.questions.map((_, place) => place);
    expect(faultsOf(size, COLOURED, all, stills)).toEqual([]);
  });

  it.each(OTHER_FORMS)('has room with $name', (form) => {
    stills = new Stills(form.isSpoken);
    for (const size of SIZES) expect(faultsOf(size, form, FULLEST, stills)).toEqual([]);
  });
});
