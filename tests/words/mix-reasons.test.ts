import { describe, expect, test } from 'vitest';
import { choiceOf, laidBy } from '../../src/drills/kinds/mix/choice.js';
import { isMoreOfTheSame } from '../../src/drills/kinds/mix/label.js';
import { mixReason } from '../../src/drills/kinds/mix/reason.js';
import type { MixDrill } from '../../src/drills/kinds/mix/schema.js';
import { outcomeOf } from '../../src/drills/kinds/mix/solve.js';
import type { Answer } from '../../src/drills/types.js';
import { strengthOf, washLoads } from '../../src/washes/index.js';
import { some } from '../cases.js';
import { wide } from '../drills/sample.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { kindOf, STUDIO } from '../studio.js';
import { pairFaults } from './claims.js';
import { laidFaults } from './laid-claims.js';

const SHIPPED = SHIPPED_DRILLS.filter((drill): drill is MixDrill => drill.kind === 'mix');
/** With much water, more of the same paint and paints that are in the wash already. */
const WATERY = wide({
  glazes: [],
  strokes: [],
  thins: [1, 2, 8],
  start: { paints: { 'cadmium-red': 2, 'burnt-sienna': 1 }, strength: 0.5 },
});
const SAME = wide({ glazes: [], strokes: [], thins: [1, 8] });

function everyAnswer(drill: MixDrill): Answer[] {
  return kindOf(drill)
    .fields(drill)
    .reduce<Answer[]>(
      (answers, { id, options }) =>
        answers.flatMap((answer) => options.map((option) => ({ ...answer, [id]: option.id }))),
      [{}],
    );
}

function faultsOf(drill: MixDrill, answer: Answer): string[] {
  const choice = choiceOf(STUDIO, drill, answer);
  const outcome = outcomeOf(STUDIO, drill, choice);
  const reason = mixReason(STUDIO, drill, outcome);
  if (reason === undefined) return ['no reason'];
  if (choice.how.way !== 'puddle') return laidFaults(reason, laidBy(drill, choice));
  const laid = outcome.seen.loads[0] ?? [];
  if (isMoreOfTheSame(drill, choice)) {
    const isStronger = strengthOf(laid) >= strengthOf(washLoads(STUDIO, drill.start));
    return reason.id === 'same-paint' && reason.figures.isStronger === isStronger ? [] : [reason.id];
  }
  if (choice.second in drill.start.paints) return reason.id === 'share-grew' ? [] : [reason.id];
  return pairFaults(reason, {
    one: laid.filter(({ pigment }) => pigment.id !== choice.second),
    other: laid.filter(({ pigment }) => pigment.id === choice.second),
  });
}

describe('the reason of every answer fits what the answer lays', () => {
  test('in every shipped drill', () => {
    const faults = some(SHIPPED, 3).flatMap((drill) =>
      everyAnswer(drill).flatMap((answer) =>
        faultsOf(drill, answer).map((fault) => `${drill.id} ${Object.values(answer).join(' ')}: ${fault}`),
      ),
    );
    expect(SHIPPED.length).toBeGreaterThan(40);
    expect(faults).toEqual([]);
  }, 120_000);

  test.each([
    ['all ways', wide()],
    ['water', WATERY],
    ['the same paint', SAME],
  ] as const)(
    'in a drill that opens %s',
    (_, drill) => {
      expect(everyAnswer(drill).flatMap((answer) => faultsOf(drill, answer))).toEqual([]);
    },
    60_000,
  );
});
