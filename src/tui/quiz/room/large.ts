/** Letters and figures drawn large, of blocks, to be read from the back of a room. */
import type { Glyphs } from '../../kit/glyphs.js';

/** Rows of dots, top to bottom; drawn by us. */
const DOTS: Readonly<Record<string, readonly string[]>> = {
  A: [' ### ', '#   #', '#####', '#   #', '#   #'],
  B: ['#### ', '#   #', '#### ', '#   #', '#### '],
  C: [' ####', '#    ', '#    ', '#    ', ' ####'],
  D: ['#### ', '#   #', '#   #', '#   #', '#### '],
  E: ['#####', '#    ', '#### ', '#    ', '#####'],
  F: ['#####', '#    ', '#### ', '#    ', '#    '],
  '0': ['###', '# #', '# #', '# #', '###'],
  '1': [' # ', '## ', ' # ', ' # ', '###'],
  '2': ['###', '  #', '###', '#  ', '###'],
  '3': ['###', '  #', '###', '  #', '###'],
  '4': ['# #', '# #', '###', '  #', '  #'],
  '5': ['###', '#  ', '###', '  #', '###'],
  '6': ['###', '#  ', '###', '# #', '###'],
  '7': ['###', '  #', '  #', '  #', '  #'],
  '8': ['###', '# #', '###', '# #', '###'],
  '9': ['###', '# #', '###', '  #', '###'],
  ':': [' ', '#', ' ', '#', ' '],
};

/** How large a letter stands: as text, of half blocks, or two cells to a dot. */
export type LetterSize = 'text' | 'half' | 'full';

/** Cells of a letter, with the blanks after it. */
export const LETTER_ROOM: Readonly<Record<LetterSize, { readonly columns: number; readonly rows: number }>> =
  {
    text: { columns: 3, rows: 1 },
    half: { columns: 7, rows: 3 },
    full: { columns: 12, rows: 5 },
  };

/** Sizes that a terminal can draw, largest first: half blocks are not ASCII. */
export const letterSizes = ({ plainTexts }: Glyphs): readonly LetterSize[] =>
  plainTexts ? ['full', 'text'] : ['full', 'half', 'text'];

const dotsOf = (text: string): string[] => {
  const signs = [...text].map((sign) => DOTS[sign] ?? []);
  return Array.from({ length: 5 }, (_, row) => signs.map((sign) => sign[row] ?? '').join(' '));
};

const HALVES = [' ', '▄', '▀', '█'] as const;

/** A text of letters A to F, figures and colons in lines of cells. */
export function largeText(text: string, size: LetterSize, { full }: Pick<Glyphs, 'full'>): string[] {
  if (size === 'text') return [text];
  const dots = dotsOf(text);
  if (size === 'full')
    return dots.map((row) => [...row].map((dot) => (dot === '#' ? full : ' ').repeat(2)).join(''));
  return [0, 2, 4].map((row) =>
    [...(dots[row] ?? '')]
      .map((dot, at) => HALVES[(dot === '#' ? 2 : 0) + (dots[row + 1]?.[at] === '#' ? 1 : 0)])
      .join(''),
  );
}
