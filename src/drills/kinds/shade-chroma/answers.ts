/** The questions of a shade-chroma drill, their options and their scores. */

import { shadingLine } from '../../../colour/chroma.js';
import { hueName } from '../../../colour/hue.js';
import { hueDifference } from '../../../colour/lab.js';
import { type ColourReading, readColour } from '../../../colour/reading.js';
import { lightnessFromMunsellValue, valueFromStep } from '../../../colour/value.js';
import { aroundChroma, scoreChroma } from '../../../judgement/index.js';
import type { Spectrum } from '../../../optics/index.js';
import { once, type Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { ShadeAs, Turn } from '../../../words/sentences/shade-chroma.js';
import { type Finding, tell } from '../../../words/tell.js';
import { inShade, withChroma } from '../../light.js';
import type { Field } from '../../types.js';
import type { ShadeAsk, ShadeChromaDrill } from './schema.js';

/** What the drill is about, in figures. */
export interface Shade {
  readonly lit: ColourReading;
  /** Chroma on the shading line at the shade's value. */
  readonly line: number;
  readonly band: readonly [number, number];
}

export function shadeOf(studio: Studio, { lit, shade }: ShadeChromaDrill): Shade {
  const { colour } = seeLaid(studio, lit);
  const l = lightnessFromMunsellValue(valueFromStep(shade));
  const line = shadingLine(colour.chroma, colour.lab.l, l);
  return { lit: colour, line, band: aroundChroma(line) };
}

/** The chromas on offer: the drill's own, or the tens up to a little above the lit chroma. */
function chromasOf(studio: Studio, drill: ShadeChromaDrill): number[] {
  if (drill.chromas !== undefined) return [...drill.chromas].sort((a, b) => a - b);
  const { lit } = shadeOf(studio, drill);
  const most = Math.min(90, Math.max(40, 10 * Math.ceil((lit.chroma * 1.1) / 10)));
  return Array.from({ length: most / 10 }, (_, index) => 10 * (index + 1));
}

/** Chroma of the muddy swatch as a share of the shading line's. */
const MUD = 0.35;

/** A number from an id, so that the right swatch does not always stand in the same place. */
function turnOf(id: string): number {
  return [...id].reduce((sum, char) => (sum * 31 + (char.codePointAt(0) ?? 0)) % 997, 7) % 3;
}

const PLACES = ['left', 'middle', 'right'] as const;

/** A swatch to choose from. */
export interface ShadeSwatch {
  readonly id: string;
  readonly reflectance: Spectrum;
  readonly chroma: number;
}

/** Three swatches of the same value: on the shading line, cut to a third, and with the lit chroma kept. */
const swatchesOf: (studio: Studio, drill: ShadeChromaDrill) => readonly ShadeSwatch[] = once(
  (studio, drill: ShadeChromaDrill) => {
    const { lit, line } = shadeOf(studio, drill);
    const shade = inShade(seeLaid(studio, drill.lit).reflectance, drill.shade);
    const glows = Math.max(lit.chroma, 1.3 * line);
    const made = [shade, withChroma(shade, MUD * line), withChroma(shade, glows)];
    const turn = turnOf(drill.id);
    return PLACES.map((id, place) => {
      const reflectance = made[(place + turn) % 3] as Spectrum;
      return { id, reflectance, chroma: readColour(reflectance).chroma };
    });
  },
);

/** A turn of hue in the shade that painters make and that still reads as the same thing. */
const TURNS = [
  { id: 'none', label: 'none', note: 'the hue of the lit side' },
  { id: 'to-blue', label: 'a little to blue', note: 'towards the sky’s light' },
  { id: 'to-red', label: 'a little to red', note: 'towards the warm neighbour' },
  { id: 'to-yellow', label: 'a little to yellow', note: 'towards the light’s own side' },
] as const;

/**
 * Which turn suits a lit hue: greens towards blue, oranges and yellows towards red
 * (B. MacEvoy, handprint.com, color18b.html); for other hues blue, as landscape painters do (common practice, no source).
 */
export function fittingTurn(hue: number): 'to-blue' | 'to-red' {
  return Math.abs(hueDifference(65, hue)) <= 40 ? 'to-red' : 'to-blue';
}

export function shadeFields(studio: Studio, drill: ShadeChromaDrill): readonly Field[] {
  const fields: Record<ShadeAsk, Field> = {
    chroma: {
      id: 'chroma',
      label: 'chroma of the shade',
      shape: 'scale',
      options: chromasOf(studio, drill).map((chroma) => ({ id: String(chroma), label: String(chroma) })),
    },
    swatch: {
      id: 'swatch',
      label: 'which swatch is the shade',
      shape: 'list',
      options: swatchesOf(studio, drill).map(({ id, reflectance }) => ({
        id,
        label: id,
        swatch: reflectance,
      })),
    },
    turn: { id: 'turn', label: 'turn of hue', shape: 'list', options: [...TURNS] },
  };
  return drill.asks.map((ask) => fields[ask]);
}

/** Score of one question, 0-1, what is said of it and the idea behind a wrong answer. */
export interface AskResult {
  readonly ask: ShadeAsk;
  readonly score: number;
  readonly tooCloseToCall: boolean;
  readonly told?: Finding;
  readonly idea?: string;
  /** Chroma answered, and how a shade of it looks, where the question has one. */
  readonly shade?: { readonly chroma: number; readonly as: ShadeAs };
}

const IDEAS: Partial<Record<ShadeAs, string>> = {
  glows: 'shade-glows',
  mud: 'shade-to-mud',
};

/** How a shade of that chroma looks, from its score. */
function looksAs(chroma: number, band: readonly [number, number], score: number, isClose: boolean): ShadeAs {
  if (score >= 1) return isClose ? 'close' : 'holds';
  return chroma < band[0] ? 'mud' : 'glows';
}

function chromaResult(
  studio: Studio,
  drill: ShadeChromaDrill,
  ask: 'chroma' | 'swatch',
  chroma: number,
): AskResult {
  const { band } = shadeOf(studio, drill);
  const { score, tooCloseToCall } = scoreChroma(chroma, band, seeLaid(studio, drill.lit).evidence);
  const as = looksAs(chroma, band, score, tooCloseToCall);
  const idea = IDEAS[as];
  return {
    ask,
    score: ask === 'swatch' && score < 1 ? Math.min(score, 0.4) : score,
    tooCloseToCall,
    ...(idea === undefined ? {} : { idea }),
    shade: { chroma, as },
  };
}

function turnResult(studio: Studio, drill: ShadeChromaDrill, said: Turn): AskResult {
  const { lit } = shadeOf(studio, drill);
  const fits = fittingTurn(lit.hue);
  const score = said === fits || said === 'none' ? 1 : 0;
  return {
    ask: 'turn',
    score,
    tooCloseToCall: false,
    told: tell('shade-turn-said', { hue: hueName(lit.hue), said, fits }),
    ...(score < 1 ? { idea: 'turned-against' } : {}),
  };
}

/** Scores one question from the id of its chosen option. */
export function askResult(
  studio: Studio,
  drill: ShadeChromaDrill,
  ask: ShadeAsk,
  optionId: string,
): AskResult {
  if (ask === 'turn') return turnResult(studio, drill, optionId as Turn);
  if (ask === 'chroma') {
    return chromaResult(studio, drill, ask, Number(optionId));
  }
  const picked = swatchesOf(studio, drill).find(({ id }) => id === optionId);
  if (picked === undefined) throw new RangeError(`there is no swatch called "${optionId}"`);
  return chromaResult(studio, drill, ask, picked.chroma);
}
