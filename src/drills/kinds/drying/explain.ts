/** What is said of a wash that dried, and why it did so. */
import { colourInWords } from '../../../colour/words.js';
import { DRYING_LOSS, VALUE_BOUNDS } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid, seeWet } from '../../../washes/index.js';
import { asShown } from '../../../words/laid.js';
import type { ChromaChange, DryingReason, ValueChange } from '../../../words/sentences/drying.js';
import { type Finding, tell } from '../../../words/tell.js';
import type { Why } from '../../types.js';
import { liftedBy, whyFilms } from '../../why.js';
import { type AskResult, changeOf } from './answers.js';
import type { DryingDrill } from './schema.js';

/** Share of its chroma below which a wash hardly changes. */
const HARDLY = 0.03;

/** What carries the change of this wash. */
function dryingReason(studio: Studio, drill: DryingDrill): DryingReason {
  const { dry, lost } = changeOf(studio, drill);
  if (lost >= DRYING_LOSS.clear) return 'strong';
  if (dry.step < VALUE_BOUNDS[0] && lost >= HARDLY) return 'bright';
  return lost < HARDLY ? 'thin' : 'some';
}

/** True where the result has room for the reason; else it stands under "why". */
const hasRoom = (all: readonly AskResult[]): boolean => all.filter(({ off }) => off !== undefined).length < 2;

/** The dry wash, what was right and what was not, and the reason where there is room for it. */
export function dryingTold(
  studio: Studio,
  drill: DryingDrill,
  all: readonly AskResult[],
  idea: string | undefined,
): Finding[] {
  const { wet, dry } = changeOf(studio, drill);
  const rights = all.filter(({ off, isClose }) => off === undefined && !isClose).map(({ ask }) => ask);
  const close = all.filter(({ isClose }) => isClose).map(({ ask }) => ask);
  const wrong = all.flatMap(({ off }) => (off === undefined ? [] : [off]));
  const isMostWrong = wrong.length > 2;
  const becomes = Object.assign({}, ...wrong.filter((off) => !('told' in off))) as {
    value?: ValueChange;
    chroma?: ChromaChange;
  };
  return [
    tell('drying-dry', {
      words: colourInWords(dry.lab),
      lighter: asShown(wet.step) - asShown(dry.step),
      lost: Math.round(wet.chroma) - Math.round(dry.chroma),
    }),
    ...(rights.length + close.length === 0 || isMostWrong
      ? []
      : [tell('drying-right', { asks: rights, close })]),
    ...(Object.keys(becomes).length === 0 ? [] : [tell('drying-is', becomes)]),
    ...wrong.flatMap((off) => ('told' in off ? [off.told] : [])),
    ...(hasRoom(all) ? [tell('drying-reason', { reason: dryingReason(studio, drill) })] : []),
    ...(idea === undefined
      ? []
      : [all.some(({ isTooMuch }) => isTooMuch) ? tell('drying-expect-less', {}) : tell('advice', { idea })]),
  ];
}

/** The film wet and the film dry. */
export function dryingWhy(studio: Studio, drill: DryingDrill, all: readonly AskResult[]): Why {
  const wet = seeWet(studio, drill.wash).reflectance;
  const dry = seeLaid(studio, drill.wash).reflectance;
  return {
    films: whyFilms([
      { label: 'wet', reflectance: wet },
      { label: 'dry', reflectance: dry },
    ]),
    told: [
      tell('why-dried', liftedBy(wet, dry)),
      ...(hasRoom(all) ? [] : [tell('drying-reason', { reason: dryingReason(studio, drill) })]),
      tell('why-drying-limits', {}),
    ],
  };
}
