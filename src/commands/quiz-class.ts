/** `mudlark quiz class`: the list of a class, shown or begun. */
import { UsageError } from '../errors.js';
import { writeNamed } from '../files/named.js';
import { type ClassList, classListText, type Enrolled } from '../quiz/class-list.js';
import { readAnswers, readClassList } from '../quiz/files/read-files.js';
import { inNameOrder, nameKey } from '../quiz/names.js';
import { enrolledWords, plural } from '../quiz/report-words.js';
import { document, localeHere } from './run.js';

/** What a new list holds where no answers are given. */
const EXAMPLE: readonly Enrolled[] = [
  { name: 'Ann Lee', number: '1', group: 'morning' },
  { name: 'Ben Ito', number: '2', group: 'evening' },
];

/** Everybody who handed in, once, numbered in the order of their names. */
function namesIn(answers: readonly string[]): Enrolled[] {
  const names = new Map<string, string>();
  for (const { sitting } of readAnswers(answers).submitted) {
    const key = nameKey(sitting.name);
    if (/\p{L}/u.test(key) && !names.has(key)) names.set(key, sitting.name);
  }
  if (names.size === 0) throw new UsageError('no answers file of these holds the name of a student');
  return [...names.values()]
    .sort(inNameOrder(localeHere()))
    .map((name, at) => ({ name, number: String(at + 1) }));
}

/** Shows a class file, or with `new` writes one. @throws UsageError, DataError */
export function classCommand(
  path: string,
  answers: readonly string[],
  options: { readonly new?: boolean; readonly force?: boolean; readonly json?: boolean },
): string {
  if (options.new === true) {
    const list: ClassList = { students: answers.length === 0 ? EXAMPLE : namesIn(answers) };
    const done = writeNamed(path, classListText(list), options.force === true);
    if (options.json === true) return document({ ...list, written: [done] });
    const said =
      answers.length === 0
        ? 'An example: write your students in place of these.'
        : `${plural(list.students.length, 'student')}, numbered in the order of their names; put in the numbers of your school, and groups.`;
    return `${done}\n${said}\n`;
  }
  if (answers.length > 0) throw new UsageError('answers are only read to begin a list; add --new');
  const list = readClassList(path);
  if (options.json === true) return document(list);
  const groups = new Map<string, number>();
  for (const { group } of list.students)
    if (group !== undefined) groups.set(group, (groups.get(group) ?? 0) + 1);
  const sizes = [...groups].map(([group, count]) => `${group} ${count}`);
  return [
    list.title ?? 'Class',
    `${list.students.length} students${sizes.length === 0 ? '' : `; groups: ${sizes.join(', ')}`}`,
    ...list.students.map((student) => `  ${enrolledWords(student)}`),
    '',
  ].join('\n');
}
