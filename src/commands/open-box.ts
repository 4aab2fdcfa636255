/** The paints as a learner has them, for plain commands: those of the box in use, or of one named for once. */
import { boxStudio, type Palette, type Studio } from '../paints/index.js';
import type { SettingFlags } from '../profile/settings.js';
import { openShelf, type Shelf } from '../profile/shelf.js';
import { boxInUse, boxNotice, learnerStudio } from './learner.js';

/** Options that say whose paints they are. */
export interface BoxFlags {
  readonly learner?: string;
  readonly box?: string;
  /** What `--box` was called before. */
  readonly palette?: string;
}

export interface OpenBox<P extends Shelf = Shelf> {
  readonly profile: P;
  readonly box: Palette;
  /** Paints under the owner's names, at the owner's strengths. */
  readonly studio: Studio;
}

/** The box, of whatever a learner's files are opened as. @throws UsageError for a box that is not there */
export async function openBoxOf<P extends Shelf>(
  open: (flags: SettingFlags) => Promise<P>,
  { learner, palette, box: named = palette }: BoxFlags,
): Promise<OpenBox<P>> {
  const profile = await open({
    ...(learner !== undefined && { learner }),
    ...(named !== undefined && { palette: named }),
  });
  const shelf = learnerStudio(profile);
  const box = boxInUse(shelf, profile);
  const notice = boxNotice(shelf, profile);
  for (const line of [...profile.notices, ...(notice === undefined ? [] : [notice])])
    process.stderr.write(`mudlark: ${line}\n`);
  return { profile, box, studio: boxStudio(shelf, box) };
}

/** The box, without the record. @throws as {@link openBoxOf} */
export const openBox = (flags: BoxFlags): Promise<OpenBox> => openBoxOf(openShelf, flags);
