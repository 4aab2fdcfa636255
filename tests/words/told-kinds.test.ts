/** The form of what is said after an answer: its length, its scale, its signs, and no figure twice. */
import { describe, expect, test } from 'vitest';
import type { Drill } from '../../src/drills/kinds/index.js';
import { wrapText } from '../../src/text/wrap.js';
import { sayAll } from '../../src/words/tell.js';
import { kindOf } from '../studio.js';
import { answersOf, drillsOf, faultsIn, VOICES } from './answers.js';

const KINDS = ['drying', 'diagnosis', 'shade-chroma', 'shadow-values', 'sort-values', 'worked'] as const;

/** Columns of the result's text on a screen of 80, and the lines that it may take. */
const COLUMNS = 76;
const MOST_LINES = 6;

const STEP = /\bsteps? -?\d/;
const SIGNS = /[→±%°~>]/;

/** What a text may not hold in a voice. */
function outOfVoice(text: string, { scale, spoken }: (typeof VOICES)[number]): string[] {
  return [
    ...(scale === 'black-first' && STEP.test(text) ? [`a step on the other scale: ${text}`] : []),
    ...(scale === 'paper-first' && /\bV \d/.test(text) ? [`a Munsell value in steps: ${text}`] : []),
    ...(spoken && SIGNS.test(text) ? [`a sign that is not heard: ${text}`] : []),
    ...(/undefined|NaN|Infinity|\[object|-0\.0|\s\s|\.\./.test(text) ? [`not a sentence: ${text}`] : []),
  ];
}

describe.each(KINDS)('what a %s drill says', (kind) => {
  test('is six lines at most, on either scale', () => {
    const faults = faultsIn(kind, ({ grade }) =>
      VOICES.flatMap((voice) => {
        const lines = sayAll(grade.told, voice).flatMap((text) => wrapText(text, COLUMNS));
        return lines.length <= MOST_LINES || voice.spoken
          ? []
          : [`${lines.length} lines:\n${lines.join('\n')}`];
      }),
    );
    expect(faults).toEqual([]);
  });

  test('is findings, in the voice of the learner, once each', () => {
    const faults = faultsIn(kind, ({ grade }) => [
      ...VOICES.flatMap((voice) => sayAll(grade.told, voice).flatMap((text) => outOfVoice(text, voice))),
      ...(new Set(sayAll(grade.told, VOICES[0] as (typeof VOICES)[number])).size === grade.told.length
        ? []
        : ['a sentence twice']),
    ]);
    expect(faults).toEqual([]);
  });

  test('says no figure again that a row has', () => {
    const faults = faultsIn(kind, ({ grade }) => {
      const { value, chroma } = grade;
      const rows = [
        ...(value === undefined ? [] : [value.before, value.after].map((step) => `step ${step.toFixed(1)}`)),
        ...(chroma === undefined ? [] : [chroma.before, chroma.after].map((c) => `chroma ${c.toFixed(0)}`)),
      ];
      return sayAll(grade.told, { scale: 'paper-first', spoken: false })
        .filter((text) => !text.startsWith('Better') && !/keeps about/.test(text))
        .flatMap((text) =>
          rows.filter((row) => new RegExp(`${row}(?!\\d)`).test(text)).map((row) => `${row} in "${text}"`),
        );
    });
    expect(faults).toEqual([]);
  });

  test('has goal lines and labels on the learner’s scale', () => {
    const faults = drillsOf(kind).flatMap((drill) =>
      VOICES.flatMap((voice) => {
        const goals = sayAll(kindOf(drill).goalLines(drill), voice);
        const labels = answersOf(drill)
          .slice(0, 5)
          .map((answer) => kindOf(drill).label(drill, answer, voice));
        return [
          ...goals.flatMap((text) => outOfVoice(text, voice)),
          ...(voice.spoken ? [] : labels.flatMap((text) => outOfVoice(text, voice))),
        ].map((fault) => `${drill.id}: ${fault}`);
      }),
    );
    expect(faults).toEqual([]);
  });
});

test('no scene, question or hint counts in steps, since it is the same on both scales', () => {
  const texts = (
    [
      'drying',
      'diagnosis',
      'shade-chroma',
      'shadow-values',
      'sort-values',
      'worked',
      'mix',
      'choose',
      'order',
      'washes',
    ] as const
  )
    .flatMap((kind): Drill[] => drillsOf(kind))
    .flatMap(({ id, title, scene, ask, hint = '' }) =>
      [title, scene, ask, hint].map((text) => `${id}: ${text}`),
    );
  expect(texts.length).toBeGreaterThan(400);
  expect(texts.filter((text) => STEP.test(text))).toEqual([]);
});
