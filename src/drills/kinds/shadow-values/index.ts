/** The shadow-values kind: see schema.ts. */

import { valueFromStep } from '../../../colour/value.js';
import { outside, overall, scoreStep, togetherMark, verdictOf } from '../../../judgement/index.js';
import type { Spectrum } from '../../../optics/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { ShadowName } from '../../../words/sentences/shadow-values.js';
import { type Finding, tell } from '../../../words/tell.js';
import { stepText, type Voice, WRITTEN } from '../../../words/voice.js';
import { chosen, everyCombination, requireComplete } from '../../answers.js';
import { inShade } from '../../light.js';
import type { Answer, Field, Grade, Kind, ResultSwatch, Why } from '../../types.js';
import { whyFilms } from '../../why.js';
import { LEFT_IN_SUN, shadowBand, shadowStep } from './rules.js';
import type { LitThing, ShadowValuesDrill } from './schema.js';

/** Steps beyond which a whole number would be off a little although it is the nearest there is. */
const ROUNDING = 0.02;

const WORDS = { shade: 'shaded side', cast: 'cast shadow' } as const;

export function litStep(studio: Studio, { lit }: LitThing): number {
  return typeof lit === 'number' ? lit : seeLaid(studio, lit).colour.step;
}

const thingField = (index: number): string => `thing-${index + 1}`;

function fields({ things, steps }: ShadowValuesDrill): readonly Field[] {
  const options = [...steps]
    .sort((a, b) => a - b)
    .map((step) => ({ id: String(step), label: String(step), step }));
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

const nameOf = ({ name, shadow }: LitThing): ShadowName => ({ name, shadow });

/** Steps too dark, below 0 too light. */
const gapOf = ({ step, band }: ThingResult): number =>
  step < band[0] ? -outside(step, band) : outside(step, band);

/** The rule that a shadow is judged by; one for all things under a grey sky. @param id in short, or in figures */
function ruleOf(
  { light }: ShadowValuesDrill,
  { thing, lit }: ThingResult,
  id: 'shadow-rule' | 'why-shadow-rule',
): Finding {
  if (light === 'overcast') return tell('shadow-grey-sky', {});
  const share = LEFT_IN_SUN[thing.shadow];
  return tell(id, { shadow: thing.shadow, light, share, value: valueFromStep(lit) });
}

/** What is off, first the thing that the row of value shows; what is right; its rule; what would be better. */
function toldOf(
  drill: ShadowValuesDrill,
  all: readonly ThingResult[],
  shown: ThingResult,
  best: readonly ThingResult[],
): Finding[] {
  const right = all.filter(({ score }) => score >= 1);
  const off = all.filter(({ score }) => score < 1).sort((a, b) => Number(b === shown) - Number(a === shown));
  const better = best.filter((_, at) => (all[at]?.score ?? 1) < 1);
  return [
    ...(off.length === 0
      ? []
      : [tell('shadow-off', { things: off.map((one) => ({ ...nameOf(one.thing), gap: gapOf(one) })) })]),
    ...(right.length === 0
      ? []
      : [tell('shadow-holds', { things: right.map(({ thing }) => nameOf(thing)) })]),
    ruleOf(drill, shown, 'shadow-rule'),
    ...(better.length === 0
      ? []
      : [tell('shadow-better', { things: better.map(({ thing, step }) => ({ ...nameOf(thing), step })) })]),
  ];
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
    cast.score < 1 &&
    cast.step <= shade.step &&
    cast.band[0] > shade.band[1] - 1
  ) {
    return 'cast-too-light';
  }
  if (wrong.every(({ step, lit }) => Math.abs(step - lit - 1) <= 0.6)) return 'one-step-shadow';
  return wrong.some(({ step, band }) => step < band[0]) ? 'too-light' : 'too-dark';
}

/** What each thing gets at each step is worked out once: up to ten thousand answers are put together from it. */
function ideas(studio: Studio, drill: ShadowValuesDrill): ReadonlySet<string> {
  const bySteps = drill.things.map((thing) =>
    drill.steps.map((step) => thingResult(studio, drill, thing, step)),
  );
  return new Set([...everyCombination(bySteps)].flatMap((all) => ideaOf(drill, all) ?? []));
}

/** The lit colour under so much less light that its value is the step given; a grey where only a step is known. */
function darkened(studio: Studio, { lit }: LitThing, step: number): Spectrum {
  const white = (): Spectrum => studio.paper.reflectance.map(() => 1);
  return inShade(typeof lit === 'number' ? white() : seeLaid(studio, lit).reflectance, step);
}

function grade(studio: Studio, drill: ShadowValuesDrill, answer: Answer): Grade {
  const all = results(studio, drill, answer);
  const mark = togetherMark(all.map(({ score }) => score));
  const worst = all.reduce((low, next) => (next.score < low.score ? next : low));
  const idea = ideaOf(drill, all);
  const bestAnswer = best(studio, drill);
  const bests = results(studio, drill, bestAnswer);
  const bestWorst = bests[all.indexOf(worst)] as ThingResult;
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
    told: [...toldOf(drill, all, worst, bests), ...(idea === undefined ? [] : [tell('advice', { idea })])],
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(drill, bestAnswer), mark: 100 },
    swatches,
    ...(all.length > 1 && {
      steps: all.map(({ thing, lit, step }, at) => ({
        name: thing.name,
        before: darkened(studio, thing, lit),
        yours: darkened(studio, thing, step),
        best: darkened(studio, thing, (bests[at] as ThingResult).step),
      })),
    }),
    evidence: 'measured',
  };
}

function label(drill: ShadowValuesDrill, answer: Answer, voice: Voice = WRITTEN): string {
  return fields(drill)
    .map((field) => {
      const { label: words, step } = chosen([field], answer, field.id);
      // Whole steps are written whole; on the other scale they lie between its whole numbers.
      return `${field.label} ${step === undefined || voice.scale === 'paper-first' ? words : stepText(step, voice)}`;
    })
    .join(', ');
}

/** Every thing lit, by the rule and as answered, and the rules. */
function why(studio: Studio, drill: ShadowValuesDrill, answer: Answer): Why {
  const all = results(studio, drill, answer);
  // Under a grey sky the rule has no figures, and the result has said it.
  const rules =
    drill.light === 'overcast' ? [] : all.map((result) => ruleOf(drill, result, 'why-shadow-rule'));
  return {
    films: [],
    patches: all.flatMap(({ thing, lit, step, band }): ResultSwatch[] => {
      const middle = drill.light === 'overcast' ? (band[0] + band[1]) / 2 : shadowStep(lit, thing.shadow);
      return whyFilms([
        { label: `${thing.name}, lit`, reflectance: darkened(studio, thing, lit) },
        { label: `${WORDS[thing.shadow]} by the rule`, reflectance: darkened(studio, thing, middle) },
        { label: 'yours', reflectance: darkened(studio, thing, step) },
      ]);
    }),
    told: [
      ...all.map(({ thing, band }) => tell('why-shadow', { thing: nameOf(thing), band })),
      // The same rule from the same value is said once.
      ...rules.filter(
        (rule, at) => rules.findIndex((one) => JSON.stringify(one) === JSON.stringify(rule)) === at,
      ),
      ...(drill.light === 'sun' ? [tell('why-shadow-guess', {})] : []),
    ],
  };
}

function goalLines(studio: Studio, drill: ShadowValuesDrill): Finding[] {
  return [
    tell('shadow-light', { light: drill.light }),
    ...drill.things.map((thing) => tell('shadow-lit', { name: thing.name, step: litStep(studio, thing) })),
    tell('shadow-scale', {}),
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
  goalLines: (drill) => goalLines(studio, drill),
  grade: (drill, answer) => grade(studio, drill, answer),
  ideas: (drill) => ideas(studio, drill),
  best: (drill) => best(studio, drill),
  label: (drill, answer, voice) => label(drill, answer, voice),
  why: (drill, answer) => why(studio, drill, answer),
});
