/** Real drills on the screen, through the result to its why: nothing counts in steps where values are Munsell's, and all of it has room. */
import { afterEach, describe, expect, it } from 'vitest';
import type { Drill } from '../../src/drills/kinds/index.js';
import { some } from '../cases.js';
import { kindOf } from '../studio.js';
import { drillsOf } from '../words/answers.js';
import { fakeDeps, items } from './fakes.js';
import { FULL, practice } from './routes.js';
import { ENTER, Stage, strike } from './stage.js';

afterEach(strike);

const KINDS = ['drying', 'diagnosis', 'shade-chroma', 'shadow-values', 'sort-values', 'worked'] as const;
const SIZES = [
  { columns: 60, rows: 20 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
] as const;

/** A stage with one drill in its set. */
function stageWith(drill: Drill, size: (typeof SIZES)[number], screenReader: boolean, env = FULL): Stage {
  const fake = fakeDeps();
  return new Stage(
    size,
    fakeDeps({
      ...practice,
      drills: [drill],
      kindOf: (one) => kindOf(one as Drill),
      nextSet: () => items([drill.id]),
      settings: { ...fake.settings, valueScale: 'black-first', screenReader },
      env,
    }),
  );
}

const STEP = /\bsteps? -?\d/;

describe.each(KINDS)('a %s drill on the scale from black', (kind) => {
  it.each(some(SIZES, 2))('counts in no steps and keeps inside $columns by $rows', async (size) => {
    for (const drill of drillsOf(kind).slice(0, 3)) {
      const stage = stageWith(drill, size, false);
      await stage.shows(drill.title.slice(0, 12));
      expect(stage.text).not.toMatch(STEP);
      await stage.type([ENTER], / of 100/);
      expect(stage.text).not.toMatch(STEP);
      await stage.type(['w'], /^ *Why/m);
      expect(stage.text).not.toMatch(STEP);
      expect(stage.lines.length).toBeLessThan(size.rows);
      for (const line of stage.lines) expect(line.length).toBeLessThanOrEqual(size.columns);
      strike();
    }
  });

  it('is heard without signs that stand for words', async () => {
    const [drill] = drillsOf(kind);
    if (drill === undefined) throw new Error(`no drill of kind ${kind}`);
    const stage = stageWith(drill, SIZES[1], true);
    await stage.shows(drill.title.slice(0, 12));
    await stage.type([ENTER], / of 100/);
    await stage.type(['w'], /Why/);
    expect(stage.text).not.toMatch(STEP);
    expect(stage.text).not.toMatch(/[%±→°]|\bV \d/);
  });
});

it('writes the steps to choose from as Munsell values', async () => {
  const drill = drillsOf('shadow-values').find(({ steps }) => steps.length > 8) as Drill;
  const stage = stageWith(drill, SIZES[2], false);
  await stage.shows(/8\.5 +7\.5 +6\.5/);
});
