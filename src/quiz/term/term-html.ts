/** The report of a term as one HTML page to print or send: no scripts, nothing loaded from elsewhere. */
import { html, join, type Markup } from '../../text/html.js';
import { htmlPage } from '../../text/page.js';
import { listOf } from '../report-first-html.js';
import type { PageOptions } from '../report-html.js';
import { REPORT_STYLE } from '../report-style.js';
import type { Term, TermQuiz, TermStudent } from './term.js';
import {
  type ChangeTable,
  changeTables,
  quizWords,
  rangeWords,
  remarkLists,
  signed,
  TERM_NOTES,
  verdictWords,
  wholeWords,
} from './term-words.js';

function changeRow({ change, asked }: ChangeTable['rows'][number]): Markup {
  const { name, before, after, difference, rose, fell, students } = change;
  return html`<tr><th scope="row"><bdi>${name}</bdi></th><td class="n">${before.toFixed(0)}</td><td class="n">${after.toFixed(0)}</td><td class="n">${signed(difference)}</td><td class="n">${rangeWords(change)}</td><td>${verdictWords(change)}</td><td class="n">${rose}</td><td class="n">${fell}</td><td class="n">${students}</td><td class="words">${asked}</td></tr>`;
}

function changeTable({ caption, first, rows }: ChangeTable): Markup {
  return html`<div class="wide"><table class="grid">
<caption>${caption}</caption>
<thead><tr><th scope="col">${first}</th><th scope="col" class="n">Before</th><th scope="col" class="n">After</th><th scope="col" class="n">Change</th><th scope="col" class="n">Interval</th><th scope="col">That is</th><th scope="col" class="n">Rose</th><th scope="col" class="n">Fell</th><th scope="col" class="n">Students</th><th scope="col">Asked</th></tr></thead>
<tbody>
${join(rows.map(changeRow))}
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
  const body = html`<h1>${title}</h1>
<section class="next"><p>${wholeWords(term)}</p></section>
<ol>
${join(term.quizzes.map((quiz) => html`<li>${quizWords(quiz)}</li>`))}
</ol>
${join(changeTables(term, isAnonymous).map(changeTable))}
${isAnonymous ? html`` : studentTable(term)}
${join(remarkLists(quizzes, isAnonymous).map(({ title: head, lines }) => html`<section><h2>${head}</h2>${listOf(lines.map((line) => html`<bdi>${line}</bdi>`))}</section>`))}
${join(TERM_NOTES.map((note) => html`<p class="family">${note}</p>`))}`;
  return htmlPage({ title, style: REPORT_STYLE, body, lang });
}
