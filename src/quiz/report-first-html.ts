/** The first page of a class's report in HTML: what to teach next, and what it is drawn from. */
import { FAIR_MARK, GOOD_MARK } from '../judgement/index.js';
import { html, join, type Markup } from '../text/html.js';
import type { ClassResult, Student } from './class.js';
import type { GridRow, Lesson, SkillStanding } from './lesson.js';
import {
  GRID_NOTE,
  gridMark,
  handsWords,
  ideaLines,
  ROOM_NOTE,
  remarks,
  roomTitle,
  shownPoints,
  voteWords,
} from './report-words.js';
import type { RoomResult } from './room-result.js';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** A bar of a share 0-1 with nothing written in it. */
export function barOf(share: number): Markup {
  return html`<span class="track"><span class="bar" style="width:${Math.round(share * 100)}%"></span></span>`;
}

/** A text with a star before it when it is good. */
export const starred = (isGood: boolean, text: string | number): Markup =>
  isGood ? html`* ${text}` : html`${text}`;

/** A list with nothing in front; empty where there is nothing to list. */
export function listOf(lines: readonly (string | Markup)[]): Markup {
  return lines.length === 0 ? html`` : html`<ul>${join(lines.map((line) => html`<li>${line}</li>`))}</ul>`;
}

function skillRow({ name, questions, mean, standing }: SkillStanding, at: number): Markup {
  return html`<tr><th scope="row">${LETTERS[at] ?? ''} ${name}</th><td class="n">${questions}</td><td class="n">${mean.toFixed(0)}</td><td class="bars">${barOf(mean / 100)}</td><td class="n">${standing.good}</td><td class="n">${standing.off}</td></tr>`;
}

function skillTable({ skills }: Lesson): Markup {
  return html`<table>
<caption>Skills, the weakest first</caption>
<thead><tr><th scope="col">Skill</th><th scope="col" class="n">Asked</th><th scope="col" class="n">Mean</th><th scope="col" class="bars"></th><th scope="col" class="n">${GOOD_MARK}+</th><th scope="col" class="n">&lt;${FAIR_MARK}</th></tr></thead>
<tbody>
${join(skills.map(skillRow))}
</tbody>
</table>`;
}

function cell(mark: number | undefined): Markup {
  const isWeak = mark !== undefined && mark < FAIR_MARK;
  return isWeak
    ? html`<td class="n weak">${gridMark(mark)}</td>`
    : html`<td class="n">${gridMark(mark)}</td>`;
}

function gridRow({ name, percent, marks }: GridRow, student?: Student): Markup {
  const points = student === undefined ? '' : `${shownPoints(student.points)}`;
  const right = student === undefined ? '' : String(student.right);
  return html`<tr><th scope="row"><bdi>${name}</bdi></th><td class="n optional">${right}</td><td class="n optional">${points}</td><td class="n">${percent.toFixed(1)}</td>${join(marks.map(cell))}</tr>`;
}

function gridTable({ skills, rows, groups }: Lesson, { students, handout }: ClassResult): Markup {
  const possible = handout.questions.reduce((sum, { points }) => sum + points, 0);
  const heads = skills.map(
    ({ name }, at) => html`<th scope="col" class="n"><abbr title="${name}">${LETTERS[at] ?? ''}</abbr></th>`,
  );
  const ofGroups = groups.map((group) =>
    gridRow({ ...group, name: `Group ${group.name} (${group.students})` }),
  );
  return html`<div class="wide"><table class="grid">
<caption>Students by skills</caption>
<thead><tr><th scope="col">Name</th><th scope="col" class="n optional">Right of ${handout.questions.length}</th><th scope="col" class="n optional">Points of ${shownPoints(possible)}</th><th scope="col" class="n">Percent</th>${join(heads)}</tr></thead>
<tbody>
${join([...rows.map((row, at) => gridRow(row, students[at])), ...ofGroups])}
</tbody>
</table></div>
<p class="family">${GRID_NOTE}</p>`;
}

function remarkList(students: readonly Student[]): Markup {
  const lines = students.flatMap((student) => {
    const said = remarks(student);
    return said.length === 0 ? [] : [html`<bdi>${student.name}</bdi>: ${said.join('; ')}`];
  });
  return lines.length === 0 ? html`` : html`<div class="remarks">${listOf(lines)}</div>`;
}

function hardestTable({ hardest }: Lesson, { handout }: ClassResult): Markup {
  const rows = hardest.map(({ index, right, of, meanMark }) => {
    const title = handout.questions[index]?.drill.title ?? '';
    return html`<tr><th scope="row">${index + 1}. ${title}</th><td class="n">${right} of ${of}</td><td class="bars">${barOf(right / of)}</td><td class="n">${meanMark.toFixed(0)}</td></tr>`;
  });
  return html`<table>
<caption>Questions, the hardest first</caption>
<thead><tr><th scope="col">Question</th><th scope="col" class="n">Right</th><th scope="col" class="bars"></th><th scope="col" class="n">Mean</th></tr></thead>
<tbody>
${join(rows)}
</tbody>
</table>`;
}

function roomSection(held: RoomResult, { handout }: ClassResult): Markup {
  const questions = held.questions.map((question) => {
    const { index, answers, none } = question;
    const lines = [
      ...answers.map(
        (each, at) =>
          html`${LETTERS[at] ?? ''} ${starred(each.isGood, each.label)}: ${handsWords(each)}; marks ${each.mark}`,
      ),
      ...(none === undefined ? [] : [html`none of these: ${handsWords(none)}`]),
    ];
    return html`<div class="card"><h3>${index + 1}. ${handout.questions[index]?.drill.title ?? ''}</h3>
<p>${voteWords(question)}</p>
${listOf(lines)}</div>`;
  });
  return html`<section><h2>${roomTitle(held)}</h2>
${listOf(ideaLines(held.misconceptions))}
<div class="cards">
${join(questions)}
</div>
<p class="family">${ROOM_NOTE}</p></section>`;
}

/** The first page. @param isAnonymous without a row for each student */
export function firstPageHtml(result: ClassResult, lesson: Lesson, isAnonymous: boolean): Markup {
  const { students, rooms } = result;
  const { advice, misconceptions, skills, hardest } = lesson;
  return html`${
    advice.length === 0
      ? html``
      : html`<section class="next"><h2>What to teach next</h2>${join(advice.map((line) => html`<p>${line}</p>`))}</section>`
  }
${
  misconceptions.length === 0
    ? html``
    : html`<section><h2>What was misunderstood</h2>${listOf(ideaLines(misconceptions))}</section>`
}
<div class="side">
${skills.length === 0 ? html`` : skillTable(lesson)}
${hardest.length === 0 ? html`` : hardestTable(lesson, result)}
</div>
${isAnonymous || students.length === 0 ? html`` : html`${gridTable(lesson, result)}${remarkList(students)}`}
${join(rooms.map((held) => roomSection(held, result)))}`;
}
