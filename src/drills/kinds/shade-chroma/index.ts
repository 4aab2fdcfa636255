/** The shade-chroma kind: see schema.ts. */

import { lightnessFromMunsellValue, valueFromStep } from '../../../colour/value.js';
import { colourInWords } from '../../../colour/words.js';
import { MODEL_ERROR, overall, togetherMark, verdictOf } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import type { Turn } from '../../../words/sentences/shade-chroma.js';
import { type Finding, tell } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import { laidParts } from '../../laid-parts.js';
import { inShade, withChroma } from '../../light.js';
import type { Answer, Grade, Kind, Why } from '../../types.js';
import { whyFilms } from '../../why.js';
import { type AskResult, askResult, fittingTurn, shadeFields, shadeOf } from './answers.js';
import type { ShadeChromaDrill } from './schema.js';

function results(studio: Studio, drill: ShadeChromaDrill, answer: Answer): AskResult[] {
  const fields = shadeFields(studio, drill);
  requireComplete(fields, answer);
  return drill.asks.map((ask) => askResult(studio, drill, ask, chosen(fields, answer, ask).id));
}

/** The best option of each question; of two that both count, the chroma nearer to the shading line. */
function best(studio: Studio, drill: ShadeChromaDrill): Answer {
  const { line } = shadeOf(studio, drill);
  return Object.fromEntries(
    shadeFields(studio, drill).map(({ id, options }) => {
      const ask = id as ShadeChromaDrill['asks'][number];
      const rated = options
        .map((option) => ({ option: option.id, result: askResult(studio, drill, ask, option.id) }))
        .sort(
          (a, b) =>
            b.result.score - a.result.score ||
            Math.abs((a.result.shade?.chroma ?? line) - line) -
              Math.abs((b.result.shade?.chroma ?? line) - line),
        );
      return [id, rated[0]?.option ?? ''];
    }),
  );
}

/** How the answers look as a shade, chroma and swatch in one line. */
function saidOf(all: readonly AskResult[], answer: Answer): Finding[] {
  const as = (ask: AskResult['ask']) => all.find((result) => result.ask === ask)?.shade?.as;
  const [chroma, swatch] = [as('chroma'), as('swatch')];
  const said = {
    ...(chroma === undefined ? {} : { chroma }),
    ...(swatch === undefined ? {} : { swatch: { id: answer['swatch'] ?? '', as: swatch } }),
  };
  return [
    ...(Object.keys(said).length === 0 ? [] : [tell('shade-said', said)]),
    ...all.flatMap(({ told }) => (told === undefined ? [] : [told])),
  ];
}

/** What the light leaves; a better choice for each question that missed. */
function reasons(
  studio: Studio,
  drill: ShadeChromaDrill,
  all: readonly AskResult[],
  better: Answer,
): Finding[] {
  const { lit, line } = shadeOf(studio, drill);
  const wrong = all.filter(({ score }) => score < 1).map(({ ask }) => ask);
  const asksChroma = all.some(({ shade }) => shade !== undefined);
  return [
    ...(asksChroma ? [tell('shade-line', { share: line / Math.max(lit.chroma, 0.1) })] : []),
    ...(wrong.length === 0
      ? []
      : [
          tell('shade-better', {
            ...(wrong.includes('chroma') ? { chroma: Number(better['chroma']) } : {}),
            ...(wrong.includes('swatch') ? { swatch: better['swatch'] as string } : {}),
            ...(wrong.includes('turn') ? { turn: fittingTurn(lit.hue) as Turn } : {}),
          }),
        ]),
  ];
}

/** Of the questions that have a chroma the one that was answered worst: the result shows it. */
function shownOf(all: readonly AskResult[]): AskResult | undefined {
  return all
    .filter(({ shade }) => shade !== undefined)
    .reduce<AskResult | undefined>(
      (low, result) => (low === undefined || result.score < low.score ? result : low),
      undefined,
    );
}

/** Lit, the plain shade and yours: light that falls, and what was left of the colour. */
function why(studio: Studio, drill: ShadeChromaDrill, answer: Answer): Why {
  const { reflectance, colour, evidence } = seeLaid(studio, drill.lit);
  const shade = inShade(reflectance, drill.shade);
  const room = MODEL_ERROR[evidence].chroma;
  const yours = shownOf(results(studio, drill, answer))?.shade;
  return {
    films: whyFilms([
      { label: 'lit', reflectance },
      { label: 'a plain shade', reflectance: shade },
      ...(yours === undefined ? [] : [{ label: 'yours', reflectance: withChroma(shade, yours.chroma) }]),
    ]),
    told: [
      tell('why-shade', { step: drill.shade, band: shadeOf(studio, drill).band, room }),
      ...(yours === undefined ? [] : [tell('why-shade-yours', { as: yours.as })]),
      tell('why-shade-rule', {
        chroma: colour.chroma,
        lightness: colour.lab.l,
        shade: lightnessFromMunsellValue(valueFromStep(drill.shade)),
      }),
    ],
  };
}

function grade(studio: Studio, drill: ShadeChromaDrill, answer: Answer): Grade {
  const all = results(studio, drill, answer);
  const mark = togetherMark(all.map(({ score }) => score));
  const { lit, line, band } = shadeOf(studio, drill);
  const idea = all.find((result) => result.idea !== undefined)?.idea;
  const bestAnswer = best(studio, drill);
  const worst = shownOf(all);
  const seen = seeLaid(studio, drill.lit);
  const shade = inShade(seen.reflectance, drill.shade);
  return {
    mark,
    verdict: overall(mark),
    aim: 'shade',
    ...(worst?.shade === undefined
      ? {}
      : {
          chroma: {
            before: lit.chroma,
            after: worst.shade.chroma,
            asked: band,
            verdict: verdictOf(worst.score),
            kept: lit.chroma > 0.5 ? worst.shade.chroma / lit.chroma : 1,
            shadingLine: line,
            best: line,
            tooCloseToCall: worst.tooCloseToCall,
          },
        }),
    told: [
      ...saidOf(all, answer),
      ...reasons(studio, drill, all, bestAnswer),
      ...(idea === undefined ? [] : [tell('advice', { idea })]),
    ],
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(studio, drill, bestAnswer), mark: 100 },
    swatches: [
      { label: 'lit', reflectance: seen.reflectance },
      ...(worst?.shade === undefined
        ? []
        : [{ label: 'yours', reflectance: withChroma(shade, worst.shade.chroma) }]),
      { label: 'best', reflectance: shade },
    ],
    laid: laidParts(seeLaid(studio, drill.lit)),
    evidence: seen.evidence,
  };
}

function label(studio: Studio, drill: ShadeChromaDrill, answer: Answer): string {
  const words = { chroma: 'chroma', swatch: 'swatch', turn: 'turn' } as const;
  const fields = shadeFields(studio, drill);
  return drill.asks.map((ask) => `${words[ask]} ${chosen(fields, answer, ask).label}`).join(', ');
}

export const shadeChromaKind = (studio: Studio): Kind<ShadeChromaDrill> => ({
  kind: 'shade-chroma',
  fields: (drill) => shadeFields(studio, drill),
  given: ({ lit }) => [{ label: 'lit', reflectance: seeLaid(studio, lit).reflectance }],
  goalLines: (drill) => {
    const { colour } = seeLaid(studio, drill.lit);
    return [
      tell('shade-lit', {
        words: colourInWords(colour.lab),
        step: colour.step,
        chroma: colour.chroma,
      }),
      tell('shade-asked', { step: drill.shade }),
      ...(drill.asks.includes('turn') ? [tell('shade-turns', {})] : []),
    ];
  },
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(studio, drill, answer),
  why: (drill, answer) => why(studio, drill, answer),
});
