/**
 * A learner's profile: settings, standing, and the saving of answers. Opening never fails for want of a disk: then
 * `saving` is false, `problem` says why in one line, and practice goes on in memory.
 */

import { StoreError } from '../errors.js';
import { faultWords, isFileFault, shownPath } from '../files/faults.js';
import type { HistoryEntry, Standing } from '../practice/index.js';
import { addAnswer, emptyStanding } from '../practice/index.js';
import { shownName } from './learners.js';
import type { ProfilePaths } from './paths.js';
import { findPaths } from './paths.js';
import type { LearnerFiles } from './place.js';
import { learnerFiles, makePlace, placeProblem } from './place.js';
import { appendAnswer } from './record-append.js';
import type { LoadedRecord } from './record-load.js';
import { loadRecord, MAX_LINES } from './record-load.js';
import { setAside } from './set-aside.js';
import type { ResolvedSettings, SettingFlags } from './settings.js';
import { resolveSettings } from './settings.js';

/** Answers held in memory while they cannot be saved, for when they can be again. */
const MOST_UNSAVED = 10_000;

/** The one line for a learner whose answers are not kept. */
const notSavingLine = (reason: string): string =>
  `Not saving: ${reason}. Practice works, but nothing is kept.`;

export interface SaveResult {
  readonly saved: boolean;
  /** One line, when it was not saved. */
  readonly problem?: string;
}

export class Profile {
  /** The exact name; show {@link shownLearner}. */
  readonly learner: string;
  readonly settings: ResolvedSettings;
  readonly paths: ProfilePaths;
  /** Absent when there is no place for a record. */
  readonly files: LearnerFiles | undefined;
  /** Lines to show once: damaged settings, lines set aside. */
  readonly notices: string[];
  /** Where the learner stands; changed in place by {@link save}. */
  standing: Standing = emptyStanding();
  /** Lines of the record that cannot be read. */
  foreignLines = 0;
  /** One line to show on every screen while nothing is saved. */
  problem: string | undefined;
  #unsaved: HistoryEntry[] = [];

  constructor(settings: ResolvedSettings, paths: ProfilePaths) {
    this.settings = settings;
    this.paths = paths;
    this.learner = settings.values.learner;
    this.notices = [...settings.notices];
    this.files = paths.data === undefined ? undefined : learnerFiles(paths.data, this.learner);
    this.reload();
  }

  get saving(): boolean {
    return this.problem === undefined;
  }

  get shownLearner(): string {
    return shownName(this.learner);
  }

  /** Whether the welcome is still to be shown. */
  get isFirstRun(): boolean {
    return !this.settings.values.welcomed;
  }

  /** Reads the record again: another program may have added to it. A record that cannot be read is a `problem`, nothing thrown. */
  reload(): void {
    if (this.files === undefined) {
      this.problem = notSavingLine(
        `${this.paths.problem ?? 'there is no folder for data'}, so there is no place for a record`,
      );
      return;
    }
    const reason = placeProblem(this.files);
    this.problem = reason === undefined ? undefined : notSavingLine(reason);
    try {
      const loaded = loadRecord(this.files.record, this.saving ? this.files.summary : undefined);
      this.standing = loaded.standing;
      this.foreignLines = loaded.foreignCount;
      for (const entry of this.#unsaved) addAnswer(this.standing, entry);
      this.#report(loaded, this.files);
    } catch (error) {
      if (!isFileFault(error)) throw error;
      this.problem ??= notSavingLine(`${shownPath(this.files.record)}: ${faultWords(error, 'read')}`);
    }
  }

  #report({ foreign, isCut }: LoadedRecord, files: LearnerFiles): void {
    if (isCut)
      this.notices.push(
        `${shownPath(files.record)} has more than ${MAX_LINES.toLocaleString('en')} lines; later ones are kept but not counted. Export it and begin a new one.`,
      );
    if (foreign.length === 0) return;
    try {
      const fresh = this.saving ? setAside(files.setAside, foreign) : 0;
      if (fresh > 0)
        this.notices.push(
          `${fresh} line${fresh === 1 ? '' : 's'} of the record could not be read; copied to ${shownPath(files.setAside)}, the record is unchanged.`,
        );
    } catch (error) {
      if (!isFileFault(error)) throw error;
      // The lines stay where they are, in the record; progress gives their number.
    }
  }

  /**
   * Saves an answer and adds it to the standing. When it returns `saved`, the answer is on disk. What could
   * not be saved is no fault that is thrown: it is tried again with the next answer.
   */
  save(entry: HistoryEntry): SaveResult {
    addAnswer(this.standing, entry);
    this.#unsaved.push(entry);
    if (this.#unsaved.length > MOST_UNSAVED) this.#unsaved.shift();
    if (this.files === undefined) return { saved: false, ...(this.problem && { problem: this.problem }) };
    try {
      makePlace(this.files, this.learner);
      for (let next = this.#unsaved[0]; next !== undefined; next = this.#unsaved[0]) {
        appendAnswer(this.files.record, next);
        this.#unsaved.shift();
      }
      this.problem = undefined;
      return { saved: true };
    } catch (error) {
      // No record can hold this one: it is not tried again.
      if (error instanceof StoreError) {
        this.#unsaved.shift();
        return { saved: false, problem: error.message };
      }
      if (!isFileFault(error)) throw error;
      this.problem = notSavingLine(`${faultWords(error)} (${shownPath(this.files.folder)})`);
      return { saved: false, problem: this.problem };
    }
  }
}

/**
 * Opens the profile of a learner.
 * @param flags texts from the command line, by setting (`learner`, `palette`, ...)
 * @throws UsageError for a flag that its setting does not take; nothing else
 */
export async function openProfile(flags: SettingFlags = {}): Promise<Profile> {
  const paths = await findPaths();
  return new Profile(await resolveSettings(paths.config, flags), paths);
}
