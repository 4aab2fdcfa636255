/** The boxes of a learner, and the one in use. */
import { UsageError } from '../errors.js';
import { findPalette, libraryStudio, type Palette, type Studio, withBoxes } from '../paints/index.js';
// Not by the room's index, which brings the record and all that counts it.
import { paletteOf } from '../profile/own-palette.js';
import { USUAL_PALETTE } from '../profile/settings-keys.js';
import type { Shelf } from '../profile/shelf.js';
import { didYouMean } from '../text/nearest.js';
import { cleanText } from '../text/sanitize.js';

/** A studio with the boxes of a learner in it. */
export const learnerStudio = ({ own }: Pick<Shelf, 'own'>, studio: Studio = libraryStudio()): Studio =>
  withBoxes(
    studio,
    own.boxes.map((box) => paletteOf(studio, box)),
  );

/** A box by id. @throws UsageError with the nearest ids */
export function readBox(studio: Studio, id: string): Palette {
  const box = findPalette(studio, id);
  if (box !== undefined) return box;
  const ids = studio.palettes.map((known) => known.id);
  throw new UsageError(
    `no box is called "${cleanText(id, 60)}".${didYouMean(id, ids)} There are: ${ids.join(', ')}`,
  );
}

/** Paints of a palette by id. @throws UsageError with the nearest ids */
export const palettePaints = (studio: Studio, id: string): readonly string[] => readBox(studio, id).pigments;

/**
 * The box in use. Settings are everybody's, boxes one learner's: where this one has none of the name, the usual one.
 * @throws UsageError when the command line named one that is not there
 */
export function boxInUse(studio: Studio, { settings }: Pick<Shelf, 'settings'>): Palette {
  const { palette } = settings.values;
  const isFlag = settings.list.some(({ key, source }) => key === 'palette' && source === 'flag');
  return isFlag ? readBox(studio, palette) : (findPalette(studio, palette) ?? readBox(studio, USUAL_PALETTE));
}

/** What to say where the box of the settings is not there; undefined where it is. */
export function boxNotice(
  studio: Studio,
  profile: Pick<Shelf, 'settings' | 'shownLearner'>,
): string | undefined {
  const { palette } = profile.settings.values;
  if (findPalette(studio, palette) !== undefined) return undefined;
  const { name } = boxInUse(studio, profile);
  return `${profile.shownLearner} has no box called "${cleanText(palette, 60)}"; the ${name} are used. See: mudlark box list`;
}
