/** The report of a class as one HTML page to print or send: no scripts, nothing loaded from elsewhere. */

import { describeColour } from '../colour/describe.js';
import { kindOf } from '../drills/kinds/index.js';
import type { ResultSwatch } from '../drills/types.js';
import { GOOD_MARK } from '../judgement/index.js';
import { html, join, type Markup } from '../text/html.js';
import { htmlPage } from '../text/page.js';
import { sayAll } from '../words/tell.js';
import { WRITTEN } from '../words/voice.js';
import type { ClassAnalysis, QuestionAnalysis } from './analysis.js';
import type { ClassResult } from './class.js';
import { elsewhereWords } from './elsewhere.js';
import { barOf, firstPageHtml, listOf, starred } from './report-first-html.js';
import { REPORT_STYLE } from './report-style.js';
import { reliabilityLines } from './report-text.js';
import {
  asideWords,
  calledOverLines,
  countWords,
  figureLines,
  MOST_LISTED,
  otherAnswers,
  shownPoints,
  smallClassNote,
} from './report-words.js';
import { skillName } from './skills.js';

function swatch({ label, reflectance }: ResultSwatch): Markup {
  const { hex, words, step, chroma, inScreenGamut } = describeColour(reflectance);
  const note = inScreenGamut ? '' : ', screen colour only near it';
  return html`<li><span class="swatch" style="background-color:${hex}"></span> ${label}: ${words}, value step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}${note}</li>`;
}

/** Whole answers, most given first; every good one is starred. */
function answerTable(question: QuestionAnalysis): Markup {
  const listed = question.answers.slice(0, MOST_LISTED);
  const other = otherAnswers(question, listed.length);
  const rows = listed.map(
    ({ label, count, mark, isGood }) =>
      html`<tr><th scope="row">${starred(isGood, label)}</th><td class="n">${count}</td><td class="bars">${barOf(count / Math.max(1, question.answered))}</td><td class="n">${mark}</td></tr>`,
  );
  return html`<table class="answers">
<caption>Answers given</caption>
<thead><tr><th scope="col">Answer</th><th scope="col" class="n">Given</th><th scope="col" class="bars"></th><th scope="col" class="n">Marks</th></tr></thead>
<tbody>
${join(rows)}
</tbody>
</table>${other === undefined ? html`` : html`<p class="family">${other}</p>`}`;
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
  const shown = [...kind.given(drill), ...best.swatches.filter(({ label }) => label === 'best')];
  return html`<div class="card">
<h3>${index + 1}. ${drill.title}</h3>
<p class="family screen">${skillName(drill.family)}, ${drill.id}, ${shownPoints(points)} point${points === 1 ? '' : 's'}</p>
<p><span class="screen">${drill.scene} </span><strong>${drill.ask}</strong></p>
<p class="screen">${sayAll(kind.goalLines(drill), WRITTEN).join('; ')}</p>
<ul class="swatches">
${join(shown.map(swatch))}
</ul>
<p>${figureLines(question, sittings).join('; ')}.</p>
${answerTable(question)}
<p>Best: ${question.bestLabel}.</p>
${join(question.ideas.slice(0, 1).map(({ words, instead }) => html`<p class="idea">${words}. ${instead}</p>`))}
</div>`;
}

/** Most questions that are printed two side by side; of more, three are, without the scene that the handout has. */
const MOST_WIDE = 12;

/** What a page may be told. */
export interface PageOptions {
  /** Without names, files and a row for each student: to be shown to the class. */
  readonly isAnonymous?: boolean;
  /** Language of the words in it. */
  readonly lang?: string;
}

/** The page. */
export function reportHtml(
  result: ClassResult,
  analysis: ClassAnalysis,
  { isAnonymous = false, lang = 'en' }: PageOptions = {},
): string {
  const { handout, students, setAside, elsewhere, calledOver } = result;
  const body = html`<h1>${handout.title}</h1>
<p>${[`${countWords(result, analysis.meanPercent)}.`, ...elsewhere.map((each) => elsewhereWords(each, { isAnonymous })), ...smallClassNote(students.length, isAnonymous)].join(' ')}</p>
${calledOver === undefined ? html`` : join(calledOverLines(calledOver, isAnonymous).map((line) => html`<p><bdi>${line}</bdi></p>`))}
${firstPageHtml(result, analysis.lesson, isAnonymous)}
${setAside.length === 0 || isAnonymous ? html`` : html`<section><h2>Set aside</h2>${listOf(setAside.map((each) => html`<bdi>${asideWords(each)}</bdi>`))}</section>`}
${
  students.length === 0
    ? html``
    : html`<section><h2>Each question</h2>
<p class="family">Whole answers, all their choices together; * marks ${GOOD_MARK} or more.</p>
<div class="${analysis.questions.length > MOST_WIDE ? 'cards many' : 'cards'}">
${join(analysis.questions.map((question, index) => questionSection(question, index, result, analysis.sittings)))}
</div></section>
<section><h2>Reliability</h2><p>${reliabilityLines(analysis).join(' ')}</p></section>`
}
<p class="family">Colours on this page are what a screen or printer makes of a prediction; go by the words and the value steps.</p>`;
  return htmlPage({ title: `${handout.title}: results`, style: REPORT_STYLE, body, lang });
}
