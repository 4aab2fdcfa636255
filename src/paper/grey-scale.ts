/** The ten steps of value as greys with their figures, to hold beside a print or a painting. */
import { greyOfValue } from '../colour/screen.js';
import type { ValueScaleId } from '../colour/value.js';
import { type Block, beside, box, line, stack } from './block.js';
import { INK, type Ruler } from './types.js';

const STEPS = 10;

/**
 * A row of greys from light to dark, the figure of each step below it.
 * @param width of all ten
 */
export function greyScale(width: number, height: number, scale: ValueScaleId, ruler: Ruler): Block {
  const each = width / STEPS;
  const type = { size: 8 };
  return beside(
    Array.from({ length: STEPS }, (_, at): readonly [number, Block] => {
      // Whole steps from paper are halves of Munsell value; its own scale counts ten to one.
      const [value, figure] = scale === 'paper-first' ? [9.5 - at, at + 1] : [10 - at, 10 - at];
      const grey = box(each, height, { fill: greyOfValue(value), edge: { colour: INK.line, width: 0.5 } });
      return [at * each, stack([grey, line(String(figure), each, type, ruler, 'middle')], 1)];
    }),
  );
}
