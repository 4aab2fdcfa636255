/** What a diagnosis gets told: the area, the fault, the repair and a better one. */
import type { Studio } from '../../../paints/index.js';
import { reasonFor } from '../../../words/reasons.js';
import { sayFinding } from '../../../words/tell.js';
import { WRITTEN } from '../../../words/voice.js';
import { afterRepair, type FaultName, faultsOf, faultyArea, standingOf, standingWords } from './judge.js';
import { repairLabel, stains } from './repairs.js';
import type { DiagnosisDrill, PlannedArea, RepairOption } from './schema.js';

/** Option that names no area, and the fault of none. */
export const NONE = 'none';

/** What was answered. */
export interface Said {
  readonly area: PlannedArea | undefined;
  readonly fault: FaultName;
  readonly repair: RepairOption;
}

export function areaLine(studio: Studio, drill: DiagnosisDrill, { area }: Said): string {
  const faulty = faultyArea(studio, drill);
  if (area === undefined) {
    return faulty === undefined
      ? 'You found no fault, and every area is inside its plan.'
      : `You found no fault, but the ${faulty.name} is out: ${standingWords(standingOf(studio, faulty), faulty.plan)}.`;
  }
  const words = standingWords(standingOf(studio, area), area.plan);
  if (area.id === faulty?.id) return `You went to the ${area.name}, and it is out of its plan: ${words}.`;
  const where =
    faulty === undefined
      ? 'nothing is out of its plan'
      : `the fault is in the ${faulty.name}: ${standingWords(standingOf(studio, faulty), faulty.plan)}`;
  return `You went to the ${area.name}, which is inside its plan (${words}); ${where}.`;
}

export function faultLine(studio: Studio, drill: DiagnosisDrill, { area, fault }: Said): string {
  const faulty = faultyArea(studio, drill);
  const is = faulty === undefined ? [] : faultsOf(standingOf(studio, faulty));
  const names = is.length === 0 ? 'none' : is.join(', then ');
  if (area?.id !== faulty?.id) return is.length === 0 ? 'There is no fault.' : `The fault is ${names}.`;
  if (is.length === 0 && fault === NONE) return 'There is no fault to name, as you said.';
  return fault === (is[0] ?? NONE)
    ? `The fault is ${names}, as you said.`
    : `You called it ${fault}; what is out is ${names}. Value comes first, then chroma, then hue.`;
}

function repairLine(studio: Studio, area: PlannedArea, repair: RepairOption): string {
  const now = standingOf(studio, area).seen.colour;
  const after = afterRepair(studio, area, repair);
  if ('leave' in repair.repair) {
    return `Left alone, the ${area.name} stays as it is: ${after.score >= 1 ? 'inside its plan' : standingWords(after, area.plan)}.`;
  }
  const held =
    'lift' in repair.repair && stains(studio, area.laid) ? ' The paint stains and hardly lifts.' : '';
  const end = after.score >= 1 ? 'inside the plan' : standingWords(after, area.plan);
  return `On the ${area.name}, "${repairLabel(studio, repair)}" moves step ${now.step.toFixed(1)} to ${after.seen.colour.step.toFixed(1)} and chroma ${now.chroma.toFixed(0)} to ${after.seen.colour.chroma.toFixed(0)}: ${end}.${held}`;
}

/** What the repair did to the area it was used on, and what would have been better for the faulty one. */
export function repairLines(
  studio: Studio,
  drill: DiagnosisDrill,
  said: Said,
  bestOption: RepairOption,
): string[] {
  const faulty = faultyArea(studio, drill);
  const lines: string[] = [];
  if (said.area !== undefined) {
    lines.push(repairLine(studio, said.area, said.repair));
    const reason = reasonFor(studio, afterRepair(studio, said.area, said.repair).seen.laid);
    if (reason !== undefined && !('leave' in said.repair.repair)) lines.push(sayFinding(reason, WRITTEN));
  }
  const isBest = said.area?.id === faulty?.id && said.repair.id === bestOption.id;
  if (faulty !== undefined && !isBest) lines.push(`Better: ${repairLine(studio, faulty, bestOption)}`);
  if (faulty === undefined && said.repair.id !== bestOption.id) {
    lines.push('Better: leave it alone; any repair would take something out of its plan.');
  }
  return lines;
}
