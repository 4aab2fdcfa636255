/** The file of what a learner has put together, beside the record: read bounded, replaced whole, changed by one program at a time. */
import { existsSync } from 'node:fs';
import { DataError, StoreError } from '../errors.js';
import { shownPath, withWords } from '../files/faults.js';
import { withLock } from '../files/lock.js';
import { readWhole } from '../files/read.js';
import { PRIVATE, replaceWhole } from '../files/write.js';
import { NOTHING_OWN } from './own-palette.js';
import { MOST_OWN_BYTES, type OwnStudio, ownText, parseOwn } from './own-studio.js';
import { type LearnerFiles, makePlace } from './place.js';

/** @throws DataError, without a name, when it cannot be used; the fault of the file system */
function readOwnFile(path: string): OwnStudio {
  return existsSync(path) ? parseOwn(readWhole(path, MOST_OWN_BYTES), 'it cannot be used') : NOTHING_OWN;
}

/** What a learner has; nothing where there is no file. @throws StoreError in one line when it cannot be read */
export function readOwn({ studio }: LearnerFiles): OwnStudio {
  return withWords(
    'read',
    () => readOwnFile(studio),
    (words, cause) => new StoreError(`${shownPath(studio)}: ${words}`, cause),
  );
}

/**
 * Changes what a learner has, from what is on the disk at that moment.
 * @throws StoreError when it cannot be read or kept; what `change` throws goes through. Then nothing has changed
 */
export function changeOwn(
  files: LearnerFiles,
  learner: string,
  change: (own: OwnStudio) => OwnStudio,
): OwnStudio {
  return withWords(
    'keep',
    () => {
      makePlace(files, learner);
      return withLock(files.lock, () => {
        const before = readOwn(files);
        const after = change(before);
        if (after !== before) replaceWhole(files.studio, ownText(after, 'this does not fit'), PRIVATE);
        return after;
      });
    },
    (words, cause) =>
      cause.cause instanceof DataError
        ? new DataError(`${words}; nothing was changed`, cause)
        : new StoreError(`${shownPath(files.studio)}: ${words}; nothing was changed`, cause),
  );
}
