/** Generator of the family of diagnosis: a passage with one fault, and repairs of which one mends it. */

import { type Draw, pick, shuffled } from '../../chance/draw.js';
import type { Studio } from '../../paints/index.js';
import { listWords } from '../../text/list-words.js';
import type { Wash } from '../../washes/index.js';
import { namesOf, sentence } from '../../words/laid.js';
import { bestRepair, type FaultName, faultsOf, standing } from '../kinds/diagnosis/judge.js';
import { repaired } from '../kinds/diagnosis/repairs.js';
import type { DiagnosisDrill, Plan, PlannedArea, Repair, RepairOption } from '../kinds/diagnosis/schema.js';
import { canBe, canBeIn, hasTrait, type Subject } from '../lexicon.js';
import { colourOf, pair, tenth, wash, workedDraft } from './made.js';
import { bare, placed } from './sentences.js';
import { litSubject, SUBJECT_PLACES } from './subjects.js';
import { thingAt, twoColours } from './things.js';
import type { DrillDraft, Generator } from './types.js';

/** A plan that a colour lies in the middle of. */
function planAround({ step, chroma }: { readonly step: number; readonly chroma: number }): Plan {
  const half = Math.max(7, Math.round(0.18 * chroma));
  const low = Math.max(0.5, Math.min(9.2, tenth(step - 0.6)));
  const dull = Math.max(0, Math.round(chroma) - half);
  return { step: [low, tenth(low + 1.2)], chroma: [dull, Math.round(chroma) + half] };
}

function areaOf(
  studio: Studio,
  palette: readonly string[],
  index: number,
  place: string,
  avoid: readonly string[],
  draw: Draw,
): { readonly area: PlannedArea; readonly subject: Subject } | undefined {
  const found = thingAt(studio, palette, [0.05, 0.1, 0.2, 0.35, 0.6], draw, (colour) =>
    litSubject(colour, avoid, draw, place),
  );
  if (found === undefined) return undefined;
  const { laid, colour, subject } = found;
  return {
    area: { id: `area-${index + 1}`, name: bare(subject), laid, plan: planAround(colour) },
    subject,
  };
}

/** Glazes and liftings that could be tried. */
function pool(palette: readonly string[], draw: Draw): Repair[] {
  const glazes = palette.flatMap((id) =>
    [0.06, 0.12, 0.25, 0.5].map((strength): Repair => ({ glaze: wash(id, strength) })),
  );
  return shuffled([...glazes, { lift: 0.4 }, { lift: 0.7 }], draw);
}

/** The plan of what would lie there after a repair: so that there is one, and the area is out of it now by what is wanted. */
function faultyArea(
  studio: Studio,
  { area, subject }: { readonly area: PlannedArea; readonly subject: Subject },
  repairs: readonly Repair[],
  fault: FaultName,
): { readonly area: PlannedArea; readonly right: Repair } | undefined {
  // What lies far off is mended lighter, if at all: a glaze would bring it forward.
  const isFar = hasTrait(subject, 'far');
  for (const repair of repairs) {
    const mended = colourOf(studio, repaired(studio, area.laid, repair));
    if (!canBeIn(subject, 'lit', mended)) continue;
    const plan = planAround(mended);
    const now = standing(studio, area.laid, plan);
    // One fault, so that one button is right: value out or chroma out, and the other as planned.
    const faults = faultsOf(now);
    if (isFar && mended.step > now.seen.colour.step + 0.3) continue;
    if (now.score < 0.4 && faults.length === 1 && faults[0] === fault)
      return { area: { ...area, plan }, right: repair };
  }
  return undefined;
}

/** The repairs to choose from; from level 4 it may be left alone. */
function offered(repairs: readonly Repair[], level: number): RepairOption[] {
  const options = repairs.map((repair, index): RepairOption => ({ id: `repair-${index + 1}`, repair }));
  return level < 4 ? options : [...options, { id: 'leave', repair: { leave: true } }];
}

/** All areas by name, or the place alone: a title that names some would point at one. */
function titleOf(areas: readonly PlannedArea[], place: string): string {
  const all = sentence(listWords(areas.map(({ name }) => name)));
  if (all.length <= 60) return all;
  return place === 'weather' ? 'A sheet in rain and fog' : `A sheet from the ${place}`;
}

/** The paint that a repair glazes with, if any. */
const glazedWith = (repair: Repair): string | undefined =>
  'glaze' in repair ? Object.keys(repair.glaze.paints).join('+') : undefined;

const diagnosis: Generator = (studio, { level, palette, avoid }, draw) => {
  if (level === 1) return workedPassage(studio, palette, avoid, draw);
  const count = [3, 3, 3, 4, 5][level - 1] as number;
  const place = pick(SUBJECT_PLACES, draw);
  const areas: PlannedArea[] = [];
  const subjects: Subject[] = [];
  for (let index = 0; index < count; index++) {
    const found = areaOf(studio, palette, index, place, [...avoid, ...subjects.map(({ id }) => id)], draw);
    if (found === undefined || areas.some(({ name }) => name === found.area.name)) return undefined;
    areas.push(found.area);
    subjects.push(found.subject);
  }
  const repairs = pool(palette, draw);
  const sheet = {
    kind: 'diagnosis' as const,
    picture: (subjects[0] as Subject).picture,
    title: titleOf(areas, place),
    scene: `A sheet with ${listWords(areas.map(({ name }) => `the ${name}`))}. ${level < 5 ? 'One' : 'At most one'} of them is out of its plan.`,
    ...(level < 5 ? { hint: 'Compare each area with its plan: value first, then chroma.' } : { none: true }),
  };
  // Of three cold passages one is sound, or "none" would never be the answer.
  if (level === 5 && draw(2) === 0) return { ...sheet, areas, repairs: offered(repairs.slice(0, 4), level) };
  const at = draw(count - 1);
  const fault = faultyArea(
    studio,
    { area: areas[at] as PlannedArea, subject: subjects[at] as Subject },
    repairs,
    pick(['value', 'chroma'] as const, draw),
  );
  if (fault === undefined) return undefined;
  const wrong = repairs.filter(
    (repair) => standing(studio, repaired(studio, fault.area.laid, repair), fault.area.plan).score < 0.5,
  );
  const wanted = [1, 1, 3, 3, 4][level - 1] as number;
  // One of them of another paint, or the paint would be no choice.
  const other = wrong.find((repair) => glazedWith(repair) !== glazedWith(fault.right));
  if (other === undefined || wrong.length < wanted) return undefined;
  const tempting = [other, ...wrong.filter((repair) => repair !== other)].slice(0, wanted);
  const placedAreas = areas.map((area, index) => (index === at ? fault.area : area));
  const draft = {
    ...sheet,
    areas: placedAreas,
    repairs: offered(shuffled([fault.right, ...tempting], draw), level),
  };
  const best = bestRepair(studio, draft as unknown as DiagnosisDrill, fault.area);
  return best.repair === fault.right ? draft : undefined;
};

function workedPassage(
  studio: Studio,
  palette: readonly string[],
  avoid: readonly string[],
  draw: Draw,
): DrillDraft | undefined {
  const two = twoColours(studio, palette, draw);
  if (two === undefined) return undefined;
  const [start, other] = two;
  const lit: Wash = wash(start, pick([0.1, 0.15, 0.25], draw));
  const shadow = pair(
    start,
    other,
    pick(
      [
        [3, 1],
        [2, 1],
      ] as const,
      draw,
    ),
    pick([0.4, 0.6, 0.8], draw),
  );
  const thing = litSubject(colourOf(studio, lit), avoid, draw);
  if (thing === undefined || hasTrait(thing, 'air')) return undefined;
  if (!canBe(thing, colourOf(studio, shadow), true)) return undefined;
  const them = thing.plural === true ? 'their' : 'its';
  return workedDraft(
    studio,
    {
      title: `${sentence(bare(thing))}, a shadow to be judged`.slice(0, 60),
      scene: `A worked case. ${sentence(placed(thing))}: ${them} shadow, ${namesOf(studio, lit)} with ${namesOf(studio, wash(other, 1))}, lies beside the lit side. Look at both.`,
      ask: 'Which of these does the case show?',
      hint: 'Value first, then chroma.',
      picture: thing.picture,
    },
    [
      { id: 'lit', name: 'lit side', laid: lit },
      { id: 'shadow', name: 'shadow', laid: shadow },
    ],
    [
      { fact: 'same-value', of: ['shadow', 'lit'] },
      { fact: 'below-line', of: ['shadow', 'lit'] },
      { fact: 'keeps-line', of: ['shadow', 'lit'] },
      { fact: 'six-tenths', of: ['shadow', 'lit'] },
      { fact: 'stronger', of: ['shadow', 'lit'] },
    ],
    draw,
  );
}

export const DIAGNOSIS_GENERATORS: Readonly<Record<string, Generator>> = { diagnosis };
