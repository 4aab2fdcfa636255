/** A mixture against a goal: verdicts on value, chroma and hue, and one mark. Published in README.md beside it. */
import { shadingLine } from '../colour/chroma.js';
import { hueDifference } from '../colour/lab.js';
import type { ColourReading } from '../colour/reading.js';
import type { Evidence } from '../paints/index.js';
import { aroundChroma, chromaMargin, scoreChroma, scoreGap, scoreValue, verdictOf } from './score.js';
import {
  COHESION_COST,
  GOOD_MARK,
  HUE_BOUND_DEG,
  HUE_MARGIN_DEG,
  NEUTRAL_CHROMA,
  NO_HUE_CHROMA,
  NOT_DULLED,
  SEEN_APART,
  TRAY_SHARE,
} from './table.js';
import type { ChromaResult, Goal, HueResult, ValueResult } from './types.js';

/** What can be reached within the value asked, C*: the brightest and the dullest of all mixtures that are open. */
export interface Reach {
  readonly best: number;
  readonly dullest: number;
}

/** What a mixture is judged against. */
export interface Judged {
  readonly goal: Goal;
  readonly start: ColourReading;
  readonly reach: Reach;
}

/** Value: judged in painter's steps against the asked band. */
export function judgeValue(
  { goal, start }: Judged,
  after: ColourReading,
  evidence: Evidence,
): { result: ValueResult; score: number } {
  const { score, tooCloseToCall } = scoreValue(after.step, goal.value, evidence);
  const verdict = verdictOf(score);
  return {
    score,
    result: { before: start.step, after: after.step, asked: goal.value, verdict, tooCloseToCall },
  };
}

/**
 * The chroma that counts as bright at the value reached: what keeps saturation on the way down, or three quarters of
 * what the tray can reach if that is more, but never more than the tray can reach; less one margin.
 */
export function brightBand({ start, reach }: Judged, after: ColourReading): readonly [number, number] {
  const line = shadingLine(start.chroma, start.lab.l, after.lab.l);
  const aim = Math.min(reach.best, Math.max(line, TRAY_SHARE * reach.best));
  return [Math.max(0, aim - chromaMargin(aim)), Number.POSITIVE_INFINITY];
}

/** The chroma that counts at the value reached: by the aim, or the band that the goal states. */
export function chromaAsked(judged: Judged, after: ColourReading): readonly [number, number] {
  const { goal, start } = judged;
  if (goal.chroma !== undefined) return goal.chroma;
  if (goal.aim !== 'shade') return brightBand(judged, after);
  const line = shadingLine(start.chroma, start.lab.l, after.lab.l);
  const [low, high] = aroundChroma(line);
  // With less light nothing gets stronger than it was.
  return [low, Math.min(high, Math.max(line, start.chroma))];
}

/** True where a colour was to be dulled and is as strong as it was: that it comes near the band is no merit of the answer. */
function isNotDulled({ goal, start }: Judged, after: ColourReading): boolean {
  const isToDull = goal.aim === 'dull' || goal.aim === 'distance' || goal.aim === 'neutral';
  const most = goal.chroma?.[1] ?? Number.POSITIVE_INFINITY;
  return isToDull && most < start.chroma && after.chroma > NOT_DULLED.share * start.chroma;
}

/** Chroma: against what the aim asks at the value reached. */
export function judgeChroma(
  judged: Judged,
  after: ColourReading,
  evidence: Evidence,
): { result: Omit<ChromaResult, 'best'>; score: number } {
  const { start, reach } = judged;
  const asked = chromaAsked(judged, after);
  const { score: near, tooCloseToCall: isClose } = scoreChroma(after.chroma, asked, evidence);
  const isUndone = isNotDulled(judged, after);
  const score = isUndone ? Math.min(near, NOT_DULLED.score) : near;
  const tooCloseToCall = isClose && !isUndone;
  return {
    score,
    result: {
      before: start.chroma,
      after: after.chroma,
      asked,
      verdict: verdictOf(score),
      kept: start.chroma > 0.5 ? after.chroma / start.chroma : 1,
      shadingLine: shadingLine(start.chroma, start.lab.l, after.lab.l),
      dullest: reach.dullest,
      tooCloseToCall,
    },
  };
}

/** The hue that a goal asks: its own, or the start's within the bound of the aim; undefined where there is none to hold. */
export function hueAsked({
  goal,
  start,
}: Pick<Judged, 'goal' | 'start'>): { readonly near: number; readonly within: number } | undefined {
  const { hue, aim } = goal;
  if (hue !== undefined) return { near: hue.near === 'start' ? start.hue : hue.near, within: hue.within };
  const within = HUE_BOUND_DEG[aim];
  return within === undefined || start.chroma < NEUTRAL_CHROMA ? undefined : { near: start.hue, within };
}

/** Hue: against the angle asked; a mixture that is nearly grey has no hue to miss, unless its lean is the point. */
export function judgeHue(
  judged: Pick<Judged, 'goal' | 'start'>,
  after: ColourReading,
): { result: HueResult; score: number } | undefined {
  const asked = hueAsked(judged);
  if (asked === undefined) return undefined;
  const { goal, start } = judged;
  const turned = Math.abs(hueDifference(asked.near, after.hue));
  const isGrey = after.chroma < NO_HUE_CHROMA && goal.aim !== 'lean';
  const { score } = scoreGap(isGrey ? 0 : Math.max(0, turned - asked.within), 0, HUE_MARGIN_DEG);
  return {
    score,
    result: { before: start.hue, after: after.hue, asked, turned, verdict: verdictOf(score) },
  };
}

/**
 * One mark: 35 for value, 35 for chroma (and hue), 30 for both at once, less the cost of a new paint.
 * Held at 84 while any part is only fair, so that no mark of 85 hides a dull colour or a missed value.
 */
export function markOf(value: number, chroma: number, isNewPaint: boolean): number {
  return Math.round(exactMark(value, chroma, isNewPaint));
}

function exactMark(value: number, chroma: number, isNewPaint: boolean): number {
  const sum = 35 * value + 35 * chroma + 30 * value * chroma - (isNewPaint ? COHESION_COST : 0);
  const most = value === 1 && chroma === 1 ? 100 : GOOD_MARK - 1;
  return Math.max(0, Math.min(most, sum));
}

/** A colour with its mark. */
export interface Scored {
  readonly mark: number;
  /** Finer than the mark: which of two full marks is the better answer. */
  readonly merit: number;
  /** The mark before rounding: even enough for a search to climb. */
  readonly exact: number;
}

/** Marks one colour. @param second the paints that made it: their evidence, and whether one is new to the painting */
export function scoreColour(
  judged: Judged,
  colour: ColourReading,
  { evidence, isNew }: { readonly evidence: Evidence; readonly isNew: boolean },
): Scored {
  const value = judgeValue(judged, colour, evidence);
  const chroma = judgeChroma(judged, colour, evidence);
  const hue = judgeHue(judged, colour);
  const exact = exactMark(value.score, chroma.score * (hue?.score ?? 1), isNew);
  const mark = Math.round(exact);
  const onEdge = value.result.tooCloseToCall || chroma.result.tooCloseToCall ? 0.5 : 0;
  const merit = mark + 0.5 * centredness(judged.goal, colour, chroma.result) - onEdge;
  return { mark, merit, exact };
}

/**
 * 0-1 within one mark: brighter is better where a rich colour is asked, nearer the shading line where a shade is, else nearer the
 * middle of what is asked.
 */
function centredness(
  { aim, value, chroma }: Goal,
  colour: ColourReading,
  { asked, shadingLine: line }: Pick<ChromaResult, 'asked' | 'shadingLine'>,
): number {
  const middle = ([low, high]: readonly [number, number]): number => (low + high) / 2;
  const off = (x: number, from: number, [low, high]: readonly [number, number]): number =>
    Math.min(1, Math.abs(x - from) / (high - low));
  const centred = 1 - off(colour.step, middle(value), value);
  if (asked[1] === Number.POSITIVE_INFINITY) return 0.9 * Math.min(1, colour.chroma / 120) + 0.1 * centred;
  const centre = aim === 'shade' && chroma === undefined ? line : middle(asked);
  return 0.5 * (centred + 1 - off(colour.chroma, centre, asked));
}

/** True when anyone sees that a colour is not the best one: by its value, its chroma or its hue. */
export function isSeenApart(best: ColourReading, other: ColourReading): boolean {
  const { step, chroma, hueDeg } = SEEN_APART;
  const gap = Math.min(chroma.most, Math.max(chroma.least, chroma.share * best.chroma));
  const haveHue = Math.min(best.chroma, other.chroma) >= NO_HUE_CHROMA;
  return (
    Math.abs(best.step - other.step) >= step ||
    Math.abs(best.chroma - other.chroma) >= gap ||
    (haveHue && Math.abs(hueDifference(best.hue, other.hue)) >= hueDeg)
  );
}
