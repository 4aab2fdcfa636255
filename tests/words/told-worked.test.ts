/** Each claim of a worked case, held to figures worked out here from the laid paint. */
import { describe, expect, test } from 'vitest';
import { type Laid, seeLaid, seeWet } from '../../src/washes/index.js';
import type { Proof } from '../../src/words/sentences/worked.js';
import { STUDIO } from '../studio.js';
import { faultsIn, foundIn } from './answers.js';

const unless = (holds: boolean, fault: string): string[] => (holds ? [] : [fault]);
const near = (a: number, b: number, by: number): boolean => Math.abs(a - b) <= by + 1e-9;

describe('worked cases', () => {
  test('bear a statement out or refute it with the figures of the case', () => {
    const faults = faultsIn('worked', ({ drill, grade }) => {
      const laidOf = (name: string): Laid =>
        (drill.case.find((item) => item.name === name || `the ${item.name}` === name) as { laid: Laid }).laid;
      const colourOf = (name: string) => seeLaid(STUDIO, laidOf(name)).colour;
      const told = ['worked-so', 'worked-not-so', 'worked-close', 'worked-decides'].flatMap((id) =>
        foundIn<{ proof?: Proof }>(grade, id),
      );
      return told.flatMap(({ figures: { proof }, text, onBlackFirst }) => {
        switch (proof?.by) {
          case 'steps':
            return proof.of.flatMap(({ name, step }) => [
              ...unless(near(step, colourOf(name).step, 1e-9), text),
              ...unless(text.includes(step.toFixed(1)), text),
              ...unless(onBlackFirst.includes((10.5 - step).toFixed(1)), onBlackFirst),
            ]);
          case 'chromas':
            return proof.of.flatMap(({ name, chroma }) =>
              unless(near(chroma, colourOf(name).chroma, 1e-9) && text.includes(chroma.toFixed(0)), text),
            );
          case 'share':
            return [
              ...proof.of.flatMap(({ name, step }) => unless(near(step, colourOf(name).step, 1e-9), text)),
              // A share of a value counts up from black, told in steps: six tenths of step 2 is step 5.4.
              ...unless(
                near(
                  10.5 - proof.would,
                  (text.includes('six tenths of') ? 0.6 : 0.4) * (10.5 - proof.of[1].step),
                  1e-6,
                ),
                text,
              ),
              ...unless(!text.includes('%') && text.includes(proof.would.toFixed(1)), text),
              ...unless(onBlackFirst.includes((10.5 - proof.would).toFixed(1)), onBlackFirst),
            ];
          case 'drying':
            return proof.of.flatMap(({ name, lost }) =>
              unless(
                near(lost, seeWet(STUDIO, laidOf(name)).colour.chroma - colourOf(name).chroma, 1e-9),
                text,
              ),
            );
          case 'rise':
            return unless(
              near(
                proof.rise,
                seeWet(STUDIO, laidOf(proof.name)).colour.step - colourOf(proof.name).step,
                1e-9,
              ),
              text,
            );
          case 'shade':
            return unless(near(proof.chroma, colourOf(proof.name).chroma, 1e-9), text);
          default:
            return [];
        }
      });
    });
    expect(faults).toEqual([]);
  });

  test('say so of the best answer and never of another', () => {
    const faults = faultsIn('worked', ({ grade }) => [
      ...unless(
        (grade.mark === 100) === (foundIn(grade, 'worked-not-so').length === 0),
        `${grade.mark} marks`,
      ),
      ...unless((grade.mark === 100) === (foundIn(grade, 'worked-decides').length === 0), 'what decides'),
    ]);
    expect(faults).toEqual([]);
  });
});
