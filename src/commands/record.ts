/** `mudlark record export | import | reset`: taking a learner's record along, and beginning anew. */
import { existsSync } from 'node:fs';
import { StoreError, UsageError } from '../errors.js';
import { shownPath, withWords } from '../files/faults.js';
import { PRIVATE, replaceWhole, writeNew } from '../files/write.js';
import type { ExportFormat, LearnerFiles, Profile } from '../profile/index.js';
import {
  appendAnswers,
  exportPieces,
  makePlace,
  notYetIn,
  readImport,
  resetRecord,
} from '../profile/index.js';

/** Asks a yes-or-no question. */
export type Confirm = (question: string) => boolean | Promise<boolean>;

const answers = (n: number): string => `${n.toLocaleString('en')} answer${n === 1 ? '' : 's'}`;

function filesOf(profile: Profile): LearnerFiles {
  if (profile.files === undefined || !profile.saving)
    throw new StoreError(profile.problem ?? 'there is no place for a record; set HOME or XDG_DATA_HOME');
  return profile.files;
}

export interface ExportOptions {
  readonly format?: ExportFormat;
  readonly now: Date;
  /** Write over a file that is there. */
  readonly force?: boolean;
}

/** The record as text, for standard output. */
export function recordExportText(profile: Profile, { format = 'json', now }: ExportOptions): string {
  return [...exportPieces(profile.files, profile.learner, format, now)].join('');
}

/**
 * Writes the record to a file, whole or not at all.
 * @returns one line saying so
 * @throws UsageError when the file is there; StoreError when it cannot be written
 */
export function recordExport(profile: Profile, path: string, options: ExportOptions): string {
  const { format = path.endsWith('.jsonl') ? 'jsonl' : 'json', now, force = false } = options;
  if (!force && existsSync(path))
    throw new UsageError(`${shownPath(path)} is there already; name another file or add --force`);
  withWords(
    'write',
    () => {
      const pieces = exportPieces(profile.files, profile.learner, format, now);
      (force ? replaceWhole : writeNew)(path, pieces, PRIVATE);
    },
    (words, cause) => new StoreError(`${shownPath(path)}: ${words}; nothing was written`, cause),
  );
  return `The record of ${profile.shownLearner} is in ${shownPath(path)}.\n`;
}

/**
 * Brings a record in: answers that are not there yet are added, in order of time.
 * @returns one or two lines saying how many
 * @throws DataError when the file holds nothing that can be used; StoreError when there is no place for it
 */
export function recordImport(profile: Profile, path: string, now: Date): string {
  const files = filesOf(profile);
  const { entries, refused, firstRefused } = readImport(path, now);
  const fresh = withWords(
    'keep',
    () => {
      const missing = notYetIn(files, entries);
      makePlace(files, profile.learner);
      appendAnswers(files.record, missing);
      return missing.length;
    },
    (words, cause) =>
      new StoreError(
        `${shownPath(files.record)}: ${words}; not all answers were added, bring the file in again`,
        cause,
      ),
  );
  profile.reload();
  const known = entries.length - fresh;
  return [
    `${answers(fresh)} added to the record of ${profile.shownLearner}; ${known === 0 ? 'none was' : `${known.toLocaleString('en')} ${known === 1 ? 'was' : 'were'}`} there already.`,
    ...(refused === 0
      ? []
      : [
          `${answers(refused)} could not be used and ${refused === 1 ? 'was' : 'were'} left out; the first is number ${firstRefused}.`,
        ]),
    '',
  ].join('\n');
}

/**
 * Begins a new record after asking; the old one stays, with the date in its name.
 * @returns one line saying what was done
 * @throws StoreError when it cannot be done; then nothing has changed
 */
export async function recordReset(profile: Profile, confirm: Confirm, now: Date): Promise<string> {
  const files = filesOf(profile);
  const { answers: count } = profile.standing;
  if (count === 0 && !existsSync(files.record))
    return `The record of ${profile.shownLearner} is empty already.\n`;
  const isSure = await confirm(
    `Begin a new record for ${profile.shownLearner}? The old one, with ${answers(count)}, is kept as a copy.`,
  );
  if (!isSure) return 'Nothing was changed.\n';
  const kept = resetRecord(files, now);
  profile.reload();
  return kept === undefined
    ? `The record of ${profile.shownLearner} is empty already.\n`
    : `A new record is begun; the old one is kept as ${shownPath(kept)}.\n`;
}
