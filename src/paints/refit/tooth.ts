/** Thickness factors of a film over an uneven paper, for any unevenness: the refit tries several. */

/** Steps of the sum that stands for the integral, and where it ends: less than 1e-9 lies beyond for any variation up to 1. */
const STEPS = 200_000;
const END = 30;

/**
 * Means of equal parts of a gamma distribution with mean 1.
 * @param variation coefficient of variation, above 0 up to 1; 0 is a level film
 * @param parts number of equal parts
 * @returns thickness factors, rising, averaging 1
 */
export function gammaTooth(variation: number, parts = 5): number[] {
  if (variation === 0) return [1];
  const shape = 1 / (variation * variation);
  const width = END / STEPS;
  const density = Float64Array.from({ length: STEPS }, (_, step) => {
    const x = (step + 0.5) * width;
    return Math.exp((shape - 1) * Math.log(x) - shape * (x - 1));
  });
  const whole = density.reduce((sum, value) => sum + value, 0);
  const means = Array<number>(parts).fill(0);
  let passed = 0;
  for (let step = 0; step < STEPS; step++) {
    const share = ((density[step] as number) / whole) * parts;
    const part = Math.min(Math.floor(passed), parts - 1);
    const x = (step + 0.5) * width;
    // A step that straddles two parts is split between them.
    const within = part + 1 < parts ? Math.min(share, part + 1 - passed) : share;
    means[part] = (means[part] as number) + within * x;
    if (part + 1 < parts) means[part + 1] = (means[part + 1] as number) + (share - within) * x;
    passed += share;
  }
  return means;
}
