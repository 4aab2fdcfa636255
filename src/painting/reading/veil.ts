/**
 * Whether the darks of a painting are duller than less light explains.
 *
 * Less light on one thing takes its chroma down along the shading line. A mass among the darks is therefore held against a lighter one of its hue: the
 * one that it touches, if there is one, since a thing's turned side lies beside its lit side. If it lies clearly under that line it has been
 * dulled by more than shade: by black, by a complement, by a grey glaze over everything. What cannot be told from colours alone:
 * - A dark without hue may be a slate roof or a red one that was killed. Nothing lighter is of "its" hue, so it is never called
 *   veiled; the slope counts it, for all of the painting together.
 * - A dark and a light of one hue may be two things, a grey-brown trunk before an orange wall: a mass is a question to the painter, not a fault.
 * - A pale wash is thin paint, not strong light: its line is low, and a dark over it says little. The stronger the light, the more it tells.
 */
import { hueDifference, shadingLine } from '../../colour/index.js';
import {
  CHROMA_MARGIN,
  HUE_BOUND_DEG,
  KEPT_LINE,
  NEUTRAL_CHROMA,
  NO_HUE_CHROMA,
  VALUE_BOUNDS,
} from '../../judgement/table.js';
import type { Border, Mass, PaintingReading, Veil, Veiled } from '../types.js';

/**
 * Of the range in use: the part from which a mass counts among the darks of its painting, and the part that a mass must be lighter to be
 * the light of a dark one. A painting that stays in the lights has its turned sides there, and they go grey there.
 */
const OF_RANGE = { dark: 2 / 3, lighter: 1 / 4 } as const;
/** Steps that are enough whatever the range. */
const LIGHTER = 1.5;
/** What a paint that is nearly grey may turn before its hue is another, degrees: black paints take yellow to green. */
const DULL_HUE_DEG = 45;

type Range = PaintingReading['range'];

/** What are the darks of a painting, in steps: beyond the bound of every painting, or the darkest third of what it uses. */
const darkFrom = ({ light, dark }: Range): number =>
  Math.min(VALUE_BOUNDS[1], light + OF_RANGE.dark * (dark - light));

const line = (from: Mass, to: Mass): number =>
  shadingLine(from.colour.chroma, from.colour.lab.l, to.colour.lab.l);

/** The lighter mass of a dark one's hue, if there is one. */
function lightOf(
  masses: readonly Mass[],
  borders: readonly Border[],
  dark: Mass,
  at: number,
  lighter: number,
): number | undefined {
  if (dark.colour.chroma < NO_HUE_CHROMA) return undefined;
  const within = dark.colour.chroma < NEUTRAL_CHROMA ? DULL_HUE_DEG : (HUE_BOUND_DEG.shade as number);
  const turn = ({ colour }: Mass): number => Math.abs(hueDifference(colour.hue, dark.colour.hue));
  const touches = (other: number): boolean =>
    borders.some(({ between }) => between.includes(at) && between.includes(other));
  const ofItsHue = masses.flatMap((mass, other) =>
    mass.colour.step < dark.colour.step - lighter &&
    mass.colour.chroma >= NEUTRAL_CHROMA &&
    turn(mass) <= within
      ? [{ other, mass, beside: touches(other) }]
      : [],
  );
  // Beside it first; then the one that asks most of it.
  ofItsHue.sort(
    (one, two) => Number(two.beside) - Number(one.beside) || line(two.mass, dark) - line(one.mass, dark),
  );
  return ofItsHue[0]?.other;
}

/** Chroma for each unit of L* + 16: what shade leaves as it is. */
const saturation = (masses: readonly Mass[]): number => {
  const share = masses.reduce((sum, mass) => sum + mass.share, 0);
  return (
    masses.reduce((sum, { share: own, colour }) => sum + (own * colour.chroma) / (colour.lab.l + 16), 0) /
    share
  );
};

/** Reads the veil. */
export function veilOf(masses: readonly Mass[], borders: readonly Border[], range: Range): Veil {
  const bound = darkFrom(range);
  const isDark = ({ colour }: Mass): boolean => colour.step > bound;
  const lighter = Math.min(LIGHTER, OF_RANGE.lighter * (range.dark - range.light));
  const darks = masses.filter(isDark);
  const lights = masses.filter((mass) => !isDark(mass) && mass.colour.chroma >= NEUTRAL_CHROMA);
  const veiled = masses.flatMap((mass, at): Veiled[] => {
    if (!isDark(mass)) return [];
    const from = lightOf(masses, borders, mass, at, lighter);
    if (from === undefined) return [];
    const kept = line(masses[from] as Mass, mass);
    const below = kept - mass.colour.chroma;
    return below > Math.max(CHROMA_MARGIN.least, (1 - KEPT_LINE) * kept) ? [{ mass: at, from, below }] : [];
  });
  const share = veiled.reduce((sum, { mass }) => sum + (masses[mass] as Mass).share, 0);
  return {
    slope: darks.length > 0 && lights.length > 0 ? saturation(darks) / saturation(lights) : undefined,
    below:
      share === 0
        ? 0
        : veiled.reduce((sum, one) => sum + one.below * (masses[one.mass] as Mass).share, 0) / share,
    masses: veiled,
  };
}
