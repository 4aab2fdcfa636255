/** What washes, choose and order say of an answer, held to what the answer lays. */
import { describe, expect, test } from 'vitest';
import { type Laid, seeLaid, seeWet, waterStrength } from '../../src/washes/index.js';
import { sayFinding } from '../../src/words/tell.js';
import { bandText, WRITTEN } from '../../src/words/voice.js';
import { kindOf, STUDIO } from '../studio.js';
import { broken, found, type Graded, shippedGrades } from './shipped.js';

const GRADED = shippedGrades('washes', 'choose', 'order');
const colourOf = (laid: Laid) => seeLaid(STUDIO, laid).colour;

describe('of washes', () => {
  test('blocks within half a step are told as hit, the others by what they are and should be', () => {
    const blockOf = ({ drill, answer }: Graded, name: string): { step: number; water: string } => {
      if (drill.kind !== 'washes') throw new Error(drill.kind);
      const field = kindOf(drill)
        .fields(drill)
        .find(({ label }) => label === name);
      const water = answer[field?.id ?? ''] ?? '';
      const wash = {
        paints: { [drill.paint]: 1 },
        strength: waterStrength(water === 'cannot' ? '1:3' : water),
      };
      return { step: colourOf(drill.over === undefined ? wash : { layers: [drill.over, wash] }).step, water };
    };
    const hits = found(GRADED, 'washes-hit').flatMap((one) =>
      one.finding.figures.hits.map((hit) => ({ ...one, block: hit })),
    );
    const misses = found(GRADED, 'washes-missed').flatMap((one) =>
      one.finding.figures.misses.map((miss) => ({ ...one, block: miss })),
    );
    expect(Math.min(hits.length, misses.length)).toBeGreaterThan(300);
    const isNamed = (one: (typeof hits)[number]): boolean =>
      sayFinding(one.finding, WRITTEN).includes(`${one.block.name} ${one.block.step.toFixed(1)}`);
    expect(
      broken(hits, (one) => {
        const { step, water } = blockOf(one, one.block.name);
        if (one.block.water === undefined) return water === 'cannot' && one.block.wanted > one.block.step;
        const isClose = one.finding.figures.close.includes(one.block.name);
        return (
          Math.abs(step - one.block.step) < 1e-9 &&
          isNamed(one) &&
          Math.abs(step - one.block.wanted) <= one.finding.figures.within === !isClose
        );
      }),
    ).toEqual([]);
    expect(
      broken(misses, (one) => {
        const { step } = blockOf(one, one.block.name);
        const text = sayFinding(one.finding, WRITTEN);
        const part =
          new RegExp(`Too ${step < one.block.wanted ? 'light' : 'dark'}: [^.]*(\\.\\d[^.]*)*`).exec(
            text,
          )?.[0] ?? '';
        return (
          Math.abs(step - one.block.wanted) > (one.block.asked[1] - one.block.asked[0]) / 2 &&
          part.includes(`${one.block.name} ${step.toFixed(1)} for ${bandText(one.block.asked, WRITTEN)}`)
        );
      }),
    ).toEqual([]);
  });
});

describe('of what is compared', () => {
  const laidOf = ({ drill }: Graded, label: string): Laid | undefined => {
    if (drill.kind === 'order') return drill.items.find(({ name }) => name === label)?.laid;
    if (drill.kind !== 'choose') return undefined;
    const option = kindOf(drill)
      .fields(drill)[0]
      ?.options.find((each) => each.label === label);
    return drill.options.find(({ id }) => id === option?.id)?.laid;
  };

  test('every figure is that of the laid paint, and the order is right', () => {
    const ordered = [
      ...found(GRADED, 'order-right'),
      ...found(GRADED, 'order-wrong'),
      ...found(GRADED, 'also-right'),
      ...found(GRADED, 'also-wrong'),
    ];
    expect(ordered.length).toBeGreaterThan(50);
    const wrong = broken(ordered, (one) => {
      const { by, items } = one.finding.figures;
      const figures = items.map(({ label, reading }) => {
        const laid = laidOf(one, label) as Laid;
        const { step, chroma } = colourOf(laid);
        if (Math.abs(reading.step - step) > 1e-9 || Math.abs(reading.chroma - chroma) > 1e-9)
          return Number.NaN;
        if (by === 'most-chroma') return chroma;
        if (by === 'greyest') return -chroma;
        if (by === 'darkest') return step;
        if (by === 'lightest') return -step;
        if (by === 'dries-most') return seeWet(STUDIO, laid).colour.chroma - chroma;
        return 0;
      });
      return figures.every((figure, index) => index === 0 || (figures[index - 1] as number) >= figure);
    });
    expect(wrong).toEqual([]);
  });

  test('pairs told as turned round stand so in the answer', () => {
    const turned = found(GRADED, 'order-wrong');
    expect(
      broken(turned, ({ finding, drill, answer }) => {
        const order = kindOf(drill).label(drill, answer).split(';')[0]?.split(', then ') ?? [];
        return (
          finding.figures.turned.length > 0 &&
          finding.figures.turned.every(({ better, worse }) => order.indexOf(better) > order.indexOf(worse))
        );
      }),
    ).toEqual([]);
  });

  test('what is told as better is so, by the difference told', () => {
    const better = found(GRADED, 'choose-better');
    expect(better.length).toBeGreaterThan(15);
    expect(
      broken(better, ({ finding, drill, answer, ...rest }) => {
        const graded = { finding, drill, answer, ...rest };
        const mine = colourOf(laidOf(graded, kindOf(drill).label(drill, answer)) as Laid);
        const best = colourOf(laidOf(graded, finding.figures.best.label) as Laid);
        const text = sayFinding(finding, WRITTEN);
        const more = /, (\d+(?:\.\d)?)(?: steps?)? (more|less|darker|lighter)\./.exec(text);
        const is = {
          more: best.chroma - mine.chroma,
          less: mine.chroma - best.chroma,
          darker: best.step - mine.step,
          lighter: mine.step - best.step,
        };
        return more === null
          ? !/more-chroma|greyest|darkest|lightest/.test(finding.figures.by)
          : Math.abs(is[more[2] as keyof typeof is] - Number(more[1])) <= 1;
      }),
    ).toEqual([]);
  });
});
