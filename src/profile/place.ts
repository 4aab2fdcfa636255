/** Whether a learner's folder can be written to, found out without writing anything. */
import { accessSync, constants, existsSync, statfsSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { faultOf, faultWords, isFileFault } from '../errors.js';
import { shownPath } from '../files/faults.js';
import { makeFolder, PRIVATE, replaceWhole } from '../files/write.js';
import { learnerFolder } from './learners.js';

/** Room below which the disk counts as full, bytes: a set's answers and the checkpoint. */
const LEAST_ROOM = 65_536;

/** Files of one learner. */
export interface LearnerFiles {
  readonly folder: string;
  readonly record: string;
  /** The fold of the record; safe to delete. */
  readonly summary: string;
  readonly setAside: string;
  /** What the learner has put together: boxes of paints. */
  readonly studio: string;
  /** Which drills hold in them; safe to delete. */
  readonly checked: string;
  /** There while answers are brought in or a new record is begun. */
  readonly lock: string;
}

export function learnerFiles(dataFolder: string, learner: string): LearnerFiles {
  const folder = join(dataFolder, 'learners', learnerFolder(learner));
  return {
    folder,
    record: join(folder, 'record.jsonl'),
    summary: join(folder, 'record.summary.json'),
    setAside: join(folder, 'record.set-aside.jsonl'),
    studio: join(folder, 'studio.json'),
    checked: join(folder, 'studio.checked.json'),
    lock: join(folder, 'record.lock'),
  };
}

/** The nearest folder above that exists. */
function existing(path: string): string {
  let at = path;
  while (!existsSync(at) && dirname(at) !== at) at = dirname(at);
  return at;
}

function roomIn(folder: string): number {
  try {
    const { bavail, bsize } = statfsSync(folder);
    return bavail * bsize;
  } catch (error) {
    // Not every file system can say.
    if (!isFileFault(error)) throw error;
    return Number.POSITIVE_INFINITY;
  }
}

/** Why answers cannot be kept here, or undefined when they can. Nothing is written. */
export function placeProblem({ folder, record }: LearnerFiles): string | undefined {
  try {
    const base = existing(folder);
    if (!statSync(base).isDirectory()) return `${shownPath(base)} is not a folder`;
    accessSync(base, constants.W_OK | constants.X_OK);
    if (existsSync(record)) {
      if (!statSync(record).isFile()) return `the record is not a plain file (${shownPath(record)})`;
      accessSync(record, constants.R_OK | constants.W_OK);
    }
    if (roomIn(base) >= LEAST_ROOM) return undefined;
    return `${faultWords(faultOf('ENOSPC'))} (${shownPath(base)})`;
  } catch (error) {
    if (!isFileFault(error)) throw error;
    return `${faultWords(error)} (${shownPath(folder)})`;
  }
}

/** Makes the folder and notes whose it is. @throws the fault of the file system */
export function makePlace({ folder }: LearnerFiles, learner: string): void {
  const card = join(folder, 'learner.json');
  if (existsSync(card)) return;
  makeFolder(folder, 0o700);
  replaceWhole(card, `${JSON.stringify({ v: 1, name: learner })}\n`, PRIVATE);
}
