/** Answers drawn evenly from all that a drill allows. */
import type { Draw } from '../chance/draw.js';
import type { Answer, Field } from './types.js';

/** One answer, each field drawn on its own. */
export function randomAnswer(fields: readonly Field[], draw: Draw): Answer {
  return Object.fromEntries(
    fields.map(({ id, options }) => [id, options[draw(options.length - 1)]?.id ?? '']),
  );
}
