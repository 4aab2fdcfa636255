/** What lies behind the option that was picked. */
import type { Rated } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { washesOf } from '../../../washes/index.js';
import { laidLabel } from '../../../words/laid.js';
import type { Answer, Why } from '../../types.js';
import { comparedWhy, whyOf } from '../../why.js';
import type { ChooseDrill, ChooseOption } from './schema.js';

const isOnePaint = ({ laid }: ChooseOption): boolean =>
  washesOf(laid).length === 1 &&
  washesOf(laid).every(({ paints, add = {} }) => Object.keys({ ...paints, ...add }).length === 1);

/** The paints of what was picked; where that is one paint alone, all the options side by side; wet and dry where drying decides. */
export function chooseWhy(
  studio: Studio,
  { by, options }: ChooseDrill,
  answer: Answer,
  rated: readonly Rated[],
): Why {
  const picked = options.find(({ id }) => id === answer['pick']);
  if (picked === undefined) throw new RangeError('pick is not one of the options');
  if (by !== 'dries-most' && !isOnePaint(picked)) return whyOf(studio, picked.laid);
  const named = options.map(({ label, laid }) => ({ label: label ?? laidLabel(studio, laid), laid }));
  return comparedWhy(studio, by, named, rated);
}
