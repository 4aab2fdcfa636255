/** What to teach next: students by skills, the questions from the hardest, the ideas behind the mistakes, two sentences. */
import { mean, sum } from 'simple-statistics';
import { overall, type Verdict } from '../judgement/index.js';
import { listWords } from '../text/list-words.js';
import type { ClassResult, Student } from './class.js';
import type { QuestionMark } from './marking.js';
import { type Misconception, type Shown, tallyIdeas } from './misconceptions.js';
import { byCodePoint } from './names.js';
import { shownByHands } from './room-result.js';
import { bySkill, familiesOf, skillName } from './skills.js';

/** A skill over the class. */
export interface SkillStanding {
  readonly family: string;
  readonly name: string;
  readonly questions: number;
  /** 0-100, the mean of the students' means; a question left open counts 0. */
  readonly mean: number;
  /** Students by their mean mark in it: 85 and more, 55 and more, below. */
  readonly standing: Readonly<Record<Verdict, number>>;
}

/** One student, or one group, in the grid. */
export interface GridRow {
  readonly name: string;
  /** 0-100. */
  readonly percent: number;
  /** Mean mark by skill, in the order of the skills; undefined where no question of it was answered. */
  readonly marks: readonly (number | undefined)[];
}

export interface GroupRow extends GridRow {
  readonly students: number;
}

/** A question by how hard it was. */
export interface HardQuestion {
  /** Index in the handout. */
  readonly index: number;
  readonly right: number;
  readonly of: number;
  readonly meanMark: number;
}

export interface Lesson {
  /** Weakest first. */
  readonly skills: readonly SkillStanding[];
  /** In the order of the students. */
  readonly rows: readonly GridRow[];
  /** Empty without groups. */
  readonly groups: readonly GroupRow[];
  /** Hardest first. */
  readonly hardest: readonly HardQuestion[];
  readonly misconceptions: readonly Misconception[];
  /** What to do next lesson, and which questions to open again in the room. */
  readonly advice: readonly string[];
  /** Indexes in the handout. */
  readonly reopen: readonly number[];
}

/** An idea is the class's when at least so many show it; below, it is somebody's. */
const SHARED_BY = 2;

/** Most questions that are opened again: each takes a quarter of a lesson. */
const MOST_REOPENED = 2;

/** Share of right answers from which a question needs no second look. */
const SETTLED = 0.85;

const isAnswered = ({ state }: QuestionMark): boolean => state === 'answered';

function gridRow(result: ClassResult, student: Student, families: readonly string[]): GridRow {
  const skills = new Map(bySkill(result.handout, student).map((skill) => [skill.family, skill]));
  return {
    name: student.name,
    percent: student.percent,
    marks: families.map((family) => {
      const skill = skills.get(family);
      return skill?.questions.some(({ mark }) => isAnswered(mark)) === true ? skill.mean : undefined;
    }),
  };
}

const meanOf = (rows: readonly GridRow[], at: number): number =>
  mean(rows.map(({ marks }) => marks[at] ?? 0));

function skillsOf(
  { handout }: ClassResult,
  rows: readonly GridRow[],
  families: readonly string[],
): SkillStanding[] {
  return families.map((family, at) => {
    const standing = { good: 0, fair: 0, off: 0 };
    for (const { marks } of rows) standing[overall(marks[at] ?? 0)]++;
    return {
      family,
      name: skillName(family),
      questions: handout.questions.filter(({ drill }) => drill.family === family).length,
      mean: meanOf(rows, at),
      standing,
    };
  });
}

function groupsOf({ students }: ClassResult, rows: readonly GridRow[], skills: number): GroupRow[] {
  const groups = new Map<string, GridRow[]>();
  for (const [at, { enrolled }] of students.entries()) {
    if (enrolled?.group === undefined) continue;
    groups.set(enrolled.group, [...(groups.get(enrolled.group) ?? []), rows[at] as GridRow]);
  }
  return [...groups]
    .sort(([a], [b]) => byCodePoint(a, b))
    .map(([name, own]) => ({
      name,
      students: own.length,
      percent: mean(own.map(({ percent }) => percent)),
      marks: Array.from({ length: skills }, (_, at) => meanOf(own, at)),
    }));
}

function hardestOf({ handout, students, rooms }: ClassResult): HardQuestion[] {
  const ofStudents = handout.questions.map((_, index): HardQuestion => {
    const marks = students.map((student) => student.marks[index] as QuestionMark);
    return {
      index,
      right: marks.filter(({ right }) => right).length,
      of: marks.length,
      meanMark: marks.length === 0 ? 0 : mean(marks.map(({ mark }) => mark)),
    };
  });
  const ofRooms = handout.questions.map((_, index): HardQuestion => {
    const voted = rooms.flatMap(({ questions }) => questions.filter((question) => question.index === index));
    const votes = voted.map(({ first, second }) => second ?? first);
    const of = sum(votes.map(({ hands }) => hands));
    const points = voted.flatMap(({ answers, second }) =>
      answers.map((each) => each.mark * ((second === undefined ? each.first : each.second) ?? 0)),
    );
    return {
      index,
      right: sum(votes.map(({ right }) => right)),
      of,
      meanMark: of === 0 ? 0 : sum(points) / of,
    };
  });
  return (students.length > 0 ? ofStudents : ofRooms)
    .filter(({ of }) => of > 0)
    .sort((a, b) => a.right / a.of - b.right / b.of || a.meanMark - b.meanMark || a.index - b.index);
}

function shownByStudents(students: readonly Student[]): Shown[] {
  return students.flatMap(({ marks }, student) =>
    marks.flatMap((mark, question) =>
      isAnswered(mark) ? [{ question, mark: mark.mark, idea: mark.idea, times: 1, student }] : [],
    ),
  );
}

type Advice = Pick<Lesson, 'advice' | 'reopen'>;

function reopenWords({ handout }: ClassResult, questions: readonly HardQuestion[], why: string): string {
  const named = questions.map(
    ({ index, right, of }) =>
      `question ${index + 1}, "${handout.questions[index]?.drill.title ?? ''}" (${right} of ${of} right)`,
  );
  return `Open again in the room: ${listWords(named)}${why}.`;
}

function adviceFor(result: ClassResult, lesson: Omit<Lesson, 'advice' | 'reopen'>): Advice {
  const { hardest, misconceptions, skills } = lesson;
  const [top] = misconceptions;
  if (hardest.length === 0) return { advice: [], reopen: [] };
  const byIndex = new Map(hardest.map((question) => [question.index, question]));
  if (top !== undefined && (top.students ?? top.answers) >= SHARED_BY) {
    const who =
      top.students === undefined
        ? `the ${top.answers} of ${top.ofAnswers} hands that`
        : `the ${top.students} of ${top.ofStudents} who`;
    const questions = top.shownIn
      .slice(0, MOST_REOPENED)
      .flatMap(({ question }) => byIndex.get(question) ?? []);
    return {
      advice: [
        `Next lesson is for ${who} ${top.did}; teach: "${top.instead}"`,
        reopenWords(result, questions, ', where that idea shows most'),
      ],
      reopen: questions.map(({ index }) => index),
    };
  }
  const open = hardest.filter(({ right, of }) => right / of < SETTLED).slice(0, MOST_REOPENED);
  if (open.length === 0)
    return {
      advice: [
        'Next lesson may go on: a level up, or the next skill.',
        'No question needs to be opened again.',
      ],
      reopen: [],
    };
  const [weakest] = skills;
  const skill =
    weakest === undefined
      ? ''
      : `; the weakest skill is "${weakest.name}", mean mark ${weakest.mean.toFixed(0)}`;
  return {
    advice: [
      `No mistaken idea is shared by two, so next lesson each needs a practice plan of their own (mudlark quiz plan)${skill}.`,
      reopenWords(result, open, ', the hardest'),
    ],
    reopen: open.map(({ index }) => index),
  };
}

/** Works out what to teach next from a marked class; from the hands of its rooms where no student's answers are there. */
export function lessonFrom(result: ClassResult): Lesson {
  const { handout, students, rooms } = result;
  const asked = familiesOf(handout);
  const unsorted = students.map((student) => gridRow(result, student, asked));
  const standings = students.length === 0 ? [] : skillsOf(result, unsorted, asked);
  const order = standings
    .map((_, at) => at)
    .sort((a, b) => (standings[a]?.mean ?? 0) - (standings[b]?.mean ?? 0) || a - b);
  const rows = unsorted.map((row) => ({ ...row, marks: order.map((at) => row.marks[at]) }));
  const shown =
    students.length > 0
      ? shownByStudents(students)
      : rooms.flatMap(({ questions }) => shownByHands(questions));
  const lesson = {
    skills: order.map((at) => standings[at] as SkillStanding),
    rows,
    groups: groupsOf(result, rows, order.length),
    hardest: hardestOf(result),
    misconceptions: tallyIdeas(handout, shown),
  };
  return { ...lesson, ...adviceFor(result, lesson) };
}
