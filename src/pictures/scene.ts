/** A picture with what a drill lays in it: the start where the scene says it lies, the passage open or with an answer in it. */
import { type Drill, kindOf } from '../drills/kinds/index.js';
import { STARTS } from '../drills/look.js';
import type { Answer, ResultSwatch } from '../drills/types.js';
import type { Studio } from '../paints/index.js';
import { type Painted, painted } from './covering.js';
import type { Covering, Picture, Reflecting } from './types.js';
import { findPicture, liesIn, namedArea } from './where.js';

/** A drill's picture, with what of the drill lies in it. */
export interface DrillScene {
  readonly painted: Painted;
  /** Area that the start lies in, where there is one. */
  readonly start?: string;
  /** Area that the answer lies in, or that is open until then; absent where no single one is asked for. */
  readonly passage?: string;
  /** Areas with colours that are to be judged by eye: no figure is said of them before the answer. */
  readonly unread: readonly string[];
  /** Set where no answer changes it: `laid`, the colours of the question lie in it; `setting`, it only shows where the scene is set. */
  readonly still?: 'laid';
}

/** What a drill lays, by area. */
interface Lain extends Omit<DrillScene, 'painted'> {
  readonly coverings: Readonly<Record<string, Covering>>;
}

/** What lies there before anything is chosen; undefined where a drill changes no colour. */
function startOf(studio: Studio, drill: Drill): Covering | undefined {
  if (drill.kind === 'mix') return drill.start;
  return kindOf(studio, drill)
    .given(drill)
    .find(({ label }) => STARTS.includes(label));
}

const isYours = ({ label }: ResultSwatch): boolean => /^yours(,|$)/.test(label);

/** What an answer lays; undefined where it gives no colour. */
function laidByAnswer(studio: Studio, drill: Drill, answer: Answer): Covering | undefined {
  const kind = kindOf(studio, drill);
  return (
    kind.laid?.(drill, answer) ??
    (kind.grade(drill, answer).swatches.find(isYours) satisfies Reflecting | undefined)
  );
}

/** The areas of the picture that the colours to be read are named for, each covered by its own; undefined where one has none. */
function coveredByName(
  picture: Picture,
  colours: readonly { readonly name: string; readonly laid: Covering }[],
): { readonly areas: readonly string[]; readonly coverings: Readonly<Record<string, Covering>> } | undefined {
  const areas = colours.flatMap(({ name }) => namedArea(picture, name) ?? []);
  if (new Set(areas).size < colours.length) return undefined;
  return {
    areas,
    coverings: Object.fromEntries(colours.map(({ laid }, at) => [areas[at] as string, laid])),
  };
}

/** The colours of a passage to be judged, each in the area of its name; undefined where one of them has none. */
function namedIn(
  studio: Studio,
  picture: Picture,
  drill: Drill,
  answer: Answer | undefined,
): Lain | undefined {
  if (drill.kind === 'sort-values') {
    const given = kindOf(studio, drill).given(drill);
    const named = coveredByName(
      picture,
      given.map((swatch) => ({ name: swatch.label, laid: swatch })),
    );
    return (
      named && { coverings: named.coverings, unread: answer === undefined ? named.areas : [], still: 'laid' }
    );
  }
  // Of what is told by its colours a picture in other colours would tell something else.
  if (drill.kind !== 'diagnosis') return undefined;
  const named = coveredByName(picture, drill.areas);
  if (named === undefined) return undefined;
  const { areas, coverings } = named;
  if (answer === undefined) return { coverings, unread: areas };
  // A result names the area that it is about first, then what the answer makes of it.
  const { swatches } = kindOf(studio, drill).grade(drill, answer);
  const passage = areas[drill.areas.findIndex(({ name }) => name === swatches[0]?.label)];
  const yours = swatches.find(isYours);
  if (passage === undefined || yours === undefined) return { coverings, unread: [] };
  return { coverings: { ...coverings, [passage]: yours }, passage, unread: [] };
}

function lainIn(
  studio: Studio,
  picture: Picture,
  drill: Drill,
  answer: Answer | undefined,
): Lain | undefined {
  const start = startOf(studio, drill);
  if (start === undefined) return namedIn(studio, picture, drill, answer);
  const lies = liesIn(picture, drill);
  const laid = answer === undefined ? undefined : laidByAnswer(studio, drill, answer);
  return {
    coverings: { [lies.start]: start, [lies.passage]: laid ?? 'open' },
    start: lies.start,
    passage: lies.passage,
    unread: [],
  };
}

/**
 * The scenes of drills, each painted once.
 * @returns for a drill, and the answer that lies in it: undefined where nothing of the drill lies in a picture; throws RangeError when the
 * answer does not fit the drill
 */
export function drillScenes(
  studio: Studio,
  pictures: readonly Picture[],
): (drill: Drill, answer?: Answer) => DrillScene | undefined {
  const known = new WeakMap<Drill, Map<string, DrillScene | undefined>>();
  const paint = (drill: Drill, answer: Answer | undefined): DrillScene | undefined => {
    const picture = findPicture(pictures, drill.picture);
    const lain = picture && lainIn(studio, picture, drill, answer);
    if (picture === undefined || lain === undefined) return undefined;
    const { coverings, ...rest } = lain;
    return { painted: painted(studio, picture, coverings), ...rest };
  };
  return (drill, answer) => {
    const scenes = known.get(drill) ?? new Map<string, DrillScene | undefined>();
    known.set(drill, scenes);
    const key = answer === undefined ? '' : JSON.stringify(answer);
    if (!scenes.has(key)) scenes.set(key, paint(drill, answer));
    return scenes.get(key);
  };
}
