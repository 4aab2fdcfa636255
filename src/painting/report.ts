/** One page on a painting, to print or send: its pictures, its values, its masses, what to do next. */
import { colourInWords } from '../colour/index.js';
import { toScreen } from '../colour/screen.js';
import { html, join, type Markup } from '../text/html.js';
import { htmlPage } from '../text/page.js';
import { percent } from '../words/laid.js';
import { placeWords } from '../words/sentences/painting.js';
import { scaleUnit, stepText, type Voice } from '../words/voice.js';
import type { PaintingReading } from './types.js';

/** A picture that is put into the page: a PNG as a data address, and what it shows. */
export interface ReportPicture {
  readonly png: Markup;
  readonly words: string;
}

/** One photograph in the report. */
export interface ReportPart {
  /** "Before", "After", or the name of the file. */
  readonly title: string;
  readonly pictures: readonly ReportPicture[];
  readonly reading: PaintingReading;
}

const STYLE: Markup = {
  markup: `
.pictures { display: flex; flex-wrap: wrap; gap: .75rem; margin: .5rem 0; }
figure { margin: 0; flex: 1 1 14rem; max-width: 26rem; } figure img { width: 100%; height: auto; display: block; }
figcaption { color: #555; font-size: .85rem; }
table { border-collapse: collapse; margin: .5rem 0; } th, td { padding: .15rem .6rem .15rem 0; text-align: left; vertical-align: top; }
td.n { text-align: right; font-variant-numeric: tabular-nums; }
.swatch { display: inline-block; width: 2.2rem; height: 1.1rem; vertical-align: middle; }
.bar { display: inline-block; height: .8rem; background: #777; vertical-align: middle; }
@media (max-width: 30rem) { th, td { padding-right: .35rem; font-size: .85rem; } .swatch { width: 1.2rem; } }
@media print { figure { flex: 1 1 40%; break-inside: avoid; } tr { break-inside: avoid; } }
`,
};

const pictureOf = ({ png, words }: ReportPicture): Markup =>
  html`<figure><img src="${png}" alt="${words}"><figcaption>${words}</figcaption></figure>`;

function histogram({ histogram: shares }: PaintingReading, voice: Voice): Markup {
  const most = Math.max(...shares);
  const rows = shares.map(
    (share, at) =>
      html`<tr><th scope="row">${stepText(at + 1, voice).replace(/\.0$/, '')}</th><td><span class="bar" style="width:${((12 * share) / most).toFixed(1)}rem"></span></td><td class="n">${percent(share)}</td></tr>`,
  );
  return html`<table><caption>Share of each ${scaleUnit(voice) === 'step' ? 'step' : 'value'}</caption><tbody>
${join(rows)}
</tbody></table>`;
}

function massTable({ masses }: PaintingReading, voice: Voice): Markup {
  const rows = masses.map(
    ({ colour, share, x, y }, at) =>
      html`<tr><td class="n">${at + 1}</td><td><span class="swatch" style="background-color:${toScreen(colour.xyz).hex}"></span></td><td>${colourInWords(colour.lab)}</td><td>${placeWords({ x, y })}</td><td class="n">${stepText(colour.step, voice)}</td><td class="n">${colour.chroma.toFixed(0)}</td><td class="n">${percent(share)}</td></tr>`,
  );
  return html`<table><caption>Masses, the largest first</caption>
<thead><tr><th></th><th></th><th scope="col">Colour</th><th scope="col">Place</th><th scope="col">${scaleUnit(voice) === 'step' ? 'Step' : 'Value'}</th><th scope="col">Chroma</th><th scope="col">Share</th></tr></thead>
<tbody>
${join(rows)}
</tbody></table>`;
}

const partOf = ({ title, pictures, reading }: ReportPart, voice: Voice): Markup => html`<section>
<h2>${title}</h2>
<div class="pictures">
${join(pictures.map(pictureOf))}
</div>
${histogram(reading, voice)}
${massTable(reading, voice)}
</section>`;

/** Paragraphs as they are told; a blank line begins a new one. */
const saidOf = (told: readonly string[]): Markup =>
  join(told.filter((line) => line !== '').map((line) => html`<p>${line}</p>`));

/**
 * The page as text.
 * @param parts the painting, or before and after
 * @param told what is said, a paragraph each
 */
export function paintingReport(
  title: string,
  parts: readonly ReportPart[],
  told: readonly string[],
  voice: Voice,
): string {
  return htmlPage({
    title,
    style: STYLE,
    withPictures: true,
    body: html`<h1>${title}</h1>
${saidOf(told)}
${join(parts.map((part) => partOf(part, voice)))}
<p class="family">Values are read from a photograph: its light, its camera and its file all come in. Trust differences more than single figures, and your own eyes more than either.</p>`,
  });
}
