import { describe, expect, test } from 'vitest';
import { accuracyText } from '../../src/commands/accuracy.js';
import { plotCurve } from '../../src/commands/curve-plot.js';
import {
  neutralisersOf,
  pigmentShowJson,
  pigmentShowText,
  pigmentsJson,
  pigmentsText,
} from '../../src/commands/pigments.js';
import { widthOf } from '../../src/text/wrap.js';
import { paintOf as paint, STUDIO } from '../studio.js';

/** Every ninth pigment: measured, transferred, estimated, a mixture and a white among them. */
const SOME = [
  ...STUDIO.paints.filter((_, index) => index % 9 === 0),
  paint('neutral-tint'),
  paint('titanium-white'),
];

describe('pigments show', () => {
  test.each([60, 80, 120])(
    'keeps to %i columns without colour',
    (columns) => {
      for (const { id } of SOME) {
        const text = pigmentShowText(STUDIO, id, { columns, colour: false });
        expect(text).not.toContain('\u001b');
        for (const line of text.split('\n')) expect(widthOf(line), line).toBeLessThanOrEqual(columns);
      }
    },
    60_000,
  );

  test('colours only the ladder', () => {
    const lines = pigmentShowText(STUDIO, 'viridian', { columns: 80, colour: true }).split('\n');
    const coloured = lines.filter((line) => line.includes('\u001b['));
    expect(coloured).toHaveLength(6);
    for (const line of coloured) expect(line).toContain('\u001b[49m');
  });

  test('defers to the label whatever the pigment', () => {
    for (const { id } of SOME) {
      const text = pigmentShowText(STUDIO, id, { columns: 120, colour: false }).replace(/\s+/g, ' ');
      expect(text).toContain(
        'The label of your paint, its safety data sheet and your local rules on waste come before anything said here.',
      );
    }
  }, 60_000);

  test('burnt sienna greys ultramarine, alizarin crimson does not (common practice, no source)', () => {
    const partners = neutralisersOf(STUDIO, paint('ultramarine-blue')).map(({ id }) => id);
    expect(partners).toContain('burnt-sienna');
    expect(partners).not.toContain('alizarin-crimson');
    expect(neutralisersOf(STUDIO, paint('ivory-black'))).toEqual([]);
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

  test('accuracy as text ends with what no prediction can do', () => {
    expect(accuracyText(STUDIO)).toMatch(/Makers differ[\s\S]*closer than that\.\n$/);
  }, 60_000);
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
