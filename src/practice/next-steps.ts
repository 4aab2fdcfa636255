/** What to do next, in words. */

import { levelOutlook, TOP_LEVEL } from './levels.js';
import type { FamilyNeed } from './need.js';
import { familyNeeds, WEAK_BELOW } from './need.js';
import type { FamilyRef } from './refs.js';
import { dueAt } from './spacing.js';
import type { Standing } from './standing.js';
import { levelIn } from './standing.js';

/** By the number of them that are missing. */
const GOOD_ANSWERS = ['', 'One more good answer', 'Two good answers in a row', 'Three good answers in a row'];

/** What is missing for the next level of a family, one sentence. */
export function outlookWords(standing: Standing, family: string): string {
  const known = standing.families.get(family);
  if (known === undefined) return 'Not practised yet.';
  const { atTop, goodAnswers, anotherSitting, proof } = levelOutlook(known.level);
  if (atTop) return 'Top level.';
  const next = known.level.level + 1;
  if (goodAnswers > 0)
    return `${GOOD_ANSWERS[goodAnswers]} to level ${next}${anotherSitting ? ', over at least two sittings' : ''}.`;
  if (anotherSitting) return `A good answer in another sitting to level ${next}.`;
  return proof < 1
    ? `More good answers to level ${next}: with few options a short row can be luck.`
    : `A good answer to level ${next}.`;
}

const startWords = (level: number): string =>
  level === 1 ? 'it starts with a worked case' : `it starts at level ${level}`;

function adviceFor(standing: Standing, need: FamilyNeed, isFirst: boolean): string {
  const { family, reason, level } = need;
  if (need.answers === 0) return `${family.title}: not met yet; ${startWords(level)}.`;
  if (reason === 'weak')
    return `${family.title}: ${need.recent < WEAK_BELOW && need.answers > 1 ? 'often missed of late' : 'not settled yet'}${level > 1 ? `, now at level ${level}` : ''}${isFirst ? '; more than half of the next set goes to what is weak' : ''}.`;
  if (reason === 'due') return `${family.title}: due for review.`;
  const outlook = outlookWords(standing, family.id);
  return `${family.title}: level ${level}${reason === 'rising' ? ', on the way up' : ''}. ${outlook}`;
}

/**
 * Up to `most` pieces of advice, the most pressing first.
 * @param families in the order of the curriculum
 */
export function nextSteps(standing: Standing, families: readonly FamilyRef[], now: Date, most = 3): string[] {
  const needs = familyNeeds(standing, families, now.getTime());
  if (standing.families.size === 0) {
    const first = families[0];
    return first ? [`Begin with ${first.title}: ${startWords(levelIn(standing, first.id))}.`] : [];
  }
  const pick = (reason: FamilyNeed['reason']): FamilyNeed[] => needs.filter((need) => need.reason === reason);
  const ordered = [
    ...pick('weak').sort((a, b) => a.recent - b.recent),
    ...pick('due').sort((a, b) => a.recall - b.recall),
    ...pick('new').slice(0, 1),
    ...[...pick('rising'), ...pick('steady'), ...pick('begun')].sort((a, b) => b.level - a.level),
  ];
  if (ordered.length > 0)
    return ordered.slice(0, most).map((need, place) => adviceFor(standing, need, place === 0));
  const dues = families.flatMap(({ id }) => {
    const known = standing.families.get(id);
    return known === undefined ? [] : [dueAt(known.memory)];
  });
  const days = Math.max(1, Math.ceil((Math.min(...dues) - now.getTime()) / 86_400_000));
  return [
    `Every family is at level ${TOP_LEVEL} and fresh; the next review is due in ${days} day${days === 1 ? '' : 's'}.`,
  ];
}
