/** What was read of a painting, as a page of text. */

import { scaleEnds, VALUE_SCALES } from '../colour/value.js';
import { colourInWords } from '../colour/words.js';
import type { Mass, PaintingReading } from '../painting/index.js';
import { listWords } from '../text/list-words.js';
import { padText, wrapText } from '../text/wrap.js';
import { stepsWords } from '../words/laid.js';
import { placeWords } from '../words/sentences/painting.js';
import { scaleUnit, stepText, stepWords, toVoice, type Voice } from '../words/voice.js';

/** How the page is written. */
export interface PageStyle {
  readonly voice: Voice;
  readonly columns: number;
}

/** What is said besides the figures: paragraphs, '' a blank line. */
export interface PageWords {
  readonly title: string;
  readonly told: readonly string[];
}

const COLUMNS = { least: 40, most: 80 } as const;
/** Columns that the places of masses have room in. */
const WITH_PLACES = 72;
/** Strongest borders that are told. */
const BORDERS = 3;

const percent = (share: number): string =>
  share > 0 && share < 0.005 ? 'under 1 %' : `${Math.round(100 * share)} %`;

function whiteLine({ white, doubts }: PaintingReading): string {
  if (doubts.some(({ id }) => id === 'no-white'))
    return 'White: no bare paper was found; the white of the file stands for it.';
  const at = `${percent(white.x)} from the left, ${percent(white.y)} from the top`;
  return white.found ? `White: bare paper, found at ${at}.` : `White: taken where you showed it, at ${at}.`;
}

function shareWords({ shares }: PaintingReading): string {
  const parts = (['light', 'middle', 'dark'] as const).map((name) =>
    shares[name] < 0.005 ? `hardly anything ${name}` : `${percent(shares[name])} ${name}`,
  );
  return `${listWords(parts)}.`;
}

/** Ten columns of five signs under the steps they count. */
function histogramLines({ histogram }: PaintingReading, voice: Voice): string[] {
  const rows = histogram.map((share, at) => [stepText(at + 1, voice), `${Math.round(100 * share)}`] as const);
  if (voice.spoken)
    return rows
      .filter(([, share]) => share !== '0')
      .map(([step, share]) => `${scaleUnit(voice)} ${step}: ${share} percent.`);
  const line = (name: string, cells: readonly string[]): string =>
    `${padText(name, 10)}${cells.map((cell) => cell.padStart(5)).join('')}`;
  const shown = (step: string): string => step.replace(/\.0$/, '');
  return [
    line(
      scaleUnit(voice),
      rows.map(([step]) => shown(step)),
    ),
    line(
      '% of all',
      rows.map(([, share]) => share),
    ),
  ];
}

function massWords({ colour }: Mass): string {
  return colourInWords(colour.lab);
}

function massLines({ masses }: PaintingReading, { voice, columns }: PageStyle): string[] {
  if (voice.spoken)
    return masses.map((mass, at) =>
      toVoice(
        `Mass ${at + 1}: ${massWords(mass)}, ${placeWords(mass)}, ${percent(mass.share)} of it, ${stepWords(mass.colour.step, voice)}, chroma ${mass.colour.chroma.toFixed(0)}.`,
        voice,
      ),
    );
  const row = (cells: readonly string[]): string => {
    const [number = '', share = '', step = '', chroma = '', hue = '', where = '', words = ''] = cells;
    const figures = `${number.padStart(4)}${share.padStart(7)}${step.padStart(6)}${chroma.padStart(8)}${hue.padStart(5)}  `;
    return padText(`${figures}${columns < WITH_PLACES ? '' : padText(where, 14)}${words}`, columns).trimEnd();
  };
  return [
    row(['mass', 'share', scaleUnit(voice), 'chroma', 'hue', 'where', 'colour']),
    ...masses.map((mass, at) => {
      const { step, chroma, hue } = mass.colour;
      return row([
        String(at + 1),
        percent(mass.share),
        stepText(step, voice),
        chroma.toFixed(0),
        chroma < 5 ? '' : hue.toFixed(0),
        placeWords(mass),
        massWords(mass),
      ]);
    }),
  ];
}

/** Where the lightest and the darkest lie, and what stands hardest against what. */
function standingLines({ masses, borders }: PaintingReading): string[] {
  const byStep = masses.map((mass, at) => ({ at, step: mass.colour.step })).sort((a, b) => a.step - b.step);
  const [lightest, darkest] = [byStep[0], byStep.at(-1)];
  if (lightest === undefined || darkest === undefined || lightest === darkest) return [];
  const strongest = [...borders]
    .sort((one, other) => other.steps - one.steps)
    .slice(0, BORDERS)
    .map(
      ({ between: [light, dark], steps, at }) =>
        `${light + 1} against ${dark + 1} (${stepsWords(Math.round(10 * steps) / 10)}, ${placeWords(at)})`,
    );
  return [
    `The lightest mass is ${lightest.at + 1}, the darkest ${darkest.at + 1}.`,
    ...(strongest.length === 0 ? [] : [`Strongest contrasts of value: ${listWords(strongest)}.`]),
  ];
}

/** The page. */
export function paintingPage(reading: PaintingReading, words: PageWords, style: PageStyle): string {
  const { voice } = style;
  const columns = Math.max(COLUMNS.least, Math.min(style.columns, COLUMNS.most));
  const said = (text: string): string[] => wrapText(toVoice(text, voice), columns);
  const { light, dark } = reading.range;
  const unit = scaleUnit(voice);
  const lines = [
    ...said(words.title),
    ...said(whiteLine(reading)),
    '',
    ...said(
      `Range: ${unit} ${stepText(light, voice)} to ${stepText(dark, voice)} (${scaleEnds(VALUE_SCALES[voice.scale])}).`,
    ),
    ...said(`Of the painting: ${shareWords(reading)}`),
    ...histogramLines(reading, voice),
    '',
    ...massLines(reading, { voice, columns }),
    '',
    ...standingLines(reading).flatMap(said),
    '',
    ...words.told.flatMap((text) => (text === '' ? [''] : said(text))),
  ];
  return `${lines.join('\n')}\n`;
}
