/** The choose kind: see schema.ts. */

import {
  type Comparison,
  type Context,
  compare,
  criterionOf,
  ideaBehind,
  overall,
  pickMark,
  type Rated,
} from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { IDEAS } from '../../../words/ideas.js';
import { laidLabel, laidNote, readingWords, sentence } from '../../../words/laid.js';
import { reasonFor } from '../../../words/reasons.js';
import { plainly } from '../../../words/tell.js';
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
      label: criterionOf(drill.by).most,
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

function goalLines(studio: Studio, drill: ChooseDrill): string[] {
  const { start, target } = drill;
  const lines = [`pick the one with ${criterionOf(drill.by).most}`];
  if (start !== undefined) {
    const { step, chroma } = seeLaid(studio, start).colour;
    lines.push(`start: step ${step.toFixed(1)}, chroma ${chroma.toFixed(0)}`);
  }
  if (target !== undefined) {
    const chroma = target.chroma === undefined ? '' : `, chroma ${target.chroma.toFixed(0)}`;
    const hue = target.hue === undefined ? '' : `, hue ${target.hue.toFixed(0)}°`;
    lines.push(`target: step ${target.step.toFixed(1)}${chroma}${hue}`);
  }
  return lines;
}

function explain(
  studio: Studio,
  drill: ChooseDrill,
  picked: Rated,
  all: Comparison,
  close: boolean,
): string[] {
  const criterion = criterionOf(drill.by);
  const context = contextOf(studio, drill);
  const best = all.rated[0] as Rated;
  const lines = [`You chose ${picked.label}: it gives ${readingWords(picked.seen.colour)}.`];
  const others = all.rated.filter(({ id }) => id !== picked.id && id !== best.id);
  if (picked.id === best.id) {
    const next = all.rated[1] as Rated;
    lines.push(
      best.score - next.score <= all.tolerance
        ? `That has ${criterion.most}; ${next.label} comes so near that it counts as well.`
        : `That has ${criterion.most}: ${criterion.gap(best.score, next.score, context)} than ${next.label}.`,
    );
  } else if (close) {
    lines.push(
      `${sentence(best.label)} is ahead by ${criterion.gap(best.score, picked.score, context)}: too close to call, so yours counts.`,
    );
  } else {
    lines.push(
      `Asked for was ${criterion.most}: ${best.label} has ${criterion.words(best.seen, context)}, ${criterion.gap(best.score, picked.score, context)} than yours.`,
    );
  }
  const reason = reasonFor(studio, picked.seen.laid);
  if (reason !== undefined) lines.push(reason);
  if (picked.id !== best.id) {
    const better = reasonFor(studio, best.seen.laid);
    if (better !== undefined && !close) lines.push(`The better one: ${better}`);
  }
  // With two options the other one has been named already.
  if (others.length > (picked.id === best.id ? 1 : 0)) {
    lines.push(
      `The rest: ${others.map(({ label, seen }) => `${label}, ${criterion.words(seen, context)}`).join('; ')}.`,
    );
  }
  return lines;
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
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
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
    told: plainly([
      ...explain(studio, drill, picked, all, tooCloseToCall),
      ...(next === undefined ? [] : [next]),
    ]),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: { pick: best.id }, label: best.label, mark: 100 },
    swatches,
    laid: laidParts(picked.seen),
    evidence: all.evidence,
  };
}

export const chooseKind = (studio: Studio): Kind<ChooseDrill> => ({
  kind: 'choose',
  fields: (drill) => fields(studio, drill),
  given: (drill) => given(studio, drill),
  goalLines: (drill) => plainly(goalLines(studio, drill)),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => ({ pick: (comparison(studio, drill).rated[0] as Rated).id }),
  label: (drill, answer) => chosen(fields(studio, drill), answer, 'pick').label,
  why: (drill, answer) => chooseWhy(studio, drill, answer),
});
