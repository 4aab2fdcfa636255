/** Which picture a drill is set in, and in which of its areas its colours lie. */
import type { DrillFault } from '../drills/format.js';
import type { DrillCommon } from '../drills/types.js';
import { didYouMean } from '../text/nearest.js';
import type { Area, Lies, Picture } from './types.js';

/** The picture with this id, or undefined. */
export function findPicture(pictures: readonly Picture[], id: string | undefined): Picture | undefined {
  return pictures.find((picture) => picture.id === id);
}

const areaIds = ({ areas }: Picture): string[] => areas.map(({ id }) => id);

/** The area that a scene calls so: by its id, its words without their article, or one of its other names. */
export function namedArea({ areas }: Picture, name: string): string | undefined {
  const id = name.toLowerCase().replaceAll(' ', '-');
  const isCalled = ({ words, also = [] }: Area): boolean =>
    [words.replace(/^the /, ''), ...also].includes(name);
  return (areas.find((area) => area.id === id) ?? areas.find(isCalled))?.id;
}

/** What a drill says of its place: a subject is there where a mixture is asked for. */
type Placed = Pick<DrillCommon, 'picture' | 'lies'> & { readonly subject?: string | undefined };

/**
 * Where the colours of a drill lie: as the drill says, else as the picture says of its subject, else of any. A drill of a handout may
 * speak of areas that the picture does not have: then the picture decides.
 */
export function liesIn(picture: Picture, { lies, subject }: Placed): Lies {
  const areas = areaIds(picture);
  if (lies !== undefined && areas.includes(lies.start) && areas.includes(lies.passage)) return lies;
  const isKnown = subject !== undefined && Object.hasOwn(picture.subjects, subject);
  return isKnown ? (picture.subjects[subject] as Lies) : picture.lies;
}

/** The first fault in what a drill says of its picture; undefined when there is none. */
export function placeFault(
  pictures: readonly Picture[],
  { picture: id, lies }: Placed,
): DrillFault | undefined {
  if (id === undefined)
    return lies === undefined ? undefined : { path: ['lies'], message: 'needs a picture to lie in' };
  const picture = findPicture(pictures, id);
  if (picture === undefined) {
    const ids = pictures.map((one) => one.id);
    return { path: ['picture'], message: `no picture is called "${id}".${didYouMean(id, ids)}` };
  }
  const areas = areaIds(picture);
  for (const [key, area] of Object.entries(lies ?? {})) {
    if (areas.includes(area)) continue;
    return { path: ['lies', key], message: `${id} has no area "${area}".${didYouMean(area, areas)}` };
  }
  return undefined;
}
