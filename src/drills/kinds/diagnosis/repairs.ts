/** What a repair does to what lies there. */
import { STAINS } from '../../../judgement/index.js';
import { paintOf, type Studio } from '../../../paints/index.js';
import { type Laid, type Wash, washesOf } from '../../../washes/index.js';
import { laidLabel, laidNote, paintsLabel, strengthWords } from '../../../words/laid.js';
import type { PlannedArea, Repair, RepairOption } from './schema.js';

/**
 * Share of the wanted lifting that a staining paint gives: lifting works only for paints that do not stain
 * (B. MacEvoy, handprint.com, intstud.html). The fifth that still comes off is ours (common practice, no source).
 */
const STAIN_GIVES = 0.2;

/** True when a paint of the passage stains by the published rating; unrated paints are taken to lift. */
export function stains(studio: Studio, laid: Laid): boolean {
  return washesOf(laid).some(({ paints, add }) =>
    Object.keys({ ...paints, ...add }).some(
      (id) => (paintOf(studio, id).handling.staining?.value ?? 0) >= STAINS,
    ),
  );
}

const weaker = (wash: Wash, share: number): Wash => ({
  ...wash,
  strength: Math.max(0.001, wash.strength * (1 - share)),
});

function lifted(studio: Studio, laid: PlannedArea['laid'], share: number): Laid {
  const taken = stains(studio, laid) ? share * STAIN_GIVES : share;
  if ('layers' in laid) return { layers: laid.layers.map((wash) => weaker(wash, taken)) };
  return weaker(laid, taken);
}

/** What lies there after the repair. */
export function repaired(studio: Studio, laid: PlannedArea['laid'], repair: Repair): Laid {
  if ('leave' in repair) return laid;
  if ('anew' in repair) return repair.anew;
  if ('lift' in repair) return lifted(studio, laid, repair.lift);
  return { layers: [...('layers' in laid ? laid.layers : [laid]), repair.glaze] };
}

/** A repair in a few words. */
export function repairLabel(studio: Studio, { label, repair }: RepairOption): string {
  if (label !== undefined) return label;
  if ('leave' in repair) return 'leave it';
  if ('lift' in repair) return `lift ${strengthWords(repair.lift)} of the paint`;
  if ('anew' in repair) return `on a new sheet: ${laidLabel(studio, repair.anew)}`;
  return `glaze ${strengthWords(repair.glaze.strength)}: ${paintsLabel(studio, repair.glaze)}`;
}

/** A second line for a repair. */
export function repairNote({ repair }: RepairOption): string {
  if ('leave' in repair) return 'nothing more';
  if ('lift' in repair) return 'wet it and take paint up; staining paints stay';
  if ('anew' in repair) return `the passage painted again; ${laidNote(repair.anew)}`;
  return 'over the dry wash';
}
