/** How a set is shared out among families: first what is weak, then what is new, then what is due, then the rest. */
import type { Share } from './arrange.js';
import { isPair } from './arrange.js';
import type { FamilyNeed } from './need.js';
import { WANTED_RECALL } from './spacing.js';

/** Share of a set that goes to weak families, as long as there are any. */
const WEAK_SHARE = 0.6;
/** Most weak families worked on in one set. */
const MOST_WEAK = 4;
/** A new family gets its worked case and one more. */
const NEW_SLOTS = 2;
/** One drill in so many opens a new family where the placing round has found its level. */
const PLACED_PART = 3;
/** With more families than this below the level of a beginner, no new one is opened. */
const MOST_UNSETTLED = 3;

/**
 * How many new families to open: three to begin with, then one at a time while few are unsettled. Where the placing
 * round starts them above the worked cases, they need no such care.
 */
function newFamilies(needs: readonly FamilyNeed[], count: number): FamilyNeed[] {
  const fresh = needs.filter(({ reason }) => reason === 'new');
  const met = needs.length - fresh.length;
  if (fresh.some(({ level }) => level > 1)) return fresh.slice(0, Math.ceil(count / PLACED_PART));
  if (met === 0) return fresh.slice(0, Math.min(3, Math.ceil(count / 3)));
  const unsettled = needs.filter(({ reason, level }) => reason !== 'new' && level === 1).length;
  return unsettled <= MOST_UNSETTLED ? fresh.slice(0, Math.max(1, Math.floor(count / 12))) : [];
}

function shareWeak(weak: readonly FamilyNeed[], slots: number): Share[] {
  const chosen = weak.toSorted((a, b) => a.recent - b.recent || a.level - b.level).slice(0, MOST_WEAK);
  const shares = chosen.map((need) => ({ need, slots: 0 }));
  for (let i = 0; i < slots && shares.length > 0; i += 1) (shares[i % shares.length] as Share).slots += 1;
  return shares;
}

/** How much a family that is neither weak nor new should come up. */
function pull(need: FamilyNeed, chosen: readonly Share[]): number {
  const overdue = need.recall < WANTED_RECALL ? 0.5 + (WANTED_RECALL - need.recall) : 0;
  const rising = need.reason === 'known' ? 0 : 0.3;
  const alike = chosen.some((share) => isPair(share.need, need)) ? 0.25 : 0;
  // What fades first goes first among equals; also rotates families answered today.
  return 0.05 + overdue + rising + alike + (1 - need.recall);
}

/**
 * Shares out a set of `count` drills; the shares add up to `count`.
 * @param needs one for each family that can be practised, in the order of the curriculum
 */
export function shareOut(needs: readonly FamilyNeed[], count: number): Share[] {
  const weak = needs.filter(({ reason }) => reason === 'weak');
  const rest = needs.filter(({ reason }) => reason !== 'weak' && reason !== 'new');
  const others = needs.length > weak.length;
  const weakSlots = weak.length === 0 ? 0 : others ? Math.max(Math.ceil(WEAK_SHARE * count), 1) : count;
  const shares = shareWeak(weak, weakSlots);
  let left = count - weakSlots;
  for (const need of newFamilies(needs, count)) {
    const slots = Math.min(left, need.level > 1 ? 1 : NEW_SLOTS);
    if (slots > 0) shares.push({ need, slots });
    left -= slots;
  }
  const filling = rest.length > 0 ? rest : shares.map(({ need }) => need);
  const dampings = new Map<FamilyNeed, number>();
  for (; left > 0 && filling.length > 0; left -= 1) {
    const rated = filling.map((need) => ({ need, score: pull(need, shares) * (dampings.get(need) ?? 1) }));
    const { need } = rated.reduce((a, b) => (b.score > a.score ? b : a));
    dampings.set(need, (dampings.get(need) ?? 1) * 0.3);
    const share = shares.find((s) => s.need === need);
    if (share) share.slots += 1;
    else shares.push({ need, slots: 1 });
  }
  return shares;
}
