/** The one change that would have mended an answer most: tried on what the drill leaves open, never guessed. */
import { hueName } from '../../../colour/hue.js';
import { COHESION_COST, GOOD_MARK } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import type { BetterBy, Change, PaintChange } from '../../../words/sentences/advice.js';
import type { Choice, How } from './choice.js';
import { highest, type Rated, type Verdicts, withPaint } from './idea.js';
import type { MixDrill } from './schema.js';
import { seatOf } from './seat.js';
import { isNewPaint, type Outcome, solved } from './solve.js';

/** Steps and C* by which a paint has to differ by itself to be told as darker or brighter. */
const APART = { step: 0.5, chroma: 6 } as const;

/** How far an amount is from another, in doublings: of equally good ones the nearest is advised. */
const awayFrom = (how: How, { choice }: Rated): number =>
  Math.abs(Math.log2(choice.how.amount / how.amount)) +
  Math.abs(Math.log2((choice.how.strength || 1) / (how.strength || 1)));

/** Parts that were missed, and which way. */
interface Missed {
  readonly tooLight: boolean;
  readonly tooDark: boolean;
  readonly tooDull: boolean;
  readonly tooBright: boolean;
}

function paintChange(studio: Studio, drill: MixDrill, from: string, to: string, missed: Missed): PaintChange {
  const [old, better] = [seatOf(studio, drill.start, from), seatOf(studio, drill.start, to)];
  const mine = old.alone;
  const step = better.alone.step - mine.step;
  const chroma = better.alone.chroma - mine.chroma;
  const ways: [boolean, BetterBy][] = [
    [missed.tooLight && step >= APART.step, 'darker'],
    [missed.tooDark && step <= -APART.step, 'lighter'],
    [missed.tooDull && chroma >= APART.chroma, 'brighter'],
    [missed.tooBright && chroma <= -APART.chroma, 'duller'],
  ];
  // Where both lie alike to the wash, the place tells nothing: the paint's own hue does.
  const place = better.place === old.place && better.place !== 'own' ? 'free' : better.place;
  const itself = place === 'own' ? undefined : ways.find(([is]) => is)?.[1];
  const hue = place === 'free' ? hueName(better.alone.hue) : undefined;
  return {
    what: 'paint',
    place,
    ...(itself === undefined ? {} : { itself }),
    ...(hue === undefined ? {} : { hue }),
  };
}

/** What turns the one choice into the other. */
function between(studio: Studio, drill: MixDrill, from: Choice, to: Choice, missed: Missed) {
  if (to.second !== from.second) return paintChange(studio, drill, from.second, to.second, missed);
  if (to.how.way !== from.how.way) return { what: 'way', to: to.how.way } as const;
  const water = to.thin === from.thin ? undefined : to.thin > from.thin ? 'more' : 'less';
  if (to.how.id === from.how.id) return { what: 'water', water: water ?? 'more' } as const;
  return {
    what: 'amount',
    way: to.how.way,
    by: to.how.amount / from.how.amount,
    strengthBy: (to.how.strength || 1) / (from.how.strength || 1),
    water,
  } as const;
}

/**
 * The nearest change that makes the answer good: amount, water, both, way, paint in this order; where none does, the one
 * that raises the mark most. Undefined where nothing open raises it.
 */
export function bestChange(
  studio: Studio,
  drill: MixDrill,
  { choice, seen: { colour } }: Outcome,
  mark: number,
  asked: { readonly verdicts: Verdicts; readonly chroma: readonly [number, number] },
): Change | undefined {
  const { second, how, thin } = choice;
  const own = withPaint(studio, drill, second);
  const { best: top } = solved(studio, drill);
  // The same better paint as is told, where it is another.
  const others =
    top.choice.second === second
      ? drill.tray.filter((id) => id !== second).flatMap((id) => withPaint(studio, drill, id))
      : [top];
  const isWay = (one: Rated): boolean => one.choice.how.way === how.way;
  const sets = [
    own.filter((one) => isWay(one) && one.choice.thin === thin),
    own.filter((one) => one.choice.how.id === how.id),
    own.filter(isWay),
    own,
    others,
  ]
    .map((set) => highest(set.toSorted((a, b) => awayFrom(how, a) - awayFrom(how, b))))
    .filter((one) => one !== undefined)
    .filter((one) => one.mark > mark);
  const needed = (one: Rated): number =>
    GOOD_MARK - (isNewPaint(drill, one.choice.second) ? COHESION_COST : 0);
  const isOne =
    top.choice.second === second &&
    (top.choice.how.way !== how.way || top.choice.how.id === how.id || top.choice.thin === thin);
  // What is told as better, where one change leads to it: no other way is advised beside it.
  const best =
    isOne && top.mark > mark ? top : (sets.find((one) => one.mark >= needed(one)) ?? highest(sets));
  if (best === undefined) return undefined;
  const { verdicts, chroma } = asked;
  const missed: Missed = {
    tooLight: verdicts.value !== 'good' && colour.step < drill.goal.value[0],
    tooDark: verdicts.value !== 'good' && colour.step > drill.goal.value[1],
    tooDull: verdicts.chroma !== 'good' && colour.chroma < chroma[0],
    tooBright: verdicts.chroma !== 'good' && colour.chroma > chroma[1],
  };
  return {
    ...between(studio, drill, choice, best.choice, missed),
    isEnough: best.mark >= needed(best),
    isOther: best.choice !== top.choice,
    isGiven: drill.tray.length === 1,
  };
}
