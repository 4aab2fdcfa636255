/**
 * The pictures of the README are the screens as they are drawn now. `MUDLARK_PICTURES=write npx vitest run tests/tui/screens-drawn`
 * draws them anew; look at each before it is committed.
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, expect, it } from 'vitest';
import { FAMILY_REFS } from '../../src/commands/family-refs.js';
import { findFamily } from '../../src/drills/families.js';
import { atAGlance, foldSorted, glanceLines } from '../../src/practice/index.js';
import { DAY, entryOf, START } from '../practice/simulate.js';
import { Bench, fakeDeps, mixingBench } from './fakes.js';
import { drillCalled, withPicture } from './scenes.js';
import { screenSvg } from './screen-svg.js';
import type { Stand } from './states.js';
import { Stills } from './still.js';

const SIZE = { columns: 80, rows: 24 };
const FOLDER = new URL('../terminal/pictures/', import.meta.url);
const isWriting = process.env['MUDLARK_PICTURES'] === 'write';

/** Two sets of a learner who began three days ago. */
const answered = [
  ['three-values', 0, 'good'],
  ['darken-bright', 0, 'fair'],
  ['three-values', 2, 'good'],
  ['darken-bright', 2, 'good'],
  ['darken-bright', 2, 'good'],
].map(([family, day, verdict]) =>
  entryOf(
    { family: family as string, level: 2, reason: 'steady', feedback: 'each', drill: 'd' },
    verdict as 'good' | 'fair',
    START + (day as number) * DAY,
    `set-${day}`,
  ),
);
const glance = atAGlance(foldSorted(answered), FAMILY_REFS, new Date(START + 3 * DAY));

const familyName = (id: string): string => findFamily(id)?.name ?? id;
const on = (drill: string): Bench => new Bench(fakeDeps({ ...withPicture(drillCalled(drill)), familyName }));

const SCREENS: readonly { name: string; title: string; stand: () => Stand }[] = [
  {
    name: 'home',
    title: 'The home screen: what is due, and what there is to do',
    stand: () => new Bench(fakeDeps({ glance: (columns) => glanceLines(glance, columns) })),
  },
  {
    name: 'drill',
    title: 'A drill: a tiled roof, the step and chroma wanted in its shade, and four paints to choose from',
    stand: () => on('harbour-roof-shade').keys('down'),
  },
  {
    name: 'sheet',
    title: 'A drill beside its little sheet: a sail whose shaded side is left open until the answer',
    stand: () => on('shade-sail-four').keys('right'),
  },
  {
    name: 'result',
    title:
      'A result: start, yours and the best side by side, the answer in its picture, the mark and the reasons',
    stand: () => on('harbour-roof-shade').keys('down', 'enter'),
  },
  {
    name: 'bench',
    title: 'The mixing bench: two paints and the colour that comes of them',
    stand: () => mixingBench().keys('down'),
  },
];

const stills = new Stills();
afterAll(() => stills.close());

it.each(SCREENS)('the picture of the $name is the screen', async ({ name, title, stand }) => {
  const { state, program } = stand();
  const { raw } = stills.of({ ...state, size: SIZE }, program);
  const picture = await screenSvg(raw, SIZE, title);
  const file = new URL(`${name}.svg`, FOLDER);
  if (isWriting) {
    mkdirSync(FOLDER, { recursive: true });
    writeFileSync(file, picture);
  }
  expect(picture, 'as it is committed; MUDLARK_PICTURES=write draws it anew').toBe(
    readFileSync(file, 'utf8'),
  );
});
