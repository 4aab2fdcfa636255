/** The keys of the bench, most used first. Pure. */
import {
  type Binding,
  back,
  CANCEL,
  close,
  enter,
  KEYS,
  LESS_MORE,
  leftRight,
  letter,
  stop,
  typing,
  upDown,
} from '../kit/keys.js';
import { type BenchState, benchPaints, type Doing, WAY_ROW } from './state.js';

const STOP = stop('stop at once; answers are saved');
const DELETE: Binding = { keys: { x: 'erase', erase: 'erase' }, show: 'x', does: 'take away' };
const PUT_BACK = 'put it on the bench';

function doingKeys({ doing }: BenchState): Binding[] {
  switch ((doing as Doing).name) {
    case 'picking':
      return [
        { keys: { up: 'up', down: 'down' }, show: '{up}{down}', does: 'paint' },
        enter('take it'),
        typing('search'),
        CANCEL,
      ];
    case 'naming':
      return [typing('its name'), enter('keep it'), CANCEL];
    case 'pins':
      return [leftRight('swatch'), enter(PUT_BACK), DELETE, back('bench')];
    case 'asking':
      return [upDown('row'), leftRight('change'), enter('look'), back('bench')];
    case 'recipes':
      return [upDown('recipe'), enter(PUT_BACK), back('bench')];
    case 'kept':
      return [upDown('mixture'), enter(PUT_BACK), DELETE, back('bench')];
  }
}

/** The keys that work now. */
export function benchKeys(state: BenchState): Binding[] {
  const { overlay, doing, focus, mixture, past, pins, kept, panel } = state;
  if (overlay !== undefined) return [close(), STOP];
  if (doing !== undefined) {
    const isTyped = doing.name === 'picking' || doing.name === 'naming';
    return [...doingKeys(state), ...(isTyped ? [] : [KEYS]), STOP];
  }
  const hasPaint = benchPaints(mixture).length > 0;
  const isGlaze = mixture.way === 'glaze' && focus > 0 && focus < WAY_ROW;
  return [
    upDown('row'),
    leftRight(LESS_MORE),
    enter(focus < WAY_ROW ? 'pick a paint' : 'next row'),
    ...(hasPaint
      ? [
          letter('r', 'recipes', 'recipes from here'),
          letter('p', 'path', panel === 'path' ? 'colour' : 'path'),
          letter('w', 'ways', panel === 'ways' ? 'colour' : 'three ways'),
          letter('s', 'aside', 'set aside'),
        ]
      : []),
    ...(pins.length > 0 ? [letter('v', 'asides', 'those set aside')] : []),
    ...(past.length > 0 ? [letter('u', 'undo', 'undo')] : []),
    ...(isGlaze ? [letter('o', 'sooner', 'lay it sooner')] : []),
    ...(kept !== undefined && hasPaint ? [letter('n', 'name', 'name and keep')] : []),
    ...(kept !== undefined && kept.length > 0 ? [letter('l', 'names', 'kept mixtures')] : []),
    letter('c', 'caution', 'about these paints', true),
    back('home'),
    KEYS,
    STOP,
  ];
}
