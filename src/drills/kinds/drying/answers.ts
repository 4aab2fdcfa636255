/** The questions of a drying drill, their options and their scores: direction and rough size, no more than the model is good for. */

import {
  criterionOf,
  DRYING_LOSS,
  MODEL_ERROR,
  pickMark,
  readingBy,
  SAME_VALUE,
} from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import type { Laid, Wash } from '../../../washes/index.js';
import { type Seen, seeLaid, seeWet } from '../../../washes/index.js';
import { asShown, stepsWords } from '../../../words/laid.js';
import { readingText } from '../../../words/sentences/criteria.js';
import { WRITTEN } from '../../../words/voice.js';
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
      { id: 'darker', label: 'clearly darker', note: 'by half a step or more' },
      { id: 'same', label: 'about the same', note: 'within half a step' },
      { id: 'lighter', label: 'clearly lighter', note: 'by half a step to a step and a half' },
      { id: 'much-lighter', label: 'far lighter', note: 'by more than a step and a half' },
    ],
  },
  chroma: {
    id: 'chroma',
    label: 'chroma, dry against wet',
    shape: 'list',
    options: [
      { id: 'rises', label: 'rises', note: 'the dry wash is stronger' },
      { id: 'falls-little', label: 'falls a little', note: 'by less than a twelfth' },
      { id: 'falls-clearly', label: 'falls clearly', note: 'by a twelfth or more' },
      { id: 'falls-half', label: 'falls by half', note: 'or more' },
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

/** Score of one question, 0-1, its line and the idea behind a wrong answer. */
export interface AskResult {
  readonly ask: DryingAsk;
  readonly score: number;
  readonly line: string;
  readonly idea: string | undefined;
}

function valueResult(studio: Studio, drill: DryingDrill, option: string): AskResult {
  const { lighter, wet, dry } = changeOf(studio, drill);
  const room = MODEL_ERROR[seeLaid(studio, drill.wash).evidence].step;
  const said = { darker: -1, same: 0, lighter: 1, 'much-lighter': 2 }[option] ?? 0;
  const bounds = [-SAME_VALUE, SAME_VALUE, 3 * SAME_VALUE];
  const is = bounds.filter((bound) => lighter >= bound).length - 1;
  const isClose = bounds.some(
    (bound) => Math.abs(lighter - bound) <= room && said === (lighter < bound ? is + 1 : is - 1),
  );
  const score = said === is || isClose ? 1 : Math.abs(said - is) === 1 ? 0.3 : 0;
  const moved = `from step ${wet.step.toFixed(1)} wet to ${dry.step.toFixed(1)} dry, ${stepsWords(asShown(wet.step) - asShown(dry.step))} ${lighter >= 0 ? 'lighter' : 'darker'}`;
  return {
    ask: 'value',
    score,
    line:
      score >= 1
        ? `Value hardly decides: it goes ${moved}${said === is ? '' : ', too close to call, so yours counts'}.`
        : `You expected it ${FIELDS.value.options.find(({ id }) => id === option)?.label ?? option}; value goes ${moved}.`,
    idea: score >= 1 ? undefined : said > is ? 'expected-paler' : 'misjudged-drying',
  };
}

function chromaResult(studio: Studio, drill: DryingDrill, option: string): AskResult {
  const { wet, dry, lost } = changeOf(studio, drill);
  const is =
    lost < 0
      ? 'rises'
      : lost < DRYING_LOSS.clear
        ? 'falls-little'
        : lost < 0.5
          ? 'falls-clearly'
          : 'falls-half';
  const isClose =
    Math.abs(lost - DRYING_LOSS.clear) <= DRYING_LOSS.room &&
    (option === 'falls-little' || option === 'falls-clearly');
  const isDirection = option !== 'rises' && is !== 'rises';
  const score = option === is || isClose ? 1 : isDirection ? (option === 'falls-half' ? 0.2 : 0.4) : 0;
  const moved = `from ${wet.chroma.toFixed(0)} wet to ${dry.chroma.toFixed(0)} dry, ${Math.round(100 * lost)} % lost`;
  const close = option === is || !isClose ? '' : '; the size is too close to call, so yours counts';
  return {
    ask: 'chroma',
    score,
    line:
      score >= 1
        ? `Chroma goes ${moved}, as you said${close}.`
        : `You expected that chroma ${FIELDS.chroma.options.find(({ id }) => id === option)?.label ?? option}; it goes ${moved}.`,
    idea: score >= 1 ? undefined : 'misjudged-drying',
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
    return { id, seen, score: nearest.score(seen, context) };
  });
  const picked = tries.find(({ id }) => id === option) ?? tries[0];
  const best = tries.reduce((a, b) => (b.score > a.score ? b : a));
  if (picked === undefined) throw new RangeError(`"${option}" is not something to do to a wash`);
  // Half the usual room: the three are the same paint, so the model errs alike on all of them.
  const room = nearest.tolerance(picked.seen.evidence) / 2;
  const { mark, tooCloseToCall } = pickMark(
    picked.score,
    tries.map(({ score }) => score),
    room,
  );
  const wordsOf = (seen: Seen): string =>
    readingText('nearest', readingBy('nearest', seen, context), WRITTEN);
  const gives = `dries to ${wordsOf(picked.seen)}`;
  const bestLabel = FIELDS.mend.options.find(({ id }) => id === best.id)?.label ?? best.id;
  return {
    ask: 'mend',
    score: mark / 100,
    line:
      picked.id === best.id
        ? `What you do ${gives}: nearest to the target.`
        : tooCloseToCall
          ? `What you do ${gives}; ${bestLabel} comes a hair nearer, too close to call, so yours counts.`
          : `What you do ${gives}; "${bestLabel}" dries to ${wordsOf(best.seen)}, nearer to the target.`,
    idea: mark >= 100 ? undefined : 'misjudged-drying',
  };
}

function waitResult(option: string): AskResult {
  const score = option === 'dry' ? 1 : 0;
  return {
    ask: 'wait',
    score,
    line:
      score === 1
        ? `Waiting ${FROM_MINUTES} to ${TO_MINUTES} minutes is right: only a dry patch can be compared.`
        : `A wet patch cannot be compared with a dry one: give it ${FROM_MINUTES} to ${TO_MINUTES} minutes on the same paper.`,
    idea: score === 1 ? undefined : 'judged-wet',
  };
}

/** Scores one question from the id of its chosen option. */
export function askResult(studio: Studio, drill: DryingDrill, ask: DryingAsk, option: string): AskResult {
  if (ask === 'value') return valueResult(studio, drill, option);
  if (ask === 'chroma') return chromaResult(studio, drill, option);
  return ask === 'mend' ? mendResult(studio, drill, option) : waitResult(option);
}
