/** The lettered answers of the question in front, as the room sees them. Pure. */
import type { Spectrum } from '../../../optics/index.js';
import { wrapText } from '../../../text/wrap.js';
import { lookOf } from '../../../words/look.js';
import { moreInAscii } from '../../kit/glyphs.js';
import { lettersIn, type RoomState, type RoomWorld } from './state.js';

/** An answer as it stands on a slide. */
export interface Offered {
  readonly letter: string;
  readonly label: string;
  /** The colour of what is chosen, where it has one. */
  readonly swatch?: Spectrum;
  /** Whether its words name that colour's paint. */
  readonly isNamed?: boolean;
}

/** The lettered answers of the question in front; a colour that no name tells is told in words where none can be seen. */
export function offeredIn(world: RoomWorld, { place, colourLevel, settings }: RoomState): Offered[] {
  const fields = world.grader.fields[place] ?? [];
  const isTold = colourLevel === 0 || settings.screenReader;
  return lettersIn(world, place).map(({ letter, label, answer }) => {
    const option = fields
      .flatMap(({ id, options }) => options.filter((each) => each.id === answer[id]))
      .find(({ swatch }) => swatch !== undefined);
    if (option?.swatch === undefined) return { letter, label };
    const words = option.pigment === undefined && isTold ? ` (${lookOf(option.swatch).words})` : '';
    const isNamed = option.pigment !== undefined;
    return { letter, label: `${label}${words}`, swatch: option.swatch, isNamed };
  });
}

/** Lines of an answer in so many columns; signs that ASCII writes out have room. */
export const labelLines = (label: string, columns: number): string[] =>
  wrapText(label, columns - moreInAscii(label));
