/** `mudlark record export | import | reset`: taking a learner's record along, and beginning anew. */
import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import { StoreError } from '../errors.js';
import { shownPath } from '../files/faults.js';
import { requireOutside, writeNamed } from '../files/named.js';
import { PRIVATE } from '../files/write.js';
import type { LearnerFiles, Profile } from '../profile/index.js';
import { bringIn, exportPieces, readContent, readImport, resetRecord } from '../profile/index.js';

/** Asks a yes-or-no question. */
export type Confirm = (question: string) => boolean | Promise<boolean>;

const counted = (n: number, word: string): string => `${n.toLocaleString('en')} ${word}${n === 1 ? '' : 's'}`;

/** Refuses to tell of a record that there is and that cannot be read. @throws StoreError saying which and why */
export function requireReadable({ unreadable }: Profile): void {
  if (unreadable !== undefined) throw new StoreError(unreadable);
}

/** Refuses a file to be written where records are kept. @throws DataError */
export function requireNoRecord({ files }: Profile, path: string): void {
  if (files !== undefined) requireOutside(path, dirname(files.folder));
}

function filesOf(profile: Profile): LearnerFiles {
  requireReadable(profile);
  if (profile.files === undefined || !profile.saving)
    throw new StoreError(profile.problem ?? 'there is no place for a record; set HOME or XDG_DATA_HOME');
  return profile.files;
}

export interface ExportOptions {
  readonly now: Date;
  /** Write over a file that is there. */
  readonly force?: boolean;
}

/** What an export made, and what is to be said of it. */
export interface Exported {
  readonly text: string;
  readonly notes: readonly string[];
}

function notesOn({ unread, leftOut }: { readonly unread: number; readonly leftOut: number }): string[] {
  return [
    ...(unread > 0
      ? [
          `${counted(unread, 'line')} that this version cannot read ${unread === 1 ? 'is' : 'are'} in it as ${unread === 1 ? 'it stands' : 'they stand'}.`,
        ]
      : []),
    ...(leftOut > 0
      ? [`${counted(leftOut, 'line')} of more than a megabyte ${leftOut === 1 ? 'is' : 'are'} not in it.`]
      : []),
  ];
}

/**
 * The record as one JSON document, for standard output.
 * @throws StoreError when it cannot be read
 */
export function recordExportText(profile: Profile, { now }: ExportOptions): Exported {
  requireReadable(profile);
  const content = readContent(profile.files);
  const text = [...exportPieces(content, profile.learner, 'json', now)].join('');
  return { text, notes: notesOn(content) };
}

/**
 * Writes the record to a file, whole or not at all.
 * @returns one line saying so, and one for what could not be read
 * @throws DataError when the file is there, or lies among the records, or cannot be written; StoreError when the record cannot be read
 */
export function recordExport(profile: Profile, path: string, { now, force = false }: ExportOptions): string {
  requireReadable(profile);
  requireNoRecord(profile, path);
  const content = readContent(profile.files);
  const format = path.endsWith('.jsonl') ? 'jsonl' : 'json';
  writeNamed(path, exportPieces(content, profile.learner, format, now), force, PRIVATE);
  return [`The record of ${profile.shownLearner} is in ${shownPath(path)}.`, ...notesOn(content), ''].join(
    '\n',
  );
}

/**
 * Brings a record in: answers that are not there yet are added, and what this version cannot read is put back as it stands.
 * @param input what came in at standard input, where that is read in the place of the file
 * @returns lines saying how many
 * @throws DataError when the file holds nothing that can be used; StoreError when there is no place for it
 */
export function recordImport(profile: Profile, path: string, input?: Buffer): string {
  const files = filesOf(profile);
  const read = readImport(path, input);
  const { entries, refused, firstRefused } = read;
  const added = bringIn(files, profile.learner, read);
  profile.reload();
  const known = entries.length - added.answers;
  return [
    `${counted(added.answers, 'answer')} added to the record of ${profile.shownLearner}; ${known === 0 ? 'none was' : `${known.toLocaleString('en')} ${known === 1 ? 'was' : 'were'}`} there already.`,
    ...(added.unread === 0
      ? []
      : [
          `${counted(added.unread, 'line')} that this version cannot read ${added.unread === 1 ? 'was' : 'were'} put back as ${added.unread === 1 ? 'it stands' : 'they stand'}.`,
        ]),
    ...(refused === 0
      ? []
      : [
          `${counted(refused, 'answer')} could not be used and ${refused === 1 ? 'was' : 'were'} left out; the first is number ${firstRefused}.`,
        ]),
    ...profile.cautions,
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
    `Begin a new record for ${profile.shownLearner}? The old one, with ${counted(count, 'answer')}, is kept as a copy.`,
  );
  if (!isSure) return 'Nothing was changed.\n';
  const kept = resetRecord(files, now);
  profile.reload();
  return kept === undefined
    ? `The record of ${profile.shownLearner} is empty already.\n`
    : `A new record is begun; the old one is kept as ${shownPath(kept)}.\n`;
}
