/** Health cautions, the same words wherever a pigment with one is chosen. */
import type { Pigment } from '../pigments/index.js';

/** What every caution ends with. */
export const DEFER =
  'Usual care: do not shape the brush with your lips, make no dust or spray, wash your hands. The label, the safety data sheet and local rules come first.';

/** A line for each paint that has one, and the deferral once; nothing when none has. */
export function cautionLines(pigments: readonly Pigment[]): string[] {
  const lines = pigments.flatMap(({ name, hazard }) =>
    hazard === undefined || hazard.level === 'low'
      ? []
      : [
          `caution  ${name}${hazard.metals.length > 0 ? ` holds ${hazard.metals.join(', ')}` : ''}: ${hazard.note}`,
        ],
  );
  return lines.length === 0 ? [] : [...lines, `caution  ${DEFER}`];
}
