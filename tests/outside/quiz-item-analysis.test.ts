/** Item statistics against published worked examples; the source of each stands in the data file, and in the title where it is short. */
import { sampleCorrelation, standardDeviation, sum, variance } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import {
  alphaFromVariances,
  correctedPointBiserial,
  cronbachAlpha,
  difficultyIndex,
  discriminationIndex,
  kr20,
  pointBiserial,
  standardErrorOfMeasurement,
  upperLower,
} from '../../src/quiz/statistics.js';
import published from './data/quiz-item-analysis.json' with { type: 'json' };

/** The sources print two to four decimals. */
const FOUR_DECIMALS = 4;

const responses = published.kr20.responses.map((row) => [...row].map((sign) => sign === '1'));
const scores = responses.map((row) => row.map(Number));
const totals = scores.map((row) => sum(row));
const byPerson = (items: readonly (readonly number[])[]): number[][] =>
  (items[0] ?? []).map((_, person) => items.map((item) => item[person] as number));

describe('item statistics against published worked examples', () => {
  it('difficulty index (elcomblus.com worked example)', () => {
    const { right, count, published: printed } = published.difficulty;
    expect(difficultyIndex(right, count)).toBe(printed);
  });

  it('discrimination index (examoo.com example)', () => {
    const { upperRight, lowerRight, groupSize, published: printed } = published.discrimination;
    expect(discriminationIndex(upperRight, lowerRight, groupSize)).toBeCloseTo(printed, 3);
  });

  it('difficulty and discrimination from upper and lower groups (scribd.com 526146313)', () => {
    const { groupSize, upperLower: groups, publishedDifficulty, publishedDiscrimination } = published.groups;
    for (const [index, [upper, lower]] of (groups as [number, number][]).entries()) {
      expect(difficultyIndex(upper + lower, groupSize * 2)).toBeCloseTo(publishedDifficulty[index] ?? 9, 10);
      expect(discriminationIndex(upper, lower, groupSize)).toBeCloseTo(
        publishedDiscrimination[index] ?? 9,
        10,
      );
      // The same from twenty students: ten high totals with `upper` right, ten low totals with `lower` right.
      const right = Array.from({ length: 20 }, (_, each) => (each < 10 ? each < upper : each - 10 < lower));
      const ranks = Array.from({ length: 20 }, (_, each) => (each < 10 ? 50 : 10));
      expect(upperLower(right, ranks, groupSize).discrimination).toBeCloseTo(
        publishedDiscrimination[index] ?? 9,
        10,
      );
    }
  });

  it('point-biserial (Brown, Shiken; the printed .91 is .9045 rounded loosely)', () => {
    const { item, totals: ofTest, computed, publishedStandardDeviation } = published.pointBiserial;
    expect(standardDeviation(ofTest)).toBeCloseTo(publishedStandardDeviation, 2);
    const right = item.map((each) => each === 1);
    expect(pointBiserial(right, ofTest)).toBeCloseTo(computed, FOUR_DECIMALS);
    expect(pointBiserial(right, ofTest)).toBeCloseTo(sampleCorrelation(item, ofTest), 10);
    expect(pointBiserial(right, ofTest)).not.toBeCloseTo(
      published.pointBiserial.computedWithSampleDeviation,
      2,
    );
  });

  it('KR-20 (Wuensch, East Carolina University)', () => {
    const { publishedSumPq, publishedTotalVariance, computed, computedWithSampleVariance } = published.kr20;
    expect(variance(totals)).toBeCloseTo(publishedTotalVariance, 10);
    const sumPq = sum((scores[0] ?? []).map((_, item) => variance(scores.map((row) => row[item] as number))));
    expect(sumPq).toBeCloseTo(publishedSumPq, 10);
    expect(kr20(responses)).toBeCloseTo(computed, FOUR_DECIMALS);
    expect(cronbachAlpha(scores)).toBeCloseTo(computed, FOUR_DECIMALS);
    expect(kr20(responses)).not.toBeCloseTo(computedWithSampleVariance, 2);
  });

  it('standard error of measurement on the same data (formula in common use)', () => {
    const { computed, computedStandardError } = published.kr20;
    expect(standardErrorOfMeasurement(standardDeviation(totals), kr20(responses) ?? 9)).toBeCloseTo(
      computedStandardError,
      FOUR_DECIMALS,
    );
    expect(standardErrorOfMeasurement(1, computed)).toBeCloseTo(Math.sqrt(1 - computed), 10);
  });

  it('item-total correlation, raw and corrected, on the same data', () => {
    for (const [item, [raw, corrected]] of (
      published.kr20.computedItemTotal as [number, number][]
    ).entries()) {
      const right = responses.map((row) => row[item] === true);
      expect(pointBiserial(right, totals)).toBeCloseTo(raw, FOUR_DECIMALS);
      expect(
        correctedPointBiserial(
          right,
          totals,
          scores.map((row) => row[item] as number),
        ),
      ).toBeCloseTo(corrected, FOUR_DECIMALS);
    }
  });

  it('alpha (calkulon.com example), with sample variances as it prints them', () => {
    const { itemsByPersons, publishedSumOfItemVariances, publishedTotalVariance, computed } = published.alpha;
    expect(cronbachAlpha(byPerson(itemsByPersons))).toBeCloseTo(computed, FOUR_DECIMALS);
    expect(alphaFromVariances(3, publishedSumOfItemVariances, publishedTotalVariance)).toBeCloseTo(
      computed,
      FOUR_DECIMALS,
    );
  });

  it('does not give the alpha of a page that contradicts its own numbers (cal16.com)', () => {
    const { items, sumOfItemVariances, totalVariance, publishedWrongly, computed } = published.alphaWrong;
    const alpha = alphaFromVariances(items, sumOfItemVariances, totalVariance);
    expect(alpha).toBeCloseTo(computed, FOUR_DECIMALS);
    expect(Math.abs(alpha - publishedWrongly)).toBeGreaterThan(0.5);
  });

  it('alpha may be negative and may be zero, against a page that says otherwise (digicalcs.com)', () => {
    expect(cronbachAlpha(byPerson(published.alphaNegative.itemsByPersons))).toBeCloseTo(
      published.alphaNegative.computed,
      FOUR_DECIMALS,
    );
    expect(cronbachAlpha(byPerson(published.alphaZero.itemsByPersons))).toBeCloseTo(0, 10);
  });
});
