/** What a learner has put together, going along with the record: out of its file, into an export, and back. */
import { existsSync } from 'node:fs';
import { DataError, isFileFault } from '../errors.js';
import { readWhole } from '../files/read.js';
import { jsonOf, membersOf } from '../text/json.js';
import { MOST_READINGS } from './own-readings.js';
import {
  MOST_BOXES,
  MOST_MIXTURES,
  MOST_OWN_BYTES,
  type OwnMixture,
  type OwnStudio,
  parseOwn,
} from './own-studio.js';
import type { LearnerFiles } from './place.js';

/** The file as an export carries it, as it stands: also what only a newer version can read. */
export interface CarriedStudio {
  /** Its JSON; absent where there is no file, or none that can be carried. */
  readonly json?: string;
  readonly isUnreadable: boolean;
}

export function carriedStudio(files: LearnerFiles | undefined): CarriedStudio {
  if (files === undefined || !existsSync(files.studio)) return { isUnreadable: false };
  try {
    const read = membersOf(jsonOf(readWhole(files.studio, MOST_OWN_BYTES)));
    return read === undefined ? { isUnreadable: true } : { json: JSON.stringify(read), isUnreadable: false };
  } catch (error) {
    if (!isFileFault(error)) throw error;
    return { isUnreadable: true };
  }
}

/** What an export document holds of it, or why it cannot be used, in one line. */
export type ReadStudio = { readonly own: OwnStudio } | { readonly fault: string };

export function readCarried(member: unknown): ReadStudio {
  try {
    return { own: parseOwn(JSON.stringify(member), 'its boxes') };
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    return { fault: error.message };
  }
}

/** What came of bringing boxes in, by name. */
export interface Merged {
  readonly own: OwnStudio;
  readonly added: readonly string[];
  /** Another box of the name was there: replaced or left, as was asked for. */
  readonly differing: readonly string[];
  /** There was no room for them. */
  readonly left: readonly string[];
  /** Readings that were not there, and those of them that there was no room for. */
  readonly readings: { readonly added: number; readonly left: number };
  /** Mixtures of the bench: as the readings. */
  readonly mixtures: { readonly added: number; readonly left: number };
}

/** Mixtures under names that are not there. */
function mergedMixtures(here: readonly OwnMixture[], brought: readonly OwnMixture[]) {
  const names = new Set(here.map(({ name }) => name));
  const fresh = brought.filter(({ name }) => !names.has(name));
  const all = [...here, ...fresh].slice(0, MOST_MIXTURES);
  const added = all.length - here.length;
  return { all, said: { added, left: fresh.length - added } };
}

/**
 * Adds the boxes, readings and mixtures that are not there; where a box of the name holds something else it stays, unless it is to be
 * replaced.
 */
export function mergedOwn(here: OwnStudio, brought: OwnStudio, replace: boolean): Merged {
  const boxes = new Map(here.boxes.map((box) => [box.name, box]));
  const added: string[] = [];
  const differing: string[] = [];
  const left: string[] = [];
  for (const box of brought.boxes) {
    const there = boxes.get(box.name);
    if (there === undefined && boxes.size >= MOST_BOXES) left.push(box.name);
    else if (there === undefined) added.push(box.name);
    else if (JSON.stringify(there.paints) !== JSON.stringify(box.paints)) differing.push(box.name);
    if (there === undefined ? boxes.size < MOST_BOXES : replace) boxes.set(box.name, box);
  }
  const known = new Set((here.readings ?? []).map((reading) => JSON.stringify(reading)));
  const fresh = (brought.readings ?? []).filter(
    (reading) => boxes.has(reading.box) && !known.has(JSON.stringify(reading)),
  );
  const readings = [...(here.readings ?? []), ...fresh].slice(0, MOST_READINGS);
  const addedReadings = readings.length - (here.readings ?? []).length;
  const mixtures = mergedMixtures(here.mixtures ?? [], brought.mixtures ?? []);
  const isSame =
    added.length === 0 &&
    (!replace || differing.length === 0) &&
    addedReadings === 0 &&
    mixtures.said.added === 0;
  return {
    own: isSame
      ? here
      : {
          ...here,
          boxes: [...boxes.values()],
          ...(readings.length > 0 && { readings: readings.toSorted((a, b) => a.at.localeCompare(b.at)) }),
          ...(mixtures.all.length > 0 && { mixtures: mixtures.all }),
        },
    added,
    differing,
    left,
    readings: { added: addedReadings, left: fresh.length - addedReadings },
    mixtures: mixtures.said,
  };
}
