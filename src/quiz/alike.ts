/** Sittings of two names that are too much alike: the same moments, or the same mistakes. */

import { canonicalJson } from '../text/canonical-json.js';
import { cleanText } from '../text/sanitize.js';
import type { Sitting } from './answers.js';
import type { MarkedSitting } from './marking.js';

/** A marked sitting that is held against the others. */
interface Compared {
  readonly name: string;
  readonly sitting: Sitting;
  readonly marks: MarkedSitting['marks'];
}

/** Fewer moments than this may be equal by accident where the clocks of two laptops are coarse. */
const LEAST_MOMENTS = 3;

/** An equal pair is named when fewer than one class in so many has one by chance. */
const RARE = 5;

/** Names of the others that are written out. */
const MOST_NAMES = 3;

function momentsOf({ sitting }: Compared): string[] {
  const { started, answers, finished } = sitting;
  const moments = [started, ...answers.flatMap(({ shown, at }) => [shown, at]), finished];
  return moments.filter((each) => each !== undefined);
}

/** Students in groups that share a key; a group of one and an empty key are left out. */
function groups(students: readonly Compared[], keyOf: (student: Compared) => string): Compared[][] {
  const found = new Map<string, Compared[]>();
  for (const student of students) {
    const key = keyOf(student);
    if (key === '') continue;
    const before = found.get(key);
    if (before === undefined) found.set(key, [student]);
    else before.push(student);
  }
  return [...found.values()].filter(({ length }) => length > 1);
}

function namesOf(group: readonly Compared[], but: Compared): string {
  const others = group.filter((each) => each !== but).map(({ name }) => cleanText(name, 40));
  const more = others.length - MOST_NAMES;
  return more > 0 ? `${others.slice(0, MOST_NAMES).join(', ')} and ${more} others` : others.join(' and ');
}

function answersKey({ marks }: Compared): string {
  const given = marks.map(({ state, answer }) => (state === 'answered' ? answer : null));
  return given.some((answer) => answer !== null) ? canonicalJson(given) : '';
}

/**
 * Chance, 0-1, that one student gives all the answers of another by accident. Right answers count as certain: who knows them
 * agrees. A wrong one is as likely as the rest of the class makes it, (k + 1) / (n + 2) where k of n others gave it too
 * (Laplace's rule of succession), so that a small class accuses nobody.
 * @param group those with these answers; one of them is compared with another
 */
function chanceOf(group: readonly Compared[], students: readonly Compared[]): number {
  const [one, other] = group as [Compared, Compared];
  const rest = students.filter((each) => each !== one && each !== other);
  return one.marks.reduce((chance, { state, right, answer }, index) => {
    if (state !== 'answered' || right) return chance;
    const key = canonicalJson(answer);
    const alike = rest.filter(({ marks }) => canonicalJson(marks[index]?.answer) === key).length;
    return (chance * (alike + 1)) / (rest.length + 2);
  }, 1);
}

const shownOdds = (chance: number): string =>
  `1 in ${Number((1 / chance).toPrecision(2)).toLocaleString('en')}`;

/** What is to be said of students whose sittings are alike; both sides are named, for nobody knows who copied. */
export function alikeRemarks(students: readonly Compared[]): ReadonlyMap<Compared, readonly string[]> {
  const remarks = new Map<Compared, string[]>();
  const add = (student: Compared, text: string): void => {
    const before = remarks.get(student);
    if (before === undefined) remarks.set(student, [text]);
    else before.push(text);
  };
  const byTime = groups(students, (student) => {
    const moments = momentsOf(student);
    // A class typed in from paper has the moments of the typing.
    const isBare = student.sitting.source === 'paper' || moments.length < LEAST_MOMENTS;
    return isBare ? '' : moments.join(' ');
  });
  for (const group of byTime)
    for (const student of group)
      add(
        student,
        `every time is that of ${namesOf(group, student)}, to the millisecond: one file is a copy of the other`,
      );
  const pairs = (students.length * (students.length - 1)) / 2;
  for (const group of groups(students, answersKey)) {
    const chance = chanceOf(group, students);
    if (chance * pairs * RARE > 1) continue;
    const wrong = (group[0] as Compared).marks.filter(({ state, right }) => state === 'answered' && !right);
    const among =
      pairs === 1
        ? ''
        : `, for any of the ${pairs.toLocaleString('en')} pairs of this class ${shownOdds(Math.min(1, chance * pairs))}`;
    for (const student of group)
      add(
        student,
        `the same answers as ${namesOf(group, student)}, ${wrong.length} of them not good: by chance ${shownOdds(chance)} for two students${among}`,
      );
  }
  return remarks;
}
