/** The shade-chroma kind: see schema.ts. */

import { lightnessFromMunsellValue, valueFromStep } from '../../../colour/value.js';
import { colourInWords } from '../../../colour/words.js';
import { overall, togetherMark, verdictOf } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { IDEAS } from '../../../words/ideas.js';
import { plainly } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import { laidParts } from '../../laid-parts.js';
import type { Answer, Grade, Kind } from '../../types.js';
import { type AskResult, askResult, shadeFields, shadeOf } from './answers.js';
import { inShade, withChroma } from './light.js';
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
            Math.abs((a.result.chroma ?? line) - line) - Math.abs((b.result.chroma ?? line) - line),
        );
      return [id, rated[0]?.option ?? ''];
    }),
  );
}

function reason(studio: Studio, drill: ShadeChromaDrill): string {
  const { lit, line } = shadeOf(studio, drill);
  const share = Math.round((100 * line) / Math.max(lit.chroma, 0.1));
  return `Light falls on the whole surface: when it drops, every part of what the paint sends back drops alike, so chroma goes down with L* + 16. Here ${share} % of ${lit.chroma.toFixed(0)} is left.`;
}

function grade(studio: Studio, drill: ShadeChromaDrill, answer: Answer): Grade {
  const all = results(studio, drill, answer);
  const mark = togetherMark(all.map(({ score }) => score));
  const { lit, line, band } = shadeOf(studio, drill);
  const idea = all.find((result) => result.idea !== undefined)?.idea;
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  const bestAnswer = best(studio, drill);
  const answered = all.filter(({ chroma }) => chroma !== undefined);
  const worst = answered.reduce<AskResult | undefined>(
    (low, result) => (low === undefined || result.score < low.score ? result : low),
    undefined,
  );
  const seen = seeLaid(studio, drill.lit);
  const shade = inShade(seen.reflectance, drill.shade);
  return {
    mark,
    verdict: overall(mark),
    ...(worst?.chroma === undefined
      ? {}
      : {
          chroma: {
            before: lit.chroma,
            after: worst.chroma,
            asked: band,
            verdict: verdictOf(worst.score),
            kept: lit.chroma > 0.5 ? worst.chroma / lit.chroma : 1,
            shadingLine: line,
            best: line,
            tooCloseToCall: worst.tooCloseToCall,
          },
        }),
    told: plainly([
      ...all.map((result) => result.line),
      reason(studio, drill),
      mark === 100 ? 'Nothing offered fits better.' : `Better: ${label(studio, drill, bestAnswer)}.`,
      ...(next === undefined ? [] : [next]),
    ]),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: bestAnswer, label: label(studio, drill, bestAnswer), mark: 100 },
    swatches: [
      { label: 'lit', reflectance: seen.reflectance },
      ...(worst?.chroma === undefined
        ? []
        : [{ label: 'yours', reflectance: withChroma(shade, worst.chroma) }]),
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
    const shade = lightnessFromMunsellValue(valueFromStep(drill.shade));
    return plainly([
      `lit: ${colourInWords(colour.lab)}, L* ${colour.lab.l.toFixed(0)}, chroma ${colour.chroma.toFixed(0)}`,
      `shade: step ${drill.shade.toFixed(1)}, L* ${shade.toFixed(0)}`,
    ]);
  },
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => best(studio, drill),
  label: (drill, answer) => label(studio, drill, answer),
});
