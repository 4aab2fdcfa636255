/** The keys of a drill. */
import { type Binding, back, enter, letter } from '../kit/keys.js';
import type { DrillScreen, PracticeWorld, State } from '../practice/state.js';
import { sheetKeys } from '../sheet/keys.js';
import { movingKeys } from './question.js';

/** Whether paint or water is chosen, or a question answered. */
const isLaid = ({ fields }: DrillScreen): boolean =>
  fields.some((field) => field.shape === 'scale' || field.options.some(({ swatch }) => swatch !== undefined));

export function drillKeys(state: State, world: PracticeWorld, screen: DrillScreen): Binding[] {
  const { drill, hint, laying, worked } = screen;
  // While an answer is graded and saved nothing else works.
  if (laying) return [];
  const sheet = sheetKeys(state, world, screen);
  if (worked) return [enter('lay it down'), ...sheet, back('skip the example')];
  const { first, last } = movingKeys(screen);
  return [
    ...first,
    enter(screen.message !== undefined ? 'go on' : isLaid(screen) ? 'lay it down' : 'answer'),
    ...(drill.hint === undefined || hint === 'shown'
      ? []
      : [{ ...letter('h', 'hint', 'hint'), stays: true }]),
    ...sheet,
    ...last,
    back(screen.attempt > 1 ? 'result' : 'leave'),
  ];
}
