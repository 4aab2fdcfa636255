/** What the learner's commands share: the learner's studio and box, and drills as practice wants them. */
import { countAnswers } from '../drills/answers.js';
import { type Drill, kindOf } from '../drills/kinds/index.js';
import { paintsIn } from '../drills/paint-names.js';
import { UsageError } from '../errors.js';
import { findPalette, libraryStudio, type Palette, type Studio, withBoxes } from '../paints/index.js';
import type { DrillRef } from '../practice/index.js';
import { type Profile, paletteOf, USUAL_PALETTE } from '../profile/index.js';
import { didYouMean } from '../text/nearest.js';
import { cleanText } from '../text/sanitize.js';

/** Drills that can be done with the paints of a palette, and the worked cases, in which somebody else has mixed. */
export function drillsWithin(drills: readonly Drill[], palette: readonly string[]): Drill[] {
  const box = new Set(palette);
  return drills.filter((drill) => drill.kind === 'worked' || paintsIn(drill).every((id) => box.has(id)));
}

/** A studio with the boxes of a learner in it. */
export const learnerStudio = ({ own }: Pick<Profile, 'own'>, studio: Studio = libraryStudio()): Studio =>
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
export function boxInUse(studio: Studio, { settings }: Pick<Profile, 'settings'>): Palette {
  const { palette } = settings.values;
  const isFlag = settings.list.some(({ key, source }) => key === 'palette' && source === 'flag');
  return isFlag ? readBox(studio, palette) : (findPalette(studio, palette) ?? readBox(studio, USUAL_PALETTE));
}

/** What to say where the box of the settings is not there; undefined where it is. */
export function boxNotice(
  studio: Studio,
  profile: Pick<Profile, 'settings' | 'shownLearner'>,
): string | undefined {
  const { palette } = profile.settings.values;
  if (findPalette(studio, palette) !== undefined) return undefined;
  const { name } = boxInUse(studio, profile);
  return `${profile.shownLearner} has no box called "${cleanText(palette, 60)}"; the ${name} are used. See: mudlark box list`;
}

/** Chance, 0-1, that a blind choice is good, where the answers are few enough to know it at a glance. */
function guessOf(studio: Studio, drill: Drill): number | undefined {
  const answers = countAnswers(kindOf(studio, drill).fields(drill));
  return answers <= 4 ? 1 / answers : undefined;
}

/** Drills as practice wants them. */
export function drillRefs(studio: Studio, drills: readonly Drill[]): DrillRef[] {
  return drills.map((drill) => {
    const guess = guessOf(studio, drill);
    return {
      id: drill.id,
      family: drill.family,
      level: drill.level,
      ...(guess === undefined ? {} : { guess }),
      ...(drill.kind === 'worked' ? { isWorked: true as const } : {}),
    };
  });
}
