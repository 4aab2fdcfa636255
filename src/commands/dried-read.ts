/** What dried, as it is typed: a step, a value, CIELAB or a Munsell notation; and whole readings, one a line. */
import { readColourText } from '../colour/read-colour.js';
import { painterStep, scaleEnds, VALUE_SCALES, type ValueScaleId, valueFromStep } from '../colour/value.js';
import { InputError, UsageError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { type Dried, READ_ENDS, type Reading } from '../readings/index.js';
import { cleanText } from '../text/sanitize.js';
import { MASSTONE_WATER, waterStrength } from '../washes/index.js';
import { readNumber, readParts } from './read-parts.js';

const [LEAST_STEP, MOST_STEP] = READ_ENDS.step;
const VALUE = /^(?:V|N)\s*(\d*\.?\d+)\s*\/?$/i;
const NUMBER = /^\d*\.?\d+$/;

/**
 * Reads what dried: a number on the learner's scale, `V 6` or `N 6` for a Munsell value, `lab(40 10 20)` (D65, 2 degrees) or
 * `7.5YR 4/4`. A colour of a screen is none: it is not what dried.
 * @throws InputError in one line
 */
export function readDried(text: string, scale: ValueScaleId): Dried {
  const typed = text.trim();
  const takes = `write a ${scale === 'paper-first' ? 'step, like 4.5,' : 'value, like 6,'} or V 6 for a Munsell value, lab(40 10 20) or 7.5YR 4/4`;
  const value = VALUE.exec(typed)?.[1];
  if (value !== undefined || NUMBER.test(typed)) {
    const number = Number(value ?? typed);
    if (value === undefined && scale === 'paper-first') {
      if (number >= LEAST_STEP && number <= MOST_STEP) return { step: number };
      throw new InputError(`${typed.slice(0, 20)} is not on the scale: ${scaleEnds(VALUE_SCALES[scale])}`);
    }
    if (number <= 10) return { step: painterStep(number) };
    throw new InputError(`${typed.slice(0, 20)} is no Munsell value: they go from 0 black to 10 white`);
  }
  if (/^lab\b/i.test(typed) || /^\d.*\//.test(typed)) return { lab: readColourText(typed) };
  throw new InputError(`"${cleanText(typed, 40)}" is nothing that dried; ${takes}`);
}

/** What dried, as `readDried` reads it on that scale. */
export const driedText = (dried: Dried, scale: ValueScaleId): string =>
  'step' in dried
    ? VALUE_SCALES[scale].stepOf(valueFromStep(dried.step)).toFixed(1)
    : `lab(${[dried.lab.l, dried.lab.a, dried.lab.b].map((x) => x.toFixed(0)).join(' ')})`;

/** A reading as typed, in pieces. */
export interface ReadingTexts {
  /** `paint=parts` each. */
  readonly wash: readonly string[];
  /** `1:24`. */
  readonly water: string;
  readonly add: readonly string[];
  readonly alone?: string | undefined;
  readonly mixed: string;
}

const EXAMPLE =
  'mudlark dried add burnt-sienna=1 --water 1:24 --add ultramarine-blue=2 --alone 3.5 --mixed 6';
const MOST_WASH_PAINTS = 4;

function partsRead(studio: Studio, texts: readonly string[]): Record<string, number> {
  const parts = readParts(studio, texts, EXAMPLE);
  if (parts.length > MOST_WASH_PAINTS)
    throw new UsageError(`a wash to be read takes at most ${MOST_WASH_PAINTS} paints, got ${parts.length}`);
  const wrong = parts.find(({ parts: amount }) => !(amount > 0 && amount <= 1000));
  if (wrong !== undefined)
    throw new UsageError(`parts of ${wrong.pigment.id} must be above 0 and at most 1000, got ${wrong.parts}`);
  return Object.fromEntries(parts.map(({ pigment, parts: amount }) => [pigment.id, amount]));
}

function readWater(text: string): number {
  const parts = /^1:(\d*\.?\d+)$/.exec(text.trim())?.[1];
  if (parts === undefined || !(Number(parts) >= MASSTONE_WATER && Number(parts) <= 399))
    throw new UsageError(
      `the water is written 1:24, one part of paint to 24 of water, from 1:${MASSTONE_WATER} to 1:399; not "${cleanText(text, 20)}"`,
    );
  return waterStrength(`1:${parts}`);
}

/** @throws UsageError in one line */
export function readReading(studio: Studio, texts: ReadingTexts, scale: ValueScaleId): Reading {
  const dried = (text: string, what: string): Dried => {
    try {
      return readDried(text, scale);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      throw new UsageError(`${what}: ${error.message}`, { cause: error });
    }
  };
  const add = texts.add.length === 0 ? {} : { add: partsRead(studio, texts.add) };
  const { alone = '' } = texts;
  if (alone !== '' && texts.add.length === 0)
    throw new UsageError('nothing was stirred in, so there is one patch only; give it as the mixture');
  return {
    wash: { paints: partsRead(studio, texts.wash), strength: readWater(texts.water), ...add },
    ...(alone === '' ? {} : { alone: dried(alone, 'the wash alone') }),
    mixed: dried(texts.mixed, 'the mixture'),
  };
}

/**
 * Reads a table, one reading a line: `burnt-sienna=1 1:24; ultramarine-blue=2; 3.5; 6`. Empty lines and lines that begin with # say nothing.
 * @throws UsageError that names the line
 */
export function readTable(studio: Studio, text: string, scale: ValueScaleId): Reading[] {
  return text.split(/\r?\n/).flatMap((line, at) => {
    const typed = cleanText(line, 400);
    if (typed === '' || typed.startsWith('#')) return [];
    try {
      const [wash = '', add = '', alone = '', mixed = '', ...more] = typed
        .split(';')
        .map((cell) => cell.trim());
      if (mixed === '' || more.length > 0)
        throw new UsageError(
          'write the wash; what is stirred in; the wash alone; the mixture, like burnt-sienna=1 1:24; ultramarine-blue=2; 3.5; 6',
        );
      const words = wash.split(' ');
      return [
        readReading(
          studio,
          {
            wash: words.slice(0, -1),
            water: words.at(-1) ?? '',
            add: add === '' || add === '-' ? [] : add.split(' '),
            alone: alone === '-' ? '' : alone,
            mixed,
          },
          scale,
        ),
      ];
    } catch (error) {
      if (!(error instanceof UsageError)) throw error;
      throw new UsageError(`line ${at + 1}: ${error.message}`, { cause: error });
    }
  });
}

/** Parts of water as `readReading` reads them. */
export const waterText = (strength: number): string =>
  `1:${Number(((1 + MASSTONE_WATER) / strength - 1).toFixed(1))}`;

/** A number of a reading in the list, from 1. @throws UsageError */
export function readWhich(text: string, count: number): number {
  const which = readNumber(text, 'which reading');
  if (!Number.isInteger(which) || which < 1 || which > count)
    throw new UsageError(
      count === 0
        ? 'there are no readings of this box'
        : `there are readings 1 to ${count}; not ${cleanText(text, 20)}`,
    );
  return which;
}
