/** What is asked and said of things put in an order. */
import type { CriterionId } from '../../judgement/index.js';
import type { Voice } from '../voice.js';
import { type ComparedItem, CRITERION_WORDS, itemsText } from './criteria.js';

interface Ordered {
  readonly by: CriterionId;
  /** In the right order. */
  readonly items: readonly ComparedItem[];
}

/** Two that stand the wrong way round. */
export interface Turned {
  readonly better: ComparedItem;
  readonly worse: ComparedItem;
}

export const ORDER = {
  'order-goal': ({ by }: { readonly by: CriterionId }): string => `order: ${CRITERION_WORDS[by].order}`,
  'order-item': ({
    name,
    label,
    note,
  }: {
    readonly name: string;
    readonly label: string;
    readonly note: string;
  }): string => `${name}: ${label}, ${note}`,
  'order-right': ({ by, items }: Ordered, voice: Voice): string =>
    `The order is right: ${itemsText(by, items, voice)}.`,
  /** Pairs that stand the wrong way round, and the order as it is. */
  'order-wrong': (
    { by, items, turned }: Ordered & { readonly turned: readonly Turned[] },
    voice: Voice,
  ): string => {
    const pairs = turned.map(({ better, worse }) => {
      const gap = CRITERION_WORDS[by].gap(better.reading, worse.reading);
      return `${better.label} before ${worse.label}${gap === '' ? '' : `, ${gap}`}`;
    });
    return `Better: ${pairs.join('; ')}. In order: ${itemsText(by, items, voice)}.`;
  },
  'also-right': ({ by, items }: Ordered, voice: Voice): string =>
    `Right as well: ${CRITERION_WORDS[by].most}, ${itemsText(by, items, voice)}.`,
  'also-wrong': ({ by, items, named }: Ordered & { readonly named: string }, voice: Voice): string =>
    `You named ${named} for ${CRITERION_WORDS[by].most}; it is ${items[0]?.label}: ${itemsText(by, items, voice)}.`,
};
