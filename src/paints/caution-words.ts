/** Health cautions in words: the same wherever a paint with one is chosen, on a screen or in a plain answer. */
import type { Pigment } from './types.js';

/** Said with every caution, whatever the paint; the label and the rules have the last word. */
export const CAUTION_ADVICE: readonly string[] = [
  'Shape the brush on a cloth, never with the lips. Do not eat or smoke at the table, and wash your hands afterwards.',
  'Do not spray, sand or dry-scrape the paint, and do not breathe its dust.',
  'The label of your paint, its safety data sheet and your local rules on waste come before anything said here.',
];

const METAL_NAMES: Readonly<Record<string, string>> = {
  As: 'arsenic',
  Ba: 'barium',
  Bi: 'bismuth',
  Cd: 'cadmium',
  Co: 'cobalt',
  Cr: 'chromium',
  Cu: 'copper',
  Mn: 'manganese',
  Ni: 'nickel',
  Sb: 'antimony',
  Sn: 'tin',
  V: 'vanadium',
  Zn: 'zinc',
};

/** "cobalt" for "Co", "chromium(III)" for "Cr(III)", "perhaps arsenic" for "(As)", which only some makes hold. */
export function metalName(symbol: string): string {
  if (symbol.startsWith('(')) return `perhaps ${metalName(symbol.slice(1, -1))}`;
  return symbol.replace(/^[A-Z][a-z]?/, (element) => METAL_NAMES[element] ?? element);
}

/** "cadmium red (PR108) holds cadmium: never spray, sand or heat it."; undefined where there is nothing to say. */
export function cautionOf({ name, ci, hazard }: Pick<Pigment, 'name' | 'ci' | 'hazard'>): string | undefined {
  if (hazard === undefined) return undefined;
  const codes = ci.length === 0 ? '' : ` (${ci.join(', ')})`;
  const metals = hazard.metals.map(metalName).join(' and ');
  return `${name}${codes}${metals === '' ? '' : ` holds ${metals}`}: ${hazard.note}`;
}

/** A line for each paint that has a caution, and the advice once; nothing when none has. */
export function cautionsOf(pigments: readonly Pick<Pigment, 'name' | 'ci' | 'hazard'>[]): string[] {
  const lines = pigments.flatMap((pigment) =>
    pigment.hazard?.level === 'low' ? [] : (cautionOf(pigment) ?? []),
  );
  return lines.length === 0 ? [] : [...lines, ...CAUTION_ADVICE];
}
