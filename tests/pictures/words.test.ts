/** Pictures for the ear, in signs and as SVG. */
import { describe, expect, it } from 'vitest';
import {
  ASCII_SIGNS,
  findPicture,
  inCharacters,
  inWords,
  type Picture,
  painted,
  SHADE_SIGNS,
  signOf,
  svg,
} from '../../src/pictures/index.js';
import { WRITTEN } from '../../src/words/voice.js';
import { SHIPPED_PICTURES } from '../exercises.js';
import { STUDIO } from '../studio.js';

const PICTURES = SHIPPED_PICTURES;
const ROOFS = findPicture(PICTURES, 'harbour-roofs') as Picture;
const STROKES = {
  strokes: [
    { paints: { 'burnt-sienna': 1 }, strength: 0.3, share: 0.7 },
    { paints: { 'ultramarine-blue': 1 }, strength: 0.4, share: 0.3 },
  ],
};

/** Whether tags open and close in order, every attribute is quoted, and nothing else stands in them. */
function isWellFormed(markup: string): boolean {
  const open: string[] = [];
  const rest = markup.replace(
    /<(\/?)([a-zA-Z]+)((?: [a-zA-Z][a-zA-Z0-9:-]*="[^"<>&]*(?:&(?:amp|lt|gt|quot|#39|#96);[^"<>&]*)*")*)(\/?)>/g,
    (_, end, name, _a, empty) => {
      if (end === '/') {
        if (open.pop() !== name) open.push('wrong');
      } else if (empty !== '/') open.push(name);
      return '';
    },
  );
  return open.length === 0 && !/[<>]/.test(rest);
}

describe.each(PICTURES.map((picture) => [picture.id, picture] as const))('%s', (_, picture) => {
  it('is told area by area, each once, in the order of its list', () => {
    const lines = inWords(painted(STUDIO, picture), WRITTEN);
    expect(lines).toHaveLength(picture.areas.length);
    const wordings = picture.areas.map(({ words }) => words);
    expect(new Set(wordings).size).toBe(wordings.length);
    for (const [index, line] of lines.entries()) {
      expect(line.toLowerCase().startsWith(`${wordings[index]}: `)).toBe(true);
      expect(line).toMatch(/^[A-Z][^:]*: [^:]+, step \d+\.\d.*\.$/);
    }
  });

  it('is well-formed SVG in which every reference is its own, open and in strokes too', () => {
    for (const covering of ['open', STROKES] as const)
      for (const inGrey of [false, true]) {
        const { markup } = svg(painted(STUDIO, picture, { [picture.lies.passage]: covering }), {
          prefix: 'p1',
          inGrey,
        });
        expect(isWellFormed(markup), markup.slice(0, 200)).toBe(true);
        expect(markup).not.toMatch(
          /href|<script|<style|<image|on[a-z]+=|https?:(?!\/\/www\.w3\.org\/2000\/svg)/,
        );
        expect(markup).not.toMatch(/NaN|undefined|Infinity/);
        const ids = [...markup.matchAll(/ id="([^"]+)"/g)].map((found) => found[1]);
        expect(new Set(ids).size).toBe(ids.length);
        for (const [, used] of markup.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(used);
        if (inGrey)
          for (const [, r, g] of markup.matchAll(/#([0-9a-f]{2})([0-9a-f]{2})[0-9a-f]{2}/g))
            expect(r).toBe(g);
      }
  });

  it('is drawn with signs, lines of the width that is asked for', () => {
    for (const signs of [SHADE_SIGNS, ASCII_SIGNS]) {
      const lines = inCharacters(painted(STUDIO, picture, { [picture.lies.passage]: 'open' }), 48, 14, signs);
      expect(lines).toHaveLength(14);
      for (const line of lines) expect([...line]).toHaveLength(48);
      expect(new Set(lines.join('')).size).toBeGreaterThanOrEqual(4);
      expect(lines.join('').split(signs.open).length - 1).toBeGreaterThanOrEqual(0.03 * 48 * 14);
    }
  });
});

it('says what is open, what is in strokes and what is graded, on the scale of the learner', () => {
  const told = (covering: 'open' | typeof STROKES, voice = WRITTEN): string =>
    inWords(painted(STUDIO, ROOFS, { 'roof-turned': covering }), voice).find((line) =>
      line.includes("roof's"),
    ) as string;
  expect(told('open')).toBe("The roof's turned side: left open.");
  expect(told(STROKES)).toMatch(
    /^The roof's turned side: strokes, 70 % [a-z ]+ and 30 % [a-z ]+; together .*step \d/,
  );
  expect(told(STROKES, { scale: 'black-first', spoken: true })).toMatch(/value \d\.\d/);
  expect(inWords(painted(STUDIO, ROOFS), WRITTEN)[0]).toMatch(/running out to/);
});

it('a darker value never takes a lighter sign', () => {
  for (const { ramp } of [SHADE_SIGNS, ASCII_SIGNS]) {
    const places = Array.from({ length: 101 }, (_, at) => ramp.indexOf(signOf(10 - at / 10, ramp)));
    expect(places).toEqual([...places].sort((one, other) => one - other));
    expect([places[0], places.at(-1)]).toEqual([0, [...ramp].length - 1]);
  }
});

it('no text can become markup, and a prefix that may not begin an id is refused', () => {
  const hostile = { ...ROOFS, title: '"><script>alert(1)</script>\u202e' };
  const { markup } = svg(painted(STUDIO, hostile), { prefix: 'p' });
  expect(markup).not.toMatch(/<script|\u202e/);
  expect(isWellFormed(markup)).toBe(true);
  for (const prefix of ['', '1a', 'a b', 'a"', 'a)'])
    expect(() => svg(painted(STUDIO, ROOFS), { prefix })).toThrow(RangeError);
});
