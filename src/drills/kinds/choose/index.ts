/** The choose kind: see schema.ts. */

import type { ColourReading } from '../../../colour/reading.js';
import { colourInWords } from '../../../colour/words.js';
import {
  type Comparison,
  type Context,
  compare,
  ideaBehind,
  overall,
  pickMark,
  type Rated,
  tooNear,
} from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { laidLabel, laidNote } from '../../../words/laid.js';
import { reasonFor } from '../../../words/reasons.js';
import { askedOf } from '../../../words/sentences/criteria.js';
import { type Finding, fitted, tell } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import { laidParts } from '../../laid-parts.js';
import type { Answer, Field, Grade, Kind, ResultSwatch } from '../../types.js';
import type { ChooseDrill, ChooseOption } from './schema.js';
import { chooseWhy } from './why.js';

const labelOf = (studio: Studio, { label, laid }: ChooseOption): string => label ?? laidLabel(studio, laid);

function contextOf(studio: Studio, { start, target }: ChooseDrill): Context {
  return { studio, start: start === undefined ? undefined : seeLaid(studio, start).colour, target };
}

function comparison(studio: Studio, drill: ChooseDrill): Comparison {
  const items = drill.options.map((option) => ({
    id: option.id,
    label: labelOf(studio, option),
    laid: option.laid,
  }));
  return compare(items, drill.by, contextOf(studio, drill));
}

function fields(studio: Studio, drill: ChooseDrill): readonly Field[] {
  return [
    {
      id: 'pick',
      label: askedOf(drill.by, drill.options.length),
      shape: 'list',
      options: drill.options.map((option) => ({
        id: option.id,
        label: labelOf(studio, option),
        note: laidNote(option.laid),
      })),
    },
  ];
}

function given(studio: Studio, drill: ChooseDrill): ResultSwatch[] {
  const { start, show, options } = drill;
  const shown = show === true ? options : [];
  return [
    ...(start === undefined ? [] : [{ label: 'start', reflectance: seeLaid(studio, start).reflectance }]),
    ...shown.map(
      (option): ResultSwatch => ({
        label: labelOf(studio, option),
        reflectance: seeLaid(studio, option.laid).reflectance,
        unread: 'value',
      }),
    ),
  ];
}

function goalLines(studio: Studio, { by, start, target, options }: ChooseDrill): Finding[] {
  return [
    tell('choose-goal', { by, of: options.length }),
    ...(start === undefined ? [] : [tell('choose-start', figuresOf(seeLaid(studio, start).colour))]),
    ...(target === undefined ? [] : [tell('choose-target', target)]),
  ];
}

const figuresOf = ({ step, chroma }: ColourReading) => ({ step, chroma });
const itemOf = ({ label, reading }: Rated) => ({ label, reading });

/** How the choice stands to the best, or to the one that comes next. */
function standing({ by }: ChooseDrill, picked: Rated, all: Comparison, isClose: boolean): Finding {
  const { reading } = picked;
  const best = all.rated[0] as Rated;
  if (picked.id !== best.id) {
    return isClose
      ? tell('choose-tied', { by, other: itemOf(best) })
      : tell('choose-better', { by, reading, best: itemOf(best) });
  }
  const next = all.rated[1] as Rated;
  return best.score - next.score <= all.tolerance
    ? tell('choose-tied', { by, other: itemOf(next) })
    : tell('choose-right', { by, of: all.rated.length, reading, next: itemOf(next) });
}

function told(
  studio: Studio,
  drill: ChooseDrill,
  picked: Rated,
  all: Comparison,
  isClose: boolean,
  idea: string | undefined,
): Finding[] {
  const { by } = drill;
  const best = all.rated[0] as Rated;
  const { colour, laid } = picked.seen;
  // The one that comes next has been named already where the answer was the best.
  const named = [picked.id, best.id, ...(picked.id === best.id ? [(all.rated[1] as Rated).id] : [])];
  const rest = all.rated.filter(({ id }) => !named.includes(id)).map(itemOf);
  return fitted([
    [0, tell('choose-now', { words: colourInWords(colour.lab), ...figuresOf(colour) })],
    [0, standing(drill, picked, all, isClose)],
    [1, reasonFor(studio, laid)],
    [2, rest.length === 0 ? undefined : tell('choose-rest', { by, rest })],
    [0, idea === undefined ? undefined : tell('advice', { idea })],
  ]);
}

function grade(studio: Studio, drill: ChooseDrill, answer: Answer): Grade {
  requireComplete(fields(studio, drill), answer);
  const all = comparison(studio, drill);
  const id = chosen(fields(studio, drill), answer, 'pick').id;
  const picked = all.rated.find((rated) => rated.id === id) as Rated;
  const best = all.rated[0] as Rated;
  const { mark, tooCloseToCall } = pickMark(
    picked.score,
    all.rated.map(({ score }) => score),
    all.tolerance,
  );
  const idea = mark === 100 ? undefined : ideaBehind(contextOf(studio, drill), picked, drill.by);
  const swatches: ResultSwatch[] = [
    ...(drill.start === undefined
      ? []
      : [{ label: 'start', reflectance: seeLaid(studio, drill.start).reflectance }]),
    { label: 'yours', reflectance: picked.seen.reflectance },
    { label: 'best', reflectance: best.seen.reflectance },
  ];
  return {
    mark,
    verdict: overall(mark),
    told: told(studio, drill, picked, all, tooCloseToCall, idea),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: { pick: best.id }, label: best.label, mark: 100 },
    swatches,
    laid: laidParts(picked.seen),
    evidence: all.evidence,
  };
}

/** The best must differ from the next so that it is seen. */
function faults(studio: Studio, drill: ChooseDrill): string[] {
  const all = comparison(studio, drill);
  const near = tooNear(all).find(([better]) => better === all.rated[0]);
  return near === undefined ? [] : [`${near[0].id} and ${near[1].id} are too close to call`];
}

export const chooseKind = (studio: Studio): Kind<ChooseDrill> => ({
  kind: 'choose',
  fields: (drill) => fields(studio, drill),
  given: (drill) => given(studio, drill),
  goalLines: (drill) => goalLines(studio, drill),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => ({ pick: (comparison(studio, drill).rated[0] as Rated).id }),
  label: (drill, answer) => chosen(fields(studio, drill), answer, 'pick').label,
  reordered: (drill, order) => ({ ...drill, options: order(drill.options) }),
  why: (drill, answer) => chooseWhy(studio, drill, answer, comparison(studio, drill).rated),
  faults: (drill) => faults(studio, drill),
});
