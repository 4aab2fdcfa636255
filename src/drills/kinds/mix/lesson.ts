/** Whether a drill teaches what its family is for: the checker's questions about mix drills. */
import { shadingLine } from '../../../colour/chroma.js';
import { hueDifference } from '../../../colour/lab.js';
import {
  type Aim,
  CHROMATIC_START,
  chromaMargin,
  DEEP_STEP,
  DULLED_SHARE,
  FAIR_MARK,
  GOOD_MARK,
  hueAsked,
  isSeenApart,
  LEAN_CHROMA,
  LEAST_BAND,
  LEAST_FACTOR,
  LEAST_MOVE,
  NEUTRAL_CHROMA,
  NO_HUE_CHROMA,
  scoreColour,
} from '../../../judgement/index.js';
import { paintOf, type Studio } from '../../../paints/index.js';
import { subjectFault } from '../../lexicon.js';
import { howsOf } from './choice.js';
import { type Rated, withPaint } from './idea.js';
import type { MixDrill } from './schema.js';
import { type Place, seatOf } from './seat.js';
import { outcomeOf, ratingOf, solved } from './solve.js';

interface TrayPaint {
  readonly id: string;
  readonly place: Place;
  readonly chroma: number;
  /** Every answer with it. */
  readonly rated: readonly Rated[];
  readonly best: number;
}

function trayPaints(studio: Studio, drill: MixDrill): TrayPaint[] {
  return drill.tray.map((id) => {
    const rated = withPaint(studio, drill, id);
    const { place, alone } = seatOf(studio, drill.start, id);
    return { id, place, chroma: alone.chroma, rated, best: Math.max(...rated.map(({ mark }) => mark)) };
  });
}

const list = (paints: readonly TrayPaint[]): string => paints.map(({ id }) => id).join(', ');

/** Does one choice in place of the best one mark below fair and look wrong? That is the mistake that tempts. */
function nearFaults(studio: Studio, drill: MixDrill, paints: readonly TrayPaint[]): string[] {
  const { choice: top, seen } = solved(studio, drill).best;
  const isTrap = ({ choice, mark }: Rated): boolean => {
    const apart = [choice.second !== top.second, choice.how.id !== top.how.id, choice.thin !== top.thin];
    return (
      mark < FAIR_MARK &&
      apart.filter(Boolean).length === 1 &&
      isSeenApart(seen.colour, outcomeOf(studio, drill, choice).seen.colour)
    );
  };
  return paints.some(({ rated }) => rated.some(isTrap))
    ? []
    : [`no single other choice marks below ${FAIR_MARK} and looks wrong`];
}

/**
 * A mistake has to be seen, not only marked. Where a paint is wrong whatever its amount, one such paint has to mark below fair and to
 * look wrong even when its amount is mended as far as it can be; where none is, or the amount is the lesson, some amount has to.
 */
function trapFaults(studio: Studio, drill: MixDrill, paints: readonly TrayPaint[]): string[] {
  const best = solved(studio, drill).best.seen.colour;
  const isSeen = ({ choice }: Rated): boolean =>
    isSeenApart(best, outcomeOf(studio, drill, choice).seen.colour);
  const isOff = ({ mark }: Rated): boolean => mark < FAIR_MARK;
  const wrong = drill.family === 'tinting-strength' ? [] : paints.filter((paint) => paint.best < GOOD_MARK);
  if (wrong.length === 0) {
    const isTrap = paints.some(({ rated }) => rated.some((one) => isOff(one) && isSeen(one)));
    return isTrap ? [] : [`no amount marks below ${FAIR_MARK} and looks wrong`];
  }
  const isTrap = wrong.some(
    ({ rated, best: most }) => rated.some(isOff) && rated.some((one) => one.mark === most && isSeen(one)),
  );
  return isTrap
    ? []
    : [
        `no wrong paint that marks below ${FAIR_MARK} still looks wrong once its amount is mended: ${list(wrong)}`,
      ];
}

function brightFaults(drill: MixDrill, paints: readonly TrayPaint[], best: TrayPaint): string[] {
  const traps = paints.filter(({ place }) => place === 'across' || place === 'black');
  const open = traps.filter((paint) => paint.best >= GOOD_MARK);
  return [
    drill.goal.aim === 'rich' || drill.goal.aim === 'shade' ? '' : 'the aim is not `rich` or `shade`',
    best.place === 'around' || best.place === 'between' || best.place === 'own'
      ? ''
      : `the best second paint, ${best.id}, does not go around the wheel (${best.place})`,
    traps.length > 0 ? '' : 'no paint from across the wheel and no black tempts',
    open.length === 0 ? '' : `a paint that should dull marks well: ${list(open)}`,
  ];
}

function dullFaults(drill: MixDrill, paints: readonly TrayPaint[], best: TrayPaint): string[] {
  const near = paints.filter(({ place }) => place === 'around' || place === 'own');
  const open = near.filter((paint) => paint.best >= GOOD_MARK);
  return [
    drill.goal.aim === 'dull' || drill.goal.aim === 'distance' ? '' : 'the aim is not `dull` or `distance`',
    best.place === 'across' || best.place === 'between'
      ? ''
      : `the best second paint, ${best.id}, does not go across the wheel (${best.place})`,
    near.length > 0 ? '' : 'no neighbour tempts',
    open.length === 0 ? '' : `a neighbour marks well: ${list(open)}`,
  ];
}

function greyFaults(drill: MixDrill, paints: readonly TrayPaint[], best: TrayPaint): string[] {
  const traps = paints.filter((paint) => paint.id !== best.id && paint.best < FAIR_MARK);
  return [
    drill.goal.aim === 'neutral' ? '' : 'the aim is not `neutral`',
    best.place === 'black' || best.place === 'white'
      ? `the best second paint, ${best.id}, is neutral itself`
      : '',
    traps.length > 0 ? '' : 'every partner goes grey: none is a trap',
  ];
}

function darkFaults(studio: Studio, drill: MixDrill, best: TrayPaint): string[] {
  const { step } = solved(studio, drill).best.seen.colour;
  return [
    step >= DEEP_STEP ? '' : `the best answer stops at step ${step.toFixed(1)}, lighter than L* 25`,
    best.place === 'black' ? 'the best answer is a black' : '',
  ];
}

/** The best touch is small, or the paint so weak that it is large; equal blobs must not do. */
function strengthFaults(studio: Studio, drill: MixDrill): string[] {
  const known = solved(studio, drill);
  const { choice } = known.best;
  const hows = howsOf(drill);
  if (hows.length < 2) return ['the amount must be open'];
  const equal = hows.find(({ id }) => id === '1:1');
  if (equal === undefined || choice.how.id === equal.id)
    return ['equal parts must be open, and must not be the best'];
  const { colour } = outcomeOf(studio, drill, { ...choice, how: equal }).seen;
  const { mark } = scoreColour(known, colour, ratingOf(studio, drill, choice.second));
  return [mark < FAIR_MARK ? '' : `equal parts mark ${mark}: the paint is not strong enough to matter`];
}

/** True when every two amounts that are open lie at least so far apart. */
function amountsApart(drill: MixDrill, factor: number): boolean {
  const ratios = howsOf(drill)
    .filter(({ way }) => way === 'puddle')
    .map(({ amount }) => amount);
  return ratios.every((ratio, at) => at === 0 || ratio / (ratios[at - 1] as number) >= factor - 1e-9);
}

/** Bands that the model cannot tell apart, and goals that mean nothing for the start. */
function bandFaults(studio: Studio, drill: MixDrill): string[] {
  const { start, best } = solved(studio, drill);
  const { value, chroma, hue } = drill.goal;
  const { evidence } = ratingOf(studio, drill, best.choice.second);
  // A strength known to a factor of two still tells amounts a factor of four apart.
  const least = LEAST_BAND[amountsApart(drill, LEAST_FACTOR) ? 'measured' : evidence];
  const halfChroma =
    chroma === undefined ? least.chroma : chroma[0] === 0 ? chroma[1] : (chroma[1] - chroma[0]) / 2;
  const second = paintOf(studio, best.choice.second);
  return [
    howsOf(drill).length > 1 && second.strengthEvidence === 'assumed'
      ? `an amount is asked of ${second.id}, whose strength is only assumed`
      : '',
    (value[1] - value[0]) / 2 >= least.step - 1e-9 ? '' : 'the value band is tighter than the model can tell',
    halfChroma >= least.chroma - 1e-9 ? '' : 'the chroma band is tighter than the model can tell',
    chroma === undefined && start.chroma < CHROMATIC_START
      ? 'chroma is to be kept of a start that has little'
      : '',
    hue?.near === 'start' && start.chroma < CHROMATIC_START
      ? 'the start has too little chroma to hold a hue'
      : '',
  ];
}

/** Whether the best answer does what the aim says, and is a colour that the subject can have. */
function aimFaults(studio: Studio, drill: MixDrill): string[] {
  const known = solved(studio, drill);
  const { start, best } = known;
  const { aim, chroma, value } = drill.goal;
  const after = best.seen.colour;
  const line = shadingLine(start.chroma, start.lab.l, after.lab.l);
  const room = chromaMargin(line);
  const hue = hueAsked(known);
  const isColour = after.chroma >= NO_HUE_CHROMA || aim === 'lean';
  const turned = hue === undefined || !isColour ? 0 : Math.abs(hueDifference(hue.near, after.hue));
  const subject = drill.subject === undefined ? undefined : subjectFault(drill.subject, aim, after);
  const byAim: Readonly<Record<Aim, () => string[]>> = {
    shade: () => [
      after.step >= start.step + LEAST_MOVE.shade ? '' : 'a shade has to be darker than its start',
      after.chroma <= line + room ? '' : 'the best answer lies above the shading line: the shade glows',
      after.chroma >= line - room ? '' : 'the best answer lies below the shading line: it is mud',
    ],
    rich: () => [
      chroma !== undefined || after.chroma >= line - room
        ? ''
        : 'the best answer lies below the shading line',
    ],
    dull: () => [
      after.chroma <= DULLED_SHARE * start.chroma ? '' : 'the best answer is hardly duller than the start',
    ],
    distance: () => [
      after.step <= start.step - LEAST_MOVE.distance ? '' : 'what is farther off has to be lighter',
      value[1] <= start.step + 0.5 ? '' : 'the value asked of a distance may not be darker than the start',
      after.chroma <= DULLED_SHARE * start.chroma ? '' : 'the best answer is hardly duller than the start',
    ],
    neutral: () => [
      chroma !== undefined && chroma[1] <= NEUTRAL_CHROMA + 4 ? '' : 'a neutral ends at a lower chroma',
    ],
    lean: () => [
      chroma !== undefined && chroma[1] <= LEAN_CHROMA ? '' : `a lean ends at chroma ${LEAN_CHROMA} or below`,
    ],
  };
  return [
    hue === undefined || turned <= hue.within ? '' : `the best answer turns the hue by ${turned.toFixed(0)}°`,
    subject ?? '',
    ...byAim[aim](),
  ];
}

/** What is wrong with a mix drill as a lesson of its family. */
export function lessonFaults(studio: Studio, drill: MixDrill): string[] {
  const paints = trayPaints(studio, drill);
  const { second } = solved(studio, drill).best.choice;
  const best = paints.find(({ id }) => id === second) as TrayPaint;
  const byFamily: Readonly<Record<string, () => string[]>> = {
    'darken-bright': () => brightFaults(drill, paints, best),
    'dull-on-purpose': () => dullFaults(drill, paints, best),
    neutraliser: () => greyFaults(drill, paints, best),
    'grey-lean': () => (drill.goal.aim === 'lean' ? [] : ['the aim is not `lean`']),
    'deep-dark': () => darkFaults(studio, drill, best),
    'tinting-strength': () => strengthFaults(studio, drill),
  };
  return [
    ...bandFaults(studio, drill),
    ...aimFaults(studio, drill),
    ...trapFaults(studio, drill, paints),
    ...nearFaults(studio, drill, paints),
    ...(byFamily[drill.family]?.() ?? []),
  ].filter((fault) => fault !== '');
}
