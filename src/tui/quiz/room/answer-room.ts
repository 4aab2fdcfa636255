/** How the lettered answers share out the lines and columns that a slide has for them. Pure. */
import { LETTER_ROOM, type LetterSize } from './large.js';
import { labelLines, type Offered } from './offered.js';

/** Lines between answers are worth more than larger letters. */
const MOST_GAP = 2;

export const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

/** How answers stand in their room. */
export interface AnswerLayout {
  readonly size: LetterSize;
  /** Columns of an answer's patch with its gap, and of its words. */
  readonly patchColumns: number;
  readonly labelColumns: number;
  /** Lines of each answer. */
  readonly heights: readonly number[];
  /** Blank lines between answers. */
  readonly gap: number;
}

/** What answers stand in. */
interface AnswerRoom {
  readonly size: LetterSize;
  readonly columns: number;
  readonly rows: number;
  readonly hasColour: boolean;
}

/** The answers in a size of letters; undefined where they do not all fit. */
export function answersIn(offered: readonly Offered[], room: AnswerRoom): AnswerLayout | undefined {
  const answers = answersWith(offered, room);
  // Patches that touch are misjudged: where names tell the paints they go.
  const mayGo = offered.every(({ swatch, isNamed }) => swatch === undefined || isNamed);
  return answers?.gap === 0 && mayGo && answers.patchColumns > 0
    ? answersWith(offered, { ...room, hasColour: false })
    : answers;
}

function answersWith(
  offered: readonly Offered[],
  { size, columns, rows, hasColour }: AnswerRoom,
): AnswerLayout | undefined {
  const { columns: letterColumns, rows: least } = LETTER_ROOM[size];
  const hasPatch = hasColour && offered.some(({ swatch }) => swatch !== undefined);
  const patchColumns = hasPatch ? (size === 'text' ? 7 : 12) : 0;
  const labelColumns = columns - letterColumns - 2 - patchColumns;
  if (labelColumns < 18) return undefined;
  const heights = offered.map(({ label }) => Math.max(least, labelLines(label, labelColumns).length));
  const spare = rows - sum(heights);
  if (spare < 0 || (size !== 'text' && spare < offered.length - 1)) return undefined;
  return {
    size,
    patchColumns,
    labelColumns,
    heights,
    gap: Math.min(MOST_GAP, Math.floor(spare / Math.max(1, offered.length - 1))),
  };
}
