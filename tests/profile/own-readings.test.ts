/** Readings in the file of a learner's own: hostile ones, more and fewer, the way along with the record, and put to use. */
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { boxDelete } from '../../src/commands/box.js';
import { keepOwnBox } from '../../src/commands/box-change.js';
import type { BoxDrills } from '../../src/commands/box-drills.js';
import { driedCorrect, driedForget, driedShow, driedTable } from '../../src/commands/dried.js';
import { type DriedPlace, keepReadings, readingsOf } from '../../src/commands/dried-store.js';
import { boxInUse, learnerStudio } from '../../src/commands/learner.js';
import { recordExport, recordImport, recordReset } from '../../src/commands/record.js';
import { boxStudio, paintOf } from '../../src/paints/index.js';
import { MOST_READINGS, openProfile, READINGS_USED } from '../../src/profile/index.js';
import { parseOwn } from '../../src/profile/own-studio.js';
import type { Reading } from '../../src/readings/index.js';
import { WRITTEN } from '../../src/words/voice.js';
import { askedFor, painted } from '../readings/recovery.js';
import { STUDIO } from '../studio.js';
import { DAY, freshHome, START } from './helpers.js';

const home = freshHome();
const now = new Date(START + DAY);
const STYLE = { voice: WRITTEN, columns: 80 };
const PAINTS = ['burnt-sienna', 'ultramarine-blue', 'prussian-blue', 'alizarin-crimson'];

async function place(learner = 'Ana'): Promise<DriedPlace> {
  const before = await openProfile({ learner });
  if (before.own.boxes.length === 0)
    keepOwnBox(before, 'mine', () => ({ name: 'mine', paints: PAINTS.map((paint) => ({ paint })) }));
  const profile = await openProfile({ learner, palette: 'mine' });
  const shelf = learnerStudio(profile);
  const box = boxInUse(shelf, profile);
  return { profile, box, studio: boxStudio(shelf, box), library: STUDIO };
}

const READING: Reading = {
  wash: { paints: { 'burnt-sienna': 1 }, strength: 0.16, add: { 'ultramarine-blue': 2 } },
  alone: { step: 3.5 },
  mixed: { step: 6 },
};

const fileWith = (reading: unknown): string =>
  JSON.stringify({
    format: 1,
    boxes: [],
    readings: [{ box: 'mine', at: now.toISOString(), ...(reading as object) }],
  });

describe('readings in the file', () => {
  it('are read back', () => {
    expect(parseOwn(fileWith(READING), 'x').readings?.[0]).toMatchObject(READING);
  });

  it.each([
    ['a step off the scale', { ...READING, mixed: { step: 11 } }],
    ['a step that is no number', { ...READING, mixed: { step: '6' } }],
    ['neither step nor CIELAB', { ...READING, mixed: {} }],
    ['both', { ...READING, mixed: { step: 6, lab: { l: 1, a: 1, b: 1 } } }],
    ['CIELAB beyond any colour', { ...READING, mixed: { lab: { l: 40, a: 1e9, b: 0 } } }],
    ['no mixture', { wash: READING.wash }],
    ['another key', { ...READING, note: '\u001b[2J' }],
    ['a moment that is none', { ...READING, at: 'yesterday' }],
    ['a box that cannot be called so', { ...READING, box: '../etc' }],
    ['no paints', { ...READING, wash: { paints: {}, strength: 0.1 } }],
    ['a strength beyond masstone', { ...READING, wash: { ...READING.wash, strength: 2 } }],
  ])('are refused in one line with %s', (_what, reading) => {
    expect(() => parseOwn(fileWith(reading), 'x')).toThrow(/^x: [^\n\u001b]+$/);
  });

  it('are so many at most', () => {
    const one = { box: 'mine', at: now.toISOString(), ...READING };
    const readings = Array.from({ length: MOST_READINGS + 1 }, () => one);
    expect(() => parseOwn(JSON.stringify({ format: 1, boxes: [], readings }), 'x')).toThrow(/at most/);
  });
});

describe('readings of a box', () => {
  it('are kept, shown and forgotten', async () => {
    const at = await place();
    expect(driedTable(at, 'burnt-sienna=1 1:24; ultramarine-blue=2; 3.5; 6', STYLE, now)).toContain('Kept.');
    expect(
      driedTable(at, 'burnt-sienna=1 1:12; prussian-blue=1; lab(60 20 30); 7.5B 3/4', STYLE, now),
    ).toContain('colour difference');
    const again = await place();
    expect(readingsOf(again).used).toHaveLength(2);
    expect(driedShow(again, STYLE, false)).toMatch(/yours 3\.5, predicted 3\.\d/);
    expect(await driedForget(again, '1', () => true)).toContain('forgotten');
    expect(readingsOf(await place()).used).toHaveLength(1);
    await expect(driedForget(again, '7', () => true)).rejects.toThrow(/reading/);
  });

  it('are refused of paints that are not in it', async () => {
    const at = await place();
    expect(() => driedTable(at, 'viridian=1 1:24; -; -; 6', STYLE, now)).toThrow(/not in the mine box/);
    expect(readingsOf(await place()).used).toHaveLength(0);
  });

  it('go with the box that is deleted, and those of another stay', async () => {
    const at = await place();
    keepOwnBox(at.profile, 'field', () => ({ name: 'field', paints: PAINTS.map((paint) => ({ paint })) }));
    const field = { ...at, box: { ...at.box, id: 'field' } };
    keepReadings(at, [READING, READING], now);
    keepReadings(field, [READING], now);
    const { profile } = await place();
    expect(profile.own.readings).toHaveLength(3);
    const drillsOf = (): never => {
      throw new Error('no drill is asked for');
    };
    const boxes = { profile, library: STUDIO, drillsOf };
    await boxDelete(boxes, 'mine', () => false);
    expect(profile.own.readings).toHaveLength(3);
    await boxDelete(boxes, 'mine', () => true);
    const { own } = await openProfile({ learner: 'Ana' });
    expect(own.boxes.map(({ name }) => name)).toEqual(['field']);
    expect(own.readings?.map(({ box }) => box)).toEqual(['field']);
  });

  it('are used up to the latest few', async () => {
    const at = await place();
    keepReadings(
      at,
      Array.from({ length: READINGS_USED + 3 }, () => READING),
      now,
    );
    expect(readingsOf(at)).toMatchObject({ earlier: 3 });
    expect(readingsOf(at).used).toHaveLength(READINGS_USED);
  });

  it('correct the box on a yes, and what it predicts', async () => {
    const at = await place();
    const truth = new Map([
      ['burnt-sienna', Math.log(0.7)],
      ['ultramarine-blue', Math.log(1.8)],
      ['prussian-blue', 0],
      ['alizarin-crimson', 0],
    ]);
    keepReadings(
      at,
      painted(askedFor(PAINTS, 4), truth, { noise: 0.2, offset: 0.3, water: 0.1 }, seededDraw(4)),
      now,
    );
    expect(await driedCorrect(at, STYLE, () => false)).toContain('Nothing was changed');
    expect((await place()).box.strengths).toEqual({});
    expect(await driedCorrect(at, STYLE, () => true)).toContain('reckons with them');
    const { box, studio } = await place();
    expect(box.strengths?.['ultramarine-blue']).toBeGreaterThan(1.3);
    // The others, the sienna among them, are not surely unlike the library's.
    expect(Object.keys(box.strengths ?? {})).toEqual(['ultramarine-blue']);
    expect(paintOf(studio, 'ultramarine-blue').fullStrength).toBeLessThan(
      paintOf(STUDIO, 'ultramarine-blue').fullStrength,
    );
    expect(await driedCorrect(await place(), STYLE, () => true)).toContain('stays as it is');
  });

  it('correct nothing while nothing is known', async () => {
    await expect(driedCorrect(await place(), STYLE, () => true)).rejects.toThrow(
      /no tube is known well enough/,
    );
  });
});

describe('the way along with the record', () => {
  it('takes readings out, in once, and away', async () => {
    const ana = await place();
    keepReadings(ana, [READING], now);
    const path = join(home.path, 'ana.json');
    recordExport(ana.profile, path, { now });
    const ben = await openProfile({ learner: 'Ben' });
    expect(recordImport(ben, path)).toContain('Readings of dried patches added: 1.');
    expect(recordImport(await openProfile({ learner: 'Ben' }), path)).not.toContain('Readings');
    expect((await openProfile({ learner: 'Ben' })).own.readings).toHaveLength(1);
    await recordReset(ana.profile, () => true, now);
    expect((await openProfile({ learner: 'Ana' })).own.readings).toBeUndefined();
    expect(existsSync(path)).toBe(true);
  });

  it('goes with the box: of a deleted one nothing is left, of another all', async () => {
    const at = await place();
    keepOwnBox(at.profile, 'other', () => ({ name: 'other', paints: PAINTS.map((paint) => ({ paint })) }));
    keepReadings(at, [READING, READING], now);
    keepReadings({ ...at, box: { ...at.box, id: 'other' } }, [READING], now);
    const boxes = { profile: at.profile, library: STUDIO, drillsOf: () => ({}) as BoxDrills };
    expect(await boxDelete(boxes, 'mine', () => false)).toContain('Nothing was changed');
    expect((await openProfile({ learner: 'Ana' })).own.readings).toHaveLength(3);
    await boxDelete(boxes, 'mine', () => true);
    const { own } = await openProfile({ learner: 'Ana' });
    expect(own.boxes.map(({ name }) => name)).toEqual(['other']);
    expect(own.readings).toMatchObject([{ box: 'other', ...READING }]);
  });

  it('leaves a file alone that cannot be used', async () => {
    const at = await place();
    const file = at.profile.files?.studio ?? '';
    writeFileSync(file, fileWith({ ...READING, mixed: { step: 99 } }));
    const again = await openProfile({ learner: 'Ana' });
    expect(again.notices.join()).toMatch(/step must be/);
  });
});
