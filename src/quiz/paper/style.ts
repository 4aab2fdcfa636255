/** How the pages of a quiz are set: sizes of type, margins, and what each question has to be printed with. */
import { createHash } from 'node:crypto';
import { columnWidth, type Frame } from '../../paper/flow.js';
import { MM, type PageSize, type Ruler } from '../../paper/types.js';
import type { DrillScene } from '../../pictures/scene.js';
import type { Voice } from '../../words/voice.js';
import { canonicalJson } from '../digest.js';
import type { Handout, Question } from '../handout.js';
import type { LetteredAnswer } from '../lettered.js';

/** Points; body text is read on a table, notes at arm's length. */
export const TYPE = {
  title: { size: 16, face: 'bold' },
  heading: { size: 11, face: 'bold' },
  body: { size: 9.5 },
  ask: { size: 9.5, face: 'bold' },
  small: { size: 8 },
  strong: { size: 8, face: 'bold' },
} as const;

/** From one group to the next, and between the parts of one. */
export const GAPS = { group: 16, part: 6 } as const;

/** What pages are set with. */
export interface PaperStyle {
  readonly ruler: Ruler;
  readonly voice: Voice;
  readonly size: PageSize;
  /** When they were made, milliseconds since 1970. */
  readonly madeMs: number;
}

/** A question as it is printed. */
export interface PaperQuestion {
  /** 1 for the first. */
  readonly number: number;
  readonly question: Question;
  readonly lettered: readonly LetteredAnswer[];
  readonly scene?: DrillScene;
}

/** A quiz as it is printed. */
export interface PaperQuiz {
  readonly handout: Handout;
  readonly questions: readonly PaperQuestion[];
  /** See {@link sheetCode}. */
  readonly code: string;
}

/** The frame of every page: margins that any printer reaches. */
export function frameOf(size: PageSize): Frame {
  return { size, margins: { top: 15 * MM, right: 16 * MM, bottom: 18 * MM, left: 16 * MM } };
}

/** Width of the text. */
export const textWidth = ({ size }: PaperStyle): number => columnWidth(frameOf(size));

/** Letters and figures that are not taken for one another. */
const SIGNS = '23456789CFGHJKMNPQRTVWXY';

/**
 * Four signs that stand on each page: they change when an answer gets another letter, as it may with another version of the program.
 * What is typed in is read by the letters of the sheets that bear the same.
 */
export function sheetCode(lettered: readonly (readonly LetteredAnswer[])[]): string {
  const answers = lettered.map((question) => question.map(({ answer }) => answer));
  const hash = createHash('sha256').update(canonicalJson(answers)).digest();
  return Array.from(hash.subarray(0, 4), (byte) => SIGNS[byte % SIGNS.length]).join('');
}

/** "1 point", "2.5 points". */
export const pointsWords = (points: number): string => `${points} point${points === 1 ? '' : 's'}`;
