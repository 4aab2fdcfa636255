/** What `mudlark painting` is asked for, read from its options. */
import { VALUE_SCALES, type ValueScaleId } from '../colour/value.js';
import { UsageError } from '../errors.js';
import type { ByHand, Corners, Cut, Place } from '../painting/index.js';
import { STUDY_VALUES, type Study, type StudyValues } from '../painting/study.js';
import { RECIPE_AIMS, type RecipeAim } from '../recipes/index.js';
import { listWords } from '../text/list-words.js';
import { cleanText } from '../text/sanitize.js';
import { readNumber } from './read-parts.js';

/** Options as typed. */
export interface PaintingOptions {
  readonly white?: string;
  readonly crop?: string;
  readonly corners?: string;
  readonly paints?: readonly string[];
  readonly box?: string;
  readonly mass?: string;
  readonly goal?: string;
  readonly scale?: string;
  readonly grey?: boolean;
  readonly values?: readonly string[];
  readonly out?: string;
  readonly report?: string;
  readonly plan?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** A mass to mix, and what for. */
export interface MassWish {
  /** From 0, as the masses are listed. */
  readonly at: number;
  readonly aim?: RecipeAim;
}

/** What is asked. */
export interface PaintingRequest {
  readonly byHand: ByHand;
  readonly mass?: MassWish;
  readonly studies: readonly Study[];
}

const SHARES = 'shares of the width and the height, from 0 to 1';

/** Numbers with commas between. @param form how they are written, for the message */
function readShares(text: string, flag: string, count: number, form: string): number[] {
  const parts = text.split(',');
  if (parts.length !== count)
    throw new UsageError(`${flag} takes ${form}: ${SHARES}; got "${cleanText(text, 60)}"`);
  return parts.map((part) => {
    const share = readNumber(part, `each number of ${flag}`);
    if (!(share >= 0 && share <= 1))
      throw new UsageError(`${flag} takes ${form}: ${SHARES}; ${cleanText(part, 20)} is not`);
    return share;
  });
}

const MOST_VALUE = 10;

/** `x,y`, perhaps with `=V`. */
function readWhite(text: string): NonNullable<ByHand['white']> {
  const [place = '', typed, ...more] = text.split('=');
  if (more.length > 0) throw new UsageError(`--white takes x,y or x,y=V, got "${cleanText(text, 60)}"`);
  const [x = 0, y = 0] = readShares(place, '--white', 2, 'x,y or x,y=V');
  if (typed === undefined) return { x, y };
  const value = readNumber(typed, 'the Munsell value of --white');
  // Nothing darker can stand for a white: what it is off by would be multiplied.
  if (!(value >= 1 && value <= MOST_VALUE))
    throw new UsageError(
      `--white takes the Munsell value of a card, 1 to ${MOST_VALUE}, after =; got ${value}`,
    );
  return { x, y, value };
}

function readCut(text: string): Cut {
  const [x = 0, y = 0, width = 0, height = 0] = readShares(text, '--crop', 4, 'x,y,width,height');
  // A hundredth of a hundredth may be lost in decimals.
  if (!(width > 0 && height > 0 && x + width <= 1.0001 && y + height <= 1.0001))
    throw new UsageError(
      `--crop takes x,y,width,height with something in it, and nothing beyond the picture; got "${cleanText(text, 60)}"`,
    );
  return { x, y, width: Math.min(width, 1 - x), height: Math.min(height, 1 - y) };
}

/** Twice the area on the left of a way from one place over another to a third. */
const turnOf = (a: Place, b: Place, c: Place): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Least turn at a corner: the places of a sheet that is seen at all. */
const LEAST_TURN = 0.0025;

function readCorners(text: string): Corners {
  const form = 'four places, left upper, right upper, right lower, left lower, as x,y,x,y,x,y,x,y';
  const numbers = readShares(text, '--corners', 8, form);
  const places = [0, 2, 4, 6].map((at): Place => ({ x: numbers[at] ?? 0, y: numbers[at + 1] ?? 0 }));
  const [first, second, third, fourth] = places as unknown as Corners;
  const turns = [
    turnOf(first, second, third),
    turnOf(second, third, fourth),
    turnOf(third, fourth, first),
    turnOf(fourth, first, second),
  ];
  if (turns.some((turn) => turn < LEAST_TURN))
    throw new UsageError(`--corners takes ${form}; these do not go around a sheet in that order`);
  return [first, second, third, fourth];
}

function readMass({ mass, goal }: PaintingOptions): MassWish | undefined {
  const aim = RECIPE_AIMS.find((known) => known === goal);
  if (goal !== undefined && aim === undefined)
    throw new UsageError(`--goal takes ${listWords(RECIPE_AIMS, 'or')}; not "${cleanText(goal, 40)}"`);
  if (mass === undefined) {
    if (goal !== undefined) throw new UsageError('--goal is for one mass: name it with --mass N');
    return undefined;
  }
  const number = readNumber(mass, '--mass');
  if (!Number.isInteger(number) || number < 1)
    throw new UsageError(`--mass takes the number of a mass as they are listed, got ${cleanText(mass, 20)}`);
  return { at: number - 1, ...(aim !== undefined && { aim }) };
}

function readStudies({ grey = false, values = [], out }: PaintingOptions): readonly Study[] {
  const read = values.map((text): StudyValues => {
    const found = STUDY_VALUES.find((count) => String(count) === text.trim());
    if (found === undefined)
      throw new UsageError(
        `--values takes ${listWords(STUDY_VALUES.map(String), 'or')}, got ${cleanText(text, 20)}`,
      );
    return found;
  });
  const studies: Study[] = [...(grey ? (['grey'] as const) : []), ...new Set(read)];
  if (out !== undefined && studies.length !== 1)
    throw new UsageError(
      studies.length === 0
        ? '--out names the file of a study: add --grey or --values N'
        : '--out names one file, and several studies are asked for; leave it out and they lie beside the photograph',
    );
  return studies;
}

/** Reads the scale that is asked for once. @throws UsageError */
export function readScale(text: string | undefined): ValueScaleId | undefined {
  if (text === undefined) return undefined;
  const ids = Object.keys(VALUE_SCALES) as ValueScaleId[];
  const scale = ids.find((id) => id === text);
  if (scale === undefined)
    throw new UsageError(`--scale takes ${listWords(ids, 'or')}, got "${cleanText(text, 40)}"`);
  return scale;
}

/**
 * Reads the options.
 * @param areTwo whether before and after are given: what is said of places by hand is said of one
 * @throws UsageError for whatever cannot be asked
 */
export function readPaintingRequest(options: PaintingOptions, areTwo = false): PaintingRequest {
  const { white, crop, corners } = options;
  const byHand = (['white', 'crop', 'corners'] as const).find((name) => options[name] !== undefined);
  if (areTwo && byHand !== undefined)
    throw new UsageError(`--${byHand} is for one photograph; cut both to the painting first`);
  if (crop !== undefined && corners !== undefined)
    throw new UsageError('--crop and --corners are both given; leave one out');
  const mass = readMass(options);
  return {
    byHand: {
      ...(white !== undefined && { white: readWhite(white) }),
      ...(crop !== undefined && { cut: readCut(crop) }),
      ...(corners !== undefined && { corners: readCorners(corners) }),
    },
    ...(mass !== undefined && { mass }),
    studies: readStudies(options),
  };
}
