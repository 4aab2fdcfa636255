/**
 * One film of paint over a ground, by the Kubelka-Munk theory in Kubelka's closed form
 * (J. Opt. Soc. Am. 38, 448, 1948, doi 10.1364/JOSA.38.000448).
 */

/** Above this the film is beyond any real paint and is scaled back so that nothing overflows; its colour no longer changes. */
const THICKEST = 1e120;

/** Below this optical depth the series for g·coth(g) is exact to rounding; above it the exponential form is. */
const THIN = 0.01;

/** g·coth(g) without overflow for thick films or loss of digits for thin ones; 1 at g = 0. */
function timesCoth(g: number): number {
  if (g < THIN) {
    const square = g * g;
    return 1 + square / 3 - (square * square) / 45;
  }
  const e = Math.exp(-2 * g);
  return (g * (1 + e)) / (1 - e);
}

/**
 * Reflectance of a film over a ground in one band.
 *
 * The published form divides by the scattering; this one is multiplied through by it, so that it stays
 * exact and continuous for no scattering (R = ground·exp(-2K)), no absorption, no film and films of any thickness.
 *
 * @param absorption K times the load, 0 or more, dimensionless
 * @param scattering S times the load, 0 or more, dimensionless
 * @param ground reflectance of what lies below, 0-1, internal (no surface reflection)
 * @returns internal reflectance 0-1
 */
export function filmReflectance(absorption: number, scattering: number, ground: number): number {
  let k = absorption;
  let s = scattering;
  const most = k > s ? k : s;
  if (most > THICKEST) {
    k = (k / most) * THICKEST;
    s = (s / most) * THICKEST;
  }
  const g = Math.sqrt(k * (k + 2 * s));
  const c = timesCoth(g);
  const reflectance = (s - ground * (s + k - c)) / (s + k - ground * s + c);
  return reflectance < 0 ? 0 : reflectance > 1 ? 1 : reflectance;
}

/**
 * K/S from the reflectance of an infinitely thick film (Kubelka and Munk 1931).
 * @param reflectance internal, above 0 and up to 1
 * @throws RangeError outside that range
 */
export function absorptionOverScattering(reflectance: number): number {
  if (!(reflectance > 0 && reflectance <= 1)) {
    throw new RangeError(`reflectance must be above 0 and at most 1, got ${reflectance}`);
  }
  return (1 - reflectance) ** 2 / (2 * reflectance);
}
