/** What is asked and said of things put in an order. */
import type { CriterionId } from '../../judgement/index.js';
import { listWords } from '../../text/list-words.js';
import { sentence } from '../laid.js';
import type { Voice } from '../voice.js';
import { askedOf, type ComparedItem, CRITERION_WORDS, itemsText } from './criteria.js';

interface Ordered {
  readonly by: CriterionId;
  /** In the right order. */
  readonly items: readonly ComparedItem[];
}

/** Two that stand the wrong way round. */
export interface Turned {
  readonly better: string;
  readonly worse: string;
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
    `The order is right. ${sentence(itemsText(by, items, voice))}.`,
  /** Two that the prediction cannot tell apart; what else there is stands in order. */
  'order-tied': (
    { by, items, pairs }: Ordered & { readonly pairs: readonly Turned[] },
    voice: Voice,
  ): string =>
    `Too close to call, either way counts: ${listWords(pairs.map(({ better, worse }) => `${better} or ${worse}`))} first. ${sentence(itemsText(by, items, voice))}.`,
  /** The order as it is, and the pairs that stand the wrong way round. */
  'order-wrong': (
    { by, items, turned }: Ordered & { readonly turned: readonly Turned[] },
    voice: Voice,
  ): string => {
    const pairs = turned.map(({ better, worse }) => `${better} before ${worse}`);
    const all = turned.length === 3 ? 'the other way round' : listWords(pairs);
    return `Better: ${all}. ${sentence(itemsText(by, items, voice))}.`;
  },
  'also-right': ({ by, items }: Ordered, voice: Voice): string =>
    `Right as well: ${askedOf(by, items.length)}. ${sentence(itemsText(by, items, voice))}.`,
  'also-tied': ({ by, items, other }: Ordered & { readonly other: string }, voice: Voice): string =>
    `Too close to call for ${askedOf(by, items.length)}: ${other} counts as well. ${sentence(itemsText(by, items, voice))}.`,
  'also-wrong': ({ by, items, named }: Ordered & { readonly named: string }, voice: Voice): string =>
    `You named ${named} for ${askedOf(by, items.length)}. ${sentence(itemsText(by, items, voice))}.`,
};
