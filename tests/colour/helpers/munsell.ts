import type { Xyz } from '../../../src/colour/xyz.js';

const FAMILIES = ['R', 'YR', 'Y', 'GY', 'G', 'BG', 'B', 'PB', 'P', 'RP'];

/** A Munsell notation taken apart; hue on the 100-step circle (5R is 5), chroma 0 for N. */
export interface MunsellParts {
  readonly family: string;
  readonly hue: number;
  readonly value: number;
  readonly chroma: number;
}

export function parseMunsell(notation: string): MunsellParts {
  const neutral = /^N (?<value>[\d.]+)\/?$/.exec(notation);
  if (neutral) return { family: 'N', hue: 0, value: Number(neutral[1]), chroma: 0 };
  const [, step, family = '', value, chroma] =
    /^([\d.]+)(R|YR|Y|GY|G|BG|B|PB|P|RP) ([\d.]+)\/([\d.]+)$/.exec(notation) ?? [];
  if (!family) throw new Error(`not a Munsell notation: ${notation}`);
  return {
    family,
    hue: 10 * FAMILIES.indexOf(family) + Number(step),
    value: Number(value),
    chroma: Number(chroma),
  };
}

/** How far apart two hues are on the 100-step circle. */
export function hueSteps(one: number, other: number): number {
  const apart = Math.abs(one - other) % 100;
  return Math.min(apart, 100 - apart);
}

type Matrix = readonly (readonly [number, number, number])[];

/** Cone response of the Bradford transform. Source: ICC.1 (ISO 15076-1), annex E. */
const BRADFORD: Matrix = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];

const BRADFORD_INVERSE: Matrix = [
  [0.9869929, -0.1470543, 0.1599627],
  [0.4323053, 0.5183603, 0.0492912],
  [-0.0085287, 0.0400428, 0.9684867],
];

const times = (matrix: Matrix, [x = 0, y = 0, z = 0]: readonly number[]): number[] =>
  matrix.map(([a, b, c]) => a * x + b * y + c * z);

const fromChromaticity = (x: number, y: number, luminance: number): number[] => [
  (x / y) * luminance,
  luminance,
  ((1 - x - y) / y) * luminance,
];

/** A colour given for illuminant C brought to D65 (Bradford), 0-100. Whites: CIE 15:2004. */
export function fromIlluminantC(x: number, y: number, luminance: number): Xyz {
  const from = times(BRADFORD, fromChromaticity(0.31006, 0.31616, 100));
  const to = times(BRADFORD, fromChromaticity(0.3127, 0.329, 100));
  const cones = times(BRADFORD, fromChromaticity(x, y, luminance));
  const adapted = cones.map((cone, i) => (cone * (to[i] as number)) / (from[i] as number));
  const [X = 0, Y = 0, Z = 0] = times(BRADFORD_INVERSE, adapted);
  return { x: X, y: Y, z: Z };
}
