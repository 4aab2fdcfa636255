/** Feedback slips: one page for each student with what they answered, what it marked and what to try. */
import { kindOf } from '../drills/kinds/index.js';
import { html, join, type Markup } from '../text/html.js';
import { htmlPage } from '../text/page.js';
import { IDEAS } from '../words/ideas.js';
import type { ClassResult, Student } from './class.js';
import type { QuestionMark } from './marking.js';
import { barOf, listOf, starred } from './report-first-html.js';
import { REPORT_STYLE } from './report-style.js';
import { ownRemarks, shownPoints } from './report-words.js';
import { bySkill, skillName } from './skills.js';

const SLIP_STYLE: Markup = {
  markup: `${REPORT_STYLE.markup}
.slip + .slip { border-top: 2px solid #333; margin-top: 2rem; padding-top: 1rem; }
@media print { .slip + .slip { border: 0; margin: 0; padding: 0; break-before: page; } }
`,
};

/** Most pieces of advice: more are not taken; and most questions that one of them names. */
const MOST_ADVICE = 3;
const MOST_NAMED = 3;

/** "question 2 (Net shed) and question 5 (Far bank)". */
function questionWords({ handout }: ClassResult, indexes: readonly number[]): string {
  const named = indexes
    .slice(0, MOST_NAMED)
    .map((index) => `question ${index + 1} (${handout.questions[index]?.drill.title ?? ''})`);
  const left = indexes.length - named.length;
  const all = left > 0 ? [...named, `${left} more`] : named;
  return [all.slice(0, -1).join(', '), ...all.slice(-1)].filter((words) => words !== '').join(' and ');
}

/** What to try instead, the most frequent idea first. Advice holds for the questions that it names: another may ask for its contrary. */
function adviceFor(result: ClassResult, { marks }: Student): string[] {
  const shown = new Map<string, number[]>();
  for (const [index, { idea }] of marks.entries())
    if (idea !== undefined) shown.set(idea, [...(shown.get(idea) ?? []), index]);
  return [...shown]
    .sort(([, a], [, b]) => b.length - a.length)
    .flatMap(([id, indexes]) => {
      const instead = IDEAS.get(id)?.instead;
      return instead === undefined ? [] : [`In ${questionWords(result, indexes)}: ${instead}`];
    })
    .slice(0, MOST_ADVICE);
}

function answerWords({ handout }: ClassResult, index: number, { state, answer }: QuestionMark): string {
  const question = handout.questions[index] as ClassResult['handout']['questions'][number];
  if (state !== 'answered' || answer === undefined) return state === 'open' ? 'left open' : 'not complete';
  return kindOf(handout.studio, question.drill).label(question.drill, answer);
}

function questionRow(result: ClassResult, mark: QuestionMark, index: number): Markup {
  const { studio, questions } = result.handout;
  const { drill } = questions[index] as ClassResult['handout']['questions'][number];
  const kind = kindOf(studio, drill);
  // A good answer needs no better one beside it.
  const best = mark.right ? '' : kind.label(drill, kind.best(drill));
  return html`<tr><th scope="row">${index + 1}. ${drill.title}</th><td>${answerWords(result, index, mark)}</td><td class="n">${starred(mark.right, mark.mark)}</td><td>${best}</td></tr>`;
}

function skillRow({ family, mean }: ReturnType<typeof bySkill>[number]): Markup {
  return html`<tr><th scope="row">${skillName(family)}</th><td class="n">${mean.toFixed(0)}</td><td class="bars">${barOf(mean / 100)}</td></tr>`;
}

function slip(result: ClassResult, student: Student): Markup {
  const { handout } = result;
  const { name, points, possible, percent, right, marks } = student;
  const skills = bySkill(handout, student).sort((a, b) => a.mean - b.mean);
  const advice = adviceFor(result, student);
  return html`<section class="slip">
<h1>${handout.title}</h1>
<h2><bdi>${name}</bdi></h2>
<p>${shownPoints(points)} of ${shownPoints(possible)} points, ${percent.toFixed(1)} %; ${right} of ${handout.questions.length} questions right.</p>
${listOf(ownRemarks(student))}
${advice.length === 0 ? html`` : html`<div class="next"><h2>What to try next</h2>${listOf(advice)}</div>`}
<table>
<caption>Skills, the weakest first</caption>
<thead><tr><th scope="col">Skill</th><th scope="col" class="n">Mean mark</th><th scope="col" class="bars"></th></tr></thead>
<tbody>
${join(skills.map(skillRow))}
</tbody>
</table>
<table>
<caption>Questions</caption>
<thead><tr><th scope="col">Question</th><th scope="col">Your answer</th><th scope="col" class="n">Mark</th><th scope="col">Best</th></tr></thead>
<tbody>
${join(marks.map((mark, index) => questionRow(result, mark, index)))}
</tbody>
</table>
<p class="family">* is a mark of 85 or more.</p>
</section>`;
}

/** The page of one student. */
export function slipPage(result: ClassResult, student: Student): string {
  return htmlPage({
    title: `${result.handout.title}: ${student.name}`,
    style: SLIP_STYLE,
    body: slip(result, student),
  });
}

/** The pages of all students in one, each on a sheet of its own in print. */
export function slipPages(result: ClassResult): string {
  const body = join(result.students.map((student) => slip(result, student)));
  return htmlPage({ title: `${result.handout.title}: slips`, style: SLIP_STYLE, body });
}
