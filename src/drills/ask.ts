/** The question of a drill that words none of its own. */
import { findFamily } from './families.js';
import { addedPaint, type MixDrill } from './kinds/mix/schema.js';

/** The family's question; of a mixture it calls the paint asked for by its place: second after one, third after two. */
export function familyAsk(
  family: string,
  drill: ({ readonly kind: 'mix' } & Pick<MixDrill, 'start' | 'tray'>) | { readonly kind: string },
): string {
  const ask = findFamily(family)?.ask ?? '';
  return 'tray' in drill ? ask.replace('second paint', addedPaint(drill)) : ask;
}
