/** CIEDE2000 colour difference. Imports culori: keep it out of what a search runs. */
import { differenceCiede2000 } from 'culori';
import type { Lab } from './lab.js';

const ciede2000 = differenceCiede2000();

/**
 * CIEDE2000 between two colours under the same illuminant and observer, kL = kC = kH = 1.
 * About 1 is just noticeable side by side. Source: Sharma, Wu, Dalal 2005; ISO/CIE 11664-6.
 */
export function deltaE00(a: Lab, b: Lab): number {
  // The mode says D65 so that culori takes the numbers as they are; under 'lab' it would adapt them first.
  return ciede2000({ mode: 'lab65', l: a.l, a: a.a, b: a.b }, { mode: 'lab65', l: b.l, a: b.a, b: b.b });
}
