/** What the screens keep of a dried mixture: the file, the words, and what is refused. */
import { describe, expect, it } from 'vitest';
import { keepOwnBox } from '../../src/commands/box-change.js';
import { tellingLines } from '../../src/commands/dried.js';
import { readingShelf } from '../../src/commands/kept-readings.js';
import { boxInUse, learnerStudio } from '../../src/commands/learner.js';
import { boxStudio } from '../../src/paints/index.js';
import { openProfile, type Profile } from '../../src/profile/index.js';
import type { Wash } from '../../src/washes/index.js';
import { WRITTEN } from '../../src/words/voice.js';
import { freshHome } from '../profile/helpers.js';
import { STUDIO } from '../studio.js';

freshHome();
const PAINTS = ['burnt-sienna', 'ultramarine-blue', 'prussian-blue'];
const WASH: Wash = { paints: { 'burnt-sienna': 1 }, strength: 0.16, add: { 'ultramarine-blue': 2 }, thin: 2 };

async function shelfOf(palette = 'mine', strengths: Readonly<Record<string, number>> = {}) {
  const profile = await openProfile({ learner: 'Ana', palette: 'six' });
  keepOwnBox(profile, 'mine', () => ({
    name: 'mine',
    paints: PAINTS.map((paint) => ({
      paint,
      ...(strengths[paint] === undefined ? {} : { strength: strengths[paint] }),
    })),
  }));
  const again = await openProfile({ learner: 'Ana', palette });
  const box = boxInUse(learnerStudio(again), again);
  const studio = boxStudio(learnerStudio(again), box);
  return { profile: again, box, studio, shelf: readingShelf(again, { box, studio }, STUDIO) };
}
const kept = async (): Promise<Profile['own']['readings']> =>
  (await openProfile({ learner: 'Ana' })).own.readings;

describe('what dried after a drill', () => {
  it('is kept with its wash, and told as mudlark dried show tells it', async () => {
    const { profile, box, studio, shelf } = await shelfOf();
    const told = shelf.keep(WASH, { alone: '3.5', mixed: '6' }, WRITTEN);
    expect(await kept()).toMatchObject([
      { box: 'mine', wash: WASH, alone: { step: 3.5 }, mixed: { step: 6 } },
    ]);
    expect(told[0]).toMatch(/^The wash alone, step: yours 3\.5, predicted \d+\.\d\.$/);
    expect(told[1]).toMatch(/^The mixture, step: yours 6\.0, predicted \d+\.\d\.$/);
    const style = { voice: WRITTEN, columns: 100 };
    const shown = tellingLines({ profile, box, studio, library: STUDIO }, style);
    expect(told.slice(2).join(' ')).toBe(shown.join(' '));
  });

  it('is read on the learner’s scale', async () => {
    const { shelf } = await shelfOf();
    const told = shelf.keep(WASH, { alone: '', mixed: '4' }, { ...WRITTEN, scale: 'black-first' });
    // Painter's steps are 10.5 less Munsell value (src/judgement/README.md).
    expect(await kept()).toMatchObject([{ mixed: { step: 6.5 } }]);
    expect(told[0]).toMatch(/^The mixture, V: yours 4\.0/);
  });

  it('may be the wash alone, which is a puddle of its own', async () => {
    const { shelf } = await shelfOf();
    const told = shelf.keep(WASH, { alone: '3.5', mixed: '' }, WRITTEN);
    const [reading] = (await kept()) ?? [];
    expect(reading?.wash).toEqual({ paints: { 'burnt-sienna': 1 }, strength: 0.16 });
    expect(reading).toMatchObject({ mixed: { step: 3.5 } });
    expect(told[0]).toMatch(/^The wash alone, step: yours 3\.5/);
  });

  it.each([
    ['nothing', { alone: '', mixed: '' }, /Type first/],
    ['a point', { alone: '', mixed: '.' }, /^The mixture: "\." is no step from 1 to 10\.$/],
    ['a step off the scale', { alone: '99', mixed: '6' }, /^The wash alone: "99" is no step from 1 to 10\.$/],
    ['words', { alone: '', mixed: '\u001b[2J6x' }, /^The mixture: "6x" is no step/],
  ])('refuses %s in one line and keeps nothing', async (_, texts, message) => {
    const { shelf } = await shelfOf();
    const before = JSON.stringify(await kept());
    expect(() => shelf.keep(WASH, texts, WRITTEN)).toThrow(message);
    expect(JSON.stringify(await kept())).toBe(before);
  });

  it('is not kept of a box of the program’s, nor of a paint that the box does not hold', async () => {
    const shipped = await shelfOf('six');
    expect(() => shipped.shelf.keep(WASH, { alone: '', mixed: '6' }, WRITTEN)).toThrow(/are the program's/);
    const { shelf } = await shelfOf();
    const stray = { ...WASH, add: { 'cadmium-red': 1 } };
    expect(() => shelf.keep(stray, { alone: '', mixed: '6' }, WRITTEN)).toThrow(/cadmium-red is not in/);
    expect(await kept()).toBeUndefined();
  });
});
