/** Which of the written drills hold with a box: those of its paints, checked again where a strength was corrected. */
import { seedOf } from '../chance/draw.js';
import { checkDrill } from '../drills/check.js';
import type { Drill } from '../drills/kinds/index.js';
import { paintsIn } from '../drills/paint-names.js';
import { isFileFault } from '../errors.js';
import { readUsable } from '../files/read.js';
import { PRIVATE, replaceWhole } from '../files/write.js';
import { boxStudio, correctedIn, type Palette, revisionOf, type Studio } from '../paints/index.js';
import { jsonOf, membersOf } from '../text/json.js';
import { drillsWithin } from './drill-refs.js';

/** The written drills of a box, and how many it leaves out. */
export interface BoxDrills {
  readonly drills: readonly Drill[];
  /** Left out for paints that the box does not hold. */
  readonly notOwned: number;
  /** Left out since they are no sound drills at the strengths of the box. */
  readonly unsound: number;
}

/** Where findings are kept, and by which version of the prediction. */
export interface Checks {
  /** Absent: nothing is kept. */
  readonly path: string | undefined;
  readonly engine: string;
}

const MOST_BYTES = 200_000;
/** Findings that are kept, the latest last. */
const MOST_KEPT = 20;

/** Ids of the drills that do not hold, by what was checked. */
type Findings = Readonly<Record<string, readonly string[]>>;

function readFindings(path: string | undefined): Findings {
  const read = path === undefined ? undefined : membersOf(jsonOf(readUsable(path, MOST_BYTES) ?? ''));
  const lists = Object.entries(read ?? {}).filter(
    (entry): entry is [string, string[]] =>
      Array.isArray(entry[1]) && entry[1].every((id) => typeof id === 'string'),
  );
  return Object.fromEntries(lists);
}

function keepFindings(path: string | undefined, findings: Findings): void {
  if (path === undefined) return;
  try {
    const kept = Object.fromEntries(Object.entries(findings).slice(-MOST_KEPT));
    replaceWhole(path, `${JSON.stringify(kept)}\n`, PRIVATE);
  } catch (error) {
    // The drills are checked again the next time.
    if (!isFileFault(error)) throw error;
  }
}

/** Of drills with corrected paints those that the checker does not pass: about a twenty-fifth of a second each, once for each revision. */
function unsoundOf(
  studio: Studio,
  box: Palette,
  drills: readonly Drill[],
  { path, engine }: Checks,
): ReadonlySet<string> {
  const changed = new Set(correctedIn(box));
  const doubtful = drills.filter((drill) => paintsIn(drill).some((id) => changed.has(id)));
  if (doubtful.length === 0) return new Set();
  const key = `${revisionOf(box)} ${seedOf(engine, JSON.stringify(doubtful))}`;
  const findings = readFindings(path);
  const { [key]: known } = findings;
  if (known !== undefined) return new Set(known);
  const own = boxStudio(studio, box);
  const found = doubtful.filter((drill) => checkDrill(own, drill).faults.length > 0).map(({ id }) => id);
  keepFindings(path, { ...findings, [key]: found });
  return new Set(found);
}

/** The drills that can be practised with a box. */
export function drillsOfBox(
  studio: Studio,
  box: Palette,
  drills: readonly Drill[],
  checks: Checks,
): BoxDrills {
  const within = drillsWithin(drills, box.pigments);
  const unsound = unsoundOf(studio, box, within, checks);
  return {
    drills: within.filter(({ id }) => !unsound.has(id)),
    notOwned: drills.length - within.length,
    unsound: unsound.size,
  };
}

/** How many written drills are left out with a box, in a sentence; nothing where none is. */
export function leftOutWords(
  { name }: Palette,
  { drills, notOwned, unsound }: BoxDrills,
): string | undefined {
  if (notOwned + unsound === 0) return undefined;
  const all = drills.length + notOwned + unsound;
  const reasons = [
    ...(notOwned === 0 ? [] : [`${notOwned} need other paints`]),
    ...(unsound === 0 ? [] : [`${unsound} do not hold at its strengths`]),
  ];
  return `With the ${name} ${notOwned + unsound} of ${all} written drills are left out: ${reasons.join(', ')}.`;
}
