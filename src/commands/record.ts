/** `mudlark record export | import | reset`: taking a learner's record along, and beginning anew. */
import { existsSync } from 'node:fs';
import { shownPath } from '../files/faults.js';
import { writeNamed } from '../files/named.js';
import { PRIVATE } from '../files/write.js';
import type { Profile } from '../profile/index.js';
import {
  bringIn,
  changeOwn,
  exportPieces,
  mergedOwn,
  type ReadImport,
  type RecordContent,
  readContent,
  readImport,
  resetRecord,
} from '../profile/index.js';
import { listWords } from '../text/list-words.js';
import { filesOf, requireNoRecord, requireReadable } from './learner-files.js';

/** Asks a yes-or-no question. */
export type Confirm = (question: string) => boolean | Promise<boolean>;

const counted = (n: number, word: string): string => `${n.toLocaleString('en')} ${word}${n === 1 ? '' : 's'}`;

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

function notesOn({ unread, leftOut, studio }: RecordContent, isLines = false): string[] {
  return [
    ...(unread > 0
      ? [
          `${counted(unread, 'line')} that this version cannot read ${unread === 1 ? 'is' : 'are'} in it as ${unread === 1 ? 'it stands' : 'they stand'}.`,
        ]
      : []),
    ...(leftOut > 0
      ? [`${counted(leftOut, 'line')} of more than a megabyte ${leftOut === 1 ? 'is' : 'are'} not in it.`]
      : []),
    ...(studio.isUnreadable ? ['Your boxes cannot be read and are not in it.'] : []),
    ...(isLines && studio.json !== undefined
      ? ['Your boxes are not in it: a file that ends in .json takes them along.']
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
  return [
    `The record of ${profile.shownLearner} is in ${shownPath(path)}.`,
    ...notesOn(content, format === 'jsonl'),
    '',
  ].join('\n');
}

/** Brings the boxes of an export in. @returns lines that say what came of it */
function importBoxes(profile: Profile, { studio }: ReadImport, force: boolean): string[] {
  if (studio === undefined) return [];
  if ('fault' in studio) return [`${studio.fault}; they were left out.`];
  let said: string[] = [];
  profile.own = changeOwn(filesOf(profile), profile.learner, (here) => {
    const { own, added, differing, left, readings, mixtures } = mergedOwn(here, studio.own, force);
    said = [
      ...(added.length === 0 ? [] : [`Boxes added: ${listWords(added)}.`]),
      ...(differing.length === 0
        ? []
        : [
            force
              ? `Boxes replaced: ${listWords(differing)}.`
              : `Boxes of these names were there and stay as they are: ${listWords(differing)}. --force replaces them.`,
          ]),
      ...(left.length === 0 ? [] : [`There is no room for more boxes; left out: ${listWords(left)}.`]),
      ...(readings.added === 0 ? [] : [`Readings of dried patches added: ${readings.added}.`]),
      ...(mixtures.added === 0 ? [] : [`Kept mixtures added: ${mixtures.added}.`]),
      ...(mixtures.left === 0 ? [] : [`There is no room for more mixtures; left out: ${mixtures.left}.`]),
      ...(readings.left === 0 ? [] : [`There is no room for more readings; left out: ${readings.left}.`]),
    ];
    return own;
  });
  return said;
}

/**
 * Brings a record in: answers that are not there yet are added, and what this version cannot read is put back as it stands.
 * @param input what came in at standard input, where that is read in the place of the file
 * @param force puts its boxes in the place of others of their names
 * @returns lines saying how many
 * @throws DataError when the file holds nothing that can be used; StoreError when there is no place for it
 */
export function recordImport(profile: Profile, path: string, input?: Buffer, force = false): string {
  const files = filesOf(profile);
  const read = readImport(path, input);
  const { entries, refused, firstRefused } = read;
  const added = bringIn(files, profile.learner, read);
  const boxes = importBoxes(profile, read, force);
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
    ...boxes,
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
  const { length: boxes } = profile.own.boxes;
  if (count === 0 && !existsSync(files.record) && !existsSync(files.studio))
    return `The record of ${profile.shownLearner} is empty already.\n`;
  const isSure = await confirm(
    `Begin a new record for ${profile.shownLearner}? The old one, with ${counted(count, 'answer')}${boxes === 0 ? '' : ` and ${boxes} of your own boxes`}, is kept as a copy.`,
  );
  if (!isSure) return 'Nothing was changed.\n';
  const kept = resetRecord(files, now);
  profile.reload();
  return kept === undefined
    ? `The record of ${profile.shownLearner} is empty already.\n`
    : `A new record is begun; the old one is kept as ${shownPath(kept)}.\n`;
}
