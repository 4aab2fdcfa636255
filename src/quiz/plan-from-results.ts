/** From a student's marks to what to practise. */

import { GOOD_MARK } from '../judgement/index.js';
import { IDEAS } from '../words/ideas.js';
import type { Student } from './class.js';
import type { Handout } from './handout.js';
import type { PlannedFamily, PracticePlan } from './plan.js';
import { bySkill, type SkillMarks } from './skills.js';

/** Drills for a family without a single mark, and for one that was good enough. */
const MOST_DRILLS = 8;
const FEWEST_DRILLS = 2;

/** The idea shown most often, the first of them by question where two are equal. */
function commonIdea(questions: SkillMarks['questions']): string | undefined {
  const counts = new Map<string, number>();
  for (const { mark } of questions)
    if (mark.idea !== undefined) counts.set(mark.idea, (counts.get(mark.idea) ?? 0) + 1);
  return [...counts].reduce<readonly [string, number] | undefined>(
    (most, next) => (most === undefined || next[1] > most[1] ? next : most),
    undefined,
  )?.[0];
}

/** Below half marks one level easier than the easiest question missed, else at its level. */
function levelFor({ mean, questions }: SkillMarks): number {
  const missed = questions.filter(({ mark }) => !mark.right);
  const level = Math.min(
    ...(missed.length > 0 ? missed : questions).map(({ question }) => question.drill.level),
  );
  return mean < 50 ? Math.max(1, level - 1) : level;
}

function planned(marks: SkillMarks): PlannedFamily {
  const { family, mean, questions } = marks;
  const idea = IDEAS.get(commonIdea(questions) ?? '');
  const count = `${questions.length} question${questions.length === 1 ? '' : 's'}`;
  const open = questions.filter(({ mark }) => mark.state !== 'answered').length;
  return {
    family,
    drills: Math.max(FEWEST_DRILLS, Math.round((MOST_DRILLS * (100 - mean)) / 100)),
    level: levelFor(marks),
    why: [
      `${Math.round(mean)} of 100 over ${count}${open > 0 ? `, ${open} left open` : ''}.`,
      ...(idea === undefined ? [] : [idea.instead]),
    ].join(' '),
  };
}

/** The plan of one student: the families below a good mark, weakest first; when all were good, the weakest of them. */
export function planFor(handout: Handout, student: Student): PracticePlan {
  const families = bySkill(handout, student).sort((a, b) => a.mean - b.mean);
  const weak = families.filter(({ mean }) => mean < GOOD_MARK);
  return {
    name: student.name,
    quiz: handout.title,
    families: (weak.length > 0 ? weak : families.slice(0, 1)).map(planned),
  };
}
