/** The values of a painting in figures: the range in use, shares, the ten steps. */
import { painterStep } from '../../colour/index.js';
import { VALUE_BOUNDS } from '../../judgement/table.js';
import type { Likeness, PaintingReading } from '../types.js';

/**
 * Share of the painting left out at each end of the range: a hundredth. A glint, a hair or a speck of grain is no value that a painting
 * uses, while an accent of two hundredths is.
 */
const LEFT_OUT = 0.01;
const BINS = 2000;

/** Munsell value under which a share of all pixels lies. */
function valueAt(counts: Uint32Array, total: number, share: number): number {
  let [sum, bin] = [0, 0];
  while (bin < BINS - 1 && sum + (counts[bin] as number) < share * total) sum += counts[bin++] as number;
  return (10 * (bin + 0.5)) / BINS;
}

/** Range, shares and histogram of all pixels. */
export function figuresOf({ value }: Likeness): Pick<PaintingReading, 'range' | 'shares' | 'histogram'> {
  const counts = new Uint32Array(BINS);
  for (let at = 0; at < value.length; at++) {
    const bin = Math.min(BINS - 1, ((value[at] as number) * BINS) / 10) | 0;
    counts[bin] = (counts[bin] as number) + 1;
  }
  const histogram = new Array<number>(10).fill(0);
  let [light, middle, dark] = [0, 0, 0];
  for (const [bin, count] of counts.entries()) {
    const step = painterStep((10 * (bin + 0.5)) / BINS);
    const share = count / value.length;
    const at = Math.min(9, Math.max(0, Math.round(step) - 1));
    histogram[at] = (histogram[at] as number) + share;
    if (step <= VALUE_BOUNDS[0]) light += share;
    else if (step > VALUE_BOUNDS[1]) dark += share;
    else middle += share;
  }
  return {
    range: {
      light: painterStep(valueAt(counts, value.length, 1 - LEFT_OUT)),
      dark: painterStep(valueAt(counts, value.length, LEFT_OUT)),
    },
    shares: { light, middle, dark },
    histogram,
  };
}

/** Least range in which edges can be told from grain, in value. */
const LEAST_RANGE = 1;
/** Share of all neighbours that may be steeper: a speck is no edge. */
const STEEPER = 0.0005;

/** Steepest change of value over two pixels along a row, as a share of the range in use; undefined where hardly any is. */
export function steepestOf(
  { value, width }: Likeness,
  { light, dark }: PaintingReading['range'],
): number | undefined {
  const range = dark - light;
  if (range < LEAST_RANGE) return undefined;
  const counts = new Uint32Array(101);
  for (let at = 0; at + 2 < value.length; at++) {
    if (at % width >= width - 2) continue;
    const share = Math.abs((value[at + 2] as number) - (value[at] as number)) / range;
    const bin = Math.min(100, 100 * share) | 0;
    counts[bin] = (counts[bin] as number) + 1;
  }
  let [sum, bin] = [0, 100];
  while (bin > 0 && sum + (counts[bin] as number) < STEEPER * value.length) sum += counts[bin--] as number;
  return bin / 100;
}
