/** Each claim about a passage or a sorted scene, held to figures worked out here from the laid paint. */
import { describe, expect, test } from 'vitest';
import { hueDifference } from '../../src/colour/lab.js';
import type { PlannedArea } from '../../src/drills/kinds/diagnosis/schema.js';
import { type Laid, seeLaid } from '../../src/washes/index.js';
import type { OutOfPlan } from '../../src/words/sentences/diagnosis.js';
import { STUDIO } from '../studio.js';
import { faultsIn, foundIn } from './answers.js';

const unless = (holds: boolean, fault: string): string[] => (holds ? [] : [fault]);
const near = (a: number, b: number, by: number): boolean => Math.abs(a - b) <= by + 1e-9;

/** By how much a value lies above a band, below 0 under it; 0 inside. */
const beyond = (x: number, [low, high]: readonly [number, number]): number =>
  x < low ? x - low : x > high ? x - high : 0;

/** What is wrong with what is said to be out of a plan. */
function outFaults(out: OutOfPlan, laid: Laid, { plan, name }: PlannedArea): string[] {
  const { step, chroma, hue } = seeLaid(STUDIO, laid).colour;
  const off = beyond(step, plan.step);
  const strong = plan.chroma === undefined ? 0 : beyond(chroma, plan.chroma);
  const turned = plan.hue === undefined ? 0 : Math.abs(hueDifference(plan.hue.near, hue)) - plan.hue.within;
  return [
    ...unless(out.step === undefined || near(out.step, off, 1e-6), `${name}: ${out.step} steps told, ${off}`),
    ...unless(
      out.chroma === undefined || near(out.chroma, strong, 1e-6),
      `${name}: ${out.chroma} told, ${strong}`,
    ),
    ...unless(out.hue === undefined || turned > 0, `${name}: its hue is inside`),
    // What is not told is out by no more than the model may be.
    ...unless(out.step !== undefined || Math.abs(off) < 0.6, `${name}: ${off} steps untold`),
    ...unless(out.chroma !== undefined || Math.abs(strong) < 8, `${name}: ${strong} of chroma untold`),
  ];
}

describe('diagnosis', () => {
  test('names the area that is out and how, and what the repair did or would have done', () => {
    let checked = 0;
    const faults = faultsIn('diagnosis', ({ drill, answer, grade }) => {
      const named = (name: unknown): PlannedArea =>
        drill.areas.find((area) => area.name === name) as PlannedArea;
      const found = [
        ...foundIn(grade, 'passage-found'),
        ...foundIn(grade, 'passage-elsewhere'),
        ...foundIn(grade, 'passage-missed'),
      ];
      const { repair } = drill.repairs.find(({ id }) => id === answer['repair']) ?? { repair: undefined };
      const said = drill.areas.find(({ id }) => id === answer['area']);
      const glazed =
        said === undefined || repair === undefined || !('glaze' in repair)
          ? undefined
          : { layers: [...('layers' in said.laid ? said.laid.layers : [said.laid]), repair.glaze] };
      const moved = foundIn(grade, 'repair-serves').concat(
        foundIn(grade, 'repair-fails'),
        foundIn(grade, 'repair-wasted'),
      );
      return [
        ...found.flatMap(({ figures, text }) => {
          const area = named(figures['area']);
          const out = figures['out'] as OutOfPlan;
          const isDark = seeLaid(STUDIO, area.laid).colour.step > area.plan.step[1];
          return [
            ...outFaults(out, area.laid, area),
            ...unless(out.step === undefined || text.includes(isDark ? 'too dark' : 'too light'), text),
          ];
        }),
        ...foundIn(grade, 'repair-harms').flatMap(({ figures, text }) => {
          const out = figures['out'] as OutOfPlan;
          const by = Number(/(\d+(?:\.\d)?) steps?/.exec(text)?.[1] ?? 0);
          return [
            ...(glazed === undefined ? [] : outFaults(out, glazed, named(figures['area']))),
            ...unless(near(by, Math.abs(out.step ?? 0), 0.051), text),
          ];
        }),
        ...moved.flatMap(({ text }) => {
          if (glazed === undefined || said === undefined) return [];
          checked += 1;
          const [before, after] = [seeLaid(STUDIO, said.laid).colour, seeLaid(STUDIO, glazed).colour];
          return [
            ...unless(!/\bdarker/.test(text) || after.step > before.step, text),
            ...unless(!/\blighter/.test(text) || after.step < before.step, text),
            ...unless(!/\bstronger/.test(text) || after.chroma > before.chroma, text),
            ...unless(!/\bduller/.test(text) || after.chroma < before.chroma, text),
            ...unless(!/hardly changed/.test(text) || near(after.step, before.step, 0.2), text),
          ];
        }),
        ...foundIn(grade, 'repair-reason').flatMap(({ text }) => {
          if (glazed === undefined || said === undefined) return [];
          const by = seeLaid(STUDIO, glazed).colour.chroma - seeLaid(STUDIO, said.laid).colour.chroma;
          return [
            ...unless(!/takes the white out/.test(text) || by > 0, text),
            ...unless(!/swallows part of the very light/.test(text) || by < 0, text),
          ];
        }),
        ...unless(
          grade.mark < 100 || found.every(({ text }) => text.startsWith('You found it')),
          'right, but not told so',
        ),
      ];
    });
    expect(faults).toEqual([]);
    expect(checked).toBeGreaterThan(50);
  });
});

describe('sort values', () => {
  test('puts the areas into their classes, and tells shares, span, the darkest and what merges', () => {
    const faults = faultsIn('sort-values', ({ drill, grade, answer }) => {
      const areas = drill.areas.map(({ name, laid, share }) => ({
        name,
        share,
        ...seeLaid(STUDIO, laid).colour,
      }));
      // Light ends at step 3.5 and dark begins at 6, as src/judgement/README.md says.
      const classOf = (step: number): string => (step < 3.5 ? 'light' : step < 6 ? 'middle' : 'dark');
      const stepOf = (name: string): number => areas.find((area) => area.name === name)?.step ?? Number.NaN;
      const steps = areas.map(({ step }) => step);
      const span = Math.max(...steps) - Math.min(...steps);
      const gaps = steps.flatMap((step, at) => steps.slice(at + 1).map((one) => Math.abs(one - step)));
      return [
        ...foundIn<{ wrong: { name: string; is: string }[]; right: number }>(grade, 'sort-areas').flatMap(
          ({ figures, text }) => [
            ...figures.wrong.flatMap(({ name, is }) =>
              unless(classOf(stepOf(name)) === is, `${name} is not ${is}`),
            ),
            // An area that is sorted as it is can not be wrong.
            ...figures.wrong.flatMap(({ name }) =>
              unless(
                answer[`area-${areas.findIndex((area) => area.name === name) + 1}`] !== classOf(stepOf(name)),
                name,
              ),
            ),
            ...unless(figures.right + figures.wrong.length === areas.length, text),
          ],
        ),
        ...foundIn<{ is: string }>(grade, 'sort-darkest').flatMap(({ figures, text }) =>
          unless(stepOf(figures.is) === Math.max(...areas.map(({ step }) => step)), text),
        ),
        ...foundIn(grade, 'sort-most').flatMap(({ text }) =>
          ['light', 'middle', 'dark'].flatMap((name) => {
            const is = areas
              .filter(({ step }) => classOf(step) === name)
              .reduce((sum, { share }) => sum + share, 0);
            return unless(text.includes(`${name} ${Math.round(100 * is)} %`), text);
          }),
        ),
        ...foundIn(grade, 'sort-span').flatMap(({ text }) =>
          unless(
            near(Number(/(\d+(?:\.\d)?) steps?/.exec(text)?.[1]), span, 0.051) &&
              text.includes(span >= 6 ? 'wide' : 'short'),
            text,
          ),
        ),
        ...foundIn<{ one: string; other: string }>(grade, 'sort-apart').flatMap(({ figures, text }) => {
          const gap = Math.abs(stepOf(figures.one) - stepOf(figures.other));
          return [...unless(near(gap, Math.min(...gaps), 1e-9), text), ...unless(gap >= 0.5, text)];
        }),
        ...foundIn<{ pairs: { one: string; other: string }[] }>(grade, 'sort-merge').flatMap(
          ({ figures: { pairs }, text }) => [
            ...pairs.flatMap(({ one, other }) =>
              unless(
                Math.abs(stepOf(one) - stepOf(other)) < 0.5 && text.includes(`${one} with ${other}`),
                text,
              ),
            ),
            ...unless(pairs.length === gaps.filter((gap) => gap < 0.5).length, text),
          ],
        ),
        ...foundIn<{ names: string[] }>(grade, 'sort-strong').flatMap(({ figures, text }) =>
          unless(
            figures.names.every((name) => (areas.find((area) => area.name === name)?.chroma ?? 0) > 50),
            text,
          ),
        ),
      ];
    });
    expect(faults).toEqual([]);
  });
});
