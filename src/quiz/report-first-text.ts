/** The first page of a class's report as text: what to teach next, and what it is drawn from. */
import { FAIR_MARK, GOOD_MARK } from '../judgement/index.js';
import { padText, widthOf } from '../text/wrap.js';
import type { ClassResult } from './class.js';
import type { GridRow, Lesson } from './lesson.js';
import {
  GRID_NOTE,
  gridMark,
  handsWords,
  ideaLines,
  ROOM_NOTE,
  roomTitle,
  voteWords,
} from './report-words.js';
import type { RoomResult } from './room-result.js';
import { bar, indented, NAME_COLUMNS, type TextLook } from './text-parts.js';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const MARK_COLUMNS = 5;
const SKILL_COLUMNS = 36;
const FIGURE_COLUMNS = 5;
const PERCENT_COLUMNS = 6;
const BAR_COLUMNS = 20;

function gridLine({ name, percent, marks }: GridRow): string {
  const cells = marks.map((mark) => padText(gridMark(mark), MARK_COLUMNS, 'left'));
  return `${padText(name, NAME_COLUMNS)}${padText(percent.toFixed(1), PERCENT_COLUMNS, 'left')}${cells.join('')}`;
}

/** Skills with their letters, and under them a row for each student; of more skills than fit side by side in several tables. */
function grid({ skills, rows, groups }: Lesson, look: TextLook, isAnonymous: boolean): string[] {
  const line = (name: string, figures: readonly (string | number)[]): string =>
    `  ${padText(name, SKILL_COLUMNS)}${figures.map((figure) => padText(String(figure), FIGURE_COLUMNS, 'left')).join('')}`;
  const legend = skills.map(({ name, questions, mean, standing }, at) =>
    line(`${LETTERS[at]} ${name}`, [questions, mean.toFixed(0), standing.good, standing.off]),
  );
  const all = [
    ...(isAnonymous ? [] : rows),
    ...groups.map((group) => ({ ...group, name: `group ${group.name} (${group.students})` })),
  ];
  const fit = Math.max(1, Math.floor((look.columns - NAME_COLUMNS - PERCENT_COLUMNS - 2) / MARK_COLUMNS));
  const tables = Array.from({ length: all.length === 0 ? 0 : Math.ceil(skills.length / fit) }, (_, table) => {
    const from = table * fit;
    const heads = skills
      .slice(from, from + fit)
      .map((_skill, at) => padText(LETTERS[from + at] ?? '', MARK_COLUMNS, 'left'));
    return [
      `${padText('name', NAME_COLUMNS)}${padText('%', PERCENT_COLUMNS, 'left')}${heads.join('')}`,
      ...all.map((row) => gridLine({ ...row, marks: row.marks.slice(from, from + fit) })),
    ].map((line) => `  ${line}`);
  });
  return [
    'Students by skills',
    line('skill', ['asked', 'mean', `${GOOD_MARK}+`, `<${FAIR_MARK}`]),
    ...legend,
    ...tables.flatMap((table) => ['', ...table]),
    '',
    ...indented([GRID_NOTE], look),
  ];
}

function hardest({ hardest: questions }: Lesson, { handout }: ClassResult, look: TextLook): string[] {
  const titles = Math.min(34, Math.max(...handout.questions.map(({ drill }) => widthOf(drill.title))));
  const lines = questions.map(({ index, right, of, meanMark }) => {
    const title = padText(handout.questions[index]?.drill.title ?? '', titles);
    const count = padText(`${right} of ${of}`, 10, 'left');
    const columns = look.columns < 80 ? BAR_COLUMNS / 2 : BAR_COLUMNS;
    return `  ${padText(`${index + 1}.`, 3, 'left')} ${title}${count} ${bar(right / of, columns, look)} mean ${meanMark.toFixed(0)}`;
  });
  return ['Questions from the hardest, by how many were right', ...lines];
}

function room(held: RoomResult, { handout }: ClassResult, look: TextLook): string[] {
  const questions = held.questions.flatMap((question) => {
    const { index, answers, none } = question;
    return [
      ...indented(
        [`${index + 1}. ${handout.questions[index]?.drill.title ?? ''}: ${voteWords(question)}`],
        look,
      ),
      ...indented(
        [
          ...answers.map(
            (each, at) =>
              `${LETTERS[at]} ${each.isGood ? '*' : ' '} ${each.label}: ${handsWords(each)}; marks ${each.mark}`,
          ),
          ...(none === undefined ? [] : [`none of these: ${handsWords(none)}`]),
        ],
        look,
        5,
      ),
    ];
  });
  return [roomTitle(held), ...questions, ...indented([...ideaLines(held.misconceptions), ROOM_NOTE], look)];
}

/** The blocks of the first page. @param isAnonymous without a row for each student */
export function firstPage(
  result: ClassResult,
  lesson: Lesson,
  look: TextLook,
  isAnonymous: boolean,
): string[][] {
  const { advice, misconceptions, skills } = lesson;
  return [
    ...(advice.length === 0 ? [] : [['What to teach next', ...indented(advice, look)]]),
    ...(misconceptions.length === 0
      ? []
      : [['What was misunderstood', ...indented(ideaLines(misconceptions), look)]]),
    ...(skills.length === 0 ? [] : [grid(lesson, look, isAnonymous)]),
    ...(lesson.hardest.length === 0 ? [] : [hardest(lesson, result, look)]),
    ...result.rooms.map((held) => room(held, result, look)),
  ];
}
