/** Where a learner's things are kept, for commands that change them; without what takes a record along. */
import { dirname } from 'node:path';
import { StoreError } from '../errors.js';
import { requireOutside } from '../files/named.js';
import type { LearnerFiles } from '../profile/place.js';
import type { Profile } from '../profile/profile.js';

/** Refuses to tell of a record that there is and that cannot be read. @throws StoreError saying which and why */
export function requireReadable({ unreadable }: Profile): void {
  if (unreadable !== undefined) throw new StoreError(unreadable);
}

/** Refuses a file to be written where records are kept. @throws DataError */
export function requireNoRecord({ files }: Profile, path: string): void {
  if (files !== undefined) requireOutside(path, dirname(files.folder));
}

/** Where a learner's things are kept. @throws StoreError when they cannot be */
export function filesOf(profile: Profile): LearnerFiles {
  requireReadable(profile);
  if (profile.files === undefined || !profile.saving)
    throw new StoreError(profile.problem ?? 'there is no place for a record; set HOME or XDG_DATA_HOME');
  return profile.files;
}
