/** What is to be known of the paints of a plain answer: health cautions, in the words of the screens, and corrected strengths. */
import { CAUTION_ADVICE, cautionOf, type Pigment } from '../paints/index.js';

/** A line for each paint that has one, and the advice once; nothing when none has. */
export function cautionLines(pigments: readonly Pigment[]): string[] {
  const lines = pigments.flatMap((pigment) =>
    pigment.hazard === undefined || pigment.hazard.level === 'low' ? [] : [`caution  ${cautionOf(pigment)}`],
  );
  return lines.length === 0 ? [] : [...lines, ...CAUTION_ADVICE.map((line) => `caution  ${line}`)];
}

/** The strengths that their owner gave to some of these paints, in a sentence; nothing where all are the library's. */
export function correctionLines(pigments: readonly Pigment[]): string[] {
  const said = pigments.flatMap(({ name, timesLibrary }) =>
    timesLibrary === undefined ? [] : [`${name} ${timesLibrary} times as strong`],
  );
  return said.length === 0 ? [] : [`Tubes as you say they are, against the library's: ${said.join(', ')}.`];
}
