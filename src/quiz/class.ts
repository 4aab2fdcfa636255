/** A class: which sittings count, what is odd about them, their marks. The order in which the files are named changes nothing. */
import type { Sitting } from './answers.js';
import { canonicalJson } from './digest.js';
import type { Handout } from './handout.js';
import { fromInstant } from './instant.js';
import { createGrader, type Grader, type MarkedSitting, markSitting } from './marking.js';
import { byCodePoint, nameKey } from './names.js';

/** A sitting and the file it came from. */
export interface Submitted {
  readonly file: string;
  readonly sitting: Sitting;
}

/** A sitting that counts. */
export interface Student extends MarkedSitting {
  readonly name: string;
  readonly file: string;
  readonly sitting: Sitting;
  /** Not finished, or finished with questions open. */
  readonly isPartial: boolean;
  /** Seconds past the due moment; absent: in time, or nothing is due. */
  readonly lateSeconds?: number;
  /** Ids of the questions answered after their time. */
  readonly overTime: readonly string[];
  /** What does not fit: choices that a question lacks, unknown questions, times that run backwards. */
  readonly oddities: readonly string[];
}

/** A sitting that does not count, and why. */
export interface SetAside {
  /** Empty when the file could not be read. */
  readonly name: string;
  readonly file: string;
  readonly why: string;
  /** Unreadable or made for another handout: something that the teacher has to mend. */
  readonly isRefused: boolean;
}

export interface ClassResult {
  readonly handout: Handout;
  /** By name. */
  readonly students: readonly Student[];
  readonly setAside: readonly SetAside[];
  readonly grader: Grader;
}

/** Seconds that saving an answer may take beyond the clock. */
const GRACE_SECONDS = 3;

function overTime({ rules, questions }: Handout, { answers }: Sitting): string[] {
  const limit = rules.timePerQuestionSeconds;
  if (limit === undefined) return [];
  const known = new Set(questions.map(({ drill }) => drill.id));
  return answers
    .filter(
      ({ drill, shown, at }) =>
        known.has(drill) &&
        at !== undefined &&
        fromInstant(at) - fromInstant(shown) > (limit + GRACE_SECONDS) * 1000,
    )
    .map(({ drill }) => drill);
}

/** The last moment of a sitting that its file names. */
function lastMoment({ started, answers, finished }: Sitting): number {
  const moments = [started, finished, ...answers.flatMap(({ shown, at }) => [shown, at])];
  return Math.max(...moments.filter((each) => each !== undefined).map(fromInstant));
}

function oddities({ questions }: Handout, sitting: Sitting, marked: MarkedSitting): string[] {
  const ids = new Set(questions.map(({ drill }) => drill.id));
  const unfit = questions
    .filter((_, index) => marked.marks[index]?.state === 'unfit')
    .map(({ drill }) => drill.id);
  const unknown = sitting.answers.filter(({ drill }) => !ids.has(drill)).length;
  const begun = fromInstant(sitting.started);
  const backwards = sitting.answers.some(
    ({ shown, at }) =>
      fromInstant(shown) < begun || (at !== undefined && fromInstant(at) < fromInstant(shown)),
  );
  const ended = sitting.finished !== undefined && fromInstant(sitting.finished) < lastMoment(sitting);
  return [
    ...(unfit.length > 0 ? [`choices that the question does not have: ${unfit.join(', ')}`] : []),
    ...(unknown > 0 ? [`${unknown} answers to questions that the handout does not have`] : []),
    ...(backwards || ended ? ['times that run backwards'] : []),
  ];
}

function student(
  handout: Handout,
  grader: Grader,
  { file, sitting }: Submitted,
  due: number | undefined,
): Student {
  const marked = markSitting(handout, grader, sitting);
  // When a sheet was typed in says nothing about when it was handed in.
  const late = due === undefined || sitting.source === 'paper' ? 0 : (lastMoment(sitting) - due) / 1000;
  return {
    ...marked,
    name: sitting.name,
    file,
    sitting,
    isPartial: sitting.finished === undefined || marked.answered < handout.questions.length,
    ...(late > 0 ? { lateSeconds: Math.ceil(late) } : {}),
    overTime: overTime(handout, sitting),
    oddities: oddities(handout, sitting, marked),
  };
}

/** Which of several sittings of one name counts: a finished one, the first finished, the one with most answers. */
function preferred(a: Submitted, b: Submitted): number {
  const ended = ({ sitting }: Submitted): number =>
    sitting.finished === undefined ? Number.POSITIVE_INFINITY : fromInstant(sitting.finished);
  const [endA, endB] = [ended(a), ended(b)];
  if (endA !== endB) return endA < endB ? -1 : 1;
  const made = ({ sitting }: Submitted): number =>
    sitting.answers.filter(({ at }) => at !== undefined).length;
  return (
    made(b) - made(a) ||
    byCodePoint(canonicalJson(a.sitting), canonicalJson(b.sitting)) ||
    byCodePoint(a.file, b.file)
  );
}

function reasonAside(kept: Submitted, left: Submitted): string {
  if (canonicalJson(kept.sitting) === canonicalJson(left.sitting)) return `the same answers as ${kept.file}`;
  const which = kept.sitting.finished === undefined ? 'the fuller one' : 'the one finished first';
  return `a second sitting of this name; ${which} counts, ${kept.file}. If these are two people, change the name in one file`;
}

/** What may be said beside the sittings themselves. */
export interface MarkOptions {
  /** Milliseconds since 1970, instead of the handout's own moment. */
  readonly due?: number;
  /** Files that could not be read. */
  readonly unreadable?: readonly { readonly file: string; readonly why: string }[];
}

/** Marks a class. */
export function markClass(
  handout: Handout,
  submitted: readonly Submitted[],
  { due, unreadable = [] }: MarkOptions = {},
): ClassResult {
  const grader = createGrader(handout);
  const dueMs = due ?? (handout.rules.due === undefined ? undefined : fromInstant(handout.rules.due));
  const setAside: SetAside[] = unreadable.map((fault) => ({ name: '', ...fault, isRefused: true }));
  const byName = new Map<string, Submitted[]>();
  for (const each of submitted) {
    const { name, handoutDigest } = each.sitting;
    if (handoutDigest !== handout.digest) {
      setAside.push({
        name,
        file: each.file,
        why: 'answers to another handout, or to one changed since',
        isRefused: true,
      });
      continue;
    }
    const key = nameKey(name);
    const before = byName.get(key);
    if (before === undefined) byName.set(key, [each]);
    else before.push(each);
  }
  const students: Student[] = [];
  for (const same of byName.values()) {
    const [kept, ...rest] = same.sort(preferred) as [Submitted, ...Submitted[]];
    students.push(student(handout, grader, kept, dueMs));
    for (const left of rest)
      setAside.push({
        name: left.sitting.name,
        file: left.file,
        why: reasonAside(kept, left),
        isRefused: false,
      });
  }
  return {
    handout,
    students: students.sort((a, b) => byCodePoint(nameKey(a.name), nameKey(b.name))),
    setAside: setAside.sort(
      (a, b) => byCodePoint(nameKey(a.name), nameKey(b.name)) || byCodePoint(a.file, b.file),
    ),
    grader,
  };
}
