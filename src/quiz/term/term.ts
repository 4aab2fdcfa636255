/** A term: the same students over several quizzes, before against after in each skill. */
import { mean } from 'simple-statistics';
import type { ClassResult, Student } from '../class.js';
import type { Enrolled } from '../class-list.js';
import { type Interval, meanInterval } from '../intervals.js';
import { byCodePoint, inNameOrder, nameKey } from '../names.js';
import { bySkill, familiesOf, skillName } from '../skills.js';

/** A quiz of the term, marked. */
export interface TermQuiz {
  readonly title: string;
  readonly result: ClassResult;
}

/** Students who were there both times, before and after. Marks 0-100. */
export interface Change {
  readonly students: number;
  readonly before: number;
  readonly after: number;
  readonly rose: number;
  readonly fell: number;
  /** Mean of the differences of each student with themselves. */
  readonly difference: number;
  /** Of that mean, 95 percent by Student's t; absent with fewer than five students. */
  readonly interval?: Interval;
}

export interface SkillChange extends Change {
  readonly family: string;
  readonly name: string;
  /** Numbers of the two quizzes, from 1. */
  readonly quizzes: readonly [number, number];
  /** Mean level of the questions of it, before and after. */
  readonly levels: readonly [number, number];
  /** The same questions both times. */
  readonly isSame: boolean;
}

export interface GroupChange extends Change {
  readonly name: string;
}

/** One student over the term. */
export interface TermStudent {
  readonly name: string;
  readonly enrolled?: Enrolled | undefined;
  /** Of each quiz; undefined where they were not there. */
  readonly percents: readonly (number | undefined)[];
  /** After less before in the quizzes that are compared; undefined unless there both times. */
  readonly change?: number | undefined;
  /** After less before in each skill, in the order of the skills. */
  readonly skills: readonly (number | undefined)[];
}

export interface Term {
  readonly quizzes: readonly {
    readonly title: string;
    readonly students: number;
    readonly meanPercent?: number;
  }[];
  /** Numbers of the quizzes that are compared as wholes, from 1. */
  readonly compared: readonly [number, number];
  readonly whole?: Change;
  /** Least change first. */
  readonly skills: readonly SkillChange[];
  readonly groups: readonly GroupChange[];
  readonly students: readonly TermStudent[];
}

/** Marks and percents nearer than this, in one of which they are printed, are the same. */
const SAME = 0.5;

/** Of fewer students an interval is wider than the marks. Common practice, no source. */
const FEWEST_FOR_INTERVAL = 5;

type Pair = readonly [number, number];

/** Before and after of several students as one change; undefined of nobody. */
export function changeOf(pairs: readonly Pair[]): Change | undefined {
  if (pairs.length === 0) return undefined;
  const differences = pairs.map(([before, after]) => after - before);
  const interval = pairs.length < FEWEST_FOR_INTERVAL ? undefined : meanInterval(differences);
  return {
    students: pairs.length,
    before: mean(pairs.map(([before]) => before)),
    after: mean(pairs.map(([, after]) => after)),
    rose: differences.filter((difference) => difference >= SAME).length,
    fell: differences.filter((difference) => difference <= -SAME).length,
    difference: mean(differences),
    ...(interval === undefined ? {} : { interval }),
  };
}

/** A student of the term: what they did in each quiz. */
interface Person {
  readonly name: string;
  readonly enrolled?: Enrolled | undefined;
  readonly sittings: readonly (Student | undefined)[];
}

/** The same students over the quizzes: by their place in the class, else by the key of their name. */
function peopleIn(quizzes: readonly TermQuiz[], locale: string): Person[] {
  const people = new Map<Enrolled | string, { first: Student; sittings: (Student | undefined)[] }>();
  for (const [at, { result }] of quizzes.entries()) {
    for (const student of result.students) {
      const who = student.enrolled ?? nameKey(student.name);
      const person = people.get(who) ?? { first: student, sittings: quizzes.map(() => undefined) };
      person.sittings[at] = student;
      people.set(who, person);
    }
  }
  const inOrder = inNameOrder(locale);
  return [...people.values()]
    .map(({ first, sittings }) => ({ name: first.name, enrolled: first.enrolled, sittings }))
    .sort((a, b) => inOrder(a.name, b.name));
}

/** Mean marks by skill of one sitting; a skill of which nothing was answered is left out. */
function skillMeans({ result }: TermQuiz, student: Student | undefined): ReadonlyMap<string, number> {
  if (student === undefined) return new Map();
  return new Map(
    bySkill(result.handout, student)
      .filter(({ questions }) => questions.some(({ mark }) => mark.state === 'answered'))
      .map(({ family, mean: mark }) => [family, mark]),
  );
}

/** Mean level of the questions of a skill, and what they are. */
function asked({ result }: TermQuiz, family: string): { readonly level: number; readonly ids: string } {
  const own = result.handout.questions.filter(({ drill }) => drill.family === family);
  return {
    level: mean(own.map(({ drill }) => drill.level)),
    ids: own.map(({ drill }) => drill.id).join(' '),
  };
}

/** What may be said beside the quizzes. */
export interface TermOptions {
  /** Indexes of the quizzes to compare; otherwise the first and the last, in each skill of those that ask it. */
  readonly compare?: readonly [number, number];
  /** Whose order names are put in, a BCP 47 tag. */
  readonly locale?: string;
}

type Pairs = readonly (Pair | undefined)[];

const isPair = (pair: Pair | undefined): pair is Pair => pair !== undefined;

/** One skill, before and after of each student; undefined where it was not asked twice, or nobody answered twice. */
function skillChange(
  quizzes: readonly TermQuiz[],
  means: readonly (readonly ReadonlyMap<string, number>[])[],
  family: string,
  compare: readonly [number, number] | undefined,
): { readonly skill: SkillChange; readonly pairs: Pairs } | undefined {
  const places = quizzes.flatMap(({ result }, at) =>
    familiesOf(result.handout).includes(family) ? [at] : [],
  );
  const [first, last] = compare ?? [places[0] ?? 0, places.at(-1) ?? 0];
  if (first === last || !places.includes(first) || !places.includes(last)) return undefined;
  const pairs = means.map((own): Pair | undefined => {
    const [before, after] = [own[first]?.get(family), own[last]?.get(family)];
    return before === undefined || after === undefined ? undefined : [before, after];
  });
  const change = changeOf(pairs.filter(isPair));
  if (change === undefined) return undefined;
  const [a, b] = [asked(quizzes[first] as TermQuiz, family), asked(quizzes[last] as TermQuiz, family)];
  const skill: SkillChange = {
    ...change,
    family,
    name: skillName(family),
    quizzes: [first + 1, last + 1],
    levels: [a.level, b.level],
    isSame: a.ids === b.ids,
  };
  return { skill, pairs };
}

function groupChanges(people: readonly Person[], wholes: Pairs): GroupChange[] {
  const groups = new Map<string, Pair[]>();
  for (const [at, { enrolled }] of people.entries()) {
    const pair = wholes[at];
    if (enrolled?.group === undefined || pair === undefined) continue;
    groups.set(enrolled.group, [...(groups.get(enrolled.group) ?? []), pair]);
  }
  return [...groups]
    .sort(([a], [b]) => byCodePoint(a, b))
    .flatMap(([name, pairs]) => {
      const change = changeOf(pairs);
      return change === undefined ? [] : [{ name, ...change }];
    });
}

const differenceOf = (pair: Pair | undefined): number | undefined =>
  pair === undefined ? undefined : pair[1] - pair[0];

/** Sets the quizzes of a term against each other. @param quizzes in the order they were sat */
export function termFrom(quizzes: readonly TermQuiz[], { compare, locale = 'en' }: TermOptions = {}): Term {
  const people = peopleIn(quizzes, locale);
  const [from, to] = compare ?? [0, quizzes.length - 1];
  const means = people.map(({ sittings }) => quizzes.map((quiz, at) => skillMeans(quiz, sittings[at])));
  const families = [...new Set(quizzes.flatMap(({ result }) => familiesOf(result.handout)))];
  const skills = families
    .flatMap((family) => skillChange(quizzes, means, family, compare) ?? [])
    .sort((a, b) => a.skill.difference - b.skill.difference || byCodePoint(a.skill.family, b.skill.family));
  const wholes = people.map(({ sittings }): Pair | undefined => {
    const [before, after] = [sittings[from], sittings[to]];
    return from === to || before === undefined || after === undefined
      ? undefined
      : [before.percent, after.percent];
  });
  const whole = changeOf(wholes.filter(isPair));
  return {
    quizzes: quizzes.map(({ title, result: { students } }) => ({
      title,
      students: students.length,
      ...(students.length === 0 ? {} : { meanPercent: mean(students.map(({ percent }) => percent)) }),
    })),
    compared: [from + 1, to + 1],
    ...(whole === undefined ? {} : { whole }),
    skills: skills.map(({ skill }) => skill),
    groups: groupChanges(people, wholes),
    students: people.map(({ name, enrolled, sittings }, at) => ({
      name,
      enrolled,
      percents: sittings.map((sitting) => sitting?.percent),
      change: differenceOf(wholes[at]),
      skills: skills.map(({ pairs }) => differenceOf(pairs[at])),
    })),
  };
}
