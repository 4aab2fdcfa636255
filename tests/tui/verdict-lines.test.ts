/** What stands beside the verdicts of a result: figures before and after, what was asked, what was kept. */
import { describe, expect, it } from 'vitest';
import type { Grade } from '../../src/drills/types.js';
import { colourNote } from '../../src/tui/kit/colour-level.js';
import { verdictLines } from '../../src/tui/result/layout.js';
import { fakeGrade } from './fakes.js';

const chromaLine = (chroma: Partial<NonNullable<Grade['chroma']>>): string => {
  const grade = fakeGrade({ amount: '1:4' });
  if (grade.chroma === undefined) throw new Error('no chroma');
  const lines = verdictLines({ ...grade, chroma: { ...grade.chroma, ...chroma } }, 'paper-first', '→');
  return lines.find(({ label }) => label === 'chroma')?.text ?? '';
};

describe('the share of chroma kept', () => {
  it('is said of a colour that lost some', () => {
    expect(chromaLine({ before: 60, after: 40, kept: 40 / 60 })).toContain('60 → 40 (67 % kept)');
  });

  it('is not said of a grey that was given a lean: nothing was there to keep', () => {
    expect(chromaLine({ before: 1, after: 10, kept: 7.15, asked: [2, 18] })).toMatch(
      /^1 → 10, asked 2 to 18/,
    );
  });
});

describe('the note on colours', () => {
  it('fits the narrowest screen whole', () => {
    for (const level of [1, 2] as const) expect(colourNote(level).length).toBeLessThanOrEqual(58);
  });
});
