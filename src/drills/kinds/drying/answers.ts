/** The questions of a drying drill, their options and their scores: direction and rough size, no more than the model is good for. */

import { criterionOf, DRYING_LOSS, pickMark, SAME_VALUE } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import type { Laid, Wash } from '../../../washes/index.js';
import { seeLaid, seeWet } from '../../../washes/index.js';
import { asShown } from '../../../words/laid.js';
import type { ChromaChange, Mend, ValueChange } from '../../../words/sentences/drying.js';
import { type Finding, tell } from '../../../words/tell.js';
import type { Field } from '../../types.js';
import rules from './rules.json' with { type: 'json' };
import type { DryingAsk, DryingDrill } from './schema.js';

/** How far "more paint" and "more water" go: a fifth. */
const MEND = 1.2;

const [FROM_MINUTES, TO_MINUTES] = rules.waitMinutes as [number, number];

const FIELDS: Readonly<Record<DryingAsk, Field>> = {
  value: {
    id: 'value',
    label: 'value, dry against wet',
    shape: 'list',
    options: [
      { id: 'darker', label: 'darker by half a step or more', note: 'clearly darker' },
      { id: 'same', label: 'within half a step', note: 'about the same' },
      { id: 'lighter', label: 'lighter by half a step or more', note: 'clearly lighter' },
      { id: 'much-lighter', label: 'lighter by one and a half or more', note: 'far lighter' },
    ],
  },
  chroma: {
    id: 'chroma',
    label: 'chroma, dry against wet',
    shape: 'list',
    options: [
      { id: 'rises', label: 'rises', note: 'the dry wash is stronger' },
      { id: 'falls-little', label: 'falls by less than a tenth', note: 'a little' },
      { id: 'falls-clearly', label: 'falls by a tenth or more', note: 'clearly' },
      { id: 'falls-half', label: 'falls by half or more', note: 'most of the colour goes' },
    ],
  },
  mend: {
    id: 'mend',
    label: 'now, while it is wet',
    shape: 'list',
    options: [
      { id: 'water', label: 'more water', note: 'a fifth weaker' },
      { id: 'leave', label: 'leave it', note: 'it will dry as wanted' },
      { id: 'paint', label: 'more paint', note: 'a fifth stronger' },
    ],
  },
  wait: {
    id: 'wait',
    label: 'judge it',
    shape: 'list',
    options: [
      { id: 'at-once', label: 'at once', note: 'in the tray or wet on the paper' },
      { id: 'shine', label: 'when the shine goes', note: 'a minute or so' },
      { id: 'dry', label: `after ${FROM_MINUTES} to ${TO_MINUTES} minutes`, note: 'on the same paper' },
    ],
  },
};

export function dryingFields({ asks }: DryingDrill): readonly Field[] {
  return asks.map((ask) => FIELDS[ask]);
}

/** What drying does to the drill's wash. */
export function changeOf(studio: Studio, { wash }: DryingDrill) {
  const dry = seeLaid(studio, wash).colour;
  const wet = seeWet(studio, wash).colour;
  return { wet, dry, lighter: wet.step - dry.step, lost: wet.chroma > 0.5 ? 1 - dry.chroma / wet.chroma : 0 };
}

/** What becomes of the wash where that was answered wrongly; or what is said of the answer. */
type Off = { readonly value: ValueChange } | { readonly chroma: ChromaChange } | { readonly told: Finding };

/** Score of one question, 0-1, what is said of an answer that does not count, and the idea behind it. */
export interface AskResult {
  readonly ask: DryingAsk;
  readonly score: number;
  /** It counts only because the model cannot tell it from the right one. */
  readonly isClose: boolean;
  readonly off?: Off;
  readonly idea?: string;
  /** More loss of chroma was expected than there is. */
  readonly isTooMuch?: boolean;
}

const right = (ask: DryingAsk, isClose = false): AskResult => ({ ask, score: 1, isClose });
const wrong = (ask: DryingAsk, score: number, off: Off, idea = 'misjudged-drying'): AskResult => ({
  ask,
  score,
  isClose: false,
  off,
  idea,
});

const VALUE_CHANGES: readonly ValueChange[] = ['darker', 'same', 'lighter', 'much-lighter'];

function valueResult(studio: Studio, drill: DryingDrill, option: string): AskResult {
  const { lighter } = changeOf(studio, drill);
  const bounds = [-SAME_VALUE, SAME_VALUE, 3 * SAME_VALUE];
  const said = VALUE_CHANGES.indexOf(option as ValueChange);
  const is = bounds.filter((bound) => lighter >= bound).length;
  if (said === is) return right('value');
  const isClose = bounds.some(
    (bound, below) =>
      Math.abs(lighter - bound) <= DRYING_LOSS.roomSteps && said === (lighter < bound ? below + 1 : below),
  );
  if (isClose) return right('value', true);
  const idea = said > is ? 'expected-paler' : 'misjudged-drying';
  return wrong(
    'value',
    Math.abs(said - is) === 1 ? 0.3 : 0,
    { value: VALUE_CHANGES[is] as ValueChange },
    idea,
  );
}

const CHROMA_CHANGES: readonly ChromaChange[] = ['rises', 'falls-little', 'falls-clearly', 'falls-half'];

/** What becomes of chroma, from the share that is lost. */
function chromaChange(lost: number): ChromaChange {
  if (lost < 0) return 'rises';
  if (lost < DRYING_LOSS.clear) return 'falls-little';
  return lost < 0.5 ? 'falls-clearly' : 'falls-half';
}

function chromaResult(studio: Studio, drill: DryingDrill, option: string): AskResult {
  const { lost } = changeOf(studio, drill);
  const is = chromaChange(lost);
  if (option === is) return right('chroma');
  const isClose =
    Math.abs(lost - DRYING_LOSS.clear) <= DRYING_LOSS.room &&
    (option === 'falls-little' || option === 'falls-clearly');
  if (isClose) return right('chroma', true);
  const isDirection = option !== 'rises' && is !== 'rises';
  const score = isDirection ? (option === 'falls-half' ? 0.2 : 0.4) : 0;
  return {
    ...wrong('chroma', score, { chroma: is }),
    isTooMuch: CHROMA_CHANGES.indexOf(option as ChromaChange) > CHROMA_CHANGES.indexOf(is),
  };
}

const stronger = <W extends Wash>(wash: W, times: number): W => ({
  ...wash,
  strength: Math.min(1, wash.strength * times),
});

/** The wash with its last layer made stronger or weaker. */
function mended(laid: Laid, times: number): Laid {
  if ('layers' in laid) {
    return {
      layers: laid.layers.map((wash, at) => (at === laid.layers.length - 1 ? stronger(wash, times) : wash)),
    };
  }
  if ('strokes' in laid) {
    return { strokes: laid.strokes.map((stroke) => stronger(stroke, times)) };
  }
  return stronger(laid, times);
}

function mendResult(studio: Studio, drill: DryingDrill, option: string): AskResult {
  const context = { studio, target: drill.target };
  const nearest = criterionOf('nearest');
  const tries = [
    { id: 'water', laid: mended(drill.wash, 1 / MEND) },
    { id: 'leave', laid: drill.wash },
    { id: 'paint', laid: mended(drill.wash, MEND) },
  ].map(({ id, laid }) => {
    const seen = seeLaid(studio, laid);
    return { id: id as Mend, seen, score: nearest.score(seen, context) };
  });
  const picked = tries.find(({ id }) => id === option);
  const best = tries.reduce((a, b) => (b.score > a.score ? b : a));
  if (picked === undefined) throw new RangeError(`"${option}" is not something to do to a wash`);
  if (picked.id === best.id) return right('mend');
  // Half the usual room: the three are the same paint, so the model errs alike on all of them.
  const room = nearest.tolerance(picked.seen.evidence) / 2;
  const { mark, tooCloseToCall } = pickMark(
    picked.score,
    tries.map(({ score }) => score),
    room,
  );
  if (tooCloseToCall) return right('mend', true);
  const reading = ({ seen: { colour } }: (typeof tries)[number]) => ({
    step: asShown(colour.step),
    chroma: Math.round(colour.chroma),
  });
  const told = tell('drying-mend-off', {
    did: picked.id,
    dries: reading(picked),
    best: best.id,
    to: reading(best),
  });
  return wrong('mend', mark / 100, { told });
}

function waitResult(option: string): AskResult {
  if (option === 'dry') return right('wait');
  const told = tell('drying-wait-off', { minutes: [FROM_MINUTES, TO_MINUTES] });
  return wrong('wait', 0, { told }, 'judged-wet');
}

/** Scores one question from the id of its chosen option. */
export function askResult(studio: Studio, drill: DryingDrill, ask: DryingAsk, option: string): AskResult {
  if (ask === 'value') return valueResult(studio, drill, option);
  if (ask === 'chroma') return chromaResult(studio, drill, option);
  return ask === 'mend' ? mendResult(studio, drill, option) : waitResult(option);
}
