/** A photographed painting on the screen: what keys do, and that nothing is cut. The long run has every size and form. */
import { afterEach, describe, expect, it } from 'vitest';
import { some } from '../cases.js';
import { Stills } from '../tui/still.js';
import { COLOURED, OTHER_FORMS, SMALL } from '../tui/walk.js';
import { faultsOf, pressed, programOf } from './screen-walk.js';

let stills: Stills | undefined;
afterEach(() => stills?.close());

const LARGE = { columns: 120, rows: 40 };

it('has room on a small and a large screen', async () => {
  stills = new Stills();
  expect(await faultsOf([SMALL, LARGE], COLOURED, stills)).toEqual([]);
});

it.each(some(OTHER_FORMS, 2))('has room on a small one with $name', async (form) => {
  stills = new Stills(form.isSpoken);
  expect(await faultsOf([SMALL], form, stills)).toEqual([]);
});

describe('keys', () => {
  const program = programOf(COLOURED, true);
  const stand = (...keys: string[]) => pressed(program, program.initial, keys);

  it('walk every mass once and come back to the first', async () => {
    const count = program.initial.painting === 0 ? 8 : 0;
    const seen = new Set<number>();
    let state = program.initial;
    for (let step = 0; step < count; step++) {
      state = await pressed(program, state, ['right']);
      seen.add(state.mass);
    }
    expect(seen.size).toBe(count);
    expect(state.mass).toBe(program.initial.mass);
  });
  it('go through two, three and five values and back to the colours', async () => {
    const looks = [];
    for (let presses = 0; presses <= 4; presses++) looks.push((await stand(...'v'.repeat(presses))).look);
    expect(looks).toEqual(['colour', 2, 3, 5, 'colour']);
  });
  it('look for recipes of the mass in front, and say when it is none of these paints', async () => {
    const { looking } = await stand('right', 'r', 'enter');
    expect(looking).toMatchObject({ name: 'recipes' });
    if (looking?.name !== 'recipes' || looking.found === undefined) throw new Error('nothing came back');
    expect(looking.found.mass.number).toBe((await stand('right')).mass + 1);
  });
  it('leave by Esc and by Ctrl+C', async () => {
    expect((await stand('escape')).ending).toBe(0);
    expect((await stand('enter', 'escape')).ending).toBeUndefined();
    expect((await stand('ctrl-c')).ending).toBe(130);
  });
  it('keep to the masses of the picture that is turned to', async () => {
    const state = await stand('left', 'b');
    expect(state.painting).toBe(1);
    stills = new Stills();
    expect(stills.of({ ...state, size: { columns: 80, rows: 24 } }, program).text).toContain('after');
  });
});

it('shows the values of the picture in signs where there are no colours, each mass with its number', () => {
  const [form] = OTHER_FORMS;
  if (form === undefined) throw new Error('no form');
  stills = new Stills();
  const program = programOf(form, false);
  const { text } = stills.of({ ...program.initial, size: LARGE }, program);
  for (let number = 2; number <= 8; number++) expect(text).toContain(String(number));
  expect(text).toContain('[1]');
  expect(text).toMatch(/[░▒▓█]{3}/);
});
