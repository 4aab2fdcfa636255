/** The sort-values kind: see schema.ts. */

import { hueName } from '../../../colour/hue.js';
import {
  MODEL_ERROR,
  NEUTRAL_CHROMA,
  overall,
  pickMark,
  togetherMark,
  VALUE_BOUNDS,
  WIDE_SPAN,
} from '../../../judgement/index.js';
import { evidenceOf, type Studio } from '../../../paints/index.js';
import { seeLaid, washesOf } from '../../../washes/index.js';
import { percent } from '../../../words/laid.js';
import { type Finding, tell } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import type { Answer, Field, Grade, Kind } from '../../types.js';
import { CLASSES, classesOf, classOf, sharesOf, sortFaults, spanOf, type ValueClass } from './classes.js';
import type { Area, SortAsk, SortValuesDrill } from './schema.js';
import { type Part, toldOf } from './told.js';
import { sortWhy } from './why.js';

const areaField = (index: number): string => `area-${index + 1}`;

/** Local colour without a word on its value: its hue, and how strong the washes are. */
function localFinding(studio: Studio, { name, laid }: Area): Finding {
  const { colour } = seeLaid(studio, laid);
  return tell('sort-local', {
    name,
    hue: colour.chroma < NEUTRAL_CHROMA ? 'grey' : hueName(colour.hue),
    strengths: washesOf(laid).map(({ strength }) => strength),
  });
}

/** Steps that the model may be off on a span: the dark end by its error; the light one lies next to paper and is hardly off. */
const SPAN_ROOM = MODEL_ERROR.measured.step;

function fields(drill: SortValuesDrill): readonly Field[] {
  const classes = CLASSES.map((id) => ({ id, label: id }));
  const areas = drill.areas.map(
    ({ name, share }, index): Field => ({
      id: areaField(index),
      label: `${name}, ${percent(share)} of the sheet`,
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
        { id: 'short', label: `short, under ${WIDE_SPAN} steps`, note: 'soft, as in fog' },
        { id: 'wide', label: `wide, ${WIDE_SPAN} steps or more`, note: 'strong, as in sun' },
      ],
    },
  };
  return [...areas, ...drill.asks.map((ask) => asked[ask])];
}

/** Chroma from which a colour hides its value. */
const LOUD = 50;

function areaPart(studio: Studio, { name, laid }: Area, said: ValueClass): Part {
  const { colour, evidence } = seeLaid(studio, laid);
  const is = classOf(colour.step);
  const counts = classesOf(colour.step, evidence);
  const area = { name, said, is, ...(counts.length > 1 ? { counts } : {}) };
  if (counts.includes(said)) return { score: 1, area };
  const away = Math.abs(CLASSES.indexOf(said) - CLASSES.indexOf(is));
  return { score: away > 1 ? 0 : 0.25, area, isLoud: colour.chroma > LOUD, idea: 'misread-value' };
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
  const told = tell('sort-darkest', { said: said.name, is: is.name, counts: mark === 100 });
  return mark === 100 ? { score: 1, told } : { score: mark / 100, told, idea: 'misread-value' };
}

function mostPart(studio: Studio, { areas }: SortValuesDrill, said: ValueClass): Part {
  const shares = sharesOf(studio, areas);
  const most = Math.max(...Object.values(shares));
  const told = tell('sort-most', { said, shares, counts: shares[said] >= most - 0.02 });
  return shares[said] >= most - 0.02 ? { score: 1, told } : { score: 0, told, idea: 'misread-value' };
}

function spanPart(studio: Studio, { areas }: SortValuesDrill, said: string): Part {
  const span = spanOf(studio, areas);
  const is = span >= WIDE_SPAN ? 'wide' : 'short';
  const isClose = Math.abs(span - WIDE_SPAN) <= SPAN_ROOM;
  const told = tell('sort-span', { span, wide: WIDE_SPAN, isClose });
  return said === is || isClose ? { score: 1, told } : { score: 0, told, idea: 'misread-value' };
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
    span: spanOf(studio, drill.areas) >= WIDE_SPAN ? 'wide' : 'short',
  };
  return Object.fromEntries([
    ...steps.map((step, index) => [areaField(index), classOf(step)]),
    ...drill.asks.map((ask) => [ask, asked[ask]]),
  ]);
}

/** The parts are scored each on its own, and a wrong one shows its idea: one choice away from the best shows them all. */
function ideas(studio: Studio, drill: SortValuesDrill): ReadonlySet<string> {
  const right = best(studio, drill);
  const answers = fields(drill).flatMap(({ id, options }) =>
    options.map((option) => ({ ...right, [id]: option.id })),
  );
  return new Set(answers.flatMap((answer) => parts(studio, drill, answer).flatMap(({ idea }) => idea ?? [])));
}

function grade(studio: Studio, drill: SortValuesDrill, answer: Answer): Grade {
  const all = parts(studio, drill, answer);
  const mark = togetherMark(all.map(({ score }) => score));
  const idea = all.find((part) => part.idea !== undefined)?.idea;
  const bestAnswer = best(studio, drill);
  return {
    mark,
    verdict: overall(mark),
    told: toldOf(studio, drill, all, idea),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(drill, bestAnswer), mark: 100 },
    swatches: drill.areas.map(({ name, laid }) => ({
      label: name,
      reflectance: seeLaid(studio, laid).reflectance,
    })),
    evidence: evidenceOf(drill.areas.map(({ laid }) => seeLaid(studio, laid))),
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
  goalLines: ({ areas }) => [
    tell('sort-bounds', { bounds: VALUE_BOUNDS }),
    ...areas.map((area) => localFinding(studio, area)),
  ],
  grade: (drill, answer) => grade(studio, drill, answer),
  ideas: (drill) => ideas(studio, drill),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(drill, answer),
  why: (drill, answer) => {
    requireComplete(fields(drill), answer);
    return sortWhy(studio, drill);
  },
  faults: (drill) => sortFaults(studio, drill),
});
