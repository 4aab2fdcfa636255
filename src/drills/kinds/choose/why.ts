/** What lies behind the option that was picked. */
import type { Rated } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid, washesOf } from '../../../washes/index.js';
import { laidLabel } from '../../../words/laid.js';
import type { Answer, Why } from '../../types.js';
import { comparedFinding, dryingFilms, whyFilms, whyOf } from '../../why.js';
import type { ChooseDrill, ChooseOption } from './schema.js';

const isOnePaint = ({ laid }: ChooseOption): boolean =>
  washesOf(laid).length === 1 &&
  washesOf(laid).every(({ paints, add = {} }) => Object.keys({ ...paints, ...add }).length === 1);

/** The paints of what was picked; where that is one paint alone, all the options side by side; wet and dry where drying decides. */
export function chooseWhy(studio: Studio, drill: ChooseDrill, answer: Answer, rated: readonly Rated[]): Why {
  const named = drill.options.map((option) => ({
    label: option.label ?? laidLabel(studio, option.laid),
    laid: option.laid,
  }));
  if (drill.by === 'dries-most') return dryingFilms(studio, named);
  const picked = drill.options.find(({ id }) => id === answer['pick']);
  if (picked === undefined) throw new RangeError('pick is not one of the options');
  if (isOnePaint(picked)) {
    return {
      films: whyFilms(
        named.map(({ label, laid }) => ({ label, reflectance: seeLaid(studio, laid).reflectance })),
      ),
      told: [comparedFinding(studio, drill.by, rated)],
      swallowed: [],
    };
  }
  return whyOf(studio, picked.laid);
}
