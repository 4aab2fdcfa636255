/** What a learner has put together: its file, hostile ones among them. */
import { readFileSync, writeFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keepOwnBox } from '../../src/commands/box-change.js';
import { DataError, StoreError } from '../../src/errors.js';
import { STRENGTH_FACTOR } from '../../src/paints/index.js';
import { type OwnBox, openProfile, type Profile, paletteOf } from '../../src/profile/index.js';
import { MOST_BOXES, type OwnStudio, ownText, parseBox, parseOwn } from '../../src/profile/own-studio.js';
import { STUDIO } from '../studio.js';
import { freshHome } from './helpers.js';

freshHome();

const STUDIO_BOX: OwnBox = {
  name: 'studio',
  paints: [{ paint: 'burnt-sienna', name: 'my sienna', strength: 1.4 }, { paint: 'ultramarine-blue' }],
};
const FIELD_BOX: OwnBox = { name: 'field', paints: [{ paint: 'viridian' }, { paint: 'burnt-sienna' }] };

const put = (profile: Profile, box: OwnBox): OwnBox => keepOwnBox(profile, box.name, () => box);
const pathOf = (profile: Profile): string => profile.files?.studio ?? '';

const ids = STUDIO.paints.map(({ id }) => id);
const ownPaint = (paint: string) =>
  fc.record(
    {
      paint: fc.constant(paint),
      name: fc.string({ unit: fc.constantFrom(...'aeiklmnrstuäöüßé茶'), minLength: 1, maxLength: 15 }),
      strength: fc.double({ min: STRENGTH_FACTOR.least, max: STRENGTH_FACTOR.most, noNaN: true }),
    },
    { requiredKeys: ['paint'] },
  );
const someBox = fc
  .record({
    name: fc.string({ unit: fc.constantFrom(...'abcdefgh0129'), minLength: 1, maxLength: 12 }),
    paints: fc
      .uniqueArray(fc.constantFrom(...ids), { minLength: 2, maxLength: 12 })
      .chain((some) => fc.tuple(...some.map(ownPaint))),
  })
  .filter(({ paints }) => {
    const names = paints.flatMap(({ name }) => name ?? []);
    return new Set(names).size === names.length;
  });
const someStudio = fc
  .uniqueArray(someBox, { maxLength: 5, selector: ({ name }) => name })
  .map((boxes): OwnStudio => ({ format: 1, boxes: boxes as OwnStudio['boxes'] }));

describe('the file of a learner’s own', () => {
  it('is read back as it was written', () => {
    fc.assert(
      fc.property(someStudio, (own) => {
        expect(parseOwn(ownText(own, 'test'), 'test')).toEqual(own);
      }),
    );
  });

  it('is refused in one line without control characters, whatever stands in it', () => {
    const hostile = fc.oneof(
      fc.json(),
      fc.string(),
      fc.tuple(someStudio, fc.anything({ withNullPrototype: false })).map(([own, other]) => {
        const [first] = own.boxes;
        return JSON.stringify({
          ...own,
          boxes: [{ ...first, paints: [other, { paint: other, name: other }] }],
        });
      }),
      fc
        .tuple(someStudio, fc.string({ unit: 'binary' }))
        .map(([own, key]) => JSON.stringify({ ...own, [key]: 1 })),
    );
    fc.assert(
      fc.property(hostile, (text) => {
        try {
          expect(ownText(parseOwn(text, 'file'), 'file')).toBeTruthy();
        } catch (error) {
          expect(error).toBeInstanceOf(DataError);
          expect((error as Error).message).toMatch(/^file: [^\p{Cc}\u202a-\u202e\u2066-\u2069]+$/u);
        }
      }),
      { numRuns: 400 },
    );
  });

  const paints = [{ paint: 'burnt-sienna' }, { paint: 'viridian' }];
  const boxes = (n: number) => Array.from({ length: n }, (_, at) => ({ name: `box-${at}`, paints }));
  const called = (name: string) => ({
    name: 'a',
    paints: [{ paint: 'burnt-sienna', name }, { paint: 'viridian' }],
  });
  const strong = (strength: unknown) => ({
    name: 'a',
    paints: [{ paint: 'burnt-sienna', strength }, { paint: 'viridian' }],
  });
  it.each<[string, unknown]>([
    ['a later format', { format: 2, boxes: [] }],
    ['an unknown key', { format: 1, boxes: [], brushes: [] }],
    ['no boxes', { format: 1 }],
    ['too many boxes', { format: 1, boxes: boxes(MOST_BOXES + 1) }],
    ['one name twice', { format: 1, boxes: [...boxes(1), ...boxes(1)] }],
    ['one paint', { format: 1, boxes: [{ name: 'a', paints: paints.slice(1) }] }],
    ['a paint twice', { format: 1, boxes: [{ name: 'a', paints: [...paints, ...paints] }] }],
    [
      '61 paints',
      { format: 1, boxes: [{ name: 'a', paints: ids.slice(0, 61).map((paint) => ({ paint })) }] },
    ],
    ['an escape in a name', { format: 1, boxes: [called('a\u001b[31mred')] }],
    ['a direction override', { format: 1, boxes: [called('a\u202eb')] }],
    ['a name without an end', { format: 1, boxes: [called('x'.repeat(31))] }],
    ['a wide name without an end', { format: 1, boxes: [called('茶'.repeat(16))] }],
    ['a name of nothing', { format: 1, boxes: [called('')] }],
    ['a strength of nothing', { format: 1, boxes: [strong(0)] }],
    ['a strength beyond its bounds', { format: 1, boxes: [strong(4.1)] }],
    ['a strength in words', { format: 1, boxes: [strong('1.4')] }],
    ['a name of a box that is a path', { format: 1, boxes: [{ name: '../x', paints }] }],
  ])('refuses %s', (_, value) => {
    expect(() => parseOwn(JSON.stringify(value), 'file')).toThrow(/^file: [^\n]+$/);
  });

  it('takes 20 boxes of 60 paints', () => {
    const full = ids.slice(0, 60).map((paint) => ({ paint, name: paint.slice(0, 30), strength: 1.25 }));
    const own = {
      format: 1,
      boxes: boxes(MOST_BOXES).map(({ name }) => ({ name, paints: full })),
    } as OwnStudio;
    expect(parseOwn(ownText(own, 'file'), 'file').boxes).toHaveLength(MOST_BOXES);
  });

  it('refuses keys that objects carry themselves', () => {
    const text = '{"format":1,"boxes":[],"__proto__":{"x":1}}';
    expect(() => parseOwn(text, 'file')).toThrow('"__proto__" is not a known key here');
    expect(() => parseBox('{"kind":"mudlark-box","format":1,"box":{"constructor":1}}', 'file')).toThrow(
      '"constructor" is not a known key here',
    );
  });

  it('keeps a paint that this version does not have, and does not use it', () => {
    const box: OwnBox = { name: 'old', paints: [...STUDIO_BOX.paints, { paint: 'mummy-brown' }] };
    expect(paletteOf(STUDIO, box).pigments).toEqual(['burnt-sienna', 'ultramarine-blue']);
    expect(parseOwn(ownText({ format: 1, boxes: [box] }, 'file'), 'file').boxes).toEqual([box]);
  });
});

describe('a profile', () => {
  it('has the boxes of its learner, and of nobody else', async () => {
    put(await openProfile({ learner: 'Ana' }), STUDIO_BOX);
    expect((await openProfile({ learner: 'Ana' })).own.boxes).toEqual([STUDIO_BOX]);
    expect((await openProfile({ learner: 'Ben' })).own.boxes).toEqual([]);
  });

  it('changes what is on the disk, not what it read before', async () => {
    const [one, other] = [await openProfile(), await openProfile()];
    put(one, STUDIO_BOX);
    put(other, FIELD_BOX);
    expect((await openProfile()).own.boxes).toEqual([STUDIO_BOX, FIELD_BOX]);
  });

  it.each([
    ['damaged', '{"format": 1, "boxes": [{'],
    ['of a newer version', '{"format": 2, "boxes": [], "brushes": []}'],
  ])('leaves a file that is %s as it stands, says so once, and writes nothing over it', async (_, text) => {
    const profile = await openProfile();
    put(profile, STUDIO_BOX);
    writeFileSync(pathOf(profile), text);
    const again = await openProfile();
    expect(again.own.boxes).toEqual([]);
    expect(again.notices).toHaveLength(1);
    expect(again.notices[0]).toMatch(
      /studio\.json: it cannot be used: .*; your boxes are not used, the file is left/,
    );
    expect(() => put(again, FIELD_BOX)).toThrow(StoreError);
    expect(readFileSync(pathOf(profile), 'utf8')).toBe(text);
  });
});
