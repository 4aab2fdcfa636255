/** The report of a term as one HTML page to print or send: no scripts, nothing loaded from elsewhere. */
import { html, join, type Markup } from '../../text/html.js';
import { htmlPage } from '../../text/page.js';
import { listOf } from '../report-first-html.js';
import type { PageOptions } from '../report-html.js';
import { REPORT_STYLE } from '../report-style.js';
import type { Change, Term, TermQuiz, TermStudent } from './term.js';
import {
  absenceLines,
  askedWords,
  quizWords,
  rangeWords,
  shownChanges,
  signed,
  TERM_NOTES,
  verdictWords,
  wholeWords,
} from './term-words.js';

function changeRow(name: string, change: Change, asked: string): Markup {
  const { before, after, difference, rose, fell, students } = change;
  return html`<tr><th scope="row"><bdi>${name}</bdi></th><td class="n optional">${before.toFixed(0)}</td><td class="n optional">${after.toFixed(0)}</td><td class="n">${signed(difference)}</td><td class="n">${rangeWords(change)}</td><td>${verdictWords(change)}</td><td class="n">${rose}</td><td class="n">${fell}</td><td class="n">${students}</td><td>${asked}</td></tr>`;
}

function changeTable(caption: string, first: string, rows: readonly Markup[]): Markup {
  return html`<div class="wide"><table class="grid">
<caption>${caption}</caption>
<thead><tr><th scope="col">${first}</th><th scope="col" class="n optional">Before</th><th scope="col" class="n optional">After</th><th scope="col" class="n">Change</th><th scope="col" class="n">Interval</th><th scope="col">That is</th><th scope="col" class="n">Rose</th><th scope="col" class="n">Fell</th><th scope="col" class="n">Students</th><th scope="col">Asked</th></tr></thead>
<tbody>
${join(rows)}
</tbody>
</table></div>`;
}

function studentRow({ name, percents, change }: TermStudent): Markup {
  const cells = percents.map((percent) => html`<td class="n">${percent?.toFixed(0) ?? '-'}</td>`);
  return html`<tr><th scope="row"><bdi>${name}</bdi></th>${join(cells)}<td class="n">${change === undefined ? '-' : signed(change)}</td></tr>`;
}

function studentTable({ students, quizzes }: Term): Markup {
  const heads = quizzes.map(
    ({ title }, at) => html`<th scope="col" class="n"><abbr title="${title}">${at + 1}</abbr></th>`,
  );
  return html`<div class="wide"><table class="grid">
<caption>Students, percent in each quiz</caption>
<thead><tr><th scope="col">Name</th>${join(heads)}<th scope="col" class="n">Change</th></tr></thead>
<tbody>
${join(students.map(studentRow))}
</tbody>
</table></div>`;
}

/** The page. */
export function termHtml(
  title: string,
  quizzes: readonly TermQuiz[],
  term: Term,
  { isAnonymous = false, lang = 'en' }: PageOptions = {},
): string {
  const groups = shownChanges(term.groups, isAnonymous);
  const skills = shownChanges(term.skills, isAnonymous);
  const absent = absenceLines(quizzes, isAnonymous);
  const body = html`<h1>${title}</h1>
<section class="next"><p>${wholeWords(term)}</p></section>
<ol>
${join(term.quizzes.map((quiz) => html`<li>${quizWords(quiz)}</li>`))}
</ol>
${
  skills.length === 0
    ? html``
    : changeTable(
        'Skills, the least change first',
        'Skill',
        skills.map((skill) => changeRow(skill.name, skill, askedWords(skill))),
      )
}
${
  groups.length === 0
    ? html``
    : changeTable(
        'Groups, in percent of the points',
        'Group',
        groups.map((group) =>
          changeRow(group.name, group, `quiz ${term.compared[0]} to ${term.compared[1]}`),
        ),
      )
}
${isAnonymous ? html`` : studentTable(term)}
${absent.length === 0 ? html`` : html`<section><h2>Not there</h2>${listOf(absent.map((line) => html`<bdi>${line}</bdi>`))}</section>`}
${join(TERM_NOTES.map((note) => html`<p class="family">${note}</p>`))}`;
  return htmlPage({ title, style: REPORT_STYLE, body, lang });
}
