/** The file of a room: where it lies, going on with the one of an earlier hour, saving it after each vote. */
import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DataError } from '../../errors.js';
import { replaceNamed, writeNamed } from '../../files/named.js';
import { readText } from '../../files/read.js';
import type { Handout } from '../handout.js';
import { letteredHandout } from '../lettered.js';
import { createGrader } from '../marking.js';
import { MOST_ROOM, parseRoomCounts, type RoomCounts, roomCountsText } from '../room-counts.js';
import { roomFault } from '../room-result.js';
import { inLetters } from '../room-votes.js';
import { shownFile } from './read-files.js';
import { handoutStem } from './sitting-file.js';

/** Most rooms of one handout in one folder. */
const MOST_ROOMS = 200;

/** A file of counts. */
export interface KeptRoom {
  readonly path: string;
  /**
   * Saves in one step, through to the disk.
   * @throws DataError when it cannot be written, or when something else has made or changed the file meanwhile
   */
  save(counts: RoomCounts): void;
}

/** Where the counts of an hour can be kept. */
export interface OpenRoom {
  /** The last room of this handout, to go on with. */
  readonly found?: KeptRoom & { readonly counts: RoomCounts };
  /** A file that is not there yet. */
  readonly fresh: KeptRoom;
  /** Why the last file there is left alone; absent where there is none, or it can be gone on with. */
  readonly note?: string;
}

const textAt = (path: string): string | undefined =>
  existsSync(path) ? readText(path, MOST_ROOM) : undefined;

function kept(path: string, text: string | undefined): KeptRoom {
  let known = text;
  return {
    path,
    save(counts) {
      const there = textAt(path);
      if (there !== known)
        throw new DataError(
          `${shownFile(path)}: another window or program has ${known === undefined ? 'made' : 'changed'} this file; close one of them and start again`,
        );
      const next = roomCountsText(counts);
      if (known === undefined) writeNamed(path, next, false);
      else if (next !== known) replaceNamed(path, next);
      known = next;
    },
  };
}

/** The counts in a file, in the order of the letters. @throws DataError when they are not of this handout */
function countsIn(handout: Handout, text: string, file: string): RoomCounts {
  const counts = parseRoomCounts(text, file);
  const fault = roomFault(handout, createGrader(handout), counts);
  if (fault !== undefined) throw new DataError(`${file}: ${fault}`);
  const lettered = letteredHandout(handout);
  const inOrder = inLetters(
    counts,
    (drill) => lettered[handout.questions.findIndex((each) => each.drill.id === drill)],
  );
  if (inOrder === undefined)
    throw new DataError(`${file}: these counts are for other answers than have letters here`);
  return inOrder;
}

/** "week3.room.json", then "week3.2.room.json" and so on. */
const roomPath = (handoutPath: string, index: number): string =>
  join(dirname(handoutPath), `${handoutStem(handoutPath)}${index === 1 ? '' : `.${index}`}.room.json`);

/**
 * Looks for the last room held with a handout, and for a name for a new one. No file is written yet, and none that is there is
 * ever replaced but to go on with it.
 * @throws DataError when the folder holds more rooms than one handout has
 */
export function openRoom(handoutPath: string, handout: Handout): OpenRoom {
  let free = 1;
  while (existsSync(roomPath(handoutPath, free)))
    if (++free > MOST_ROOMS)
      throw new DataError(
        `${shownFile(handoutPath)}: ${MOST_ROOMS} rooms are kept beside it; move some away`,
      );
  const fresh = kept(roomPath(handoutPath, free), undefined);
  if (free === 1) return { fresh };
  const path = roomPath(handoutPath, free - 1);
  try {
    const text = readText(path, MOST_ROOM);
    return { fresh, found: { ...kept(path, text), counts: countsIn(handout, text, shownFile(path)) } };
  } catch (error) {
    if (!(error instanceof DataError)) throw error;
    return { fresh, note: error.message };
  }
}
