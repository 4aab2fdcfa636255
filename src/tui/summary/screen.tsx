/** The end of a set as one of the screens of practice. */
import { enter, letter, upDown } from '../kit/keys.js';
import type { PracticeScreen, SetRun } from '../practice/state.js';
import { HOME } from '../result/keys.js';
import { updateSummary } from './update.js';
import { Summary } from './view.js';

const titleOf = (set: SetRun | undefined): string =>
  set === undefined
    ? 'The set'
    : set.choice.placing === true
      ? 'The placing round is over'
      : set.index >= set.items.length
        ? 'The set is done'
        : `The set so far, ${set.index} of ${set.items.length}`;

export const summary: PracticeScreen<'summary'> = {
  keys: ({ set }) => {
    const hasAnswers = (set?.answers.length ?? 0) > 0;
    return [
      ...(hasAnswers ? [enter('open')] : []),
      ...((set?.summary?.mistakes.length ?? 0) > 0 ? [letter('m', 'mend', 'mend misses')] : []),
      letter('n', 'restart', 'new set'),
      ...(hasAnswers ? [upDown('move')] : []),
      HOME,
    ];
  },
  update: updateSummary,
  view: ({ set }, _world, { selected }) => ({
    title: titleOf(set),
    body: set === undefined ? null : <Summary set={set} selected={selected} />,
  }),
};
