/** The drying kind: see schema.ts. */

import { overall, togetherMark } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid, seeWet } from '../../../washes/index.js';
import { IDEAS } from '../../../words/ideas.js';
import { laidLabel, laidNote } from '../../../words/laid.js';
import { plainly } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import { laidParts } from '../../laid-parts.js';
import type { Answer, Grade, Kind } from '../../types.js';
import { type AskResult, askResult, changeOf, dryingFields } from './answers.js';
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
      const plain = full.find(({ result }) => !result.line.includes('too close to call'));
      return [id, (plain ?? full[0])?.id ?? ''];
    }),
  );
}

/** Shares of its chroma from which a wash loses much, or some, in drying. */
const LOSES = { much: 0.25, some: 1 / 12 } as const;

function reason(studio: Studio, drill: DryingDrill): string {
  const { lost } = changeOf(studio, drill);
  const how = lost >= LOSES.much ? 'much' : lost >= LOSES.some ? 'some of it' : 'little';
  return `Wet, the surface is a mirror and the film is clear; dry, the matt surface sends white light everywhere and the film scatters more. That takes chroma first, from dark and strong washes most: this one loses ${how}.`;
}

function grade(studio: Studio, drill: DryingDrill, answer: Answer): Grade {
  const all = results(studio, drill, answer);
  const mark = togetherMark(all.map(({ score }) => score));
  const idea = all.find((result) => result.idea !== undefined)?.idea;
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  const bestAnswer = best(studio, drill);
  const seen = seeLaid(studio, drill.wash);
  return {
    mark,
    verdict: overall(mark),
    told: plainly([
      ...all.map(({ line }) => line),
      reason(studio, drill),
      mark === 100 ? 'That is how it dries, as far as can be said.' : `Better: ${label(drill, bestAnswer)}.`,
      'Direction and rough size only: paints differ, and a good many dry darker, not lighter.',
      ...(next === undefined ? [] : [next]),
    ]),
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

function goalLines(studio: Studio, drill: DryingDrill): string[] {
  const lines = [`laid: ${laidLabel(studio, drill.wash)}, ${laidNote(drill.wash)}`];
  if (drill.target !== undefined) {
    const { step, chroma } = drill.target;
    lines.push(
      `wanted dry: step ${step.toFixed(1)}${chroma === undefined ? '' : `, chroma ${chroma.toFixed(0)}`}`,
    );
  }
  return lines;
}

export const dryingKind = (studio: Studio): Kind<DryingDrill> => ({
  kind: 'drying',
  fields: (drill) => dryingFields(drill),
  given: ({ wash }) => [{ label: 'wet', reflectance: seeWet(studio, wash).reflectance }],
  goalLines: (drill) => plainly(goalLines(studio, drill)),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(drill, answer),
});
