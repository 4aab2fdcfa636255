/** The shadow-values kind: see schema.ts. */

import { valueFromStep, yFromMunsellValue } from '../../../colour/value.js';
import { outside, overall, scoreStep, togetherMark, verdictOf } from '../../../judgement/index.js';
import type { Spectrum } from '../../../optics/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { IDEAS } from '../../../words/ideas.js';
import { stepsWords } from '../../../words/laid.js';
import { plainly } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import type { Answer, Field, Grade, Kind, ResultSwatch } from '../../types.js';
import { LEFT_IN_SUN, shadowBand, shadowStep } from './rules.js';
import type { LitThing, ShadowValuesDrill } from './schema.js';

/** Steps beyond which a whole number would be off a little although it is the nearest there is. */
const ROUNDING = 0.02;

const WORDS = { shade: 'shaded side', cast: 'cast shadow' } as const;

const LIGHT_WORDS = {
  sun: 'direct sun, some light thrown back into the shade',
  'hard-sun': 'direct sun, nothing throws light back',
  overcast: 'grey sky, no direct sun',
} as const;

export function litStep(studio: Studio, { lit }: LitThing): number {
  return typeof lit === 'number' ? lit : seeLaid(studio, lit).colour.step;
}

const thingField = (index: number): string => `thing-${index + 1}`;

function fields({ things, steps }: ShadowValuesDrill): readonly Field[] {
  const options = [...steps].sort((a, b) => a - b).map((step) => ({ id: String(step), label: String(step) }));
  return things.map(({ name, shadow }, index) => ({
    id: thingField(index),
    label: shadow === 'shade' ? `${name}, ${WORDS.shade}` : `${WORDS.cast} on ${name}`,
    shape: 'scale',
    options,
  }));
}

interface ThingResult {
  readonly thing: LitThing;
  readonly lit: number;
  readonly step: number;
  readonly band: readonly [number, number];
  readonly score: number;
}

function thingResult(studio: Studio, drill: ShadowValuesDrill, thing: LitThing, step: number): ThingResult {
  const lit = litStep(studio, thing);
  const band = shadowBand(lit, thing.shadow, drill.light);
  return { thing, lit, step, band, score: scoreStep(step, band, ROUNDING).score };
}

function results(studio: Studio, drill: ShadowValuesDrill, answer: Answer): ThingResult[] {
  const open = fields(drill);
  requireComplete(open, answer);
  return drill.things.map((thing, index) =>
    thingResult(studio, drill, thing, Number(chosen(open, answer, thingField(index)).id)),
  );
}

function best(studio: Studio, drill: ShadowValuesDrill): Answer {
  return Object.fromEntries(
    drill.things.map((thing, index) => {
      const middle = shadowBand(litStep(studio, thing), thing.shadow, drill.light).reduce(
        (a, b) => (a + b) / 2,
      );
      const step = [...drill.steps].sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0];
      return [thingField(index), String(step)];
    }),
  );
}

function resultLine({ thing, lit, step, band, score }: ThingResult): string {
  const what = thing.shadow === 'shade' ? `${thing.name}, shaded side` : `cast shadow on ${thing.name}`;
  const asked = `${band[0].toFixed(1)}-${band[1].toFixed(1)} fits a lit step ${lit.toFixed(1)}`;
  if (score >= 1) return `${what}: you said step ${step}; ${asked}, so it holds.`;
  const gap = outside(step, band);
  return `${what}: you said step ${step}; ${asked}, so it is ${stepsWords(gap)} too ${step < band[0] ? 'light' : 'dark'}.`;
}

function reasonLine(drill: ShadowValuesDrill, { thing, lit }: ThingResult): string {
  if (drill.light === 'overcast') {
    return 'Under a grey sky the light comes from all round: no side is truly in shade, so the six-tenths guess does not apply; keep within a step.';
  }
  const value = valueFromStep(lit);
  const share = LEFT_IN_SUN[thing.shadow];
  const rule = `A ${WORDS[thing.shadow]} keeps about ${share === 0.6 ? 'six' : 'four'} tenths of the lit value: ${value.toFixed(1)} of 10 becomes ${(share * value).toFixed(1)}, which is step ${shadowStep(lit, thing.shadow).toFixed(1)}.`;
  return drill.light === 'hard-sun'
    ? `${rule} With nothing to throw light back it may go a step darker.`
    : `${rule} A starting guess, not a law.`;
}

function ideaOf(drill: ShadowValuesDrill, all: readonly ThingResult[]): string | undefined {
  const wrong = all.filter(({ score }) => score < 1);
  if (wrong.length === 0) return undefined;
  if (drill.light === 'overcast') {
    return wrong.some(({ step, band }) => step > band[1]) ? 'rule-in-grey-light' : 'too-light';
  }
  const shade = all.find(({ thing }) => thing.shadow === 'shade');
  const cast = all.find(({ thing }) => thing.shadow === 'cast');
  if (
    shade !== undefined &&
    cast !== undefined &&
    cast.step <= shade.step &&
    cast.band[0] > shade.band[1] - 1
  ) {
    return 'cast-too-light';
  }
  if (wrong.every(({ step, lit }) => Math.abs(step - lit - 1) <= 0.6)) return 'one-step-shadow';
  return wrong.some(({ step, band }) => step < band[0]) ? 'too-light' : 'too-dark';
}

/** The lit colour under so much less light that its value is the step given; a grey where only a step is known. */
function darkened(studio: Studio, { lit }: LitThing, step: number): Spectrum {
  const y = yFromMunsellValue(valueFromStep(step)) / 100;
  const from =
    typeof lit === 'number' ? studio.paper.reflectance.map(() => 1) : seeLaid(studio, lit).reflectance;
  const fromY =
    typeof lit === 'number' ? 1 : yFromMunsellValue(valueFromStep(seeLaid(studio, lit).colour.step)) / 100;
  return from.map((band) => Math.min(1, (band * y) / fromY));
}

function grade(studio: Studio, drill: ShadowValuesDrill, answer: Answer): Grade {
  const all = results(studio, drill, answer);
  const mark = togetherMark(all.map(({ score }) => score));
  const worst = all.reduce((low, next) => (next.score < low.score ? next : low));
  const idea = ideaOf(drill, all);
  const bestAnswer = best(studio, drill);
  const bestWorst = results(studio, drill, bestAnswer)[all.indexOf(worst)] as ThingResult;
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  const swatches: ResultSwatch[] = [
    { label: 'lit', reflectance: darkened(studio, worst.thing, worst.lit) },
    { label: 'yours', reflectance: darkened(studio, worst.thing, worst.step) },
    { label: 'best', reflectance: darkened(studio, worst.thing, bestWorst.step) },
  ];
  return {
    mark,
    verdict: overall(mark),
    value: {
      before: worst.lit,
      after: worst.step,
      asked: worst.band,
      verdict: verdictOf(worst.score),
      tooCloseToCall: false,
    },
    told: plainly([
      ...all.map(resultLine),
      ...[...new Set(all.map((result) => reasonLine(drill, result)))],
      mark === 100 ? 'Nothing on this scale fits better.' : `Better: ${label(drill, bestAnswer)}.`,
      ...(next === undefined ? [] : [next]),
    ]),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(drill, bestAnswer), mark: 100 },
    swatches,
    evidence: 'measured',
  };
}

function label(drill: ShadowValuesDrill, answer: Answer): string {
  return fields(drill)
    .map((field) => `${field.label} ${chosen([field], answer, field.id).label}`)
    .join(', ');
}

function goalLines(studio: Studio, drill: ShadowValuesDrill): string[] {
  return [
    `light: ${LIGHT_WORDS[drill.light]}`,
    ...drill.things.map((thing) => `${thing.name}: lit step ${litStep(studio, thing).toFixed(1)}`),
    'steps: 1 paper white to 10 darkest dark',
  ];
}

export const shadowValuesKind = (studio: Studio): Kind<ShadowValuesDrill> => ({
  kind: 'shadow-values',
  fields: (drill) => fields(drill),
  given: ({ things }) =>
    things.map((thing) => ({
      label: thing.name,
      reflectance: darkened(studio, thing, litStep(studio, thing)),
    })),
  goalLines: (drill) => plainly(goalLines(studio, drill)),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(drill, answer),
});
