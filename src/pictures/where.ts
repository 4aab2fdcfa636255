/** Which picture a drill is set in, and in which of its areas its colours lie. */
import type { Drill } from '../drills/kinds/index.js';
import { didYouMean } from '../text/nearest.js';
import type { Lies, Picture } from './types.js';

/** The picture with this id, or undefined. */
export function findPicture(pictures: readonly Picture[], id: string | undefined): Picture | undefined {
  return pictures.find((picture) => picture.id === id);
}

/** Where the colours of a drill lie: as the drill says, else as the picture says of its subject, else of any. */
export function liesIn(picture: Picture, drill: Drill): Lies {
  const subject = drill.kind === 'mix' ? drill.subject : undefined;
  const own = subject !== undefined && Object.hasOwn(picture.subjects, subject) ? picture.subjects[subject] : undefined;
  return drill.lies ?? own ?? picture.lies;
}

/** What is wrong with the place of a drill. */
export interface PlaceFault {
  /** Keys below the drill. */
  readonly path: readonly string[];
  readonly message: string;
}

/** The first fault in what a drill says of its picture; undefined when there is none. */
export function placeFault(pictures: readonly Picture[], drill: Drill): PlaceFault | undefined {
  const { picture: id, lies } = drill;
  if (id === undefined)
    return lies === undefined ? undefined : { path: ['lies'], message: 'lies needs a picture to lie in' };
  const picture = findPicture(pictures, id);
  if (picture === undefined) {
    const near = didYouMean(
      id,
      pictures.map((one) => one.id),
    );
    return { path: ['picture'], message: `no picture is called "${id}".${near}` };
  }
  const areas = picture.areas.map((area) => area.id);
  for (const [key, area] of Object.entries(lies ?? {})) {
    if (areas.includes(area)) continue;
    return { path: ['lies', key], message: `${id} has no area "${area}".${didYouMean(area, areas)}` };
  }
  return undefined;
}
