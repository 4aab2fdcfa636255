/** A class: which sittings count, what is odd about them, their marks. The order in which the files are named changes nothing. */

import { canonicalJson } from '../text/canonical-json.js';
import { alikeRemarks } from './alike.js';
import type { Sitting } from './answers.js';
import { byPerson, type CalledOver, callOver, type Known } from './calling-over.js';
import type { ClassList, Enrolled } from './class-list.js';
import { type Elsewhere, filesElsewhere, type OtherQuizzes } from './elsewhere.js';
import type { Handout } from './handout.js';
import { fromInstant } from './instant.js';
import { createGrader, type Grader, type MarkedSitting, markSitting } from './marking.js';
import { byCodePoint, inNameOrder } from './names.js';
import { markRoom, type RoomFile, type RoomResult, roomFault } from './room-result.js';
import { sealWords } from './seal-words.js';

/** A sitting and the file it came from. */
export interface Submitted {
  readonly file: string;
  /** False: it only lay in a folder that was named, where files of other quizzes may lie too. */
  readonly isNamed?: boolean;
  readonly sitting: Sitting;
}

/** A sitting that counts. */
export interface Student extends MarkedSitting {
  /** As the class has it, else as it was typed. */
  readonly name: string;
  readonly file: string;
  readonly sitting: Sitting;
  /** Who it is on the list of the class. */
  readonly enrolled?: Enrolled;
  /** Not finished, or finished with questions open. */
  readonly isPartial: boolean;
  /** Seconds past the due moment; absent: in time, or nothing is due. */
  readonly lateSeconds?: number;
  /** Ids of the questions answered after their time. */
  readonly overTime: readonly string[];
  /** What does not fit: choices that were not confirmed or that a question lacks, times that run backwards. */
  readonly oddities: readonly string[];
  /** For the teacher alone: a file changed after it was written, a sitting too much like another's, who is named. */
  readonly doubts: readonly string[];
}

/** A sitting that does not count, and why. */
export interface SetAside {
  /** Empty when the file could not be read. */
  readonly name: string;
  readonly file: string;
  readonly why: string;
  /** Unreadable, or named though made for another handout: something that the teacher has to mend. */
  readonly isRefused: boolean;
}

export interface ClassResult {
  readonly handout: Handout;
  /** By name. */
  readonly students: readonly Student[];
  readonly setAside: readonly SetAside[];
  readonly elsewhere: readonly Elsewhere[];
  /** Absent where no list of the class was given. */
  readonly calledOver?: CalledOver;
  /** The quiz held in rooms: hands, not students. */
  readonly rooms: readonly RoomResult[];
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
        shown !== undefined &&
        fromInstant(at) - fromInstant(shown) > (limit + GRACE_SECONDS) * 1000,
    )
    .map(({ drill }) => drill);
}

/** The last moment of a sitting that its file names. */
function lastMoment({ started, answers, finished }: Sitting): number {
  const moments = [started, finished, ...answers.flatMap(({ ready, shown, at }) => [ready, shown, at])];
  return Math.max(...moments.filter((each) => each !== undefined).map(fromInstant));
}

function oddities(handout: Handout, sitting: Sitting, marked: MarkedSitting): string[] {
  const { questions } = handout;
  const ids = new Set(questions.map(({ drill }) => drill.id));
  const unfit = questions
    .filter((_, index) => marked.marks[index]?.state === 'unfit')
    .map(({ drill }) => drill.id);
  const unknown = sitting.answers.filter(({ drill }) => !ids.has(drill)).length;
  const pending = questions
    .map(({ drill }, index) => ({ id: drill.id, number: index + 1 }))
    .filter(({ id }) => sitting.answers.some(({ drill, choices }) => drill === id && choices !== undefined))
    .map(({ number }) => number);
  const begun = fromInstant(sitting.started);
  const backwards = sitting.answers.some(
    ({ shown, at }) =>
      shown !== undefined &&
      (fromInstant(shown) < begun || (at !== undefined && fromInstant(at) < fromInstant(shown))),
  );
  const ended = sitting.finished !== undefined && fromInstant(sitting.finished) < lastMoment(sitting);
  return [
    ...(pending.length > 0
      ? [`chosen but not confirmed, so not counted: question ${pending.join(', ')}`]
      : []),
    ...(unfit.length > 0 ? [`choices that the question does not have: ${unfit.join(', ')}`] : []),
    ...(unknown > 0 ? [`${unknown} answers to questions that the handout does not have`] : []),
    ...(backwards || ended ? ['times that run backwards'] : []),
  ];
}

function student(
  handout: Handout,
  grader: Grader,
  { file, sitting, enrolled, calledAs }: Entrant,
  due: number | undefined,
): Student {
  const marked = markSitting(handout, grader, sitting);
  // When a sheet was typed in says nothing about when it was handed in.
  const late = due === undefined || sitting.source === 'paper' ? 0 : (lastMoment(sitting) - due) / 1000;
  return {
    ...marked,
    name: calledAs ?? sitting.name,
    file,
    sitting,
    ...(enrolled === undefined ? {} : { enrolled }),
    isPartial: sitting.finished === undefined || marked.answered < handout.questions.length,
    ...(late > 0 ? { lateSeconds: Math.ceil(late) } : {}),
    overTime: overTime(handout, sitting),
    oddities: oddities(handout, sitting, marked),
    doubts: sealWords(handout, sitting),
  };
}

type Entrant = Known<Submitted>;

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
  readonly list?: ClassList;
  readonly rooms?: readonly RoomFile[];
  /** Files of theirs in a folder are told of by title. */
  readonly otherQuizzes?: OtherQuizzes;
  /** Whose order names are put in, a BCP 47 tag. */
  readonly locale?: string;
}

const ANOTHER_HANDOUT = 'answers to another handout, or to one changed since';

/** Marks a class. */
export function markClass(
  handout: Handout,
  submitted: readonly Submitted[],
  { due, unreadable = [], list, rooms: given = [], otherQuizzes, locale = 'en' }: MarkOptions = {},
): ClassResult {
  const grader = createGrader(handout);
  const dueMs = due ?? (handout.rules.due === undefined ? undefined : fromInstant(handout.rules.due));
  const isOurs = ({ sitting }: Submitted): boolean => sitting.handoutDigest === handout.digest;
  const elsewhere = filesElsewhere(new Set([handout.digest]), submitted, given, otherQuizzes);
  const rooms = given.filter(
    ({ counts, isNamed = true }) => isNamed || counts.handoutDigest === handout.digest,
  );
  const roomFaults = rooms.map(({ counts }) => roomFault(handout, grader, counts));
  const setAside: SetAside[] = [
    ...unreadable.map((fault) => ({ name: '', ...fault, isRefused: true })),
    ...submitted
      .filter((each) => !isOurs(each) && each.isNamed !== false)
      .map(({ file, sitting }) => ({ name: sitting.name, file, why: ANOTHER_HANDOUT, isRefused: true })),
    ...rooms.flatMap(({ file }, at) => {
      const why = roomFaults[at];
      return why === undefined ? [] : [{ name: '', file, why, isRefused: true }];
    }),
  ];
  const { people, unmatched } = byPerson(submitted.filter(isOurs), list);
  const students: Student[] = [];
  for (const same of people.values()) {
    const [kept, ...rest] = same.sort(preferred) as [Entrant, ...Entrant[]];
    students.push(student(handout, grader, kept, dueMs));
    for (const left of rest)
      setAside.push({
        name: left.sitting.name,
        file: left.file,
        why: [reasonAside(kept, left), ...sealWords(handout, left.sitting)].join('; '),
        isRefused: false,
      });
  }
  const inOrder = inNameOrder(locale);
  students.sort((a, b) => inOrder(a.name, b.name) || byCodePoint(a.file, b.file));
  const alike = alikeRemarks(students);
  return {
    handout,
    students: students.map((each) => ({
      ...each,
      doubts: [...each.doubts, ...(alike.get(each) ?? [])],
    })),
    elsewhere,
    setAside: setAside.sort((a, b) => inOrder(a.name, b.name) || byCodePoint(a.file, b.file)),
    ...(list === undefined ? {} : { calledOver: callOver(list, people.keys(), unmatched, locale) }),
    rooms: rooms
      .filter((_, at) => roomFaults[at] === undefined)
      .map((room) => markRoom(handout, grader, room))
      .sort((a, b) => byCodePoint(a.held, b.held) || byCodePoint(a.file, b.file)),
    grader,
  };
}
