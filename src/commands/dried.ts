/** `mudlark dried`: what dried on the painter's own paper, against the prediction, and what it tells of the tubes. */
import { deltaE00 } from '../colour/difference.js';
import { DataError } from '../errors.js';
import { findPaint } from '../paints/index.js';
import {
  type Dried,
  mixturesToAsk,
  type Part,
  paintingTold,
  patchColour,
  type ReadBy,
  type Reading,
  readingsTold,
  type Told,
} from '../readings/index.js';
import { listWords } from '../text/list-words.js';
import { padText, wrapText } from '../text/wrap.js';
import type { Wash } from '../washes/index.js';
import { ratioWords, thinWords } from '../words/laid.js';
import { sayAll } from '../words/tell.js';
import { scaleUnit, type Voice } from '../words/voice.js';
import { driedText, type ReadingTexts, readReading, readTable, readWhich, waterText } from './dried-read.js';
import {
  type DriedPlace,
  forgetReadings,
  keepReadings,
  keepStrengths,
  newStrengths,
  readingsOf,
  requireOwn,
  toldOf,
} from './dried-store.js';
import type { Confirm } from './record.js';
import { document } from './run.js';

export interface DriedStyle {
  readonly voice: Voice;
  readonly columns: number;
}

/** Mixtures that are asked for at once. */
const ASKED = 3;
const WIDEST = 100;

export const wrapped = (lines: readonly string[], { columns }: DriedStyle, under = ''): string[] =>
  lines.flatMap((line) =>
    wrapText(line, Math.min(columns, WIDEST) - under.length).map((part) => `${under}${part}`),
  );

/** What to paint next from the box. */
export function asked(place: DriedPlace, by: ReadBy) {
  const { library, box } = place;
  return mixturesToAsk(library, box.pigments, by, { readings: readingsOf(place).used, count: ASKED });
}

/** What to do to paint a mixture, with its number. */
export function mixtureLines({ studio }: DriedPlace, wash: Wash, at: number, style: DriedStyle): string[] {
  const [first = '', ...rest] = wrapped(sayAll(paintingTold(studio, wash), style.voice), style, '   ');
  return [`${padText(`${at + 1}.`, 3)}${first.trimStart()}`, ...rest];
}

const silentLine = ({ studio }: DriedPlace, silent: readonly string[], by: ReadBy): string =>
  `${by === 'value' ? 'Value' : 'No reading'} cannot tell how strong ${listWords(silent.map((id) => findPaint(studio, id)?.name ?? id))} ${silent.length === 1 ? 'is' : 'are'}${by === 'value' ? '; with an instrument that reads CIELAB or Munsell: --lab' : ''}.`;

/** The mixtures to paint, as text or JSON. */
export function driedAsk(place: DriedPlace, by: ReadBy, style: DriedStyle, json: boolean): string {
  const { mixtures, silent } = asked(place, by);
  if (json)
    return document({
      box: place.box.id,
      by,
      mixtures: mixtures.map(({ wash, moves }) => ({
        ...wash,
        water: waterText(wash.strength),
        moves,
        predicted: predictedBoth(place, { wash, mixed: { step: 1 } }),
      })),
      silent,
    });
  const list = mixtures.flatMap(({ wash }, at) => {
    return mixtureLines(place, wash, at, style);
  });
  return `${[...list, ...(silent.length === 0 ? [] : wrapped([silentLine(place, silent, by)], style))].join('\n')}\n`;
}

/** What the box predicts of a patch now, strengths of its tubes included. */
function predicted({ library, box: { strengths = {} } }: DriedPlace, { wash }: Reading, part: Part) {
  const logs = new Map(Object.entries(strengths).map(([id, factor]) => [id, Math.log(factor)]));
  return patchColour(library, wash, part, { strengths: logs, wash: 0 });
}

function predictedBoth(place: DriedPlace, reading: Reading) {
  const figures = (part: Part) => {
    const { step, lab } = predicted(place, reading, part);
    return { step, lab };
  };
  return { alone: figures('alone'), mixed: figures('mixed') };
}

/** "yours 3.5, predicted 3.7". */
export function against(
  place: DriedPlace,
  reading: Reading,
  part: Part,
  dried: Dried,
  { voice }: Pick<DriedStyle, 'voice'>,
): string {
  const { step, lab } = predicted(place, reading, part);
  const mine = driedText(dried, voice.scale);
  if ('step' in dried) return `yours ${mine}, predicted ${driedText({ step }, voice.scale)}`;
  return `yours ${mine}, predicted ${driedText({ lab }, voice.scale)}, colour difference ${deltaE00(dried.lab, lab).toFixed(1)}`;
}

/** Predicted against read, a line a patch, or two where one is too narrow. @param under what stands before each line */
export function comparedLines(place: DriedPlace, reading: Reading, style: DriedStyle, under = ''): string[] {
  const { alone, mixed, wash } = reading;
  const { studio } = place;
  const nameOf = (id: string) => findPaint(studio, id)?.name ?? id;
  const parts = Object.entries(wash.paints);
  const first =
    parts.length === 1
      ? nameOf(parts[0]?.[0] ?? '')
      : `${parts.map(([id]) => nameOf(id)).join(' + ')} ${parts.map(([, amount]) => amount).join(':')}`;
  const width = 38;
  const name = `${first}, water ${waterText(wash.strength)}`;
  const row = (label: string, part: Part, dried: Dried): string[] => {
    const text = against(place, reading, part, dried, style);
    const whole = `${under}${padText(label, width)} ${text}`;
    if (whole.length <= style.columns) return [whole];
    return [`${under}${label}`, ...wrapped([text], style, `${under}    `)];
  };
  if (wash.add === undefined) return row(name, 'mixed', mixed);
  const added = Object.entries(wash.add).map(([id, amount]) => `${nameOf(id)} ${ratioWords(amount)}`);
  const { thin = 1 } = wash;
  const water = thin === 1 ? '' : `, ${thinWords(thin)}`;
  return [
    ...(alone === undefined ? [`${under}${name}`] : row(name, 'alone', alone)),
    ...row(`  with ${listWords(added)}${water}`, 'mixed', mixed),
  ];
}

/** What all readings of the box tell, in sentences. */
export function tellingLines(place: DriedPlace, style: DriedStyle): string[] {
  const { used } = readingsOf(place);
  return wrapped(sayAll(readingsTold(place.studio, toldOf(place), used), style.voice), style);
}

/** How to put to use what is known well enough; nothing where nothing is. */
export const correctLines = (place: DriedPlace, told: Told): string[] =>
  newStrengths(place, told).size === 0
    ? []
    : ['To have the box reckon with these strengths: mudlark dried correct'];

/** All readings with what they tell. */
export function driedShow(place: DriedPlace, style: DriedStyle, json: boolean): string {
  const { used, earlier } = readingsOf(place);
  const told = toldOf(place);
  if (json)
    return document({
      box: place.box.id,
      readings: used.map(({ box: _box, ...reading }) => ({
        ...reading,
        predicted: predictedBoth(place, reading),
      })),
      earlier,
      ...told,
    });
  if (used.length === 0)
    return `No readings of the ${place.box.name} yet. What to paint: mudlark dried ask\n`;
  const rows = used.flatMap((reading, at) =>
    comparedLines(place, reading, style, '    ').map((line, row) =>
      row === 0 ? `${padText(`${at + 1}.`, 4)}${line.slice(4)}` : line,
    ),
  );
  const before =
    earlier === 0 ? [] : [`${earlier} earlier ${earlier === 1 ? 'one is' : 'ones are'} not used any more.`];
  const correct = correctLines(place, told);
  const next = correct.length === 0 ? [] : ['', ...correct];
  const head = `Dried patches of the ${place.box.name}, ${scaleUnit(style.voice)} or CIELAB as they were read:`;
  return `${[...wrapped([head], style), ...rows, ...before, '', ...tellingLines(place, style), ...next].join('\n')}\n`;
}

/** Keeps readings; what they were against the prediction. */
function kept(place: DriedPlace, readings: readonly Reading[], style: DriedStyle, now: Date): string {
  keepReadings(place, readings, now);
  const rows = readings.flatMap((reading) => comparedLines(place, reading, style));
  const said = readings.length === 1 ? 'Kept.' : `${readings.length} readings kept.`;
  return `${[...rows, said, '', ...tellingLines(place, style)].join('\n')}\n`;
}

/** Adds one reading from the command line. @throws UsageError in one line */
export function driedAdd(place: DriedPlace, texts: ReadingTexts, style: DriedStyle, now: Date): string {
  requireOwn(place);
  return kept(place, [readReading(place.studio, texts, style.voice.scale)], style, now);
}

/** Adds a table of readings, all or none. @throws UsageError that names the line */
export function driedTable(place: DriedPlace, text: string, style: DriedStyle, now: Date): string {
  requireOwn(place);
  const readings = readTable(place.studio, text, style.voice.scale);
  if (readings.length === 0)
    throw new DataError(
      'there is no reading in it; one a line, like burnt-sienna=1 1:24; ultramarine-blue=2; 3.5; 6',
    );
  return kept(place, readings, style, now);
}

/** Has the box reckon with the strengths that are known well enough. @throws DataError where none is */
export async function driedCorrect(place: DriedPlace, style: DriedStyle, confirm: Confirm): Promise<string> {
  requireOwn(place);
  const told = toldOf(place);
  const strengths = newStrengths(place, told);
  const lines = tellingLines(place, style);
  if (strengths.size === 0) {
    if (!told.isAtOdds && told.tubes.some(({ standing }) => standing === 'known'))
      return `${lines.join('\n')}\n${wrapped([`The ${place.box.name} stays as it is: no tube is surely stronger or weaker than it reckons with.`], style).join('\n')}\n`;
    throw new DataError(
      told.isAtOdds
        ? 'the readings do not fit together, so nothing is corrected; read again in daylight, on one scale; see: mudlark dried show'
        : 'no tube is known well enough yet; what to paint next: mudlark dried ask',
    );
  }
  process.stdout.write(`${lines.join('\n')}\n`);
  const names = [...strengths].map(([id, factor]) => `${findPaint(place.studio, id)?.name ?? id} ${factor}`);
  if (!(await confirm(`Use these strengths in the ${place.box.name}: ${names.join(', ')}?`)))
    return 'Nothing was changed.\n';
  keepStrengths(place, strengths);
  return `${wrapped([`The ${place.box.name} reckons with them from now on: ${names.join(', ')} times the library’s. Back to the library’s with: mudlark box edit ${place.box.id} --strength PAINT=1`], style).join('\n')}\n`;
}

/** Forgets one reading, or all. @throws UsageError for a number that there is not */
export async function driedForget(place: DriedPlace, which: string, confirm: Confirm): Promise<string> {
  const { used } = readingsOf(place);
  if (which !== 'all') {
    const number = readWhich(which, used.length);
    forgetReadings(place, used.slice(number - 1, number));
    return `Reading ${number} is forgotten; the strengths of the box stay as they are.\n`;
  }
  const all = (place.profile.own.readings ?? []).filter(({ box }) => box === place.box.id);
  if (all.length === 0) return `There are no readings of the ${place.box.name}.\n`;
  if (!(await confirm(`Forget all ${all.length} readings of the ${place.box.name}?`)))
    return 'Nothing was changed.\n';
  forgetReadings(place, all);
  return `All readings of the ${place.box.name} are forgotten; the strengths of the box stay as they are.\n`;
}
