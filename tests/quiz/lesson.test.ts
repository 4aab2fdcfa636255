import { describe, expect, it } from 'vitest';
import { everyAnswer } from '../../src/drills/answers.js';
import type { Answer } from '../../src/drills/types.js';
import { analyseClass } from '../../src/quiz/analysis.js';
import { markClass } from '../../src/quiz/class.js';
import { lessonFrom } from '../../src/quiz/lesson.js';
import { IDEAS } from '../../src/words/ideas.js';
import { kindOf } from '../studio.js';
import { bestAnswers, sittingOf, someClass, someHandout } from './fixture.js';

const handout = someHandout(6);
const best = bestAnswers(handout);
const marked = (answers: readonly (readonly (Answer | undefined)[])[]) =>
  markClass(
    handout,
    answers.map((each, at) => ({ file: `${at}.json`, sitting: sittingOf(handout, `S${at}`, each) })),
  );

/** Ideas that a question can show, every answer graded. */
const canShow = handout.questions.map(
  ({ drill }) =>
    new Set(
      [...everyAnswer(kindOf(drill).fields(drill))].flatMap(
        (answer) => kindOf(drill).grade(drill, answer).idea ?? [],
      ),
    ),
);

describe('misconceptions', () => {
  const class_ = someClass(handout, 24);
  const { misconceptions } = lessonFrom(
    markClass(
      handout,
      class_.map((sitting, at) => ({ file: `${at}.json`, sitting })),
    ),
  );

  it('are counted against the students and answers that could show them: recounted from the files, answer by answer', () => {
    expect(misconceptions.length).toBeGreaterThan(3);
    for (const { id, students, ofStudents, answers, ofAnswers, cost, words } of misconceptions) {
      let [hits, open, lost] = [0, 0, 0];
      const showed = new Set<string>();
      const could = new Set<string>();
      for (const { name, answers: given } of class_) {
        for (const { drill: drillId, answer } of given) {
          const index = handout.questions.findIndex(({ drill }) => drill.id === drillId);
          if (Object.keys(answer).length === 0 || !canShow[index]?.has(id)) continue;
          open++;
          could.add(name);
          const { drill } = handout.questions[index] as (typeof handout.questions)[number];
          const { idea, mark } = kindOf(drill).grade(drill, answer);
          if (idea !== id) continue;
          hits++;
          lost += 100 - mark;
          showed.add(name);
        }
      }
      expect({ id, students, ofStudents, answers, ofAnswers, cost }).toEqual({
        id,
        students: showed.size,
        ofStudents: could.size,
        answers: hits,
        ofAnswers: open,
        cost: lost,
      });
      expect(words).toBe(
        `${students} of ${ofStudents} students ${IDEAS.get(id)?.did}, on ${answers} of the ${ofAnswers} answers where it could show`,
      );
    }
    // Not every question can show every idea, or the denominators would say nothing.
    expect(new Set(misconceptions.map(({ ofAnswers }) => ofAnswers)).size).toBeGreaterThan(1);
    const costs = misconceptions.map(({ cost }) => cost);
    expect(costs).toEqual([...costs].sort((a, b) => b - a));
  });
});

/** An answer to a question that shows an idea. */
function showing(index: number, idea: string): Answer {
  const { drill } = handout.questions[index] as (typeof handout.questions)[number];
  const found = [...everyAnswer(kindOf(drill).fields(drill))].find(
    (answer) => kindOf(drill).grade(drill, answer).idea === idea,
  );
  if (found === undefined) throw new Error(`question ${index} cannot show ${idea}`);
  return found;
}

describe('what to teach next', () => {
  const dull = [...(canShow[1] ?? [])].find((id) => canShow[3]?.has(id) && !canShow[0]?.has(id)) as string;

  it('takes up the idea that cost most, and opens the questions where it showed most', () => {
    const slip = best.map((answer, at) => (at === 3 ? showing(3, dull) : answer));
    const twice = best.map((answer, at) => (at === 3 || at === 1 ? showing(at, dull) : answer));
    const { advice, reopen } = lessonFrom(marked([slip, slip, twice, best]));
    expect(reopen).toEqual([3, 1]);
    expect(advice).toEqual([
      `Next lesson is for the 3 of 4 who ${IDEAS.get(dull)?.did}; teach: "${IDEAS.get(dull)?.instead}"`,
      'Open again in the room: question 4, "Question 3" (1 of 4 right) and question 2, "Question 1" (3 of 4 right), where that idea shows most.',
    ]);
  });

  it('says so when no idea is shared, when all is well, and when nobody sat', () => {
    const slip = best.map((answer, at) => (at === 3 ? showing(3, dull) : answer));
    const alone = lessonFrom(marked([slip, best, best]));
    expect(alone.advice[0]).toMatch(
      /^No mistaken idea is shared by two.*the weakest skill is "Dull it on purpose"/,
    );
    expect(alone.reopen).toEqual([3]);
    expect(lessonFrom(marked([best, best])).advice[0]).toMatch(/may go on/);
    expect(lessonFrom(marked([]))).toMatchObject({ advice: [], skills: [], hardest: [], misconceptions: [] });
  });

  it('has a grid of students by skills with the weakest skill first, and questions from the hardest', () => {
    const wrong = best.map((answer, at) =>
      at % 2 === 1 ? showing(at, [...(canShow[at] ?? [])][0] as string) : answer,
    );
    const result = marked([best, wrong, [best[0]]]);
    const { skills, rows, hardest } = lessonFrom(result);
    expect(skills.map(({ family }) => family)).toEqual(['dull-on-purpose', 'darken-bright']);
    expect(skills[1]?.mean).toBeCloseTo((100 + 100 + 100 / 3) / 3, 10);
    expect(skills[1]?.standing).toEqual({ good: 2, fair: 0, off: 1 });
    expect(rows.map(({ marks }) => marks[0] === undefined)).toEqual([false, false, true]);
    expect(hardest.map(({ right }) => right)).toEqual([1, 1, 1, 2, 2, 3]);
    expect(hardest.at(-1)?.index).toBe(0);
  });

  it('is the same from hands as from students who gave the same answers', () => {
    const slip = best.map((answer, at) => (at === 3 ? showing(3, dull) : answer));
    const given = [slip, slip, best];
    const counts = {
      handoutDigest: handout.digest,
      held: '2026-03-02T10:00:00.000Z',
      questions: handout.questions.map(({ drill }, at) => ({
        drill: drill.id,
        offered:
          at === 3
            ? [
                { answer: slip[3] as Answer, first: 2 },
                { answer: best[3] as Answer, first: 1 },
              ]
            : [{ answer: best[at] as Answer, first: 3 }],
      })),
    };
    const ofStudents = lessonFrom(marked(given));
    const ofHands = lessonFrom(markClass(handout, [], { rooms: [{ file: 'r.json', counts }] }));
    expect(ofHands.hardest).toEqual(ofStudents.hardest);
    expect(ofHands.reopen).toEqual(ofStudents.reopen);
    expect(
      ofHands.misconceptions.map(({ id, answers, ofAnswers, cost }) => [id, answers, ofAnswers, cost]),
    ).toEqual(
      ofStudents.misconceptions.map(({ id, answers, ofAnswers, cost }) => [id, answers, ofAnswers, cost]),
    );
  });
});

describe('whole answers', () => {
  it('are counted with all their choices together: recounted from the files', () => {
    const sittings = someClass(handout, 30);
    const { questions } = analyseClass(
      markClass(
        handout,
        sittings.map((sitting, at) => ({ file: `${at}.json`, sitting })),
      ),
    );
    for (const [index, { id, answers, answered }] of questions.entries()) {
      const { drill } = handout.questions[index] as (typeof handout.questions)[number];
      const given = sittings.flatMap((sitting) =>
        sitting.answers.filter((each) => each.drill === id).map(({ answer }) => answer),
      );
      for (const { answer, count, mark, isGood } of answers) {
        const same = given.filter((each) =>
          Object.entries(answer).every(([field, option]) => each[field] === option),
        );
        expect(count).toBe(same.length);
        expect(mark).toBe(kindOf(drill).grade(drill, answer).mark);
        expect(isGood).toBe(mark >= 85);
      }
      expect(answers.reduce((sum, { count }) => sum + count, 0)).toBe(answered);
    }
    expect(questions.some(({ answers }) => answers.filter(({ isGood }) => isGood).length > 1)).toBe(true);
  });
});
