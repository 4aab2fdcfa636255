/** What the seals of a sitting say, in the teacher's words: each changed thing by its name. */
import { cleanText } from '../text/sanitize.js';
import type { Sitting } from './answers.js';
import type { SittingEvent } from './events.js';
import type { Handout } from './handout.js';
import { checkSeals, type SealFault } from './seals.js';

/** An event as something that was changed, and its moment. */
function namesOf(event: SittingEvent, numberOf: (drill: string) => string): { what: string; time: string } {
  switch (event.event) {
    case 'begin':
      return { what: "the student's name", time: 'time of the beginning' };
    case 'handed-in':
      return { what: 'the handing in', time: 'time of the handing in' };
    case 'gap':
      return { what: 'the note of an earlier change', time: 'time of the note of an earlier change' };
    case 'chosen':
    case 'taken': {
      const answer = `answer ${numberOf(event.drill)}`;
      return { what: answer, time: `time of ${answer}` };
    }
    case 'closed':
      return {
        what: `closing of question ${numberOf(event.drill)}`,
        time: `time of closing question ${numberOf(event.drill)}`,
      };
    default: {
      const question = `question ${numberOf(event.drill)}`;
      return { what: `showing of ${question}`, time: `time of ${question}` };
    }
  }
}

function nameOf(event: SittingEvent, fault: SealFault, numberOf: (drill: string) => string): string {
  const { what, time } = namesOf(event, numberOf);
  switch (fault) {
    case 'what':
      return what;
    case 'time':
      return time;
    case 'moved':
      return `order: ${what}`;
    case 'unsealed':
      return `${what} (without a seal)`;
    case 'lost':
      return `${what} (changed with its time, or lines before it were taken out)`;
  }
}

/** Most things named one by one. */
const MOST_NAMED = 12;

/**
 * What was changed in a sitting after it was written, one line; nothing for one that is whole or of a handout without a secret.
 * Questions are counted as the handout has them.
 */
export function sealWords(handout: Handout, sitting: Sitting): string[] {
  if (handout.secret === undefined) return [];
  const { state, faults, isCut } = checkSeals(handout.secret, sitting);
  const places = new Map(handout.questions.map(({ drill }, index) => [drill.id, String(index + 1)]));
  const numberOf = (drill: string): string => places.get(drill) ?? `"${cleanText(drill, 40)}"`;
  switch (state) {
    case 'whole':
      return [];
    case 'unsealed':
      // What the teacher typed in from paper has none.
      return sitting.source === 'paper' ? [] : ['not sealed: whether it was changed cannot be seen'];
    case 'foreign':
      return [
        'no seal in the file fits: it was made with another copy of the handout, or rewritten as a whole',
      ];
    case 'changed': {
      const gaps = sitting.events.filter(({ event }) => event === 'gap').map(({ at }) => cleanText(at, 40));
      const names = [
        ...new Set(faults.map(({ event, fault }) => nameOf(event, fault, numberOf))),
        ...(isCut ? ['its end: lines were taken out there or added'] : []),
        ...gaps.map((at) => `its end, before the sitting went on at ${at}`),
      ];
      const more = names.length - MOST_NAMED;
      const shown = more > 0 ? [...names.slice(0, MOST_NAMED), `and ${more} more`] : names;
      return [`the file was changed after it was written: ${shown.join(', ')}`];
    }
  }
}
