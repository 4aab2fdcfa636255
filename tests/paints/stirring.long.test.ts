/**
 * What any two paints of the library do when one is stirred into a wash of the other. Facts of the trade (common practice, no source):
 * a darker paint darkens, more of it darkens more, a trace hardly shows, twice a trace shows twice.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { type ColourReading, readColour } from '../../src/colour/index.js';
import type { Pigment } from '../../src/paints/index.js';
import { type Load, madeUp, puddleReflectance, stirIn } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

const STRENGTHS = [0.1, 0.2, 0.3, 0.5, 0.8];
/** Parts of the second paint to one of the first, tube paint. */
const AMOUNTS = [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1];

const seen = (loads: readonly Load[]) => readColour(puddleReflectance(loads, STUDIO.paper));

const labDistance = ({ lab: x }: ColourReading, { lab: y }: ColourReading) =>
  Math.hypot(x.l - y.l, x.a - y.a, x.b - y.b);

/** Worst case of a property over all pairs. */
interface Worst {
  value: number;
  where: string;
}

const worst = {
  lightens: { value: 0, where: '' },
  moreLightensPale: { value: 0, where: '' },
  moreLightensStrong: { value: 0, where: '' },
  doubles: { value: 0, where: '' },
};
const traces = new Map<string, Worst>();

function keep(kept: Worst, value: number, where: string): void {
  if (value > kept.value) Object.assign(kept, { value, where });
}

function stirEach(first: Pigment, second: Pigment, strength: number, wash: ColourReading): void {
  const laid = madeUp([{ pigment: first, parts: 1 }], strength);
  const stirred = (ratio: number) => stirIn(laid, [{ pigment: second, parts: ratio }]);
  const where = `${second.id} into ${first.id} at ${strength}`;
  let before: ColourReading | undefined;
  for (const ratio of AMOUNTS) {
    const loads = stirred(ratio);
    const mixture = seen(loads);
    if (before !== undefined) {
      const kept = strength <= 0.3 ? worst.moreLightensPale : worst.moreLightensStrong;
      keep(kept, before.step - mixture.step, `${where}, ${ratio}`);
    }
    const darker = seen(loads.slice(1)).step > wash.step;
    if (darker) keep(worst.lightens, wash.step - mixture.step, `${where}, ${ratio}`);
    before = darker ? mixture : undefined;
  }
  const trace = seen([...laid, { pigment: second, load: 0.003 * second.fullStrength }]);
  const kept = traces.get(second.id) ?? { value: 0, where: '' };
  keep(kept, Math.abs(trace.step - wash.step), where);
  traces.set(second.id, kept);
  const one = labDistance(seen(stirred(1 / 1000)), wash);
  const two = labDistance(seen(stirred(1 / 500)), wash);
  keep(worst.doubles, two / one, where);
}

describe('stirring any paint into a wash of any other', () => {
  beforeAll(() => {
    for (const first of STUDIO.paints) {
      for (const strength of STRENGTHS) {
        const wash = seen(madeUp([{ pigment: first, parts: 1 }], strength));
        for (const second of STUDIO.paints) if (second !== first) stirEach(first, second, strength, wash);
      }
    }
  }, 300_000);

  test('a paint whose own film is darker than the wash never lightens it', () => {
    expect(worst.lightens.value, worst.lightens.where).toBeLessThanOrEqual(0.05);
  });

  test('more of it never lightens a wash up to strength 0.3; above that an opaque paint may, a little', () => {
    expect(worst.moreLightensPale.value, worst.moreLightensPale.where).toBeLessThanOrEqual(0.05);
    expect(worst.moreLightensStrong.value, worst.moreLightensStrong.where).toBeLessThanOrEqual(0.2);
  });

  test('twice a trace moves the colour at most twice as far', () => {
    expect(worst.doubles.value, worst.doubles.where).toBeLessThanOrEqual(2.05);
  });

  // A masstone of a dark or opaque paint is a thick film: 0.3 % of measured ultramarine shows on white by a quarter of a step, anchored cadmium red deep by 0.353.
  test('a trace of 0.3 % of full strength moves value by at most 0.2 step, for the thickest masstones 0.36', () => {
    const past = [...traces].filter(([, { value }]) => value > 0.2);
    for (const [id, { value, where }] of past) expect(value, `${id}: ${where}`).toBeLessThanOrEqual(0.36);
    expect(past.length, past.map(([id]) => id).join(', ')).toBeLessThanOrEqual(12);
  });
});
