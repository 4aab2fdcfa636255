/** A handout and sittings for the tests: small drills whose answers are known to differ. */
import * as v from 'valibot';
import { seededDraw, seedOf } from '../../src/chance/draw.js';
import { withFamily } from '../../src/drills/format.js';
import { type Drill, drillSchema } from '../../src/drills/kinds/index.js';
import { randomAnswer } from '../../src/drills/random-answer.js';
import type { Answer } from '../../src/drills/types.js';
import type { Sitting } from '../../src/quiz/answers.js';
import type { Submitted } from '../../src/quiz/class.js';
import { type Handout, parseHandout, type Rules } from '../../src/quiz/handout.js';
import { handoutText } from '../../src/quiz/handout-text.js';
import {
  closeQuestion,
  confirmAnswer,
  finishSitting,
  showQuestion,
  startSitting,
} from '../../src/quiz/sitting.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { kindOf, STUDIO } from '../studio.js';

const STARTS = ['burnt-sienna', 'cadmium-red', 'cadmium-yellow', 'cerulean-blue', 'sap-green'];
const TRAY = ['alizarin-crimson', 'ultramarine-blue', 'prussian-blue', 'ivory-black'];

/** 1 March 2026, 9:00 UTC. */
export const NINE = Date.UTC(2026, 2, 1, 9);

/** An answer that every question has among its choices, and that is not the best of any. */
export const ACROSS = { second: 'prussian-blue', amount: '1:1' };

/** A drill; every second one asks to dull. */
export function someDrill(index: number): Drill {
  const dulls = index % 2 === 1;
  const drill = v.parse(drillSchema, {
    kind: 'mix',
    id: `question-${index}`,
    level: 1 + (index % 5),
    title: `Question ${index}`,
    scene: 'A quarry wall in the evening.',
    start: { paints: { [STARTS[index % STARTS.length] as string]: 1 }, strength: 0.3 },
    goal: dulls ? { aim: 'dull', value: [3, 8], chroma: [0, 20] } : { aim: 'rich', value: [4, 7] },
    tray: TRAY,
  });
  return withFamily(drill, dulls ? 'dull-on-purpose' : 'darken-bright');
}

export const RULES: Rules = { hints: false, showResult: 'end', backAllowed: true, shuffle: true };

/** A secret for seals; every test that seals takes this one. */
export const SECRET = '0123456789abcdef'.repeat(4);

/** Text of a handout. @param secret without one it is of the format without seals */
export function someHandoutText(
  count = 4,
  rules: Partial<Rules> = {},
  title = 'Week 3',
  secret?: string,
): string {
  return handoutText({
    title,
    engine: '0.1.0',
    seed: 42,
    ...(secret === undefined ? {} : { secret }),
    rules: { ...RULES, ...rules },
    questions: Array.from({ length: count }, (_, index) => ({
      drill: someDrill(index),
      points: 1 + (index % 2),
    })),
  });
}

export function someHandout(count = 4, rules: Partial<Rules> = {}, secret?: string): Handout {
  return parseHandout(STUDIO, someHandoutText(count, rules, 'Week 3', secret), 'test.quiz.yaml');
}

/** A handout with one shipped drill of every kind and family. */
export function everyKindHandout(rules: Partial<Rules> = {}): { handout: Handout; drills: Drill[] } {
  const drills = [
    ...new Map(SHIPPED_DRILLS.map((drill) => [`${drill.kind} ${drill.family}`, drill])).values(),
  ];
  const text = handoutText({
    title: 'All kinds',
    engine: '0.1.0',
    seed: 1,
    rules: { ...RULES, ...rules },
    questions: drills.map((drill) => ({ drill, points: 1 })),
  });
  return { handout: parseHandout(STUDIO, text, 'kinds.quiz.yaml'), drills };
}

/** A finished sitting with given answers by index; `undefined` leaves the question open. No two names have the same moments. */
export function sittingOf(
  handout: Handout,
  name: string,
  answers: readonly (Answer | undefined)[],
  secondsEach = 20,
): Sitting {
  let sitting = startSitting(handout, name, NINE);
  let now = NINE;
  const own = 1 + (Math.abs(seedOf(name)) % 997);
  for (const [index, { drill }] of handout.questions.entries()) {
    sitting = showQuestion(sitting, drill.id, now + own);
    now += secondsEach * 1000;
    const answer = answers[index];
    if (answer !== undefined) sitting = confirmAnswer(sitting, drill.id, answer, now - own);
    sitting = handout.rules.showResult === 'each' ? closeQuestion(sitting, drill.id, now) : sitting;
  }
  return finishSitting(sitting, now);
}

/** A student's file as it is handed in. */
export const submit = (sitting: Sitting, file = `${sitting.name}.json`): Submitted => ({ file, sitting });

export const bestAnswers = (handout: Handout): Answer[] =>
  handout.questions.map(({ drill }) => kindOf(drill).best(drill));

/** A class that answers better from student to student: the first at random, the last all best. */
export function someClass(handout: Handout, size: number, seed = 7): Sitting[] {
  const draw = seededDraw(seed);
  const best = bestAnswers(handout);
  const fields = handout.questions.map(({ drill }) => kindOf(drill).fields(drill));
  return Array.from({ length: size }, (_, student) =>
    sittingOf(
      handout,
      `Student ${student + 1}`,
      handout.questions.map((_question, index) =>
        draw(size - 1) < student ? best[index] : randomAnswer(fields[index] ?? [], draw),
      ),
    ),
  );
}
