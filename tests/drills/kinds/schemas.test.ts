import { describe, expect, test } from 'vitest';
import { DataError } from '../../../src/errors.js';
import { drillOf } from './helpers.js';

const A = '{ paints: { burnt-sienna: 1 }, strength: 0.3 }';
const two = `options: [{ id: aa, laid: ${A} }, { id: bb, laid: ${A} }]`;
const area = (extra: string): string =>
  `{ id: roof, name: roof, laid: ${A}, plan: { step: [4, 5]${extra} } }`;

/** A kind, lines that are wrong, what the message must say. */
const FAULTS: readonly (readonly [string, string, RegExp])[] = [
  ['choose', `by: prettiest\n${two}`, /by must be one of most-chroma/],
  ['choose', `by: keeps-colour\n${two}`, /start is missing/],
  ['choose', `by: nearest\n${two}`, /target is missing/],
  ['choose', `by: darkest\noptions: [{ id: aa, laid: ${A} }]`, /two to four/],
  ['choose', `by: darkest\noptions: [{ id: aa, laid: ${A} }, { id: aa, laid: ${A} }]`, /same id/],
  [
    'choose',
    `by: darkest\noptions: [{ id: aa, laid: { paints: { burnt-siena: 1 }, strength: 0.3 } }, { id: bb, laid: ${A} }]`,
    /no paint is called "burnt-siena".*burnt-sienna/,
  ],
  [
    'choose',
    `by: darkest\noptions: [{ id: aa, laid: { layers: [${A}] } }, { id: bb, laid: ${A} }]`,
    /at least two washes/,
  ],
  [
    'choose',
    `by: darkest\noptions: [{ id: aa, laid: { strokes: [{ paints: { burnt-sienna: 1 }, strength: 0.3, share: 0.2 }, { paints: { sap-green: 1 }, strength: 0.3, share: 0.2 }] } }, { id: bb, laid: ${A} }]`,
    /shares of the strokes must add up to 1/,
  ],
  ['choose', `by: darkest\ncolour: red\n${two}`, /"colour" is not a known key/],
  [
    'order',
    `by: darkest\nitems: [{ id: aa, name: a, laid: ${A} }, { id: bb, name: b, laid: ${A} }]`,
    /exactly three/,
  ],
  [
    'order',
    `by: darkest\nitems: [{ id: aa, name: much too long a name, laid: ${A} }, { id: bb, name: b, laid: ${A} }, { id: cc, name: c, laid: ${A} }]`,
    /at most 12 characters/,
  ],
  [
    'washes',
    'paint: burnt-sienna\nblocks: [{ name: near, step: 5, shadeOf: 3 }]',
    /exactly one of step, shadeOf and castOf/,
  ],
  ['washes', 'paint: burnt-sienna\nblocks: [{ name: near, step: 11 }]', /0.5 to 10.5/],
  ['washes', 'paint: burnt-sienna\nblocks: [{ name: near, step: 5 }, { name: near, step: 6 }]', /same name/],
  [
    'washes',
    "paint: burnt-sienna\nwaters: ['1:5', '1:6']\nblocks: [{ name: near, step: 5 }]",
    /a water is one of 1:96/,
  ],
  [
    'sort-values',
    `areas: [{ name: a, laid: ${A}, share: 0.5 }, { name: b, laid: ${A}, share: 0.6 }]`,
    /must add up to 1/,
  ],
  ['shadow-values', 'light: moon\nthings: [{ name: a, shadow: shade, lit: 2 }]', /light must be sun/],
  [
    'shadow-values',
    'light: overcast\nthings: [{ name: a, shadow: cast, lit: 2 }]',
    /no cast shadow to measure/,
  ],
  ['shadow-values', 'light: sun\nthings: [{ name: a, shadow: shade, lit: 12 }]', /0.5 to 10.5/],
  ['shade-chroma', `lit: ${A}\nshade: 12`, /step 2 to 10/],
  ['shade-chroma', `lit: ${A}\nshade: 6\nasks: [colour]`, /asks are chroma, swatch, turn/],
  ['drying', `wash: ${A}\nasks: [mend]`, /target is missing/],
  ['drying', `wash: ${A}\nasks: []`, /at least one/],
  [
    'diagnosis',
    `areas: [${area('')}]\nrepairs: [{ id: aa, repair: { leave: true } }, { id: bb, repair: { lift: 0.5 } }]`,
    /two to five/,
  ],
  [
    'diagnosis',
    `areas: [${area('')}, ${area('').replace('id: roof', 'id: none')}]\nrepairs: [{ id: aa, repair: { leave: true } }, { id: bb, repair: { lift: 0.5 } }]`,
    /cannot have the id "none"/,
  ],
  [
    'diagnosis',
    `areas: [${area('')}, ${area('').replace('id: roof', 'id: wall')}]\nrepairs: [{ id: aa, repair: { leave: true } }, { id: bb, repair: { lift: 2 } }]`,
    /lift must be above 0/,
  ],
  [
    'diagnosis',
    `areas: [${area(', chroma: [9, 2]')}, ${area('').replace('id: roof', 'id: wall')}]\nrepairs: [{ id: aa, repair: { leave: true } }, { id: bb, repair: { lift: 0.5 } }]`,
    /low to high/,
  ],
  [
    'worked',
    `case: [{ id: aa, name: a, laid: ${A} }]\nstatements: [{ fact: darker, of: [aa] }, { fact: neutral, of: [aa] }]`,
    /this fact is about 2 things/,
  ],
  [
    'worked',
    `case: [{ id: aa, name: a, laid: ${A} }]\nstatements: [{ fact: neutral, of: [bb] }, { fact: neutral, of: [aa] }]`,
    /something that the case does not have/,
  ],
  [
    'worked',
    `case: [{ id: aa, name: a, laid: ${A} }]\nstatements: [{ fact: pretty, of: [aa] }, { fact: neutral, of: [aa] }]`,
    /fact must be one of/,
  ],
  ['guess', `by: darkest\n${two}`, /kind must be one of the kinds/],
];

describe('a wrong drill is refused in one line with the line where it stands', () => {
  test.each(FAULTS)('%s: %s', (kind, lines, message) => {
    let caught: unknown;
    try {
      drillOf(kind, lines);
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(DataError);
    const text = (caught as DataError).message;
    expect(text).toMatch(message);
    expect(text).toMatch(/^sample\.yaml:\d+: /);
    expect(text).not.toMatch(/\n/);
  });

  test('control and direction-changing characters are refused in every text', () => {
    for (const bad of ['\\u001b[31m', '\\u202e', '\\u0007']) {
      expect(() =>
        drillOf('washes', `paint: burnt-sienna\nblocks: [{ name: "near ${bad}", step: 5 }]`),
      ).toThrow(/control or direction-changing/);
    }
  });
});
