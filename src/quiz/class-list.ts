/** The class file: who is in the class, by name, number and group. */
import * as v from 'valibot';
import { Document } from 'yaml';
import { textSchema } from '../drills/fields-schema.js';
import { parseYaml, requireSize } from '../drills/yaml-source.js';
import { DataError } from '../errors.js';
import { NOT_A_MAP } from './handout.js';
import { MOST_NAME, nameKey, shownName } from './names.js';

/** Version of the file format; a file with another is refused. */
const CLASS_FORMAT = 1;

/** Largest class file, in characters, and most students in it: as many as there may be answers files. */
const MOST_CLASS = 250_000;
const MOST_STUDENTS = 2000;

/** Someone on the list. */
export interface Enrolled {
  readonly name: string;
  /** As the school has it, leading noughts left out; no two students share one. */
  readonly number?: string | undefined;
  readonly group?: string | undefined;
}

export interface ClassList {
  readonly title?: string | undefined;
  readonly students: readonly Enrolled[];
}

/** "007" and 7 are one number. */
const plainNumber = (number: string): string => number.toLowerCase().replace(/^0+(?=\d)/, '');

const NUMBER = 'number must be a whole number, or letters and digits, at most 20';

const numberSchema = v.pipe(
  v.union([v.pipe(v.number(NUMBER), v.integer(NUMBER), v.minValue(0, NUMBER)), v.string(NUMBER)], NUMBER),
  v.transform((number) => plainNumber(String(number))),
  v.regex(/^[\p{L}\p{M}\p{N}/.-]{1,20}$/u, NUMBER),
);

const classSchema = v.strictObject(
  {
    format: v.literal(CLASS_FORMAT, `format must be ${CLASS_FORMAT}`),
    title: v.optional(textSchema(120)),
    students: v.pipe(
      v.array(
        v.strictObject(
          {
            name: v.pipe(
              textSchema(MOST_NAME),
              v.transform(shownName),
              v.check((name) => /\p{L}/u.test(name), 'must hold a letter'),
            ),
            number: v.optional(numberSchema),
            group: v.optional(textSchema(40)),
          },
          NOT_A_MAP,
        ),
        'must be a list',
      ),
      v.minLength(1, 'must name a student'),
      v.maxLength(MOST_STUDENTS, `holds more than ${MOST_STUDENTS} students`),
    ),
  },
  NOT_A_MAP,
);

/**
 * Reads a class file.
 * @param name what to call the file in a message
 * @throws DataError `name:line: what is wrong`, always one line
 */
export function parseClassList(text: string, name: string): ClassList {
  requireSize(text, MOST_CLASS, 'class', name);
  const { value, lineOf } = parseYaml(text, classSchema, name);
  const numbers = new Set<string>();
  const names = new Map<string, Enrolled>();
  for (const [index, student] of value.students.entries()) {
    const { number } = student;
    if (number !== undefined && numbers.has(number))
      throw new DataError(
        `${name}:${lineOf(['students', index, 'number'])}: the number ${number} stands here twice`,
      );
    if (number !== undefined) numbers.add(number);
    const key = nameKey(student.name);
    const namesake = names.get(key);
    if (namesake !== undefined && (number === undefined || namesake.number === undefined))
      throw new DataError(
        `${name}:${lineOf(['students', index, 'name'])}: "${student.name}" stands here twice; give each of them a number`,
      );
    names.set(key, student);
  }
  const { format: _format, ...list } = value;
  return list;
}

const HEAD = [
  ' A class. Use it with: mudlark quiz mark HANDOUT ANSWERS --class THIS-FILE',
  ' name: as the student types it; number: may be typed in its place, and tells two of one name apart; group: any word.',
  ' Only the name has to be there.',
].join('\n');

/** The text of a class file. */
export function classListText({ title, students }: ClassList): string {
  const document = new Document(
    { format: CLASS_FORMAT, ...(title === undefined ? {} : { title }), students },
    { keepUndefined: false },
  );
  document.commentBefore = HEAD;
  return document.toString({ lineWidth: 0 });
}

/** Who a sitting is of: someone on the list, or why that cannot be said. */
export type Found =
  /** `calledAs` tells two of one name apart. */
  { readonly enrolled: Enrolled; readonly calledAs: string } | { readonly why: string };

const PUNCTUATION = /^[\s#(]+|[\s.,:;)]+$/gu;

/** Looks students up by what they typed as their name: by number, else by name key, never by likeness. */
export function createRoll({ students }: ClassList): (typed: string) => Found {
  const byNumber = new Map(
    students.flatMap((each) => (each.number === undefined ? [] : [[each.number, each]])),
  );
  const byName = new Map<string, Enrolled[]>();
  for (const each of students) {
    const key = nameKey(each.name);
    byName.set(key, [...(byName.get(key) ?? []), each]);
  }
  const numbered = (text: string): Enrolled | undefined =>
    byNumber.get(plainNumber(text.replace(PUNCTUATION, '')));
  const found = (enrolled: Enrolled): Found => {
    const isAlone = byName.get(nameKey(enrolled.name))?.length === 1;
    return { enrolled, calledAs: isAlone ? enrolled.name : `${enrolled.name} ${enrolled.number}` };
  };
  return (typed) => {
    const key = nameKey(typed);
    const alone = numbered(key);
    if (alone !== undefined) return found(alone);
    const [same, ...more] = byName.get(key) ?? [];
    if (same !== undefined && more.length === 0) return found(same);
    if (same !== undefined)
      return {
        why: `fits ${more.length + 1} students of the class; one of the numbers is needed as the name`,
      };
    // A number and a name together count only where they are of one student.
    const words = key.split(' ');
    const first = numbered(words[0] ?? '');
    const last = numbered(words.at(-1) ?? '');
    for (const [enrolled, rest] of [
      [first, words.slice(1)],
      [last, words.slice(0, -1)],
    ] as const) {
      if (enrolled === undefined || rest.length === 0) continue;
      const bare = rest.join(' ').replace(PUNCTUATION, '');
      if (nameKey(enrolled.name) === bare) return found(enrolled);
      return { why: `number ${enrolled.number} is ${enrolled.name} in the class` };
    }
    return { why: 'not in the class' };
  };
}
