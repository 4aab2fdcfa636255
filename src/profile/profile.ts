/**
 * A learner's profile: settings, standing, and the saving of answers. Opening never fails for want of a disk: then
 * `saving` is false, `problem` says why in one line, and practice goes on in memory.
 */

import { faultWords, isFileFault, StoreError } from '../errors.js';
import { shownPath } from '../files/faults.js';
import type { HistoryEntry, Standing } from '../practice/index.js';
import { addAnswer, emptyStanding } from '../practice/index.js';
import type { ProfilePaths } from './paths.js';
import { findPaths } from './paths.js';
import type { LearnerFiles } from './place.js';
import { makePlace, placeProblem } from './place.js';
import { appendAnswer } from './record-append.js';
import type { LoadedRecord } from './record-load.js';
import { loadRecord, MAX_LINES } from './record-load.js';
import { setAside } from './set-aside.js';
import type { ResolvedSettings, SettingFlags } from './settings.js';
import { resolveSettings } from './settings.js';
import { Shelf } from './shelf.js';
import { readOwn } from './studio-file.js';

/** Answers held in memory while they cannot be saved, for when they can be again. */
const MOST_UNSAVED = 10_000;

/** How far an answer may be dated ahead of the clock, ms: spacing counts days. */
const CLOCK_SLACK_MS = 86_400_000;

const counted = (n: number, word: string): string => `${n.toLocaleString('en')} ${word}${n === 1 ? '' : 's'}`;

/** The one line for a learner whose answers are not kept. */
const notSavingLine = (reason: string): string =>
  `Not saving: ${reason}. Practice works, but nothing is kept.`;

export interface SaveResult {
  readonly saved: boolean;
  /** One line, when it was not saved. */
  readonly problem?: string;
}

export class Profile extends Shelf {
  /** Where the learner stands; changed in place by {@link save}. */
  standing: Standing = emptyStanding();
  /** Lines of the record that cannot be read. */
  foreignLines = 0;
  /** Lines of the record that a newer version of the program wrote. */
  newerLines = 0;
  /** One line to show on every screen while nothing is saved. */
  problem: string | undefined;
  /** Why the record there is could not be read, in one line: then the standing is not the learner's. */
  unreadable: string | undefined;
  readonly #now: () => number;
  #unsaved: HistoryEntry[] = [];

  constructor(settings: ResolvedSettings, paths: ProfilePaths, now: () => number = Date.now) {
    super(settings, paths);
    this.#now = now;
    this.reload();
  }

  /** What to know of the record whenever it is shown: one line each. */
  get cautions(): string[] {
    const { ahead } = this.standing;
    const isOne = this.newerLines === 1;
    return [
      ...(ahead === undefined
        ? []
        : [
            `${counted(ahead.count, 'answer')} ${ahead.count === 1 ? 'is' : 'are'} dated ahead of this computer's clock (up to ${new Date(ahead.lastMs).toISOString().slice(0, 10)}); levels count them, dates for review do not. Check the clock.`,
          ]),
      ...(this.newerLines === 0
        ? []
        : [
            `${counted(this.newerLines, 'answer')} ${isOne ? 'was' : 'were'} written by a newer version of the program; ${isOne ? 'it is' : 'they are'} kept, but not counted here. Bring the program up to date.`,
          ]),
    ];
  }

  get saving(): boolean {
    return this.problem === undefined;
  }

  /** Whether the welcome is still to be shown. */
  get isFirstRun(): boolean {
    return !this.settings.values.welcomed;
  }

  /** Reads the record again: another program may have added to it. A record that cannot be read is a `problem`, nothing thrown. */
  reload(): void {
    this.takeOwn(readOwn);
    const { learnerDoubt } = this.settings;
    if (this.files === undefined) {
      this.unreadable = learnerDoubt;
      this.problem = notSavingLine(
        learnerDoubt ??
          `${this.paths.problem ?? 'there is no folder for data'}, so there is no place for a record`,
      );
      return;
    }
    const reason = placeProblem(this.files);
    this.problem = reason === undefined ? undefined : notSavingLine(reason);
    try {
      const latestMs = this.#now() + CLOCK_SLACK_MS;
      const loaded = loadRecord(this.files.record, this.saving ? this.files.summary : undefined, latestMs);
      this.unreadable = undefined;
      this.standing = loaded.standing;
      this.foreignLines = loaded.foreignCount;
      this.newerLines = loaded.newerCount;
      for (const entry of this.#unsaved) addAnswer(this.standing, entry);
      this.#report(loaded, this.files);
    } catch (error) {
      if (!isFileFault(error)) throw error;
      const [words, shown] = [faultWords(error, 'read'), shownPath(this.files.record)];
      this.unreadable = `${shown}: ${words}`;
      // On a screen the end of the line may be cut: first why, then where.
      this.problem ??= notSavingLine(`the record: ${words} (${shown})`);
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
 * @param now the clock, ms; the computer's when absent
 * @throws UsageError for a flag that its setting does not take; nothing else
 */
export async function openProfile(flags: SettingFlags = {}, now?: () => number): Promise<Profile> {
  const paths = await findPaths();
  return new Profile(await resolveSettings(paths.config, flags), paths, now);
}
