/** The sort-values kind: see schema.ts. */

import { hueName } from '../../../colour/hue.js';
import {
  LEAST_SPAN,
  MODEL_ERROR,
  NEUTRAL_CHROMA,
  overall,
  pickMark,
  togetherMark,
} from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { listWords } from '../../../text/list-words.js';
import { seeLaid, washesOf } from '../../../washes/index.js';
import { IDEAS } from '../../../words/ideas.js';
import { strengthWords } from '../../../words/laid.js';
import { plainly } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import type { Answer, Field, Grade, Kind } from '../../types.js';
import { CLASSES, classFits, classOf, sharesOf, spanOf, type ValueClass } from './classes.js';
import type { Area, SortAsk, SortValuesDrill } from './schema.js';

const areaField = (index: number): string => `area-${index + 1}`;
const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** Local colour without a word on its value: "red orange", "grey", and how strong the wash is. */
function localWords(studio: Studio, { laid }: Area): string {
  const { colour } = seeLaid(studio, laid);
  const hue = colour.chroma < NEUTRAL_CHROMA ? 'grey' : hueName(colour.hue);
  const strengths = washesOf(laid).map(({ strength }) => strengthWords(strength));
  return `${hue}, ${listWords(strengths)} strong`;
}

/** L* that the model may be off on a span: the dark end by a step's error; the light one lies next to paper and is hardly off. */
const SPAN_ROOM = 10 * MODEL_ERROR.measured.step;

function fields(drill: SortValuesDrill): readonly Field[] {
  const classes = CLASSES.map((id) => ({ id, label: id }));
  const areas = drill.areas.map(
    ({ name, share }, index): Field => ({
      id: areaField(index),
      label: `${name}, ${percent(share)}`,
      shape: 'scale',
      options: classes,
    }),
  );
  const asked: Record<SortAsk, Field> = {
    darkest: {
      id: 'darkest',
      label: 'darkest dark',
      shape: 'list',
      options: drill.areas.map(({ name }, index) => ({ id: areaField(index), label: name })),
    },
    most: { id: 'most', label: 'covers most', shape: 'list', options: classes },
    span: {
      id: 'span',
      label: 'span of the plan',
      shape: 'list',
      options: [
        { id: 'short', label: 'too short', note: `lightest to darkest under ${LEAST_SPAN} L*` },
        { id: 'wide', label: 'wide enough', note: `${LEAST_SPAN} L* or more` },
      ],
    },
  };
  return [...areas, ...drill.asks.map((ask) => asked[ask])];
}

/** One question, its score 0-1, its line and the idea behind a wrong answer. */
interface Part {
  readonly score: number;
  readonly line: string;
  readonly idea?: string;
}

function areaPart(studio: Studio, { name, laid }: Area, said: ValueClass): Part {
  const { colour, evidence } = seeLaid(studio, laid);
  const is = classOf(colour.step);
  const what = `${name}: step ${colour.step.toFixed(1)}`;
  if (said === is) return { score: 1, line: `${what}, ${is}.` };
  if (classFits(colour.step, said, evidence)) {
    return { score: 1, line: `${what}, between ${said} and ${is}: too close to call, so ${said} counts.` };
  }
  const away = Math.abs(CLASSES.indexOf(said) - CLASSES.indexOf(is));
  const why = colour.chroma > 50 ? ' Its strong colour hides its value.' : '';
  return { score: away > 1 ? 0 : 0.25, line: `${what}: ${is}, not ${said}.${why}`, idea: 'misread-value' };
}

function darkestPart(studio: Studio, { areas }: SortValuesDrill, fieldId: string): Part {
  const steps = areas.map(({ laid }) => seeLaid(studio, laid).colour.step);
  const index = areas.findIndex((_, at) => areaField(at) === fieldId);
  const said = areas[index] as Area;
  const is = areas[steps.indexOf(Math.max(...steps))] as Area;
  const { mark } = pickMark(
    steps[index] as number,
    steps,
    MODEL_ERROR[seeLaid(studio, said.laid).evidence].step,
  );
  return mark === 100
    ? { score: 1, line: `The darkest dark is in the ${said.name}, as you said.` }
    : {
        score: mark / 100,
        line: `The darkest dark is in the ${is.name}, not the ${said.name}.`,
        idea: 'misread-value',
      };
}

function mostPart(studio: Studio, { areas }: SortValuesDrill, said: ValueClass): Part {
  const shares = sharesOf(studio, areas);
  const most = Math.max(...Object.values(shares));
  const words = CLASSES.map((one) => `${one} ${percent(shares[one])}`).join(', ');
  return shares[said] >= most - 0.02
    ? { score: 1, line: `Shares of the sheet: ${words}.` }
    : {
        score: 0,
        line: `You said that ${said} covers most; the shares are ${words}.`,
        idea: 'misread-value',
      };
}

function spanPart(studio: Studio, { areas }: SortValuesDrill, said: string): Part {
  const span = spanOf(studio, areas);
  const is = span >= LEAST_SPAN ? 'wide' : 'short';
  const words = `The span is ${span.toFixed(0)} L*; a plan that carries has ${LEAST_SPAN} or more`;
  if (said === is) return { score: 1, line: `${words}.` };
  return Math.abs(span - LEAST_SPAN) <= SPAN_ROOM
    ? { score: 1, line: `${words}: too close to call, so yours counts.` }
    : {
        score: 0,
        line: `${words}, so it is ${is === 'wide' ? 'wide enough' : 'too short'}.`,
        idea: 'short-span',
      };
}

function parts(studio: Studio, drill: SortValuesDrill, answer: Answer): Part[] {
  const open = fields(drill);
  requireComplete(open, answer);
  const said = (id: string): string => chosen(open, answer, id).id;
  return [
    ...drill.areas.map((area, index) => areaPart(studio, area, said(areaField(index)) as ValueClass)),
    ...drill.asks.map((ask) => {
      if (ask === 'darkest') return darkestPart(studio, drill, said(ask));
      return ask === 'most'
        ? mostPart(studio, drill, said(ask) as ValueClass)
        : spanPart(studio, drill, said(ask));
    }),
  ];
}

function best(studio: Studio, drill: SortValuesDrill): Answer {
  const steps = drill.areas.map(({ laid }) => seeLaid(studio, laid).colour.step);
  const shares = sharesOf(studio, drill.areas);
  const most = CLASSES.reduce((a, b) => (shares[b] > shares[a] ? b : a));
  const asked: Record<SortAsk, string> = {
    darkest: areaField(steps.indexOf(Math.max(...steps))),
    most,
    span: spanOf(studio, drill.areas) >= LEAST_SPAN ? 'wide' : 'short',
  };
  return Object.fromEntries([
    ...steps.map((step, index) => [areaField(index), classOf(step)]),
    ...drill.asks.map((ask) => [ask, asked[ask]]),
  ]);
}

function grade(studio: Studio, drill: SortValuesDrill, answer: Answer): Grade {
  const all = parts(studio, drill, answer);
  const mark = togetherMark(all.map(({ score }) => score));
  const idea = all.find((part) => part.idea !== undefined)?.idea;
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  const bestAnswer = best(studio, drill);
  const weakest = drill.areas.map(({ laid }) => seeLaid(studio, laid).evidence);
  return {
    mark,
    verdict: overall(mark),
    told: plainly([
      ...all.map(({ line }) => line),
      'Squint: what merges has the same value, whatever its colour. Two areas may share a value and differ in colour.',
      mark === 100 ? 'Nothing to better.' : `Better: ${label(drill, bestAnswer)}.`,
      ...(next === undefined ? [] : [next]),
    ]),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(drill, bestAnswer), mark: 100 },
    swatches: drill.areas.map(({ name, laid }) => ({
      label: name,
      reflectance: seeLaid(studio, laid).reflectance,
    })),
    evidence: (['estimated', 'transferred'] as const).find((one) => weakest.includes(one)) ?? 'measured',
  };
}

function label(drill: SortValuesDrill, answer: Answer): string {
  const open = fields(drill);
  const areas = drill.areas.map(({ name }, index) => `${name} ${chosen(open, answer, areaField(index)).id}`);
  const asked = drill.asks.map((ask) => {
    const { label: words } = chosen(open, answer, ask);
    return { darkest: `darkest ${words}`, most: `most ${words}`, span: `span ${words}` }[ask];
  });
  return [...areas, ...asked].join(', ');
}

export const sortValuesKind = (studio: Studio): Kind<SortValuesDrill> => ({
  kind: 'sort-values',
  fields: (drill) => fields(drill),
  given: ({ areas }) =>
    areas.map(({ name, laid }) => ({
      label: name,
      reflectance: seeLaid(studio, laid).reflectance,
      unread: 'value',
    })),
  goalLines: ({ areas }) => plainly(areas.map((area) => `${area.name}: ${localWords(studio, area)}`)),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(drill, answer),
});
