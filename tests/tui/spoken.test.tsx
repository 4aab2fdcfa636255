import { afterEach, describe, expect, it } from 'vitest';
import type { TuiDeps } from '../../src/tui/practice/deps.js';
import { fakeDeps, items } from './fakes.js';
import { practice, ROUTES } from './routes.js';
import { DOWN, ENTER, Stage, strike } from './stage.js';

afterEach(strike);

describe('for a screen reader', () => {
  const settings = { valueScale: 'paper-first', palette: 'six', screenReader: true, colour: 'auto' } as const;

  it.each(ROUTES.filter(({ name }) => name !== 'settings'))(
    '$name is plain text from top to bottom',
    async ({ name, deps = {}, keys, shows }) => {
      const spoken =
        name === 'drill' || name.startsWith('drill')
          ? /second paint|area 0/i
          : name === 'bench'
            ? /Now at/
            : name === 'bench picker'
              ? /Pick:/
              : shows;
      const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps({ ...deps, settings }));
      await stage.type(keys, spoken);
      expect(stage.raw).not.toMatch(/\u001b\[/);
      expect(stage.text).not.toMatch(/[█░▄▲━┌❯‹●○]/);
    },
  );

  it('says the goal and the current choice in words', async () => {
    const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps({ ...practice, settings }));
    await stage.shows('Goal, value: from step 4.2');
    await stage.type(
      [DOWN],
      /Now choosing second paint: ultramarine blue, .*step \d\.\d, chroma \d+.*2 of 4/i,
    );
  });

  it('speaks the menu entry that is selected', async () => {
    const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps({ settings }));
    await stage.shows(/\(selected\) 1 Practise/);
    await stage.type([DOWN], /\(selected\) 2 Choose/);
  });

  it('cuts no answer in the summary, however long its words', async () => {
    const label = `${'glaze of burnt sienna over the dry wash, '.repeat(4)}thinned to a quarter`;
    const fake = fakeDeps();
    const kindOf: TuiDeps['kindOf'] = (drill) => ({ ...fake.kindOf(drill), label: () => label });
    const deps = { ...practice, kindOf, nextSet: () => items(['one']), settings };
    const stage = new Stage({ columns: 60, rows: 20 }, fakeDeps(deps));
    await stage.type([ENTER, 'n'], 'Answer 1 of 1');
    const said = stage.text.slice(stage.text.indexOf('Answer 1 of 1')).replace(/\s+/g, ' ');
    expect(said).toContain(label);
  });
});
