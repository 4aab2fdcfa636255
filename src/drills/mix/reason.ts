/** The reason for what a mixture did: where the second paint sits, and which light is left. */
import { shadingLine } from '../../colour/chroma.js';
import { hueName } from '../../colour/hue.js';
import { hueDifference } from '../../colour/lab.js';
import type { ColourReading } from '../../colour/reading.js';
import { loadsFromParts, PAPER, predict, type Way } from '../../paints/index.js';
import { leftBy, runsWords, swallowedByAll } from '../spectrum-words.js';
import { type Outcome, pigmentOf, recipeReflectance } from './candidates.js';
import { capitalised, isMoreOfTheSame } from './label.js';
import type { MixDrill } from './schema.js';
import { NEUTRAL_PAINT_CHROMA, seatOf } from './wheel.js';

/** Share of the shading line from which colour counts as kept. */
const KEPT = 0.85;

const LOSS: Readonly<Record<Way, string>> = {
  puddle: 'each swallows what the other sends back, and the colour goes',
  glaze: 'the glaze swallows what the wash below sends up, and the colour goes',
  strokes: 'the eye adds the two lights, and opposite hues cancel',
};

function ownLine(drill: MixDrill, outcome: Outcome, name: string): string {
  if (isMoreOfTheSame(drill, outcome.choice)) {
    return outcome.choice.strength === drill.start.strength
      ? `${name} is the wash itself: at the same strength nothing changes.`
      : `${name} is the wash itself: only its strength changed, so the hue stays close.`;
  }
  return outcome.choice.way === 'glaze'
    ? `${name} is already in the wash: a second layer of it makes it stronger.`
    : `${name} is already in the wash: its share in it grew.`;
}

/** Which way round the wheel the second paint lies, by how much, and what that did. */
export function wheelLine(drill: MixDrill, outcome: Outcome, start: ColourReading): string {
  const { choice, colour } = outcome;
  const name = capitalised(pigmentOf(choice.second).name);
  const { place, alone, angle } = seatOf(drill, choice.second);
  if (place === 'own') return ownLine(drill, outcome, name);
  if (place === 'white')
    return `${name} sends all of the light back alike: it makes a colour paler and chalkier, never darker.`;
  if (place === 'black')
    return `${name} is nearly neutral (chroma ${alone.chroma.toFixed(0)}): it swallows all of the light alike, so the colour goes with the value.`;
  if (place === 'free')
    return `The start is nearly neutral, so ${pigmentOf(choice.second).name} sets the hue.`;
  const degrees = `${Math.abs(angle).toFixed(0)}°`;
  const took =
    place !== 'neighbour' &&
    colour.chroma >= 5 &&
    Math.abs(hueDifference(colour.hue, alone.hue)) < Math.abs(hueDifference(colour.hue, start.hue));
  const kept = colour.chroma >= KEPT * shadingLine(start.chroma, start.lab.l, colour.lab.l);
  if (place === 'neighbour') {
    const towards = hueName(alone.hue);
    return kept
      ? `${name} lies ${degrees} round the wheel, on the side of ${towards}: a neighbour, and the colour is kept.`
      : `${name} lies ${degrees} round the wheel, on the side of ${towards}: a neighbour, but duller or farther round than it looks in this amount.`;
  }
  const where =
    place === 'across' ? `${degrees} away, across the wheel` : `${degrees} round, about a quarter turn`;
  if (took)
    return `${name} lies ${where}, and it has taken over: the mixture stands nearer to it than to the start.`;
  if (kept) return `${name} lies ${where}, but this little of it leaves most of the colour.`;
  return place === 'across'
    ? `${name} lies ${where}: ${LOSS[choice.way]}.`
    : `${name} lies ${where}: part of the colour goes.`;
}

/** Which part of the light both paints swallow and what comes back; not for strokes, where nothing is shared. */
export function lightLine(drill: MixDrill, { choice, reflectance, colour }: Outcome): string | undefined {
  const left = runsWords(leftBy(reflectance));
  if (choice.way === 'strokes' || choice.second in drill.start.paints || left === '') return undefined;
  const second = loadsFromParts([{ pigment: pigmentOf(choice.second), parts: 1 }], drill.start.strength);
  const both = runsWords(
    swallowedByAll([recipeReflectance(drill.start), predict(second, 'puddle')], PAPER.reflectance),
  );
  const back =
    colour.chroma < NEUTRAL_PAINT_CHROMA
      ? 'what comes back is spread over the whole spectrum, so it looks grey'
      : `mostly ${left} comes back`;
  return both === ''
    ? `No part of the light is swallowed strongly by both; ${back}.`
    : `Both swallow ${both}; ${back}.`;
}
