/** Readings of a learner's box: those that are kept, keeping more, and putting what they tell to use. */
import { DataError, UsageError } from '../errors.js';
import { findPaint, type Palette, STRENGTH_FACTOR, type Studio } from '../paints/index.js';
import { MOST_READINGS, READINGS_USED } from '../profile/own-readings.js';
import type { OwnReading } from '../profile/own-studio.js';
import type { Profile } from '../profile/profile.js';
import { changeOwn } from '../profile/studio-file.js';
import { type Reading, type Told, toldBy } from '../readings/index.js';
import { keepOwnBox } from './box-change.js';
import { filesOf } from './learner-files.js';

/** A box with the readings of its tubes. */
export interface DriedPlace {
  readonly profile: Profile;
  readonly box: Palette;
  /** The paints under the owner's names, at the strengths of the box. */
  readonly studio: Studio;
  /** The library's paints: strengths are told against them. */
  readonly library: Studio;
}

const paintsOf = ({ wash: { paints, add = {} } }: Reading): string[] => [
  ...Object.keys(paints),
  ...Object.keys(add),
];

/** All readings of the box that this version can read, and how many earlier ones are no longer used. */
export function readingsOf({ profile, box, library }: DriedPlace): {
  readonly used: readonly OwnReading[];
  readonly earlier: number;
} {
  const all = (profile.own.readings ?? []).filter(
    (reading) =>
      reading.box === box.id && paintsOf(reading).every((id) => findPaint(library, id) !== undefined),
  );
  const used = all.slice(-READINGS_USED);
  return { used, earlier: all.length - used.length };
}

/** @throws UsageError for a box that the program brings */
export function requireOwn({ box }: DriedPlace): void {
  if (box.isOwn !== true)
    throw new UsageError(
      `the ${box.name} are the program's; readings are kept of tubes of your own: mudlark box new mine --paints ${box.pigments.slice(0, 3).join(',')},... and mudlark box use mine`,
    );
}

function requireInBox({ box }: DriedPlace, readings: readonly Reading[]): void {
  const stray = readings.flatMap(paintsOf).find((id) => !box.pigments.includes(id));
  if (stray !== undefined)
    throw new UsageError(
      `${stray} is not in the ${box.name}; put it in with: mudlark box edit ${box.id} --add ${stray}`,
    );
}

/** Keeps readings of the box, from what is on the disk. @throws UsageError, DataError where there are too many, StoreError */
export function keepReadings(place: DriedPlace, readings: readonly Reading[], now: Date): void {
  requireOwn(place);
  requireInBox(place, readings);
  const { profile, box } = place;
  const fresh = readings.map((reading): OwnReading => ({ box: box.id, at: now.toISOString(), ...reading }));
  profile.own = changeOwn(filesOf(profile), profile.learner, (own) => {
    const all = [...(own.readings ?? []), ...fresh];
    if (all.length > MOST_READINGS)
      throw new DataError(
        `there is room for ${MOST_READINGS} readings; forget some first, nothing was changed`,
      );
    return { ...own, readings: all };
  });
}

/** Forgets some readings of the box. @throws StoreError */
export function forgetReadings({ profile }: DriedPlace, gone: readonly OwnReading[]): void {
  const texts = new Set(gone.map((reading) => JSON.stringify(reading)));
  profile.own = changeOwn(filesOf(profile), profile.learner, (own) => ({
    ...own,
    readings: (own.readings ?? []).filter((reading) => !texts.has(JSON.stringify(reading))),
  }));
}

/** What the readings in use tell of the box. */
export const toldOf = (place: DriedPlace): Told => toldBy(place.library, readingsOf(place).used);

/**
 * Strengths that the readings tell well enough, where the box has others. A tube that may well be as strong as the library's, or as the
 * box has it, stays as it is.
 */
export function newStrengths(
  { box: { strengths = {} } }: DriedPlace,
  { tubes, isAtOdds }: Told,
): Map<string, number> {
  const { least, most } = STRENGTH_FACTOR;
  const rounded = (factor: number) => Math.min(most, Math.max(least, Number(factor.toFixed(2))));
  return new Map(
    tubes.flatMap(({ id, standing, factor, interval: [low, high] }) => {
      const now = strengths[id] ?? 1;
      const isUnlike = [1, now].some((strength) => strength < low || strength > high);
      return isAtOdds || standing !== 'known' || !isUnlike || rounded(factor) === now
        ? []
        : [[id, rounded(factor)] as const];
    }),
  );
}

/** Puts strengths to use in the box. @throws StoreError */
export function keepStrengths({ profile, box }: DriedPlace, strengths: ReadonlyMap<string, number>): void {
  keepOwnBox(profile, box.id, (there) => {
    if (there === undefined) throw new DataError(`the box ${box.id} is gone; nothing was changed`);
    return {
      ...there,
      paints: there.paints.map((each) => {
        const { strength: _before, ...rest } = each;
        const strength = strengths.get(each.paint);
        return strength === undefined ? each : strength === 1 ? rest : { ...rest, strength };
      }),
    };
  });
}
