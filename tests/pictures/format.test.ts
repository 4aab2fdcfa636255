/** What a picture file may hold, and what is said of one that may not. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DataError } from '../../src/errors.js';
import { parsePictureFile } from '../../src/pictures/format.js';
import { STUDIO } from '../studio.js';

const GOOD = `format: 1
id: two-planes
place: harbour
title: Two planes
centre: wall
behind: sky
lies: { start: wall, passage: wall-turned }
areas:
  - { id: sky, words: the sky, wash: { paints: { cobalt-blue: 1 }, strength: 0.05 } }
  - { id: wall, words: the wall, wash: { paints: { raw-sienna: 1 }, strength: 0.1 } }
  - { id: wall-turned, words: the wall's turned side, turned: wall, wash: { paints: { burnt-sienna: 1 }, strength: 0.4 } }
shapes:
  - { area: sky, rects: [[0, 0, 48, 28]], graded: { to: 0.2, towards: down } }
  - { area: wall, polygons: [[[10, 8], [24, 8], [24, 22], [10, 22]]] }
  - { area: wall-turned, polygons: [[[24, 8], [32, 10], [32, 21], [24, 22]]] }
`;

const read = (text: string) => parsePictureFile(STUDIO, text, 'two-planes', 'two-planes.yaml');

function refusal(text: string): string {
  try {
    read(text);
  } catch (error) {
    if (error instanceof DataError) return error.message;
    throw error;
  }
  return 'read';
}

it('reads a picture as it is written', () => {
  const picture = read(GOOD);
  expect(picture.areas.map(({ id }) => id)).toEqual(['sky', 'wall', 'wall-turned']);
  expect(picture.subjects).toEqual({});
  expect(picture.shapes[0]?.graded).toEqual({ to: 0.2, towards: 'down' });
  expect('format' in picture).toBe(false);
});

describe('refuses, in one line that names file and line,', () => {
  const CASES: readonly (readonly [string, string, string, RegExp])[] = [
    ['another format', 'format: 1', 'format: 2', /two-planes\.yaml:1: format: format must be 1/],
    [
      'another name than that of the file',
      'id: two-planes',
      'id: three-planes',
      /:2: the id must be that of the file/,
    ],
    ['an unknown key', 'behind: sky', 'behind: sky\nmood: calm', /"mood" is not a known key/],
    ['a missing key', 'behind: sky\n', '', /behind is missing/],
    ['an area that is not listed', 'start: wall,', 'start: roof,', /speaks of the area "roof"/],
    ['a turned side of nothing', 'turned: wall,', 'turned: roof,', /speaks of the area "roof"/],
    [
      'an area that no shape draws',
      'area: wall-turned',
      'area: wall',
      /no shape draws the area "wall-turned"/,
    ],
    ['an area that is listed twice', 'id: sky, words', 'id: wall, words', /lists an area twice/],
    [
      'a paint that the studio lacks',
      'cobalt-blue: 1',
      'cobalt-blu: 1',
      /:9: .*no paint is called "cobalt-blu"/,
    ],
    [
      'a strength beyond masstone',
      'strength: 0.4',
      'strength: 1.4',
      /strength must be above 0 and at most 1/,
    ],
    [
      'a shape of two forms',
      'rects: [[0, 0, 48, 28]]',
      'rects: [[0, 0, 48, 28]], lines: [[[0, 0], [1, 1]]]',
      /exactly one of/,
    ],
    ['a shape of no form', ', rects: [[0, 0, 48, 28]]', '', /exactly one of/],
    ['a width of what is no line', 'towards: down }', 'towards: down }, width: 2', /only lines have a width/],
    ['a point far outside the sheet', '[10, 8]', '[10, 8000]', /must be a number from -12 to 40/],
    ['a point that is no number', '[10, 8]', '[10, .nan]', /must be a number from -12 to 40/],
    ['a box that is turned over', '[[0, 0, 48, 28]]', '[[48, 0, 0, 28]]', /must run from left top/],
    ['a gradation into nothing', 'to: 0.2', 'to: 0', /to is 0\.05 to 4/],
    ['a direction that is none', 'towards: down', 'towards: sideways', /towards is one of/],
    ['a sheet that is not covered', '[[0, 0, 48, 28]]', '[[0, 0, 48, 27]]', /covered by no shape/],
    ['a text with a control character', 'words: the sky', 'words: "the \\u202esky"', /direction-changing/],
    ['an id with markup', 'id: sky', 'id: "sky\\"><script>"', /lower-case letters/],
    ['a reserved key', 'behind: sky', 'behind: sky\n__proto__: { a: 1 }', /__proto__/],
  ];

  it.each(CASES)('%s', (_, from, to, words) => {
    expect(GOOD).toContain(from);
    const message = refusal(GOOD.replace(from, to));
    expect(message).toMatch(words);
    expect(message).toMatch(/^two-planes\.yaml:\d+: /);
    expect(message).not.toMatch(/\n/);
  });

  it('too many figures, points, shapes and areas', () => {
    const many = (count: number, of: string): string => Array.from({ length: count }, () => of).join(', ');
    expect(refusal(GOOD.replace('[[0, 0, 48, 28]]', `[${many(61, '[0, 0, 48, 28]')}]`))).toMatch(
      /more than 60/,
    );
    expect(refusal(GOOD.replace('[10, 22]', many(60, '[10, 22]')))).toMatch(/more than 40/);
    const shape = '  - { area: wall, rects: [[1, 1, 2, 2]] }\n';
    expect(refusal(GOOD + shape.repeat(78))).toMatch(/at most 80/);
  });
});

it('reads or refuses anything that is written into a shipped file, and never fails otherwise', () => {
  const shipped = readFileSync('exercises/pictures/harbour-roofs.yaml', 'utf8');
  fc.assert(
    fc.property(fc.nat(shipped.length - 1), fc.nat(12), fc.string({ maxLength: 12 }), (at, gone, put) => {
      const text = shipped.slice(0, at) + put + shipped.slice(at + gone);
      try {
        expect(parsePictureFile(STUDIO, text, 'harbour-roofs', 'harbour-roofs.yaml').id).toBe(
          'harbour-roofs',
        );
      } catch (error) {
        expect(error).toBeInstanceOf(DataError);
        expect((error as Error).message).not.toMatch(/[\u0000-\u001f]/);
      }
    }),
    { numRuns: 150 },
  );
});
