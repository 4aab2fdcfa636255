/** Sealed sittings as raw files, and what marking says of them. */
import { parseSitting } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import { SECRET, someHandout } from './fixture.js';

/** Under a clock, with seals. */
export const handout = someHandout(6, { timePerQuestionSeconds: 60 }, SECRET);

/** An event as the file holds it. */
export interface RawEvent {
  event: string;
  at: string;
  seal?: string;
  name?: string;
  drill?: string;
  answer?: Record<string, string>;
}
/** A file of answers. */
export interface RawFile {
  format: number;
  handoutDigest: string;
  events: RawEvent[];
  end?: string;
}

export const rawOf = (text: string): RawFile => JSON.parse(text) as RawFile;

/** What marking says of a file's seals; a refusal counts as said. */
export function saidOf(text: string, file = 'a.json'): string {
  let sitting: ReturnType<typeof parseSitting>;
  try {
    sitting = parseSitting(text, file);
  } catch (error) {
    return (error as Error).message;
  }
  const { students } = markClass(handout, [{ file, sitting }]);
  return students
    .flatMap(({ doubts }) => doubts.filter((each) => /seal|changed after/.test(each)))
    .join('; ');
}

/** Number of a question in the handout, from 1. */
export const numberOf = (drill: string | undefined): number =>
  handout.questions.findIndex((question) => question.drill.id === drill) + 1;
