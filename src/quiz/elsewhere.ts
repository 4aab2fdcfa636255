/** Files that only lay in a folder that was named and belong to another quiz: nothing is wrong with them, so they are told of once. */
import type { Submitted } from './class.js';
import { byCodePoint } from './names.js';
import type { RoomFile } from './room-result.js';

/** A quiz that other files belong to, as a person finds it again. */
export interface OtherQuiz {
  readonly title: string;
  readonly file: string;
}

/** The files of one other quiz. */
export interface Elsewhere {
  /** Absent: its handout was not found, or is this one's before it was changed. */
  readonly quiz?: OtherQuiz;
  readonly files: readonly string[];
}

/** What was read of one file, with the digest that says whose it is. */
const withDigest = (submitted: readonly Submitted[], rooms: readonly RoomFile[]) => [
  ...submitted.map(({ file, isNamed = true, sitting }) => ({ file, isNamed, digest: sitting.handoutDigest })),
  ...rooms.map(({ file, isNamed = true, counts }) => ({ file, isNamed, digest: counts.handoutDigest })),
];

/** Other quizzes by the digest of their handouts, read only where a file of one may lie about. */
export type OtherQuizzes = () => ReadonlyMap<string, OtherQuiz>;

/** The files that belong to none of the handouts and were not named themselves, by quiz; those of known quizzes first. */
export function filesElsewhere(
  digests: ReadonlySet<string>,
  submitted: readonly Submitted[],
  rooms: readonly RoomFile[],
  others: OtherQuizzes = () => new Map(),
): Elsewhere[] {
  const strays = withDigest(submitted, rooms).filter(
    ({ isNamed, digest }) => !isNamed && !digests.has(digest),
  );
  if (strays.length === 0) return [];
  const known = others();
  const byQuiz = new Map<OtherQuiz | undefined, Set<string>>();
  for (const { file, digest } of strays) {
    const quiz = known.get(digest);
    byQuiz.set(quiz, (byQuiz.get(quiz) ?? new Set()).add(file));
  }
  return [...byQuiz]
    .map(([quiz, files]) => ({
      ...(quiz === undefined ? {} : { quiz }),
      files: [...files].sort(byCodePoint),
    }))
    .sort((a, b) => byCodePoint(a.quiz?.file ?? '\uffff', b.quiz?.file ?? '\uffff'));
}

/** Most file names in a line. */
const MOST_NAMED = 3;

/** "12 files belong to another quiz (Week 4, week4.quiz.yaml)."; files whose quiz is not known are named, unless nobody is to be. */
export function elsewhereWords(
  { quiz, files }: Elsewhere,
  { isAnonymous = false, ours = 'this one' }: { isAnonymous?: boolean; ours?: string } = {},
): string {
  const count = files.length === 1 ? '1 file belongs' : `${files.length} files belong`;
  if (quiz !== undefined) return `${count} to another quiz (${quiz.title}, ${quiz.file}).`;
  const left = files.length - MOST_NAMED;
  const names = `: ${files.slice(0, MOST_NAMED).join(', ')}${left > 0 ? ` and ${left} more` : ''}`;
  return `${count} to another quiz, or to ${ours} before it was changed${isAnonymous ? '' : names}.`;
}
