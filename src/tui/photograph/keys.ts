/** The keys over a photographed painting, most used first. Pure. */
import {
  type Binding,
  back,
  close,
  enter,
  KEYS,
  leftRight,
  letter,
  scroll,
  stop,
  upDown,
} from '../kit/keys.js';
import type { PhotographState, PhotographWorld } from './state.js';

const STOP = stop('stop at once');

/** The keys that work now. */
export function photographKeys(
  world: PhotographWorld,
  { overlay, looking, look }: PhotographState,
): Binding[] {
  if (overlay !== undefined) return [close(), STOP];
  switch (looking?.name) {
    case 'told':
      return [scroll(false), back('picture'), KEYS, STOP];
    case 'asking':
      return [upDown('row'), leftRight('change'), enter('look'), back('picture'), KEYS, STOP];
    case 'recipes':
      return [upDown('recipe'), back('picture'), KEYS, STOP];
    default:
      return [
        leftRight('mass'),
        enter('what it says'),
        ...(world.hasTray ? [letter('r', 'recipes', 'recipes')] : []),
        letter('g', 'grey', look === 'grey' ? 'colour' : 'grey'),
        letter('v', 'values', '2, 3, 5 values'),
        ...(world.paintings.length > 1 ? [letter('b', 'best', 'before, after')] : []),
        back('leave'),
        KEYS,
        STOP,
      ];
  }
}
