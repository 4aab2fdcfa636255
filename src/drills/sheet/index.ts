/** The contact sheet: one page on which an author sees every drill as a painter would, with what the program says of each answer. */

import { type ColourReading, readColour } from '../../colour/reading.js';
import { greyOfValue, toScreen } from '../../colour/screen.js';
import { colourInWords } from '../../colour/words.js';
import { NO_HUE_CHROMA } from '../../judgement/index.js';
import type { Studio } from '../../paints/index.js';
import { html, join, type Markup } from '../../text/html.js';
import { htmlPage } from '../../text/page.js';
import { judgedRows, rowLine } from '../../words/judged.js';
import { sayAll } from '../../words/tell.js';
import { WRITTEN } from '../../words/voice.js';
import type { DrillCheck } from '../check.js';
import { findFamily } from '../families.js';
import { type Drill, kindOf } from '../kinds/index.js';
import type { DrillLook, SeenAnswer } from '../look.js';
import type { ResultSwatch } from '../types.js';
import { SHEET_STYLE } from './style.js';

/** The colour, and beside it the grey of the same value. */
function pair({ xyz, value }: ColourReading): Markup {
  return html`<div class="pair"><span class="swatch" style="background-color:${toScreen(xyz).hex}"></span><span class="swatch" style="background-color:${greyOfValue(value)}"></span></div>`;
}

/** "step 4.2, chroma 50, hue 48°, strong orange". */
function figures({ step, chroma, hue, lab, xyz }: ColourReading): string {
  const angle = chroma < NO_HUE_CHROMA ? 'no hue' : `hue ${hue.toFixed(0)}°`;
  const near = toScreen(xyz).inScreenGamut ? '' : ' (screen colour only near it)';
  return `step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}, ${angle}, ${colourInWords(lab)}${near}`;
}

function given({ label, reflectance }: ResultSwatch): Markup {
  const colour = readColour(reflectance);
  return html`<li>${pair(colour)}<strong>${label}</strong><br>${figures(colour)}</li>`;
}

function answer(role: 'best' | 'trap', { label, grade, swatch, colour }: SeenAnswer): Markup {
  // A swatch of one part of an answer says of which: "yours, left block".
  const of = swatch?.label.replace(/^yours(, )?/, '') ?? '';
  const lines = [...judgedRows(grade, WRITTEN).map(rowLine), ...sayAll(grade.told, WRITTEN)];
  const said = lines.map((line) => html`<li>${line}</li>`);
  const text = html`<p class="mark">${role === 'best' ? `best, mark ${grade.mark}` : `mark ${grade.mark}, ${grade.verdict}`}</p>
<p><strong>${label}</strong></p>
${colour === undefined ? html`` : html`<p class="figures">${of === '' ? figures(colour) : `${of}: ${figures(colour)}`}</p>`}
<ul class="said">${join(said)}</ul>`;
  return colour === undefined
    ? html`<div class="answer plain ${role}">${text}</div>`
    : html`<div class="answer ${role}">${pair(colour)}<div>${text}</div></div>`;
}

/** What stands beside the title: where a drill belongs and what it shows. */
function facts(drill: Drill, { goal, hueBound, shadingLine }: DrillLook, luck: number): string {
  const subject = drill.kind === 'mix' ? drill.subject : undefined;
  return [
    `level ${drill.level}`,
    `family ${drill.family}`,
    `kind ${drill.kind}`,
    goal === undefined ? '' : `aim ${goal.aim}`,
    `picture ${drill.picture ?? 'none'}`,
    drill.kind === 'mix' ? `subject ${subject ?? 'none'}` : '',
    hueBound === undefined ? '' : `hue within ${hueBound}°`,
    shadingLine === undefined ? '' : `shading line at the best ${shadingLine.toFixed(0)}`,
    `luck ${Math.round(100 * luck)} %`,
  ]
    .filter((fact) => fact !== '')
    .join('; ');
}

/** What else is shown of a drill, once its best answer is known. */
export type Beside = (drill: Drill, look: DrillLook) => Markup;

function article(studio: Studio, drill: Drill, { look, luck, faults }: DrillCheck, beside: Beside): Markup {
  const { id, title, scene, ask, hint } = drill;
  const goal = sayAll(kindOf(studio, drill).goalLines(drill), WRITTEN).map((line) => html`<li>${line}</li>`);
  return html`<article id="${id}">
<h3>${title}</h3>
<p class="family"><code>${id}</code> ${facts(drill, look, luck)}</p>
${join(faults.map((fault) => html`<p class="fault">${fault}</p>`))}
<p>${scene}</p>
${beside(drill, look)}
<p><strong>${ask}</strong></p>
${hint === undefined ? html`` : html`<p class="hint">Hint: ${hint}</p>`}
<ul class="goal">${join(goal)}</ul>
<ul class="given">
${join(look.swatches.map(given))}
</ul>
${answer('best', look.best)}
${join(look.traps.map((trap) => answer('trap', trap)))}
</article>`;
}

/**
 * Every drill on one page, family by family.
 * @param checks of the drills, in their order
 * @param beside what stands under the scene of each: its picture
 */
export function sheetHtml(
  studio: Studio,
  drills: readonly Drill[],
  checks: readonly DrillCheck[],
  beside: Beside = () => html``,
): string {
  const families = [...new Set(drills.map(({ family }) => family))];
  const nameOf = (family: string): string => findFamily(family)?.name ?? family;
  const faulty = checks.filter(({ faults }) => faults.length > 0);
  const links = families.map((family) => {
    const own = drills.filter((drill) => drill.family === family);
    return html`<li><a href="#family-${family}">${nameOf(family)}</a>, ${own.length}</li>`;
  });
  const sections = families.map((family) => {
    const own = drills
      .map((drill, index) => ({ drill, check: checks[index] as DrillCheck }))
      .filter(({ drill }) => drill.family === family);
    return html`<section>
<h2 id="family-${family}">${nameOf(family)}</h2>
${join(own.map(({ drill, check }) => article(studio, drill, check, beside)))}
</section>`;
  });
  const body = html`<h1>Contact sheet</h1>
<p>${drills.length} drill${drills.length === 1 ? '' : 's'}, ${faulty.length} with faults. Each colour stands beside the grey of its value, each answer over what the program says of it: the best first, then the wrong ones that tempt. In a mixture those are the nearest that each second paint comes, and the worst that one wrong choice gives; elsewhere every answer one choice away.</p>
${families.length > 1 ? html`<ul class="toc">${join(links)}</ul>` : html``}
${faulty.length === 0 ? html`` : html`<p>With faults: ${join(faulty.map(({ id }) => html`<a href="#${id}">${id}</a>`))}</p>`}
${join(sections)}
<p class="family">Colours on this page are what a screen or printer makes of a prediction; go by the words and the value steps.</p>`;
  return htmlPage({ title: 'Contact sheet', style: SHEET_STYLE, body });
}
