/** Starts of two paints, made so that a third is what they lack: a grey to be leaned, a green to be tied in, a dark to be deepened. */
import { type Draw, pick, shuffled } from '../../chance/draw.js';
import type { ColourReading } from '../../colour/reading.js';
import { NEUTRAL_CHROMA, type Relation, relationOf } from '../../judgement/index.js';
import type { Studio } from '../../paints/index.js';
import { type FirstWash, seeLaid } from '../../washes/index.js';
import { holdsBlack, isBetween, type Partner, type PlanRules } from './mix-rules.js';

/** What a family asks where its start is a wash of two; what is not said is as with one paint. */
interface ThirdRules extends Partial<Omit<PlanRules, 'start'>> {
  /** Do these two make such a wash? Both are seen alone, in the order of `relation.ends`. */
  readonly pair: (relation: Relation) => boolean;
  /** Is the wash of the two what a third is wanted for? */
  readonly start: (colour: ColourReading) => boolean;
  readonly hint: string;
  /** Is the third a paint that the painting has already? */
  readonly ties?: true;
}

/** Hues, CIELAB degrees; common practice, no source. */
const YELLOWS = [70, 112] as const;
/** Blues that make a green with a yellow. */
const GREENING_BLUES = [205, 305] as const;
const GREENS = [108, 178] as const;
const REDS = [-15, 50] as const;

const isColour = ({ place, pigment, alone }: Partner): boolean =>
  place !== 'own' && place !== 'white' && !holdsBlack(pigment) && alone.chroma > NEUTRAL_CHROMA;

const THIRD: Readonly<Record<string, ThirdRules>> = {
  'grey-lean': {
    asks: 'paint',
    pair: ({ kind }) => kind === 'across',
    start: ({ chroma }) => chroma <= 4,
    serves: isColour,
    tempts: isColour,
    hint: 'The two hold each other. Ask of each third paint to which side it tips them.',
  },
  neutraliser: {
    pair: ({ kind }) => kind === 'across' || kind === 'between',
    start: ({ chroma }) => chroma >= 16 && chroma <= 45,
    hint: 'Name what the two leave over together; the third has that alone to take away.',
  },
  'dull-on-purpose': {
    aims: ['dull'],
    pair: ({ ends: [one, two] }) =>
      (isBetween(one.hue, YELLOWS) && isBetween(two.hue, GREENING_BLUES)) ||
      (isBetween(two.hue, YELLOWS) && isBetween(one.hue, GREENING_BLUES)),
    start: (colour) => colour.chroma >= 28 && isBetween(colour.hue, GREENS),
    serves: (partner) => isColour(partner) && isBetween(partner.alone.hue, REDS),
    hint: 'Ask of each paint what this green lacks, whether it would still be a green, and whether the painting has it.',
    ties: true,
  },
  'deep-dark': {
    aims: ['neutral'],
    strengths: [0.65, 0.8],
    pair: ({ kind, ends }) =>
      kind !== 'around' && ends.every(({ step, chroma }) => step >= 3.8 && chroma >= 18),
    start: ({ step, chroma }) => step >= 6 && chroma >= 14 && chroma <= 40,
    serves: isColour,
    hint: 'The two stop most of the light. The third has to stop what they still let pass, and be strong.',
  },
};

/** One drill in so many of such a family begins with two paints. */
const ONE_IN = 3;
const PARTS = [
  [1, 1],
  [2, 1],
  [3, 1],
  [4, 1],
  [3, 2],
  [1, 2],
  [1, 3],
  [1, 4],
] as const;

/** What a family asks of a start of two paints, or undefined where it has none of its own for them. */
export function thirdOf(family: string): ThirdRules | undefined {
  return THIRD[family];
}

/** Whether this drill of the family begins with two paints. @param turn see `Wanted` */
export function wantsThird(family: string, aims: number, turn: number): boolean {
  return THIRD[family] !== undefined && Math.floor(turn / aims) % ONE_IN === 0;
}

/** A wash of two paints of the palette that wants a third, or undefined. */
export function startOfTwo(
  studio: Studio,
  palette: readonly string[],
  { pair, start }: ThirdRules,
  strengths: readonly number[],
  draw: Draw,
): FirstWash | undefined {
  const ids = shuffled(palette, draw);
  const strength = pick(strengths, draw);
  for (const [at, one] of ids.entries()) {
    const two = ids.slice(at + 1).find((id) => pair(relationOf(studio, { [one]: 1 }, id)));
    if (two === undefined) continue;
    for (const [first, second] of shuffled(PARTS, draw)) {
      const wash = { paints: { [one]: first, [two]: second }, strength };
      if (start(seeLaid(studio, wash).colour)) return wash;
    }
  }
  return undefined;
}

/** The rules of a drill of a family by its start. */
export function rulesBy(family: string, rules: PlanRules, { paints }: FirstWash): PlanRules {
  const third = THIRD[family];
  return third === undefined || Object.keys(paints).length < 2 ? rules : { ...rules, ...third };
}
