/** Health cautions as lines of a plain answer; the words are those of the screens. */
import { CAUTION_ADVICE, cautionOf, type Pigment } from '../paints/index.js';

/** A line for each paint that has one, and the advice once; nothing when none has. */
export function cautionLines(pigments: readonly Pigment[]): string[] {
  const lines = pigments.flatMap((pigment) =>
    pigment.hazard === undefined || pigment.hazard.level === 'low' ? [] : [`caution  ${cautionOf(pigment)}`],
  );
  return lines.length === 0 ? [] : [...lines, ...CAUTION_ADVICE.map((line) => `caution  ${line}`)];
}
