/**
 * A learner's settings and boxes, without the record: all that a plain command needs to know whose paints are meant. Opening never
 * fails for want of a disk.
 */

import { existsSync } from 'node:fs';
import { StoreError } from '../errors.js';
import { shownName } from './learners.js';
import { NOTHING_OWN } from './own-palette.js';
import type { OwnStudio } from './own-studio.js';
import type { ProfilePaths } from './paths.js';
import { findPaths } from './paths.js';
import type { LearnerFiles } from './place.js';
import { learnerFiles } from './place.js';
import type { ResolvedSettings, SettingFlags } from './settings.js';
import { resolveSettings } from './settings.js';

export class Shelf {
  /** The exact name; show {@link shownLearner}. */
  readonly learner: string;
  readonly settings: ResolvedSettings;
  readonly paths: ProfilePaths;
  /** Absent when there is no place for files of the learner's. */
  readonly files: LearnerFiles | undefined;
  /** Lines to show once: damaged settings, lines set aside. */
  readonly notices: string[];
  /** What the learner has put together. */
  own: OwnStudio = NOTHING_OWN;

  constructor(settings: ResolvedSettings, paths: ProfilePaths) {
    this.settings = settings;
    this.paths = paths;
    this.learner = settings.values.learner;
    const isPlaced = paths.data !== undefined && settings.learnerDoubt === undefined;
    this.files = isPlaced ? learnerFiles(paths.data, this.learner) : undefined;
    this.notices = [...settings.notices];
  }

  get shownLearner(): string {
    return shownName(this.learner);
  }

  /** Takes in what is on the disk. A file that cannot be used is a notice, nothing thrown. */
  takeOwn(read: (files: LearnerFiles) => OwnStudio): void {
    if (this.files === undefined) return;
    try {
      this.own = read(this.files);
    } catch (error) {
      if (!(error instanceof StoreError)) throw error;
      this.own = NOTHING_OWN;
      this.notices.push(`${error.message}; your boxes are not used, the file is left as it is.`);
    }
  }
}

/**
 * Opens the shelf of a learner.
 * @param flags texts from the command line, by setting (`learner`, `palette`, ...)
 * @throws UsageError for a flag that its setting does not take; nothing else
 */
export async function openShelf(flags: SettingFlags = {}): Promise<Shelf> {
  const paths = await findPaths();
  const shelf = new Shelf(await resolveSettings(paths.config, flags), paths);
  // What reads the file is loaded only where there is one: most that mix have no box of their own.
  if (shelf.files !== undefined && existsSync(shelf.files.studio))
    shelf.takeOwn((await import('./studio-file.js')).readOwn);
  return shelf;
}
