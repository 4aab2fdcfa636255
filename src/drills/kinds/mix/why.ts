/** What lies behind a mixture decided on. */
import type { Studio } from '../../../paints/index.js';
import type { Answer, Why } from '../../types.js';
import { whyOf } from '../../why.js';
import { choiceOf, laidBy } from './choice.js';
import type { MixDrill } from './schema.js';

/** The paints alone, or the films or strokes, and the mixture that was laid. */
export function mixWhy(studio: Studio, drill: MixDrill, answer: Answer): Why {
  return whyOf(studio, laidBy(drill, choiceOf(studio, drill, answer)));
}
