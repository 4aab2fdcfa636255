/** The worked kind: see schema.ts. */

import { overall } from '../../../judgement/index.js';
import { evidenceOf, type Studio } from '../../../paints/index.js';
import { seeLaid } from '../../../washes/index.js';
import { laidLabel, laidNote } from '../../../words/laid.js';
import { type Finding, tell } from '../../../words/tell.js';
import { chosen, requireComplete } from '../../answers.js';
import type { Answer, Field, Grade, Kind, Why } from '../../types.js';
import { mixtureFinding, sharedIn, whyFilms } from '../../why.js';
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

const weighedFigures = ({ text, proof }: Weighed) => ({ statement: text, proof });

/** The first mixture of a case, and what each of its paints does to the light. */
function mixtureIn(studio: Studio, items: WorkedDrill['case']) {
  for (const { name, laid } of items) {
    if ('layers' in laid || 'strokes' in laid) continue;
    const seen = seeLaid(studio, laid);
    const finding = mixtureFinding(studio, seen, name);
    if (finding !== undefined) return { seen, finding };
  }
  return undefined;
}

/** A mixture that the true statement is about: the reason for it lies in what its paints swallow. */
function explaining(studio: Studio, drill: WorkedDrill, { statement, proof }: Weighed) {
  if (proof.by === 'way') return mixtureIn(studio, drill.case);
  const isOfColour = proof.by === 'chromas' || proof.by === 'shade' || statement.fact === 'darker-than-both';
  return isOfColour
    ? mixtureIn(
        studio,
        drill.case.filter(({ id }) => statement.of.includes(id)),
      )
    : undefined;
}

function toldOf(
  studio: Studio,
  drill: WorkedDrill,
  picked: Weighed,
  best: Weighed,
  idea: string | undefined,
): Finding[] {
  const verdict = picked.isTrue ? 'worked-so' : picked.tooCloseToCall ? 'worked-close' : 'worked-not-so';
  const isRight = picked.id === best.id;
  // A wrong statement is refuted; the reason is told with the true one.
  const mixture = isRight ? explaining(studio, drill, best) : undefined;
  return [
    tell(verdict, { statement: isRight ? picked.text : picked.short, proof: picked.proof }),
    ...(isRight
      ? []
      : [
          tell('worked-decides', {
            statement: best.text,
            ...(JSON.stringify(best.proof) === JSON.stringify(picked.proof) ? {} : { proof: best.proof }),
          }),
        ]),
    ...(mixture === undefined ? [] : [mixture.finding]),
    ...(idea === undefined ? [] : [tell('advice', { idea })]),
  ];
}

/** The films of the case, the statements that the result has not told of, and what a mixture's paints swallow together. */
function why(studio: Studio, drill: WorkedDrill, answer: Answer): Why {
  requireComplete(fields(studio, drill), answer);
  const mixture = mixtureIn(studio, drill.case);
  const best = bestOf(studio, drill);
  const others = weigh(studio, drill).filter(({ id }) => id !== best.id && id !== answer['why']);
  const explains = answer['why'] === best.id ? undefined : explaining(studio, drill, best);
  return {
    films: whyFilms(
      drill.case.map(({ name, laid }) => ({ label: name, reflectance: seeLaid(studio, laid).reflectance })),
    ),
    told: [
      ...others.map((one) => tell('why-statement', { ...weighedFigures(one), isSo: one.isTrue })),
      ...(explains === undefined ? [] : [explains.finding]),
    ],
    swallowed: mixture === undefined ? [] : sharedIn(studio, mixture.seen),
  };
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
  return {
    mark,
    verdict: overall(mark),
    told: toldOf(studio, drill, picked, best, idea),
    ...(idea === undefined ? {} : { idea }),
    best: { answer: { why: best.id }, label: best.short, mark: 100 },
    swatches: drill.case.map((item) => ({
      label: item.name,
      reflectance: seeLaid(studio, item.laid).reflectance,
    })),
    evidence: evidenceOf(drill.case.map(({ laid }) => seeLaid(studio, laid))),
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
    drill.case.map(({ name, laid }) =>
      tell('worked-thing', { name, laid: laidLabel(studio, laid), how: laidNote(laid) }),
    ),
  grade: (drill, answer) => grade(studio, drill, answer),
  best: (drill) => ({ why: bestOf(studio, drill).id }),
  label: (drill, answer) => chosen(fields(studio, drill), answer, 'why').label,
  reordered: (drill, order) => ({ ...drill, statements: order(drill.statements) }),
  why: (drill, answer) => why(studio, drill, answer),
  faults: (drill) => faults(studio, drill),
});
