// Sources inside data/colour-srgb.json: IEC 61966-2-1, W3C CSS Color Module Level 4, web-platform-tests.
import { describe, expect, it } from 'vitest';
import { toScreen } from '../../src/colour/screen.js';
import { whiteOf } from '../../src/colour/xyz.js';
import srgb from './data/colour-srgb.json' with { type: 'json' };

/** Tristimulus values against the white of the sRGB standard, brought to the white of the ASTM weights. */
function fromStandard([x = Number.NaN, y = Number.NaN, z = Number.NaN]: readonly number[]) {
  const white = whiteOf('D65-2');
  return {
    x: (x / (0.3127 / 0.329)) * white.x,
    y: y * 100,
    z: (z / ((1 - 0.3127 - 0.329) / 0.329)) * white.z,
  };
}

describe('screen colour (IEC 61966-2-1)', () => {
  it.each(srgb.computed)('of the XYZ of $hex', ({ hex, xyz }) => {
    expect(toScreen(fromStandard(xyz))).toEqual({ hex, inScreenGamut: true });
  });

  it.each(srgb.published)('of the XYZ published for $hex is within its rounding', ({ hex, xyz }) => {
    const got = toScreen(fromStandard(xyz));
    expect(got.inScreenGamut).toBe(true);
    for (const at of [1, 3, 5]) {
      const channel = (text: string) => Number.parseInt(text.slice(at, at + 2), 16);
      expect(Math.abs(channel(got.hex) - channel(hex))).toBeLessThanOrEqual(1);
    }
  });
});
