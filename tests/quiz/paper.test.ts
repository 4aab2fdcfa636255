import { beforeAll, describe, expect, it } from 'vitest';
import { shippedPictures } from '../../src/files/shipped.js';
import { LEAST_TYPE, PAGE_SIZES, type PaperId } from '../../src/paper/types.js';
import { drillScenes } from '../../src/pictures/scene.js';
import { type Handout, parseHandout } from '../../src/quiz/handout.js';
import { handoutText } from '../../src/quiz/handout-text.js';
import { letteredHandout } from '../../src/quiz/lettered.js';
import { createGrader } from '../../src/quiz/marking.js';
import { handoutPaper, keyPaper, type PaperQuiz, paperQuiz, sheetCode } from '../../src/quiz/paper/index.js';
import { sayAll } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { casesOf, some } from '../cases.js';
import { PRESS, reread, styleOf } from '../paper/fixture.js';
import { type ReadPdf, wordsOf } from '../paper/pdf-reader.js';
import { kindOf, STUDIO } from '../studio.js';
import { everyKindHandout, RULES, someDrill, someHandout } from './fixture.js';

/** Without blanks: where a paragraph is broken does not matter. */
const tight = (text: string): string => text.replace(/\s+/g, '');

const PAPERS = some(Object.keys(PAGE_SIZES) as PaperId[], 2);

let quiz: PaperQuiz;
const sheets = new Map<PaperId, { handout: ReadPdf; key: ReadPdf }>();

async function quizOf(handout: Handout): Promise<PaperQuiz> {
  const sceneOf = drillScenes(STUDIO, await shippedPictures(STUDIO));
  return paperQuiz(handout, (drill) => sceneOf(drill), WRITTEN);
}

async function printed(handout: Handout) {
  const made = await quizOf(handout);
  return { made, sheet: await reread(handoutPaper(made, styleOf('a4'))) };
}

beforeAll(async () => {
  quiz = await quizOf(everyKindHandout().handout);
  for (const paper of PAPERS) {
    const style = styleOf(paper);
    const handout = await reread(handoutPaper(quiz, style));
    sheets.set(paper, { handout, key: await reread(keyPaper(quiz, createGrader(quiz.handout), style)) });
  }
});

describe.each(PAPERS)('a quiz of every kind and family on %s', (paper) => {
  const sheetsOf = () => sheets.get(paper) as { handout: ReadPdf; key: ReadPdf };

  it('prints every question, goal and lettered answer, and a box for each letter', () => {
    const { pages } = sheetsOf().handout;
    const all = tight(wordsOf(pages));
    for (const { number, question, lettered } of quiz.questions) {
      const { drill } = question;
      expect(all).toContain(tight(`${number}. ${drill.title}`));
      for (const text of [drill.scene, drill.ask, ...sayAll(kindOf(drill).goalLines(drill), WRITTEN)])
        expect(all).toContain(tight(text));
      for (const { label } of lettered) {
        // A table has the choices of an answer one beside the other.
        const isTable = !all.includes(tight(label));
        if (isTable) expect(Object.keys(lettered[0]?.answer ?? {}).length).toBeGreaterThan(1);
      }
    }
    const letters = pages.flatMap(({ texts }) => texts.filter(({ text }) => /^[A-F]$/.test(text)));
    expect(letters).toHaveLength(quiz.questions.reduce((sum, { lettered }) => sum + lettered.length, 0));
    const last = pages.at(-1);
    expect(wordsOf(last === undefined ? [] : [last])).toContain('Answer sheet');
    expect(last?.boxes.filter(({ height }) => height === 26)).toHaveLength(quiz.questions.length);
  });

  it('tells no letter from another, and nothing of the result', () => {
    const { pages } = sheetsOf().handout;
    const boxes = pages.flatMap((page) =>
      page.boxes.filter(({ width, height }) => width === 12 && height === 12),
    );
    expect(boxes.length).toBeGreaterThan(100);
    expect(new Set(boxes.map(({ fill }) => fill))).toEqual(new Set([undefined]));
    const all = tight(wordsOf(pages));
    for (const { question } of quiz.questions) {
      const kind = kindOf(question.drill);
      const { told } = kind.grade(question.drill, kind.best(question.drill));
      for (const line of sayAll(told, WRITTEN).filter((each) => each.length > 40))
        expect(all).not.toContain(tight(line));
    }
    expect(wordsOf(pages)).not.toMatch(/\b\d+ (good|fair|off)\b/);
    // No scale of greys lies beside values that are judged by eye.
    expect(all).not.toContain(tight('scale below'));
  });

  it('keeps all of it on the page, in type that can be read', () => {
    const { handout, key } = sheetsOf();
    for (const { pages } of [handout, key]) {
      for (const { width, height, texts } of pages) {
        expect([width, height]).toEqual([PAGE_SIZES[paper].width, PAGE_SIZES[paper].height]);
        for (const { text, x, y, size } of texts) {
          expect(size).toBeGreaterThanOrEqual(LEAST_TYPE);
          expect(x).toBeGreaterThan(40);
          // The bold face is the wider of the two.
          expect(x + PRESS.ruler(text, { size }), text).toBeLessThan(width - 40);
          expect(y).toBeGreaterThan(40);
          expect(y).toBeLessThan(height - 20);
        }
      }
      const numbers = pages.map((page) =>
        /page (\d+) of (\d+)$/
          .exec(wordsOf([page]))
          ?.slice(1)
          .map(Number),
      );
      expect(numbers).toEqual(pages.map((_, at) => [at + 1, pages.length]));
    }
    // Two questions a page and more, on the whole.
    expect(handout.pages.length).toBeLessThan(quiz.questions.length / 2 + 3);
  });

  it('has a key that names the best of each question and why, and a sheet for a class', () => {
    const { pages } = sheetsOf().key;
    const all = tight(wordsOf(pages));
    const filled = pages.flatMap((page) =>
      page.boxes.filter(({ width, height, fill }) => width === 12 && height === 12 && fill !== undefined),
    );
    const grader = createGrader(quiz.handout);
    let best = 0;
    for (const [at, { question, lettered }] of quiz.questions.entries()) {
      const marks = lettered.map(({ answer }) => grader.grade(at, answer).mark);
      best += marks.filter((mark) => mark === Math.max(...marks)).length;
      const kind = kindOf(question.drill);
      for (const line of sayAll(kind.grade(question.drill, kind.best(question.drill)).told, WRITTEN))
        if (lettered.length > 0 && marks.indexOf(100) === marks.lastIndexOf(100))
          expect(all).toContain(tight(line));
    }
    expect(filled).toHaveLength(best);
    expect(wordsOf(pages.slice(-1))).toMatch(/: marks/);
  });
});

describe('the printed handout', () => {
  it('bears a code that changes with the letters', () => {
    const letters = letteredHandout(quiz.handout);
    expect(quiz.code).toBe(sheetCode(letters));
    expect(quiz.code).toMatch(/^[2-9A-Z]{4}$/);
    const turned = letters.map((row, at) => (at === 0 ? [...row].reverse() : row));
    expect(sheetCode(turned)).not.toBe(quiz.code);
    expect(wordsOf((sheets.get('a4') as { handout: ReadPdf }).handout.pages)).toContain(`sheet ${quiz.code}`);
  });

  it('has a scale of greys where no value is judged by eye, and hints where they are allowed', async () => {
    const { sheet } = await printed(someHandout(2));
    expect(wordsOf(sheet.pages)).toContain('scale below');
    const drill = { ...someDrill(0), hint: 'Look for a neighbour.' };
    const withHint = (hints: boolean): Handout =>
      parseHandout(
        STUDIO,
        handoutText({
          title: 'H',
          engine: '0.1.0',
          seed: 1,
          rules: { ...RULES, hints },
          questions: [{ drill, points: 1 }],
        }),
        'h.quiz.yaml',
      );
    expect(wordsOf((await printed(withHint(true))).sheet.pages)).toContain('Hint: Look for a neighbour.');
    expect(wordsOf((await printed(withHint(false))).sheet.pages)).not.toContain('Hint');
  });

  it('takes hostile and long words as words', async () => {
    const title = `evil) Tj /JavaScript (x\\) ${'W'.repeat(60)}`;
    const drill = {
      ...someDrill(0),
      title: `endstream endobj ${'long'.repeat(15)}`.slice(0, 60),
      scene: `<</S/JS>> %PDF ${'unbroken'.repeat(20)}`.slice(0, 160),
    };
    const handout = parseHandout(
      STUDIO,
      handoutText({ title, engine: '0.1.0', seed: 1, rules: RULES, questions: [{ drill, points: 2.5 }] }),
      'h.quiz.yaml',
    );
    const { sheet } = await printed(handout);
    const all = tight(wordsOf(sheet.pages));
    expect(all).toContain(tight('evil) Tj /JavaScript (x\\)'));
    expect(all).toContain('endstreamendobj');
    expect(all).toContain(tight(drill.scene));
    expect(all).toContain('2.5points');
    // Outside of streams and literal strings (ISO 32000-1, 7.3.4.2) no name of an action stands in the file.
    const names = sheet.source
      .replace(/stream\n[\s\S]*?\nendstream/g, '')
      .replace(/\((?:\\.|[^\\)])*\)/g, '')
      .match(/\/(JS|JavaScript|OpenAction|AA|Launch|URI)\b/);
    expect(names).toBeNull();
    for (const { texts, width } of sheet.pages)
      for (const { text, x, size } of texts) expect(x + PRESS.ruler(text, { size })).toBeLessThan(width - 40);
  });

  it('holds many questions, and a box for each', async () => {
    const count = casesOf(60, 30);
    const { sheet, made } = await printed(someHandout(count));
    const key = await reread(keyPaper(made, createGrader(made.handout), styleOf('a4')));
    expect(sheet.pages.at(-1)?.boxes.filter(({ height }) => height === 26)).toHaveLength(count);
    // Columns wide enough for two figures: the class sheet takes several pages.
    const heads = key.pages.filter((page) => wordsOf([page]).includes('Week 3: marks'));
    expect(heads.length).toBeGreaterThan(count / 30);
  });
});
