/** The mixtures of the bench that a learner keeps, in the file of boxes. */
import { isOurs } from '../errors.js';
import { findPaint, type Studio } from '../paints/index.js';
import { MOST_MIXTURES, type OwnMixture } from '../profile/own-studio.js';
import type { Profile } from '../profile/profile.js';
import { changeOwn } from '../profile/studio-file.js';
import type { MixtureShelf } from '../tui/bench/outside.js';
import { washesOf } from '../washes/index.js';
import { filesOf } from './learner-files.js';

/** @param studio of the paints that there are: a mixture of others is kept, but not shown */
export function mixtureShelf(profile: Profile, studio: Studio): MixtureShelf {
  const isKnown = ({ laid }: OwnMixture): boolean =>
    washesOf(laid).every(({ paints, add }) =>
      [...Object.keys(paints), ...Object.keys(add ?? {})].every((id) => findPaint(studio, id) !== undefined),
    );
  const all = () => (profile.own.mixtures ?? []).filter(isKnown);
  const change = (told: string, to: (mixtures: readonly OwnMixture[]) => OwnMixture[]) => {
    try {
      profile.own = changeOwn(filesOf(profile), profile.learner, (own) => ({
        ...own,
        mixtures: to(own.mixtures ?? []),
      }));
      return { kept: all(), told };
    } catch (error) {
      if (!isOurs(error)) throw error;
      return { kept: all(), told: error.message };
    }
  };
  const others = (mixtures: readonly OwnMixture[], gone: string) =>
    mixtures.filter(({ name }) => name !== gone);
  return {
    all,
    keep: (mixture) => {
      const isFull = (profile.own.mixtures ?? []).length >= MOST_MIXTURES;
      const isThere = all().some(({ name }) => name === mixture.name);
      if (isFull && !isThere)
        return { kept: all(), told: `${MOST_MIXTURES} mixtures are kept; take one away first (l, then x).` };
      return change(`${isThere ? 'Kept in place of the other' : 'Kept'}: ${mixture.name}.`, (mixtures) => [
        ...others(mixtures, mixture.name),
        mixture,
      ]);
    },
    remove: (name) => change(`Taken away: ${name}.`, (mixtures) => others(mixtures, name)),
  };
}
