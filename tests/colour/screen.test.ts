import { converter, lab65 } from 'culori';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE00 } from '../../src/colour/difference.js';
import { chromaOf, hueDifference, hueOf, labToXyz, xyzToLab } from '../../src/colour/lab.js';
import { greyOfValue, toScreen, xyzOfScreen } from '../../src/colour/screen.js';
import { reflectanceToXyz, whiteOf } from '../../src/colour/xyz.js';
import { anyReflectance, flat } from './helpers/spectra.js';

const WHITE = whiteOf('D65-2');
const toRgb = converter('rgb');

describe('screen colour', () => {
  it('shows an even reflectance as an even grey, white as white', () => {
    expect(toScreen(WHITE)).toEqual({ hex: '#ffffff', inScreenGamut: true });
    expect(toScreen(reflectanceToXyz(flat(1))).hex).toBe('#ffffff');
    expect(toScreen({ x: 0, y: 0, z: 0 })).toEqual({ hex: '#000000', inScreenGamut: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (reflectance) => {
        const { hex } = toScreen(reflectanceToXyz(flat(reflectance)));
        const channels = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
        expect(Math.max(...channels) - Math.min(...channels)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('comes back within rounding to 8 bits when it is inside, and says when it is not', () => {
    fc.assert(
      fc.property(anyReflectance, (reflectance) => {
        const xyz = reflectanceToXyz(reflectance);
        const { hex, inScreenGamut } = toScreen(xyz);
        const { l = 0, a = 0, b = 0 } = lab65(hex) ?? {};
        const apart = deltaE00({ l, a, b }, xyzToLab(xyz, WHITE));
        if (inScreenGamut) expect(apart).toBeLessThan(1);
        else expect(apart).toBeGreaterThan(0);
      }),
    );
  });

  it('keeps lightness and hue of colours that a screen cannot show, and lowers their chroma', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 90, noNaN: true }),
        fc.double({ min: 60, max: 130, noNaN: true }),
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        (l, chroma, radians) => {
          const lab = { l, a: chroma * Math.cos(radians), b: chroma * Math.sin(radians) };
          const { hex, inScreenGamut } = toScreen(labToXyz(lab, WHITE));
          fc.pre(!inScreenGamut);
          const { l: shownL = 0, a = 0, b = 0 } = lab65(hex) ?? {};
          const shown = { l: shownL, a, b };
          expect(Math.abs(shown.l - l)).toBeLessThan(0.5);
          // A colour just outside loses less chroma than the rounding to eight bits may give back.
          expect(chromaOf(shown)).toBeLessThan(chroma + 0.3);
          // Eight bits a channel blur the hue of what little chroma may be left.
          if (chromaOf(shown) > 20)
            expect(Math.abs(hueDifference(hueOf(lab), hueOf(shown)))).toBeLessThan(2.5);
        },
      ),
    );
  });

  it('judges the edge of the gamut by the colour, not by rounding', () => {
    const red = converter('xyz65')({ mode: 'rgb', r: 1, g: 0, b: 0 });
    const edge = {
      x: (red.x / (0.3127 / 0.329)) * WHITE.x,
      y: red.y * 100,
      z: (red.z / ((1 - 0.3127 - 0.329) / 0.329)) * WHITE.z,
    };
    expect(toScreen(edge)).toEqual({ hex: '#ff0000', inScreenGamut: true });
    const lab = xyzToLab(edge, WHITE);
    const beyond = toScreen(labToXyz({ l: lab.l, a: lab.a * 1.05, b: lab.b * 1.05 }, WHITE));
    expect(beyond.inScreenGamut).toBe(false);
    const { r, g, b } = toRgb(beyond.hex) ?? { r: 0, g: 1, b: 1 };
    expect(r).toBeGreaterThan(0.98);
    expect(Math.max(g, b)).toBeLessThan(0.1);
  });

  it('is outside where one channel alone is too bright, or one alone below nothing', () => {
    const shown = (r: number, g: number, b: number) => {
      const { x, y, z } = converter('xyz65')({ mode: 'rgb', r, g, b });
      return toScreen(labToXyz(xyzToLab(xyzOfScreen({ x, y, z }), WHITE), WHITE)).inScreenGamut;
    };
    expect(shown(0.9, 0.6, 0.6)).toBe(true);
    expect([shown(1.02, 0.6, 0.6), shown(0.6, 1.02, 0.6), shown(0.6, 0.6, 1.02)]).toEqual([
      false,
      false,
      false,
    ]);
    expect([shown(-0.02, 0.6, 0.6), shown(0.6, -0.02, 0.6), shown(0.6, 0.6, -0.02)]).toEqual([
      false,
      false,
      false,
    ]);
  });

  it('of a value is its grey: V 5 has 19.27 % of the light (ASTM D1535), which is code 121 (IEC 61966-2-1)', () => {
    expect([0, 5, 10].map(greyOfValue)).toEqual(['#000000', '#797979', '#ffffff']);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', (bad) => {
    expect(() => toScreen({ x: bad, y: 20, z: 20 })).toThrow(RangeError);
    expect(() => toScreen({ x: 20, y: 20, z: bad })).toThrow('is not a colour');
  });
});
