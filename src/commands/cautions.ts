/** Health cautions as lines of a plain answer; the words are those of the screens. */
import { cautionsOf, type Pigment } from '../paints/index.js';

/** A line for each paint that has one, and the advice once; nothing when none has. */
export const cautionLines = (pigments: readonly Pigment[]): string[] =>
  cautionsOf(pigments).map((line) => `caution  ${line}`);
