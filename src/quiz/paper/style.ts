/** What each question of a quiz has to be printed with, and the code of its sheets. */
import { createHash } from 'node:crypto';
import type { DrillScene } from '../../pictures/scene.js';
import { canonicalJson } from '../../text/canonical-json.js';
import type { Handout, Question } from '../handout.js';
import type { LetteredAnswer } from '../lettered.js';

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
