/** A photographed painting on the screen at every size and in every form. */
import { afterEach, describe, expect, it } from 'vitest';
import { Stills } from '../tui/still.js';
import { COLOURED, FIVE, OTHER_FORMS } from '../tui/walk.js';
import { faultsOf } from './screen-walk.js';

let stills: Stills | undefined;
afterEach(() => stills?.close());

describe.each([COLOURED, ...OTHER_FORMS])('with $name', (form) => {
  it.each(FIVE)('has room at $columns by $rows', async (size) => {
    stills = new Stills(form.isSpoken);
    expect(await faultsOf([size], form, stills)).toEqual([]);
  });
});
