import { describe, expect, test } from 'vitest';
import { plotCurve } from '../../src/commands/curve-plot.js';
import { neutralisersOf, pigmentShowJson, pigmentShowText } from '../../src/commands/pigment-page.js';
import { pigmentsJson, pigmentsText } from '../../src/commands/pigments.js';
import { some } from '../cases.js';
import { paintOf, STUDIO } from '../studio.js';
import { expectPage } from './page.js';

/** Measured, transferred and estimated, a mixture and a white; the long run looks at every page. */
const SOME = [
  ...STUDIO.paints.filter((_, index) => index % 27 === 0),
  paintOf('neutral-tint'),
  paintOf('titanium-white'),
];

describe('pigments show', () => {
  test.each(some([60, 80, 120], 3))(
    'keeps to %i columns without colour, and defers to the label',
    (columns) => {
      for (const { id } of SOME) expectPage(id, columns);
    },
  );

  test('colours only the ladder', () => {
    const lines = pigmentShowText(STUDIO, 'viridian', { columns: 80, colour: true }).split('\n');
    const coloured = lines.filter((line) => line.includes('\u001b['));
    expect(coloured).toHaveLength(6);
    for (const line of coloured) expect(line).toContain('\u001b[49m');
  });

  test('burnt sienna greys ultramarine, alizarin crimson does not (common practice, no source)', () => {
    const partners = neutralisersOf(STUDIO, paintOf('ultramarine-blue')).map(({ id }) => id);
    expect(partners).toContain('burnt-sienna');
    expect(partners).not.toContain('alizarin-crimson');
    expect(neutralisersOf(STUDIO, paintOf('ivory-black'))).toEqual([]);
  });

  test('says how the strength is known', () => {
    const text = (id: string) =>
      pigmentShowText(STUDIO, id, { columns: 120, colour: false }).replace(/\s+/g, ' ');
    expect(text('ultramarine-blue')).toContain('strength measured:');
    expect(text('pyrrole-red')).toMatch(/strength anchored:.*factor of two/);
    expect(text('viridian')).toMatch(/strength assumed:.*a guess/);
  });

  test('an unknown id is a usage error that names the nearest', () => {
    expect(() => pigmentShowText(STUDIO, 'burnt-siena', { columns: 80, colour: false })).toThrow(
      /burnt-sienna/,
    );
    expect(() => pigmentShowJson(STUDIO, 'x'.repeat(5000))).toThrow(/no pigment is called/);
  });
});

describe('lists', () => {
  test('JSON has every pigment with its masstone', () => {
    const { schemaVersion, pigments } = pigmentsJson(STUDIO) as {
      schemaVersion: number;
      pigments: unknown[];
    };
    expect(schemaVersion).toBe(1);
    expect(pigments).toHaveLength(STUDIO.paints.length);
    for (const pigment of pigments) {
      expect(pigment).toMatchObject({
        id: expect.any(String),
        ci: expect.any(Array),
        masstone: { l: expect.any(Number), value: expect.any(Number), hue: expect.any(Number) },
      });
    }
  });

  test('text has a line for every pigment', () => {
    const text = pigmentsText(STUDIO);
    for (const { id } of STUDIO.paints) expect(text).toContain(`\n${id} `);
  });
});

describe('plot', () => {
  test('a level curve is a level row, and a step falls', () => {
    const level = plotCurve([{ mark: '*', values: new Float64Array(38).fill(0.5) }], {
      columns: 47,
      rows: 5,
      most: 1,
    });
    expect(level[2]).toContain('*'.repeat(40));
    const step = Float64Array.from({ length: 38 }, (_, band) => (band < 19 ? 1 : 0));
    const [top = '', ...rest] = plotCurve([{ mark: '*', values: step }], { columns: 47, rows: 5, most: 1 });
    expect(top.indexOf('*')).toBeLessThan((rest[3] ?? '').indexOf('*'));
  });
});
