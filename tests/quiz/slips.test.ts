import { describe, expect, it } from 'vitest';
import { everyAnswer } from '../../src/drills/answers.js';
import type { Answer } from '../../src/drills/types.js';
import { markClass } from '../../src/quiz/class.js';
import { slipPage, slipPages } from '../../src/quiz/slips.js';
import { escapeHtml } from '../../src/text/html.js';
import { IDEAS } from '../../src/words/ideas.js';
import { kindOf } from '../studio.js';
import { sittingOf } from './fixture.js';
import { best, classOf, handout, NASTY } from './nasty.js';

/** An answer to a question that shows an idea. */
function answerShowing(index: number): Answer | undefined {
  const { drill } = handout.questions[index] as (typeof handout.questions)[number];
  const kind = kindOf(drill);
  return [...everyAnswer(kind.fields(drill))].find((answer) => kind.grade(drill, answer).idea !== undefined);
}

describe('feedback slips', () => {
  it('are of one student each, and let no text become markup', () => {
    const result = classOf(NASTY);
    const all = slipPages(result);
    expect(all.match(/class="slip"/g)).toHaveLength(result.students.length);
    for (const page of [all, ...result.students.map((student) => slipPage(result, student))]) {
      expect(page).not.toMatch(/<(script|link|img|iframe|object|embed|base|form)\b/i);
      expect(page).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u001b]/);
      for (const tag of page.match(/<[a-z][^>]*>/gi) ?? [])
        expect(tag).not.toMatch(/alert|onerror|onmouseover/);
    }
    const [first, second] = classOf(['Ann Marlow', 'Zed Quill']).students;
    const page = slipPage(classOf(['Ann Marlow', 'Zed Quill']), first as NonNullable<typeof first>);
    expect(page).toContain('Ann Marlow');
    expect(page).not.toContain(second?.name);
  });

  it('name the questions that a piece of advice is about: what is right in one is wrong in another', () => {
    const given = best.map((_, at) => answerShowing(at));
    const result = markClass(handout, [{ file: 'a.json', sitting: sittingOf(handout, 'Ann', given) }]);
    const [student] = result.students;
    const shown = student?.marks.flatMap(({ idea }, at) => (idea === undefined ? [] : [{ idea, at }])) ?? [];
    expect(shown.length).toBe(3);
    const page = slipPage(result, student as NonNullable<typeof student>);
    const advice =
      page.slice(page.indexOf('What to try next'), page.indexOf('</ul>')).match(/<li>.*?<\/li>/g) ?? [];
    expect(advice.length).toBe(new Set(shown.map(({ idea }) => idea)).size);
    for (const { idea, at } of shown) {
      const line = advice.find((each) => each.includes(escapeHtml(IDEAS.get(idea)?.instead ?? '-')));
      expect(line).toContain(`question ${at + 1} (Question ${at})`);
    }
  });
});
