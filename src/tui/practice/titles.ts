/** Titles of the drill screens and how far the set has come. */
import { cleanText } from '../../text/sanitize.js';
import type { Glyphs } from '../kit/glyphs.js';
import type { World } from '../kit/stage.js';
import type { DrillScreen, ResultScreen, State } from './state.js';

/** The skill and the drill; on a narrow screen the drill alone. */
export function drillTitle(
  world: Pick<World, 'familyName'>,
  { drill }: Pick<DrillScreen, 'drill'>,
): string[] {
  const family = world.familyName(drill.family);
  const title = cleanText(drill.title, 80);
  return [`${family}${/[?!.]$/.test(family) ? '' : ':'} ${title}`, title];
}

/** How much of the set is answered, ten signs at most. */
function progressBar(done: number, of: number, glyphs: Glyphs): string {
  const length = Math.min(10, of);
  const full = Math.round((done / Math.max(1, of)) * length);
  return glyphs.full.repeat(full) + glyphs.empty.repeat(length - full);
}

/** "3 of 10" with a bar, or what else this drill is. */
export function drillSide(
  { set, settings }: State,
  { worked, attempt }: DrillScreen,
  glyphs: Glyphs,
): string {
  const isSpoken = settings.screenReader;
  if (worked)
    return isSpoken ? 'worked example, the choice is made: press Enter to lay it down' : 'worked example';
  if (set === undefined) return '';
  if (isSpoken) return `drill ${Math.min(set.index + 1, set.items.length)} of ${set.items.length}`;
  const place =
    attempt > 1 ? `try ${attempt}` : `${Math.min(set.items.length, set.index + 1)} of ${set.items.length}`;
  return `${place} ${progressBar(set.index, set.items.length, glyphs)}`;
}

export function resultSide(
  { set, settings }: State,
  { worked, place }: ResultScreen,
  glyphs: Glyphs,
): string {
  if (settings.screenReader) return '';
  if (worked) return 'worked example';
  if (set === undefined) return '';
  return `${place + 1} of ${set.items.length} ${progressBar(set.index, set.items.length, glyphs)}`;
}
