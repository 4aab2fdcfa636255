/** The drying kind: see schema.ts. */

import { DRYING_LOSS, overall, togetherMark } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid, seeWet } from '../../../washes/index.js';
import { laidLabel, laidNote } from '../../../words/laid.js';
import { type Finding, tell } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import { laidParts } from '../../laid-parts.js';
import type { Answer, Grade, Kind } from '../../types.js';
import { type AskResult, askResult, changeOf, dryingFields } from './answers.js';
import { dryingTold, dryingWhy } from './explain.js';
import type { DryingDrill } from './schema.js';

function results(studio: Studio, drill: DryingDrill, answer: Answer): AskResult[] {
  const fields = dryingFields(drill);
  requireComplete(fields, answer);
  return drill.asks.map((ask) => askResult(studio, drill, ask, chosen(fields, answer, ask).id));
}

/** The best option of each question; of several that count, the one the prediction gives without the room for error. */
function best(studio: Studio, drill: DryingDrill): Answer {
  return Object.fromEntries(
    dryingFields(drill).map(({ id, options }) => {
      const ask = id as DryingDrill['asks'][number];
      const rated = options.map((option) => ({
        id: option.id,
        result: askResult(studio, drill, ask, option.id),
      }));
      const most = Math.max(...rated.map(({ result }) => result.score));
      const full = rated.filter(({ result }) => result.score === most);
      const plain = full.find(({ result }) => !result.isClose);
      return [id, (plain ?? full[0])?.id ?? ''];
    }),
  );
}

function grade(studio: Studio, drill: DryingDrill, answer: Answer): Grade {
  const all = results(studio, drill, answer);
  const mark = togetherMark(all.map(({ score }) => score));
  const idea = all.find((result) => result.idea !== undefined)?.idea;
  const bestAnswer = best(studio, drill);
  const seen = seeLaid(studio, drill.wash);
  return {
    mark,
    verdict: overall(mark),
    told: dryingTold(studio, drill, all, idea),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(drill, bestAnswer), mark: 100 },
    swatches: [
      { label: 'wet', reflectance: seeWet(studio, drill.wash).reflectance },
      { label: 'dry', reflectance: seen.reflectance },
    ],
    laid: laidParts(seeLaid(studio, drill.wash)),
    evidence: seen.evidence,
  };
}

function label(drill: DryingDrill, answer: Answer): string {
  return dryingFields(drill)
    .map((field) => `${field.label}: ${chosen([field], answer, field.id).label}`)
    .join(', ');
}

function goalLines(studio: Studio, { wash, target, asks }: DryingDrill): Finding[] {
  return [
    tell('drying-laid', { label: laidLabel(studio, wash), note: laidNote(wash) }),
    ...(target === undefined
      ? []
      : [
          tell('drying-wanted', {
            step: target.step,
            ...(target.chroma === undefined ? {} : { chroma: target.chroma }),
          }),
        ]),
    ...(asks.includes('value') || asks.includes('chroma') ? [tell('drying-judged', {})] : []),
  ];
}

/** How near the loss of chroma may not come to the bound, as a share: the sizes of two washes cannot be told apart closer. */
const NEAR_BOUND = 0.03;

/** A loss that is asked for keeps away from the bound between a little and clearly. */
function faults(studio: Studio, drill: DryingDrill): string[] {
  const { lost } = changeOf(studio, drill);
  const isNear = Math.abs(lost - DRYING_LOSS.clear) < NEAR_BOUND;
  return drill.asks.includes('chroma') && isNear
    ? ['the loss of chroma lies too near the bound between a little and clearly']
    : [];
}

export const dryingKind = (studio: Studio): Kind<DryingDrill> => ({
  kind: 'drying',
  fields: (drill) => dryingFields(drill),
  given: ({ wash }) => [{ label: 'wet', reflectance: seeWet(studio, wash).reflectance }],
  goalLines: (drill) => goalLines(studio, drill),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(drill, answer),
  why: (drill, answer) => {
    return dryingWhy(studio, drill, results(studio, drill, answer));
  },
  faults: (drill) => faults(studio, drill),
});
