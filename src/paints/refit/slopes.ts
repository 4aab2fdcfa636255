/**
 * Reflectance and transmittance of an uneven film with their slopes in K and S, for the fit.
 * Reflectance by the formula of `filmReflectance` in optics, which the tests hold it to, transmittance by T = b / (a·sinh bSX + b·cosh bSX)
 * (Kubelka 1948); each is followed by its derivatives.
 */
import type { Surface } from '../../optics/index.js';

/** A value and its slopes, filled in by the functions below: the fit calls them a hundred thousand times a round. */
export interface Sloped {
  value: number;
  /** Slope in K times load. */
  byK: number;
  /** Slope in S times load. */
  byS: number;
}

/** Below this g² the series for g·coth(g) is exact to rounding. */
const THIN = 1e-4;

/** Beyond this g nothing passes a film that a double could hold. */
const OPAQUE = 300;

/**
 * Measured reflectance of a film over paper, the mean over the tooth.
 * @param k K times load
 * @param s S times load
 * @param below internal reflectance of the paper
 */
export function reflectanceWithSlopes(
  out: Sloped,
  k: number,
  s: number,
  below: number,
  { k1, k2 }: Surface,
  tooth: readonly number[],
): void {
  let value = 0;
  let byK = 0;
  let byS = 0;
  for (const thickness of tooth) {
    const kx = k * thickness;
    const sx = s * thickness;
    const q = kx * (kx + 2 * sx);
    let c: number;
    let byQ: number;
    if (q < THIN) {
      c = 1 + q / 3 - (q * q) / 45;
      byQ = 1 / 3 - (2 * q) / 45;
    } else {
      const g = Math.sqrt(q);
      const e = Math.exp(-2 * g);
      c = (g * (1 + e)) / (1 - e);
      byQ = (c - c * c + q) / (2 * q);
    }
    const cK = byQ * 2 * (kx + sx);
    const cS = byQ * 2 * kx;
    const numerator = sx - below * (sx + kx - c);
    const denominator = sx + kx - below * sx + c;
    const inside = numerator / denominator;
    const insideK = (-below * (1 - cK) - inside * (1 + cK)) / denominator;
    const insideS = (1 - below * (1 - cS) - inside * (1 - below + cS)) / denominator;
    const through = 1 - k2 * inside;
    const passed = ((1 - k1) * (1 - k2)) / through;
    const slope = (passed / through) * thickness;
    value += k1 + passed * inside;
    byK += slope * insideK;
    byS += slope * insideS;
  }
  out.value = value / tooth.length;
  out.byK = byK / tooth.length;
  out.byS = byS / tooth.length;
}

/**
 * Internal transmittance of a film, the mean over the tooth.
 * @param k K times load
 * @param s S times load
 */
export function transmittanceWithSlopes(out: Sloped, k: number, s: number, tooth: readonly number[]): void {
  let value = 0;
  let byK = 0;
  let byS = 0;
  for (const thickness of tooth) {
    const kx = k * thickness;
    const sx = s * thickness;
    const q = kx * (kx + 2 * sx);
    const g = Math.sqrt(q);
    if (g > OPAQUE) continue;
    // u = sinh(g)/g and v = cosh(g), both smooth in q.
    const u = q < THIN ? 1 + q / 6 : Math.sinh(g) / g;
    const v = Math.cosh(g);
    const uQ = q < THIN ? 1 / 6 + q / 60 : (v - u) / (2 * q);
    const vQ = u / 2;
    const denominator = (kx + sx) * u + v;
    const byQ = (kx + sx) * uQ + vQ;
    const slope = -thickness / (denominator * denominator);
    value += 1 / denominator;
    byK += slope * (u + byQ * 2 * (kx + sx));
    byS += slope * (u + byQ * 2 * kx);
  }
  out.value = value / tooth.length;
  out.byK = byK / tooth.length;
  out.byS = byS / tooth.length;
}
