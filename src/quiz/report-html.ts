/** The report of a class as one HTML page to print or send: no scripts, nothing loaded from elsewhere. */

import { describeColour } from '../colour/describe.js';
import { findFamily } from '../drills/families.js';
import { kindOf } from '../drills/kinds/index.js';
import type { ResultSwatch } from '../drills/types.js';
import { html, join, type Markup } from '../text/html.js';
import { htmlPage } from '../text/page.js';
import { sayAll } from '../words/tell.js';
import { WRITTEN } from '../words/voice.js';
import type { ClassAnalysis, FieldCounts, QuestionAnalysis } from './analysis.js';
import type { ClassResult, Student } from './class.js';
import { REPORT_STYLE } from './report-style.js';
import { reliabilityLines } from './report-text.js';
import { figureLines, remarks, shownPoints } from './report-words.js';

function swatch({ label, reflectance }: ResultSwatch): Markup {
  const { hex, words, step, chroma, inScreenGamut } = describeColour(reflectance);
  const note = inScreenGamut ? '' : ', screen colour only near it';
  return html`<li><span class="swatch" style="background-color:${hex}"></span> ${label}: ${words}, value step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}${note}</li>`;
}

function studentRow(student: Student, questions: number): Markup {
  const { name, answered, right, points, possible, percent } = student;
  return html`<tr><th scope="row"><bdi>${name}</bdi></th><td class="n">${answered} of ${questions}</td><td class="n">${right}</td><td class="n">${shownPoints(points)} of ${shownPoints(possible)}</td><td class="n">${percent.toFixed(1)}</td><td>${remarks(student).join('; ')}</td></tr>`;
}

function classTable({ students, handout }: ClassResult): Markup {
  return html`<div class="wide"><table class="class">
<caption>The class</caption>
<thead><tr><th scope="col">Name</th><th scope="col" class="n">Answered</th><th scope="col" class="n">Right</th><th scope="col" class="n">Points</th><th scope="col" class="n">Percent</th><th scope="col">Remarks</th></tr></thead>
<tbody>
${join(students.map((student) => studentRow(student, handout.questions.length)))}
</tbody>
</table></div>`;
}

function choiceTable({ label, options }: FieldCounts): Markup {
  const total = options.reduce((sum, { count }) => sum + count, 0);
  const rows = options.map((option) => {
    const percent = total === 0 ? 0 : Math.round((option.count / total) * 100);
    return html`<tr><th scope="row">${option.isBest ? `${option.label} (best)` : option.label}</th><td class="n">${option.count}</td><td class="bars"><span class="track"><span class="bar" style="width:${percent}%"></span></span><span class="share">${percent} %</span></td></tr>`;
  });
  return html`<table class="choices">
<caption>${label}</caption>
<thead><tr><th scope="col">Choice</th><th scope="col" class="n">Chosen</th><th scope="col">Share</th></tr></thead>
<tbody>
${join(rows)}
</tbody>
</table>`;
}

function questionSection(
  question: QuestionAnalysis,
  index: number,
  { handout, grader }: ClassResult,
  sittings: number,
): Markup {
  const { drill, points } = handout.questions[index] as ClassResult['handout']['questions'][number];
  const kind = kindOf(handout.studio, drill);
  const best = grader.grade(index, kind.best(drill));
  const family = findFamily(drill.family)?.name ?? drill.family;
  const common = question.answers
    .slice(0, 3)
    .map(({ label, count, mark }) => html`<li>${label}: ${count}, marks ${mark}</li>`);
  const shown = [...kind.given(drill), ...best.swatches.filter(({ label }) => label === 'best')];
  return html`<section>
<h2>${index + 1}. ${drill.title}</h2>
<p class="family">${family}, ${drill.id}, ${shownPoints(points)} point${points === 1 ? '' : 's'}</p>
<p>${drill.scene}</p>
<p><strong>${drill.ask}</strong></p>
<ul>${join(sayAll(kind.goalLines(drill), WRITTEN).map((line) => html`<li>${line}</li>`))}</ul>
<ul class="swatches">
${join(shown.map(swatch))}
</ul>
<p>${figureLines(question, sittings).join('; ')}.</p>
${join(question.ideas.slice(0, 2).map(({ words, instead }) => html`<p class="idea">${words}. ${instead}</p>`))}
<div class="fields">
${join(question.fields.map(choiceTable))}
</div>
<p>Best: ${question.bestLabel}. Most given:</p>
<ul>${join(common)}</ul>
</section>`;
}

function setAsideSection({ setAside }: ClassResult): Markup {
  if (setAside.length === 0) return html``;
  const items = setAside.map(
    ({ name, file, why }) =>
      html`<li><bdi>${name === '' ? 'unreadable' : name}</bdi> (<bdi>${file}</bdi>): ${why}</li>`,
  );
  return html`<section><h2>Set aside</h2><ul>${join(items)}</ul></section>`;
}

function ideasSection({ ideas }: ClassAnalysis): Markup {
  if (ideas.length === 0) return html``;
  const items = ideas.slice(0, 4).map(({ words, instead }) => html`<li>${words}. ${instead}</li>`);
  return html`<section><h2>What the class misunderstood</h2><ul>${join(items)}</ul></section>`;
}

/** The page. @param lang language of the words in it */
export function reportHtml(result: ClassResult, analysis: ClassAnalysis, lang = 'en'): string {
  const { handout, students } = result;
  const mean = analysis.meanPercent === undefined ? '' : `, mean ${analysis.meanPercent.toFixed(1)} %`;
  const body = html`<h1>${handout.title}</h1>
<p>${students.length} sitting${students.length === 1 ? '' : 's'} counted, ${result.setAside.length} set aside${mean}.</p>
${setAsideSection(result)}
${students.length === 0 ? html`` : classTable(result)}
${ideasSection(analysis)}
${join(analysis.questions.map((question, index) => questionSection(question, index, result, analysis.sittings)))}
${students.length === 0 ? html`` : html`<section><h2>Reliability</h2>${join(reliabilityLines(analysis).map((line) => html`<p>${line}</p>`))}</section>`}
<p class="family">Colours on this page are what a screen or printer makes of a prediction; go by the words and the value steps.</p>`;
  return htmlPage({ title: `${handout.title}: results`, style: REPORT_STYLE, body, lang });
}
