/** The shipped figures follow from the carried ones. */
import { beforeAll, describe, expect, test } from 'vitest';
import { libraryFile, type Rebuilt, rebuildLibrary } from '../../src/paints/calibration/rebuild.js';
import shipped from '../../src/paints/data/library.json' with { type: 'json' };

/** Five digits are shipped; the solver may differ in the last one on another machine. */
const TOLERANCE = 2e-3;

describe('rebuild', () => {
  let rebuilt: Rebuilt[];
  beforeAll(() => {
    rebuilt = rebuildLibrary();
  }, 120_000);

  test('reproduces every shipped pigment', () => {
    expect(rebuilt.map(({ id }) => id)).toEqual(shipped.pigments.map(({ id }) => id));
    for (const [index, record] of rebuilt.entries()) {
      const carried = shipped.pigments[index] as Rebuilt;
      expect(record.shape, record.id).toEqual(carried.shape);
      expect(Math.abs(Math.log(record.fullStrength / carried.fullStrength)), record.id).toBeLessThan(
        TOLERANCE,
      );
      for (const which of ['K', 'S'] as const) {
        expect(record[which]?.length, record.id).toBe(carried[which]?.length);
        for (const [band, value] of (record[which] ?? []).entries()) {
          const asked = carried[which]?.[band] ?? Number.NaN;
          expect(Math.abs(value - asked), `${record.id} ${which} ${band}`).toBeLessThanOrEqual(
            TOLERANCE * asked + 1e-9,
          );
        }
      }
    }
  });

  test('the file it writes is the shipped one in shape', () => {
    const written = JSON.parse(libraryFile(rebuilt, shipped.date));
    expect(Object.keys(written)).toEqual(Object.keys(shipped));
    expect(written.sets).toEqual(shipped.sets);
  });
});
