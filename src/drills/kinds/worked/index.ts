/** The worked kind: see schema.ts. */

import { overall } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { IDEAS } from '../../../words/ideas.js';
import { laidLabel, laidNote, sentence } from '../../../words/laid.js';
import { reasonFor } from '../../../words/reasons.js';
import { plainly, sayFinding } from '../../../words/tell.js';
import { WRITTEN } from '../../../words/voice.js';
import { chosen, requireComplete } from '../../answers.js';
import type { Answer, Field, Grade, Kind } from '../../types.js';
import type { WorkedDrill } from './schema.js';
import { type Weighed, weigh } from './weigh.js';

function fields(studio: Studio, drill: WorkedDrill): readonly Field[] {
  return [
    {
      id: 'why',
      label: 'which is true of this case',
      shape: 'list',
      options: weigh(studio, drill).map(({ id, short, text }) =>
        short === text ? { id, label: short } : { id, label: short, note: text },
      ),
    },
  ];
}

/** True statements count, and so do those that the model cannot decide. */
const counts = ({ isTrue, tooCloseToCall }: Weighed): boolean => isTrue || tooCloseToCall;

function bestOf(studio: Studio, drill: WorkedDrill): Weighed {
  return weigh(studio, drill).reduce((best, next) => (next.margin > best.margin ? next : best));
}

function grade(studio: Studio, drill: WorkedDrill, answer: Answer): Grade {
  const open = fields(studio, drill);
  requireComplete(open, answer);
  const id = chosen(open, answer, 'why').id;
  const all = weigh(studio, drill);
  const picked = all.find((one) => one.id === id) as Weighed;
  const best = bestOf(studio, drill);
  const mark = counts(picked) ? 100 : 0;
  const idea = mark === 100 ? undefined : 'wrong-reason';
  const next = idea === undefined ? undefined : IDEAS.get(idea)?.instead;
  const verdict = picked.isTrue
    ? 'true'
    : picked.tooCloseToCall
      ? 'too close to call, so it counts'
      : 'not so';
  const lines = [`You said: ${picked.text}. That is ${verdict}: ${picked.figures}.`];
  if (picked.id !== best.id) lines.push(`True here: ${best.text} (${best.figures}).`);
  for (const other of all) {
    if (other.id !== picked.id && other.id !== best.id) {
      lines.push(`${other.isTrue ? 'Also true' : 'Not so'}: ${other.text} (${other.figures}).`);
    }
  }
  const mixed = drill.case
    .map((item) => ({ name: item.name, reason: reasonFor(studio, item.laid) }))
    .find(({ reason }) => reason !== undefined);
  if (mixed?.reason !== undefined)
    lines.push(`${sentence(mixed.name)}: ${sayFinding(mixed.reason, WRITTEN)}`);
  if (next !== undefined) lines.push(next);
  const weakest = drill.case.map((item) => seeLaid(studio, item.laid).evidence);
  return {
    mark,
    verdict: overall(mark),
    told: plainly(lines),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: { why: best.id }, label: best.short, mark: 100 },
    swatches: drill.case.map((item) => ({
      label: item.name,
      reflectance: seeLaid(studio, item.laid).reflectance,
    })),
    evidence: (['estimated', 'transferred'] as const).find((one) => weakest.includes(one)) ?? 'measured',
  };
}

/** Exactly one statement may be true, and by more than the model can be off; a lesson must not hang on a hair. */
function faults(studio: Studio, drill: WorkedDrill): string[] {
  const all = weigh(studio, drill);
  const right = all.filter(counts);
  return [
    ...(right.length === 1 ? [] : [`${right.length} of the statements count as true; there must be one`]),
    ...all.filter(({ tooCloseToCall }) => tooCloseToCall).map(({ text }) => `too close to call: ${text}`),
  ];
}

export const workedKind = (studio: Studio): Kind<WorkedDrill> => ({
  kind: 'worked',
  fields: (drill) => fields(studio, drill),
  given: (drill) =>
    drill.case.map((item) => ({
      label: item.name,
      reflectance: seeLaid(studio, item.laid).reflectance,
      unread: 'figures',
    })),
  // What lies there, not what it measures: the figures come after the answer.
  goalLines: (drill) =>
    plainly(drill.case.map(({ name, laid }) => `${name}: ${laidLabel(studio, laid)}, ${laidNote(laid)}`)),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => ({ why: bestOf(studio, drill).id }),
  label: (drill, answer) => chosen(fields(studio, drill), answer, 'why').label,
  faults: (drill) => faults(studio, drill),
});
