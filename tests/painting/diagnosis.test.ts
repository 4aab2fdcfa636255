/** What is said of a painting and what it leads to: the demo pictures, of which it is known what is wrong with them. */
import { describe, expect, it } from 'vitest';
import { hueDifference, shadingLine } from '../../src/colour/index.js';
import { planOfPainting } from '../../src/commands/painting-plan.js';
import { FAMILY_IDS } from '../../src/drills/families.js';
import { STAINS } from '../../src/judgement/index.js';
import {
  adviceOf,
  compared,
  comparisonTold,
  DEMO_SCENES,
  diagnosisOf,
  massTold,
  type PaintingReading,
  paintingReport,
  paintingTold,
  recipesOfMass,
} from '../../src/painting/index.js';
import { findPalette } from '../../src/paints/index.js';
import { parsePlan, planText } from '../../src/quiz/plan.js';
import { pngAddress } from '../../src/text/html.js';
import { seeLaid } from '../../src/washes/index.js';
import { sayAll } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { STUDIO } from '../studio.js';
import { demoReading } from './readings.js';
import { PICTURES } from './scenes.js';

const TWELVE = findPalette(STUDIO, 'twelve')?.pigments ?? [];
const tray = { paints: TWELVE, others: [] };
const ids = (reading: PaintingReading): string[] => diagnosisOf(reading).map(({ id }) => id);

describe.each(DEMO_SCENES)('$name', ({ picture }) => {
  const [before, after] = [demoReading(picture, 'before'), demoReading(picture, 'after')];

  it('is said to have no darks before, and to have them after', () => {
    expect(ids(before)).toContain('painting-no-darks');
    expect(ids(after)).not.toContain('painting-no-darks');
  });

  it('is wider after, and what was darkened kept its colour', () => {
    const found = compared(before, after);
    expect(found).toMatchObject({ aligned: true, verdict: 'wider' });
    expect(found.kept).toBeGreaterThan(0.85);
    expect(compared(after, before)).toMatchObject({ aligned: true, verdict: 'narrower' });
  });

  it('has its one blackened side asked about before, and mixed again as the shade of its light', () => {
    const areas = PICTURES.find(({ id }) => id === picture)?.areas ?? [];
    const lit = areas.flatMap(({ turned }) => areas.find(({ id }) => id === turned)?.wash ?? []);
    expect(before.veil.masses).toHaveLength(1);
    const from = before.masses[before.veil.masses[0]?.from ?? -1]?.colour;
    const turns = lit.map((wash) =>
      Math.abs(hueDifference(seeLaid(STUDIO, wash).colour.hue, from?.hue ?? 180)),
    );
    expect(Math.min(...turns)).toBeLessThan(25);
    expect(adviceOf(STUDIO, before).map(({ id }) => id)).toContain('unveil');
    // The market's red is so bright that no paint of twelve keeps all of it in the dark.
    if (picture !== 'market-awning') expect(after.veil.masses).toEqual([]);
    expect(after.veil.slope).toBeGreaterThan(before.veil.slope ?? 9);
  });

  it('is told to go darker first, by a recipe that goes there', () => {
    const [first] = adviceOf(STUDIO, before, tray);
    expect(first).toMatchObject({ id: 'darken', family: 'darken-bright' });
    const { repair, recipe } = first as NonNullable<typeof first>;
    const best = recipe?.found?.recipes[0];
    const start = recipe?.found?.start;
    expect(best && start && best.colour.step - start.step).toBeGreaterThan((repair?.darker ?? 9) - 0.3);
    // Darks are mixed without a black: common practice, no source.
    expect([
      ...Object.keys(recipe?.from?.paints ?? {}),
      ...(best?.parts ?? []).map((part) => part.pigment),
    ]).not.toContain('ivory-black');
  });
});

it('leads only to families that there are, at most three times', () => {
  for (const { picture } of DEMO_SCENES)
    for (const state of ['before', 'after'] as const) {
      const advice = adviceOf(STUDIO, demoReading(picture, state));
      expect(advice.length).toBeLessThanOrEqual(3);
      for (const { family } of advice) expect(FAMILY_IDS).toContain(family);
    }
});

describe('a painting held against itself and against another', () => {
  const harbour = demoReading('harbour-roofs', 'before');
  it('has not moved', () => {
    expect(compared(harbour, harbour)).toEqual({ aligned: true, verdict: 'as wide', moved: [] });
  });
  it('is told to be another painting', () => {
    const other = demoReading('quarry-face', 'before');
    const found = compared(harbour, other);
    expect(found.aligned).toBe(false);
    expect(sayAll(comparisonTold(harbour, other, found), WRITTEN).join(' ')).toContain('not framed alike');
  });
});

/** The masses of a reading with another colour in one of them. */
function withChroma(reading: PaintingReading, share: number): PaintingReading {
  const { masses } = reading;
  const light = masses.reduce((best, mass) => (mass.colour.chroma > best.colour.chroma ? mass : best));
  const l = 40;
  const chroma = share * shadingLine(light.colour.chroma, light.colour.lab.l, l);
  const dark = {
    ...light,
    share: 0.1,
    colour: { ...light.colour, step: 6.6, chroma, lab: { ...light.colour.lab, l } },
  };
  const below = shadingLine(light.colour.chroma, light.colour.lab.l, l) - chroma;
  const veil = { slope: share, below, masses: [{ mass: 1, from: 0, below }] };
  return {
    ...reading,
    masses: [light, dark],
    borders: [],
    veil: share < 0.85 ? veil : { slope: share, below: 0, masses: [] },
  };
}

describe('a dark that is duller than shade', () => {
  const reading = demoReading('market-awning', 'after');
  it('is asked about, since only the painter knows whether it is one thing', () => {
    const dull = withChroma(reading, 0.3);
    const told = sayAll(diagnosisOf(dull), WRITTEN).join(' ');
    expect(told).toMatch(/If mass 2 .* is the turned side of mass 1/);
    expect(adviceOf(STUDIO, dull).map(({ id }) => id)).toContain('unveil');
  });
  it('is not, where it lies on the shading line', () => {
    const told = diagnosisOf(withChroma(reading, 1)).map(({ id }) => id);
    expect(told).toContain('painting-clear');
    expect(told).not.toContain('painting-veil');
  });
});

describe('from a mass to a mixture', () => {
  const reading = demoReading('harbour-roofs', 'after');
  const roof = reading.masses.reduce(
    (best, { colour }, at, all) => (colour.chroma > (all[best]?.colour.chroma ?? 0) ? at : best),
    0,
  );
  const asked = { aim: 'shade', darker: 2 } as const;

  it('takes the mass for a wash that looks like it, in parts that can be counted', () => {
    const { from, deltaE00 } = recipesOfMass(STUDIO, reading, roof, asked, tray);
    if (from === undefined) throw new Error('no wash for the roof');
    expect(deltaE00).toBeLessThan(8);
    for (const parts of Object.values(from.paints)) expect(Number.isInteger(parts)).toBe(true);
    const colour = seeLaid(STUDIO, from).colour;
    expect(Math.abs(colour.step - (reading.masses[roof]?.colour.step ?? 0))).toBeLessThan(0.8);
  });
  it('keeps to the paints that the painting has, and says which one is new where it must take one', () => {
    const own = recipesOfMass(STUDIO, reading, roof, asked, { paints: TWELVE, others: ['viridian'] });
    expect(own.newcomers).toEqual([]);
    const few = { paints: ['burnt-sienna', 'cadmium-red'], others: TWELVE };
    const forced = recipesOfMass(STUDIO, reading, roof, { aim: 'dull', darker: 0 }, few);
    expect(forced.newcomers.length).toBeGreaterThan(0);
    expect(sayAll(massTold(STUDIO, forced), WRITTEN).join(' ')).toContain('would be new to it');
  });
  it('says whether what lies there lifts, where it is to be lighter: a stain does not', () => {
    // Ratings of staining, 0 to 4: B. MacEvoy, guide to watercolor pigments (handprint.com), as src/paints/data/appearance.json has them.
    const far = { aim: 'distance', darker: -1 } as const;
    const lifts = recipesOfMass(STUDIO, reading, roof, far, {
      paints: ['burnt-sienna', 'cadmium-orange'],
      others: [],
    });
    const told = (recipes: typeof lifts) => sayAll(massTold(STUDIO, recipes), WRITTEN).join(' ');
    const stained = Object.keys(lifts.from?.paints ?? {}).some(
      (id) => (STUDIO.paints.find((paint) => paint.id === id)?.handling.staining?.value ?? 0) >= STAINS,
    );
    expect(told(lifts)).toContain(stained ? 'will not lift' : 'can only be lifted');
    expect(told({ ...lifts, from: { paints: { 'phthalo-blue-green-shade': 1 }, strength: 0.3 } })).toContain(
      'will not lift: phthalo',
    );
    expect(told(recipesOfMass(STUDIO, reading, roof, asked, tray))).not.toMatch(/lift/);
  });
  it('says so where these paints do not make it', () => {
    const none = recipesOfMass(STUDIO, reading, roof, asked, {
      paints: ['ultramarine-blue'],
      others: TWELVE,
    });
    expect(none.found).toBeUndefined();
    expect(sayAll(massTold(STUDIO, none), WRITTEN).join(' ')).toContain('do not make');
  });
});

describe('the plan and the page', () => {
  const reading = demoReading('orchard-rows', 'before');
  const advice = adviceOf(STUDIO, reading);
  it('is a plan that practise takes', () => {
    const plan = planOfPainting(advice, { name: 'Ana', of: 'the painting orchard.jpg' }, WRITTEN);
    expect(parsePlan(planText(plan), 'plan.yaml')).toEqual(plan);
    expect(plan.families[0]?.family).toBe(advice[0]?.family);
  });
  it('makes no plan of a painting that needs nothing', () => {
    expect(() => planOfPainting([], { name: 'Ana', of: 'x' }, WRITTEN)).toThrow(/no plan/);
  });
  it('is a page without scripts, in which no name becomes markup', () => {
    const told = paintingTold(STUDIO, reading, advice, WRITTEN);
    // As long as the picture of a photograph: 30 thousand letters of base64.
    const png = pngAddress(new Uint8Array(22500).fill(7));
    const parts = [{ title: '<script>x</script>', pictures: [{ png, words: 'it' }], reading }];
    const page = paintingReport('"><img src=x>', parts, told, WRITTEN);
    expect(page).not.toMatch(/<script|<img src=x/);
    expect(page).toContain(`src="${png.markup}"`);
    expect(page).toContain('img-src data:');
    for (const line of told.filter(Boolean)) expect(page).toContain(line.slice(0, 20).replaceAll('’', '’'));
  });
});
