/** The drying kind: see schema.ts. */
import { chosen, requireComplete } from '../answers.js';
import { IDEAS } from '../ideas.js';
import { overall, togetherMark } from '../laid/marks.js';
import { laidParts, seeLaid, wetReflectance } from '../laid/predict.js';
import { laidLabel, laidNote } from '../laid/words.js';
import type { Answer, Grade, Kind } from '../types.js';
import { type AskResult, askResult, changeOf, dryingFields } from './answers.js';
import type { DryingDrill } from './schema.js';

function results(drill: DryingDrill, answer: Answer): AskResult[] {
  const fields = dryingFields(drill);
  requireComplete(fields, answer);
  return drill.asks.map((ask) => askResult(drill, ask, chosen(fields, answer, ask).id));
}

/** The best option of each question; of several that count, the one the prediction gives without the room for error. */
function best(drill: DryingDrill): Answer {
  return Object.fromEntries(
    dryingFields(drill).map(({ id, options }) => {
      const ask = id as DryingDrill['asks'][number];
      const rated = options.map((option) => ({ id: option.id, result: askResult(drill, ask, option.id) }));
      const most = Math.max(...rated.map(({ result }) => result.score));
      const full = rated.filter(({ result }) => result.score === most);
      const plain = full.find(({ result }) => !result.line.includes('too close to call'));
      return [id, (plain ?? full[0])?.id ?? ''];
    }),
  );
}

function reason(drill: DryingDrill): string {
  const { dry } = changeOf(drill);
  const how =
    dry.step >= 6
      ? 'a dark, strong wash loses most'
      : dry.step <= 3
        ? 'a pale wash has little to lose'
        : 'a middling wash loses some';
  return `Wet, the surface is a mirror and the film is clear; dry, the matt surface sends white light everywhere and the film scatters more. That takes chroma first: ${how}.`;
}

function grade(drill: DryingDrill, answer: Answer): Grade {
  const all = results(drill, answer);
  const mark = togetherMark(all.map(({ score }) => score));
  const idea = all.find((result) => result.idea !== undefined)?.idea;
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  const bestAnswer = best(drill);
  const seen = seeLaid(drill.wash);
  return {
    mark,
    verdict: overall(mark),
    explanation: [
      ...all.map(({ line }) => line),
      reason(drill),
      mark === 100 ? 'That is how it dries, as far as can be said.' : `Better: ${label(drill, bestAnswer)}.`,
      'Direction and rough size only: paints differ, and a good many dry darker, not lighter.',
      ...(next === undefined ? [] : [next]),
    ],
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(drill, bestAnswer), mark: 100 },
    swatches: [
      { label: 'wet', reflectance: wetReflectance(drill.wash) },
      { label: 'dry', reflectance: seen.reflectance },
    ],
    laid: laidParts(drill.wash),
    evidence: seen.evidence,
  };
}

function label(drill: DryingDrill, answer: Answer): string {
  return dryingFields(drill)
    .map((field) => `${field.label}: ${chosen([field], answer, field.id).label}`)
    .join(', ');
}

function goalLines(drill: DryingDrill): string[] {
  const lines = [`laid: ${laidLabel(drill.wash)}, ${laidNote(drill.wash)}`];
  if (drill.target !== undefined) {
    const { step, chroma } = drill.target;
    lines.push(
      `wanted dry: step ${step.toFixed(1)}${chroma === undefined ? '' : `, chroma ${chroma.toFixed(0)}`}`,
    );
  }
  return lines;
}

export const dryingKind: Kind<DryingDrill> = {
  kind: 'drying',
  fields: dryingFields,
  given: ({ wash }) => [{ label: 'wet', reflectance: wetReflectance(wash) }],
  goalLines,
  grade,
  best,
  label,
};
