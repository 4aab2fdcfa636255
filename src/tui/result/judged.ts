/** A graded answer as every program shows it. */
import type { Answered, Graded } from '../../practice/index.js';

export interface Judged {
  readonly answered: Graded & Partial<Pick<Answered, 'hints' | 'attempt' | 'kept'>>;
  /** The first answer to the same drill, when this is a further try. */
  readonly first?: Graded;
  /** The worked example of the welcome. */
  readonly worked?: boolean;
  /** Line of the text that stands on top. */
  readonly top: number;
  /** Shows the plane in place of the swatches, where there is no room for both. */
  readonly plane?: boolean;
  /** The picture in the greys of the value check, and with the best answer in it. */
  readonly inGrey?: boolean;
  readonly ofBest?: boolean;
}
