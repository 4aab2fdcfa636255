import { describe, expect, it } from 'vitest';
import { lightOfCode } from '../../src/colour/srgb.js';
import { munsellValueFromY, painterStep, valueFromStep } from '../../src/colour/value.js';
import { VALUE_BOUNDS } from '../../src/judgement/table.js';
import { STUDY_VALUES, studyBounds, studyOf, studySteps, studyValueOf } from '../../src/painting/study.js';
import type { Likeness } from '../../src/painting/types.js';

/** A ramp of values from 10 to 0, the same in each row. */
function ramp(width = 400, height = 12): Likeness {
  const value = Float32Array.from(
    { length: width * height },
    (_, at) => 10 - (10 * (at % width)) / (width - 1),
  );
  return { width, height, value, lab: new Float32Array(3 * value.length) };
}

const stepOfGrey = (grey: number): number => painterStep(munsellValueFromY(100 * lightOfCode(grey / 255)));

describe('value studies', () => {
  it('cut what watercolour reaches into even parts; three are light, middle and dark', () => {
    expect(studyBounds(3)).toEqual([...VALUE_BOUNDS]);
    for (const values of STUDY_VALUES) {
      const bounds = studyBounds(values);
      const parts = bounds.slice(1).map((bound, at) => bound - (bounds[at] as number));
      for (const part of parts) expect(part).toBeCloseTo(7.5 / values, 9);
      expect(studyValueOf(0.9, bounds)).toBe(0);
      expect(studyValueOf(10, bounds)).toBe(values - 1);
    }
  });

  it('show each value as a grey, the steps between them equal to the eye', () => {
    for (const values of STUDY_VALUES) {
      const { data, width, height } = studyOf(ramp(), values);
      expect(data).toHaveLength(width * height);
      const greys = [...new Set(data)];
      expect(greys).toHaveLength(values);
      const steps = greys.map(stepOfGrey);
      const apart = 7.5 / (values - 1);
      for (const [at, step] of steps.entries()) {
        expect(Math.abs(step - (studySteps(values)[at] as number))).toBeLessThan(0.05);
        if (at > 0) expect(Math.abs(step - (steps[at - 1] as number) - apart)).toBeLessThan(0.1);
      }
    }
  });

  it('change value where their bounds say', () => {
    const { data, width } = studyOf(ramp(), 5);
    const row = [...data.subarray(5 * width, 6 * width)];
    const changes = row.flatMap((grey, at) => (at > 0 && grey !== row[at - 1] ? [at] : []));
    expect(changes).toHaveLength(4);
    for (const [at, x] of changes.entries())
      expect(
        Math.abs(painterStep(10 - (10 * x) / (width - 1)) - (studyBounds(5)[at] as number)),
      ).toBeLessThan(0.1);
  });

  it('a study in greys keeps the value of each pixel as far as 8 bits tell', () => {
    const likeness = ramp();
    const { data } = studyOf(likeness, 'grey');
    for (let at = 0; at < likeness.width; at++)
      expect(
        Math.abs(valueFromStep(stepOfGrey(data[at] as number)) - (likeness.value[at] as number)),
      ).toBeLessThan(0.06);
  });

  it('specks of grain do not stand in a study of few values', () => {
    const likeness = ramp(60, 60);
    likeness.value.fill(8);
    for (let at = 0; at < likeness.value.length; at += 37) likeness.value[at] = 3;
    expect(new Set(studyOf(likeness, 3).data).size).toBe(1);
  });
});
