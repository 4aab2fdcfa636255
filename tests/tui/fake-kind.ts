/** A kind of drill with answers of our own, easy to foretell. */

import type { Answer, DrillCommon, Field, Grade, Kind } from '../../src/drills/types.js';
import { whyOf } from '../../src/drills/why.js';
import type { Verdict } from '../../src/judgement/index.js';
import { type Laid, seeAlone } from '../../src/washes/index.js';
import { tell } from '../../src/words/tell.js';
import { paintOf, STUDIO } from '../studio.js';

/** What one paint looks like at half strength. */
export function paintSpectrum(id: string, strength = 0.5) {
  return seeAlone(STUDIO, id, strength).reflectance;
}

const TRAY = ['alizarin-crimson', 'ultramarine-blue', 'cadmium-red', 'ivory-black'];
const TOUCHES = ['1:32', '1:16', '1:8', '1:4', '1:2', '1:1'];

const line = (name: string, label: string, note: string) => tell('order-item', { name, label, note });

const FIELDS: readonly Field[] = [
  {
    id: 'second',
    label: 'second paint',
    shape: 'list',
    options: TRAY.map((id) => ({
      id,
      label: paintOf(id).name,
      note: 'PR1, measured',
      swatch: paintSpectrum(id),
      pigment: id,
    })),
  },
  {
    id: 'amount',
    label: 'amount, second to first',
    shape: 'scale',
    options: TOUCHES.map((id) => ({ id, label: id })),
  },
  {
    id: 'way',
    label: 'way',
    shape: 'list',
    options: ['puddle', 'glaze', 'strokes'].map((id) => ({ id, label: id })),
  },
];

const VERDICTS: readonly Verdict[] = ['off', 'fair', 'good'];

/** The more of the second paint, the better: easy to foretell in a test. */
function fakeGrade(answer: Answer): Grade {
  const at = TOUCHES.indexOf(answer['amount'] ?? '');
  return {
    mark: at * 20,
    verdict: VERDICTS[Math.min(2, Math.floor(at / 2))] ?? 'off',
    value: { before: 4.2, after: 4.2 + at * 0.5, asked: [6, 7], verdict: 'fair', tooCloseToCall: false },
    chroma: {
      before: 60,
      after: 40,
      asked: [35, Number.POSITIVE_INFINITY],
      verdict: 'good',
      kept: 40 / 60,
      shadingLine: 50,
      best: 45,
      tooCloseToCall: true,
    },
    told: [
      line(
        'The first line says',
        'what was chosen and what it gives',
        'in full, so that it has to be broken.',
      ),
      line('The second line says why', 'both swallow the same part of the light', 'and little is left over.'),
      line('The third line', 'the better choice', 'by its name.'),
    ],
    best: { answer: { second: 'alizarin-crimson', amount: '1:1', way: 'puddle' }, label: 'best', mark: 100 },
    swatches: [
      { label: 'start', reflectance: paintSpectrum('burnt-sienna') },
      { label: 'yours', reflectance: paintSpectrum('alizarin-crimson') },
      { label: 'best', reflectance: paintSpectrum('ultramarine-blue') },
    ],
    laid: [
      { pigment: 'burnt-sienna', parts: 4, load: 0.5 },
      { pigment: 'alizarin-crimson', parts: 1, load: 0.2 },
    ],
    evidence: 'measured',
  };
}

function fakeLaid({ second = '', amount = '1:1', way }: Answer): Laid {
  const parts = 1 / Number(amount.slice(2));
  const wash = { paints: { 'burnt-sienna': 1 }, strength: 0.3 };
  if (way === 'puddle') return { ...wash, add: { [second]: parts }, thin: 2 };
  return { layers: [wash, { paints: { [second]: 1 }, strength: parts }] };
}

export const FAKE_KIND: Kind = {
  kind: 'fake',
  fields: () => FIELDS,
  given: () => [{ label: 'start', reflectance: paintSpectrum('burnt-sienna') }],
  goalLines: () => [
    tell('mix-value', { from: 4.2, band: [6, 7] }),
    tell('mix-chroma', { from: 60, aim: 'rich' }),
  ],
  grade: (_, answer) => fakeGrade(answer),
  best: () => ({ second: 'alizarin-crimson', amount: '1:1', way: 'puddle' }),
  laid: (_, answer) => fakeLaid(answer),
  label: (_, answer) => `${answer['second']} ${answer['amount']}`,
  why: () => whyOf(STUDIO, { paints: { 'burnt-sienna': 4, 'alizarin-crimson': 1 }, strength: 0.6 }),
  plane: (_, answer) => ({
    start: { step: 4.2, chroma: 60, label: 'start' },
    path: TOUCHES.map((label, at) => ({ step: 4.2 + at * 0.5, chroma: 60 - at * 5, label })),
    yours: { step: 4.2 + TOUCHES.indexOf(answer['amount'] ?? '') * 0.5, chroma: 50, label: 'yours' },
    best: { step: 6.5, chroma: 45, label: 'best' },
    goal: { step: [6, 7], chroma: [35, Number.POSITIVE_INFINITY] },
  }),
};

/** A kind with nothing but a few scales, no colours and no plane. */
export const BARE_KIND: Kind = {
  ...FAKE_KIND,
  kind: 'bare',
  fields: () =>
    Array.from({ length: 9 }, (_, at) => ({
      id: `area-${at}`,
      label: `area ${at}`,
      shape: 'list' as const,
      options: ['light', 'middle', 'dark'].map((id) => ({ id, label: id })),
    })),
  given: () => [],
  goalLines: () => [line('sort', 'the areas', 'all nine')],
  grade: () => {
    const { value, chroma, laid, ...rest } = fakeGrade({});
    return { ...rest, mark: 50, verdict: 'fair', swatches: [] };
  },
  best: () => Object.fromEntries(Array.from({ length: 9 }, (_, at) => [`area-${at}`, 'dark'])),
  label: () => 'areas',
};
delete (BARE_KIND as { plane?: unknown }).plane;
delete (BARE_KIND as { laid?: unknown }).laid;

export function fakeDrill(id: string, extra: Partial<DrillCommon> = {}): DrillCommon {
  return {
    id,
    family: 'darken-bright',
    level: 3,
    title: `Drill ${id}`,
    scene: 'A tiled roof above the harbour, warm in the low sun. The far slope lies in shade.',
    ask: 'Make it darker and keep it bright: which second paint, and how much?',
    hint: 'Look for a neighbour that is itself dark.',
    ...extra,
  };
}

export const DRILLS: readonly DrillCommon[] = [
  fakeDrill('one'),
  fakeDrill('two'),
  fakeDrill('three', { family: 'dull-on-purpose' }),
  fakeDrill('four', { level: 1 }),
  fakeDrill('bare', { family: 'three-values' }),
];
