/** What makes a picture good, computed for every shipped one: guide to composition, common practice, no source. */
import { describe, expect, it } from 'vitest';
import { readColour } from '../../src/colour/reading.js';
import { SUBJECTS } from '../../src/drills/lexicon.js';
import { VALUE_BOUNDS } from '../../src/judgement/index.js';
import { findPicture, type Picture, painted, pixelsOf, raster } from '../../src/pictures/index.js';
import { SHIPPED_DRILLS, SHIPPED_PICTURES } from '../exercises.js';
import { STUDIO } from '../studio.js';
import { sharesOf, touching } from './measure.js';

const PICTURES = SHIPPED_PICTURES;
const PAPER = readColour(STUDIO.paper.reflectance);

/** Sizes in cells that pictures are shown at, as pixels. */
const SIZES = [
  [24, 16],
  [48, 28],
  [96, 56],
] as const;

const pairsOf = ({ lies, subjects }: Picture) => [lies, ...Object.values(subjects)];

const toneOf = (picture: Picture, id: string) => {
  const look = painted(STUDIO, picture).looks[id];
  if (look?.kind !== 'laid') throw new Error(`${id} is open`);
  return look.tone.colour;
};

it('every subject of the lexicon has a picture, in the place where it stands', () => {
  for (const { id, picture, place } of SUBJECTS)
    expect([id, findPicture(PICTURES, picture)?.place]).toEqual([id, place]);
});

it('every picture is used by a drill, and every subject that it lists is one of its own', () => {
  const drills = SHIPPED_DRILLS;
  for (const { id, subjects } of PICTURES) {
    expect(
      drills.some(({ picture }) => picture === id),
      id,
    ).toBe(true);
    for (const subject of Object.keys(subjects)) expect(SUBJECTS.map((one) => one.id)).toContain(subject);
  }
});

describe.each(PICTURES.map((picture) => [picture.id, picture] as const))('%s', (_, picture) => {
  const pixels = pixelsOf(painted(STUDIO, picture), 48, 28);
  const drawn = raster(picture, 48, 28);
  const shares = sharesOf(drawn);

  it('has three values in unequal shares when it is grey', () => {
    const counts = [0, 0, 0];
    for (const at of pixels.at) {
      const step = pixels.tones[at]?.colour.step as number;
      const index = VALUE_BOUNDS.filter((bound) => step > bound).length;
      counts[index] = (counts[index] as number) + 1;
    }
    const [least, middle, most] = counts.map((count) => count / pixels.at.length).sort((a, b) => a - b) as [
      number,
      number,
      number,
    ];
    expect(least, 'least').toBeGreaterThanOrEqual(0.06);
    expect(most / middle, 'most to middle').toBeGreaterThanOrEqual(1.15);
  });

  it('shows the paper, or nearly', () => {
    const near = [...pixels.at].filter((at) => (pixels.tones[at]?.colour.step as number) < PAPER.step + 0.8);
    expect(near.length / pixels.at.length).toBeGreaterThanOrEqual(0.05);
  });

  it('has a centre of interest that stands out against what is behind it', () => {
    const [centre, behind] = [toneOf(picture, picture.centre), toneOf(picture, picture.behind)];
    expect(shares.get(picture.centre)).toBeGreaterThanOrEqual(0.015);
    expect(touching(drawn, picture.centre)).toContain(picture.behind);
    expect(
      Math.max(Math.abs(centre.step - behind.step), Math.abs(centre.chroma - behind.chroma) / 15),
    ).toBeGreaterThan(1);
  });

  it('has a thing with a lit and a turned side that is darker', () => {
    const turned = picture.areas.filter((area) => area.turned !== undefined);
    expect(turned.length).toBeGreaterThanOrEqual(1);
    for (const area of turned) {
      const [lit, away] = [toneOf(picture, area.turned as string), toneOf(picture, area.id)];
      expect(away.step - lit.step, area.id).toBeGreaterThanOrEqual(0.8);
      expect(touching(drawn, area.id), area.id).toContain(area.turned);
    }
  });

  it('has passages that are large enough to judge, flat, and touch what they are judged against', () => {
    const graded = picture.shapes.filter((shape) => shape.graded !== undefined).map(({ area }) => area);
    for (const { start, passage } of pairsOf(picture)) {
      expect(shares.get(passage), passage).toBeGreaterThanOrEqual(
        passage === picture.lies.passage ? 0.04 : 0.02,
      );
      expect(graded, passage).not.toContain(passage);
      expect(touching(drawn, passage), `${passage} by ${start}`).toContain(start);
      expect(start).not.toBe(passage);
      expect(Math.abs(toneOf(picture, passage).step - toneOf(picture, start).step), passage).toBeGreaterThan(
        0.5,
      );
    }
    expect(graded).not.toContain(picture.lies.start);
  });

  it('keeps every area at every size', () => {
    for (const [width, height] of SIZES) {
      const kept = sharesOf(raster(picture, width, height));
      for (const { id } of picture.areas) expect(kept.get(id) ?? 0, `${id} at ${width}`).toBeGreaterThan(0);
    }
  });

  it('shows an open passage at every size, in colour and in grey', () => {
    const open = painted(STUDIO, picture, { [picture.lies.passage]: 'open' });
    for (const [width, height] of SIZES) {
      const [before, after] = [
        pixelsOf(open, width, height),
        pixelsOf(painted(STUDIO, picture), width, height),
      ];
      const own = picture.areas.findIndex(({ id }) => id === picture.lies.passage);
      const { area } = raster(picture, width, height);
      const changed = [...area].filter(
        (of, at) =>
          of === own &&
          before.tones[before.at[at] as number]?.grey !== after.tones[after.at[at] as number]?.grey,
      );
      expect(changed.length, `at ${width}`).toBeGreaterThan(
        0.8 * [...area].filter((of) => of === own).length,
      );
      expect(before.tones.length).toBeGreaterThan(1);
    }
  });
});
