/** Plans of mix drills: a start, a mixture worth reaching, a goal around it and a tray that tempts. */
import { type Draw, pick, shuffled } from '../../chance/draw.js';
import { shadingLine } from '../../colour/chroma.js';
import { hueDifference } from '../../colour/lab.js';
import type { ColourReading } from '../../colour/reading.js';
import { type Goal, LEAST_BAND } from '../../judgement/index.js';
import { evidenceOf, paintOf, type Studio } from '../../paints/index.js';
import { type FirstWash, seeLaid, trialOf, type Way } from '../../washes/index.js';
import { type Choice, howsOf } from '../kinds/mix/choice.js';
import { type MixDrill, TOUCHES, type Touch, touchRatio } from '../kinds/mix/schema.js';
import { type Place, seatOf } from '../kinds/mix/seat.js';
import { type Asks, GLAZES, type Level, openingsAt, THINS, TRAY_SIZE, touchesRound } from './levels.js';

/** All of a mix drill but its words. */
export type MixPlan = Pick<MixDrill, 'start' | 'goal' | 'tray' | 'amounts' | 'glazes' | 'strokes' | 'thins'>;

/** A paint of the palette beside the start. */
interface Partner {
  readonly id: string;
  readonly place: Place;
  /** Alone, at the strength that its place is told at. */
  readonly alone: ColourReading;
}

/** A mixture that a plan may aim at. */
interface Aim {
  readonly choice: Choice;
  readonly partner: Partner;
  readonly colour: ColourReading;
}

/** What a family asks of its plans. */
export interface PlanRules {
  readonly asks: Asks;
  /** Strengths of the start. */
  readonly strengths: readonly number[];
  readonly start: (colour: ColourReading) => boolean;
  /** Is this mixture worth asking for? */
  readonly aim: (start: ColourReading, aim: Aim) => boolean;
  readonly goal: (start: ColourReading, aim: Aim, draw: Draw) => Goal;
  /** Must this paint be in the tray to tempt? */
  readonly tempts: (partner: Partner, aim: Aim) => boolean;
  readonly least: Touch;
  readonly ways: readonly Way[];
}

/** Half the narrowest band of chroma; amounts of weaker evidence lie far enough apart for it, too. */
const HALF_CHROMA = LEAST_BAND.measured.chroma;

/** A band of one step around a value, to a tenth of a step. */
export function valueAround(step: number): [number, number] {
  const low = Math.max(0.5, Math.min(9.5, Math.round((step - 0.5) * 10) / 10));
  return [low, Math.round((low + 1) * 10) / 10];
}

/** A band around a chroma, in whole numbers. */
export function chromaAround(chroma: number, half: number): [number, number] {
  const low = Math.max(0, Math.round(chroma - half));
  return [low, Math.max(low + 2 * half, Math.round(chroma + half))];
}

function startFrom(palette: readonly string[], { strengths }: PlanRules, draw: Draw): FirstWash {
  const [one, two] = shuffled(palette, draw) as [string, string | undefined];
  const strength = pick(strengths, draw);
  // One start in four is a mixture of two paints.
  if (two === undefined || draw(3) !== 0) return { paints: { [one]: 1 }, strength };
  return { paints: { [one]: pick([2, 3, 4], draw), [two]: 1 }, strength };
}

/** Everything that a made drill may want done with a second paint. */
function aims(studio: Studio, start: FirstWash, partners: readonly Partner[], rules: PlanRules): Aim[] {
  const touches = TOUCHES.slice(0, 6).filter((touch) => touchRatio(touch) >= touchRatio(rules.least));
  const hows = howsOf({
    amounts: rules.ways.includes('puddle') ? touches : [],
    glazes: rules.ways.includes('glaze') ? GLAZES : [],
    strokes: [],
  });
  return partners.flatMap((partner) =>
    rules.ways.flatMap((way) =>
      (way === 'puddle' ? THINS : [1]).flatMap((thin) => {
        const trial = trialOf(studio, start, { way, ids: [partner.id], strength: 0, thin });
        return hows
          .filter((how) => how.way === way)
          .map((how) => ({
            choice: { second: partner.id, how, thin },
            partner,
            colour: trial([how.amount]),
          }));
      }),
    ),
  );
}

/** @returns undefined when this draw leads nowhere; try again */
export function planMix(
  studio: Studio,
  palette: readonly string[],
  level: Level,
  rules: PlanRules,
  draw: Draw,
): MixPlan | undefined {
  const start = startFrom(palette, rules, draw);
  const { colour } = seeLaid(studio, start);
  if (!rules.start(colour)) return undefined;
  const partners = palette.map((id): Partner => ({ id, ...seatOf(studio, start, id) }));
  // Water is open from level 4 on; before that the second paint alone has to do it.
  const worth = aims(studio, start, partners, rules).filter(
    (aim) => (level > 3 || aim.choice.thin === 1) && rules.aim(colour, aim),
  );
  if (worth.length === 0) return undefined;
  // A paint first, so that one with many good amounts is not asked for more often.
  const second = pick([...new Set(worth.map(({ choice }) => choice.second))], draw);
  const aim = pick(
    worth.filter(({ choice }) => choice.second === second),
    draw,
  );
  const evidence = evidenceOf([...Object.keys(start.paints), second].map((id) => paintOf(studio, id)));
  const { how } = aim.choice;
  // Equal parts are the temptation: they have to be among the amounts that can be told apart.
  if (rules.asks === 'amount' && how.way === 'puddle') {
    if (!touchesRound(how.id as Touch, rules.least, evidence).includes('1:1')) return undefined;
  }
  const others = shuffled(
    partners.filter(({ id }) => id !== second),
    draw,
  );
  const tempting = others.filter((partner) => rules.tempts(partner, aim));
  if (tempting.length === 0) return undefined;
  const rest = others.filter((partner) => partner !== tempting[0]);
  const tray = [second, ...[tempting[0] as Partner, ...rest].map(({ id }) => id)].slice(
    0,
    TRAY_SIZE[rules.asks][level],
  );
  return {
    start,
    goal: rules.goal(colour, aim, draw),
    tray: shuffled(tray, draw),
    ...openingsAt(level, aim.choice, { ...rules, evidence }, draw),
  };
}

const isFar = ({ place }: Partner): boolean => place === 'across' || place === 'black';
const isNear = ({ place }: Partner): boolean => place === 'around' || place === 'own';

/** The rules of each family that is made of mix drills. */
export const MIX_RULES: Readonly<Record<string, PlanRules>> = {
  'darken-bright': {
    asks: 'paint',
    strengths: [0.15, 0.2, 0.3],
    start: ({ chroma, step }) => chroma >= 28 && step <= 6,
    aim: (start, { partner, colour }) =>
      isNear(partner) &&
      (partner.place === 'own' || partner.alone.step >= start.step + 0.3) &&
      colour.step >= start.step + 0.7 &&
      colour.chroma >= 0.95 * shadingLine(start.chroma, start.lab.l, colour.lab.l) &&
      Math.abs(hueDifference(start.hue, colour.hue)) <= 50,
    goal: (_start, { colour }) => ({ aim: 'rich', value: valueAround(colour.step) }),
    tempts: isFar,
    least: '1:8',
    ways: ['puddle', 'glaze'],
  },
  'dull-on-purpose': {
    asks: 'paint',
    strengths: [0.15, 0.2, 0.3, 0.45],
    start: ({ chroma }) => chroma >= 35,
    aim: (start, { partner, colour }) =>
      (partner.place === 'across' || partner.place === 'between') &&
      colour.chroma >= 10 &&
      colour.chroma <= 0.65 * start.chroma,
    goal: (_start, { colour }) => ({
      aim: 'dull',
      value: valueAround(colour.step),
      chroma: chromaAround(colour.chroma, HALF_CHROMA),
    }),
    tempts: isNear,
    least: '1:32',
    ways: ['puddle', 'glaze'],
  },
  neutraliser: {
    asks: 'paint',
    strengths: [0.2, 0.3, 0.45],
    start: ({ chroma }) => chroma >= 25,
    aim: (_start, { partner, colour }) =>
      partner.place !== 'black' && partner.place !== 'white' && partner.place !== 'own' && colour.chroma <= 6,
    goal: (_start, { colour }) => ({
      aim: 'neutral',
      value: valueAround(colour.step),
      chroma: [0, HALF_CHROMA],
    }),
    tempts: ({ place }) => place === 'between' || place === 'across' || place === 'around',
    least: '1:32',
    ways: ['puddle'],
  },
  'grey-lean': {
    asks: 'amount',
    strengths: [0.15, 0.2, 0.3, 0.45],
    start: ({ chroma }) => chroma >= 25,
    aim: (_start, { partner, colour }) =>
      (partner.place === 'across' || partner.place === 'between') &&
      colour.chroma >= 5 &&
      colour.chroma <= 13 &&
      Math.min(...LEANS.map((angle) => Math.abs(hueDifference(angle, colour.hue)))) <= 40,
    goal: (_start, { colour }) => ({
      aim: 'lean',
      value: valueAround(colour.step),
      chroma: [3, 3 + 2 * HALF_CHROMA],
      hue: { near: nearestLean(colour.hue), within: 50 },
    }),
    tempts: ({ place }) => place !== 'own' && place !== 'white',
    least: '1:32',
    ways: ['puddle'],
  },
  'deep-dark': {
    asks: 'paint',
    strengths: [0.45, 0.65, 0.9],
    start: ({ chroma, step }) => chroma >= 25 && step >= 4,
    aim: (_start, { partner, colour }) =>
      partner.place !== 'black' && partner.place !== 'own' && colour.step >= 8 && colour.chroma <= 24,
    goal: (_start, { colour }) => ({
      aim: 'neutral',
      value: [Math.min(8, Math.round((colour.step - 0.3) * 10) / 10), 10.5],
      chroma: chromaAround(colour.chroma, HALF_CHROMA),
    }),
    tempts: ({ place }) => place === 'around' || place === 'between' || place === 'white',
    least: '1:32',
    ways: ['puddle', 'glaze'],
  },
  'tinting-strength': {
    asks: 'amount',
    strengths: [0.15, 0.2, 0.3],
    start: ({ chroma }) => chroma >= 20,
    aim: (start, { choice, partner, colour }) =>
      partner.place !== 'own' &&
      partner.place !== 'white' &&
      choice.how.amount <= 0.25 &&
      colour.chroma >= 12 &&
      (Math.abs(hueDifference(start.hue, colour.hue)) >= 12 || Math.abs(colour.step - start.step) >= 0.7),
    goal: (_start, { colour }) => ({
      aim: 'rich',
      value: valueAround(colour.step),
      chroma: chromaAround(colour.chroma, Math.max(HALF_CHROMA, Math.round(0.2 * colour.chroma))),
      hue: { near: Math.round(colour.hue) % 360, within: 15 },
    }),
    tempts: () => true,
    least: '1:32',
    ways: ['puddle'],
  },
};

/** Middle of the warm and of the cool side of the wheel, degrees. */
const LEANS = [55, 235] as const;

function nearestLean(hue: number): number {
  const [warm, cool] = LEANS;
  return Math.abs(hueDifference(warm, hue)) <= Math.abs(hueDifference(cool, hue)) ? warm : cool;
}
