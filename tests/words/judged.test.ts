/** The rows of value, chroma and hue: what each says of hand-made figures, then held to the figures of every shipped drill. */
import { describe, expect, test } from 'vitest';
import { hueName } from '../../src/colour/hue.js';
import { hueDifference } from '../../src/colour/lab.js';
import type { ChromaResult, HueResult, ValueResult } from '../../src/judgement/index.js';
import { widthOf } from '../../src/text/wrap.js';
import { type Judged, judgedRows } from '../../src/words/judged.js';
import { type Voice, WRITTEN } from '../../src/words/voice.js';
import { BLACK_FIRST, HEARD, shippedGrades } from './shipped.js';

const VALUE: ValueResult = {
  before: 4.2,
  after: 5.4,
  asked: [4.9, 5.9],
  verdict: 'good',
  tooCloseToCall: false,
};
const CHROMA: ChromaResult = {
  before: 53,
  after: 38,
  asked: [33, 46],
  verdict: 'good',
  kept: 38 / 53,
  shadingLine: 39.6,
  best: 40,
  tooCloseToCall: false,
};
const HUE: HueResult = {
  before: 55,
  after: 24,
  asked: { near: 55, within: 25 },
  turned: 31,
  verdict: 'fair',
};

const textOf = (judged: Judged, voice: Voice = WRITTEN): string => judgedRows(judged, voice)[0]?.text ?? '';

describe('the row of value', () => {
  test.each<[Partial<ValueResult>, string]>([
    [{}, '4.2 → 5.4, 1.2 darker, as asked'],
    [{ after: 4.6, verdict: 'fair' }, '4.2 → 4.6, 0.3 too light for 4.9 to 5.9'],
    [{ after: 7, verdict: 'off' }, '4.2 → 7.0, 1.1 too dark for 4.9 to 5.9'],
    [{ after: 4.7, tooCloseToCall: true }, '4.2 → 4.7, 0.2 under 4.9 to 5.9: within the error, it counts'],
    [{ after: 5.93, tooCloseToCall: true }, '4.2 → 5.9, at the edge of 4.9 to 5.9'],
    [{ after: 4.5, asked: [3.7, 4.7] }, '4.2 → 4.5, held, as asked'],
    [{ after: 4.65, asked: [3.7, 4.7] }, '4.2 → 4.7, 0.5 darker, still in 3.7 to 4.7'],
    [{ after: 4.21, asked: [3.7, 4.7] }, '4.2 → 4.2, held, as asked'],
  ])('of %o', (change, text) => {
    expect(textOf({ value: { ...VALUE, ...change } })).toBe(text);
  });

  // Munsell V = 10.5 - step: step 4.6 is V 5.9, and the band 4.9 to 5.9 is 4.6 to 5.6.
  test('in Munsell’s numbers, bands from low to high', () => {
    const value: ValueResult = { ...VALUE, after: 4.6, verdict: 'fair' };
    expect(textOf({ value }, BLACK_FIRST)).toBe('6.3 → 5.9, 0.3 too light for 4.6 to 5.6');
    expect(textOf({ value }, HEARD)).toBe('4.2 to 4.6, 0.3 too light for 4.9 to 5.9');
  });

  test('names the part that it is of', () => {
    expect(textOf({ value: VALUE, swatches: [{ label: 'yours, near roof' }] })).toBe(
      'near roof 5.4, as asked',
    );
  });
});

describe('the row of chroma', () => {
  test.each<[Partial<ChromaResult>, Judged['aim'], string]>([
    [{}, 'shade', '53 → 38: the same thing in shade; light leaves 40'],
    [{ after: 60, verdict: 'off' }, 'shade', '53 → 60: the shade glows; light leaves 40'],
    [{ after: 45 }, 'shade', '53 → 45: brighter, but no glow yet; light leaves 40'],
    [{ after: 34 }, 'shade', '53 → 34: a little dull, still a shade; light leaves 40'],
    [{ after: 24, verdict: 'off' }, 'shade', '53 → 24: too dull for a shade; light leaves 40'],
    [{ after: 12, verdict: 'off' }, 'shade', '53 → 12: gone to mud; light leaves 40'],
    [{ after: 17, asked: [12, 22] }, 'dull', '53 → 17, as asked'],
    [{ after: 30, asked: [12, 22], verdict: 'off' }, 'dull', '53 → 30, 8 too bright; 12 to 22 asked'],
    [{ after: 14, asked: [0, 10], verdict: 'fair' }, 'neutral', '53 → 14, 4 too bright; at most 10 asked'],
    [{ before: 1, after: 10, kept: 7.15, asked: [2, 18] }, 'lean', '1 → 10, more colour, as asked'],
    [
      { after: 20, asked: [36, Number.POSITIVE_INFINITY], verdict: 'off' },
      'rich',
      '53 → 20, gone dull; 16 short of rich',
    ],
  ])('of %o as a %s', (change, aim, text) => {
    expect(textOf({ chroma: { ...CHROMA, ...change }, ...(aim === undefined ? {} : { aim }) })).toBe(text);
  });
});

describe('the row of hue', () => {
  test.each<[Partial<HueResult>, Judged['aim'], string]>([
    [{}, 'shade', 'orange → red, 31° round; 25° is allowed'],
    [{ after: 54, turned: 1, verdict: 'good' }, 'shade', 'orange, held'],
    [{ after: 29.5, turned: 25.5 }, 'shade', 'orange → red, 26° round; just past the 25° allowed'],
    [
      { after: 250, asked: { near: 55, within: 40 }, turned: 165, verdict: 'off' },
      'lean',
      'leans to blue, 165° from what was asked; 40° allowed',
    ],
  ])('of %o as a %s', (change, aim, text) => {
    expect(textOf({ hue: { ...HUE, ...change }, ...(aim === undefined ? {} : { aim }) })).toBe(text);
  });

  test('of what is nearly grey is none', () => {
    expect(
      judgedRows(
        { chroma: { ...CHROMA, after: 3 }, hue: { ...HUE, verdict: 'good' }, aim: 'dull' },
        WRITTEN,
      )[1]?.text,
    ).toMatch(/no hue/);
  });
});

describe('over every shipped drill', () => {
  const graded = shippedGrades();

  test('a row fits beside its verdict on 80 columns, on both scales, and is heard without signs', () => {
    const wrong = graded.flatMap(({ where, grade }) => [
      ...[WRITTEN, BLACK_FIRST].flatMap((voice) =>
        judgedRows(grade, voice).flatMap(({ text }) => (widthOf(text) > 62 ? [`${where}: ${text}`] : [])),
      ),
      ...judgedRows(grade, HEARD).flatMap(({ text }) => (/[→±%~°>]/.test(text) ? [`${where}: ${text}`] : [])),
    ]);
    expect(wrong).toEqual([]);
  });

  test('says what the verdict and the figures say', () => {
    const wrong = graded.flatMap(({ where, grade }) => {
      const rows = judgedRows(grade, WRITTEN);
      const of = (part: string): string => rows.find((row) => row.part === part)?.text ?? '';
      const { value, chroma, hue, aim } = grade;
      const claims: [boolean, string][] = [];
      if (value !== undefined) {
        const text = of('value');
        claims.push([/too (light|dark) for/.test(text) === (value.verdict !== 'good'), text]);
        claims.push([/it counts|at the edge/.test(text) === value.tooCloseToCall, text]);
        if (/as asked|held|still in/.test(text))
          claims.push([value.after >= value.asked[0] && value.after <= value.asked[1], text]);
        if (/held/.test(text)) claims.push([Math.abs(value.after - value.before) < 0.41, text]);
        if (/ darker/.test(text)) claims.push([value.after > value.before, text]);
        if (/ lighter/.test(text)) claims.push([value.after < value.before, text]);
        claims.push([text.includes(value.after.toFixed(1)), text]);
      }
      if (chroma !== undefined) {
        const text = of('chroma');
        const fault = /too (bright|dull)|gone|dulled|short of rich|glows/;
        claims.push([fault.test(text) === (chroma.verdict !== 'good'), text]);
        const isClose = /it counts|at the edge|by a hair|as dull as/;
        if (chroma.tooCloseToCall) claims.push([isClose.test(text), text]);
        if (/(over|under) /.test(text)) claims.push([chroma.tooCloseToCall, text]);
        if (text.includes('more colour')) claims.push([chroma.after > chroma.before, text]);
        if (text.includes('the same thing'))
          claims.push([Math.abs(chroma.after - chroma.shadingLine) <= 4, text]);
        if (text.includes('brighter')) claims.push([chroma.after > chroma.shadingLine + 4, text]);
        if (text.includes('a little dull')) claims.push([chroma.after < chroma.shadingLine - 4, text]);
        if (text.includes('mud')) claims.push([chroma.after < 20, text]);
        claims.push([!text.includes('%'), text]);
        if (/glows|too bright/.test(text)) claims.push([chroma.after > chroma.asked[1], text]);
        if (/mud|too dull|gone dull|dulled/.test(text)) claims.push([chroma.after < chroma.asked[0], text]);
        if (aim === 'shade')
          claims.push([text.includes(`light leaves ${chroma.shadingLine.toFixed(0)}`), text]);
      }
      if (hue !== undefined) {
        const text = of('hue');
        const isGrey = (chroma?.after ?? 50) < 12 && aim !== 'lean';
        claims.push([isGrey ? /nearly grey/.test(text) : text.includes(hueName(hue.after)), text]);
        if (/held|, as asked/.test(text)) claims.push([hue.verdict === 'good', text]);
        if (/held/.test(text)) claims.push([Math.abs(hueDifference(hue.before, hue.after)) < 5.5, text]);
        // Degrees told are from the hue asked, which is the start's where it had to stay.
        const told = /(?<!just over )(?<!\d)(\d+)° (from|round|towards)/.exec(text)?.[1];
        if (told !== undefined)
          claims.push([
            Math.abs(Math.abs(hueDifference(hue.asked.near, hue.after)) - Number(told)) <= 0.51,
            text,
          ]);
        if (/° (round|towards)/.test(text))
          claims.push([Math.abs(hueDifference(hue.asked.near, hue.before)) < 0.5, text]);
        if (hue.verdict !== 'good') claims.push([/allowed|is gone|just over/.test(text), text]);
      }
      return claims.flatMap(([holds, text]) => (holds ? [] : [`${where}: ${text}`]));
    });
    expect(graded.length).toBeGreaterThan(2000);
    expect(wrong).toEqual([]);
  });
});
