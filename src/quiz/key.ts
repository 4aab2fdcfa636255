/** The teacher's key: what earns the marks of each question, and why. */
import { countAnswers, everyAnswer } from '../drills/answers.js';
import { findFamily } from '../drills/families.js';
import { kindOf, markOf } from '../drills/kinds/index.js';
import { lookAt, misses, type SeenAnswer } from '../drills/look.js';
import type { Answer } from '../drills/types.js';
import { GOOD_MARK } from '../judgement/index.js';
import { cleanText } from '../text/sanitize.js';
import { wrapText } from '../text/wrap.js';
import { sayAll } from '../words/tell.js';
import { WRITTEN } from '../words/voice.js';
import type { Handout, Question } from './handout.js';
import { shownPoints } from './report-words.js';

/** With more answers than this only those one choice away from the best are looked at. */
const MOST_TRIED = 3000;

/** Other good answers and tempting wrong ones that are written out. */
const MOST_OTHERS = 8;
const MOST_TRAPS = 3;

/** An answer in the key. */
export interface KeyAnswer {
  readonly answer: Answer;
  readonly label: string;
  readonly mark: number;
  readonly points: number;
}

/** One question of the key. */
export interface KeyQuestion {
  readonly drill: string;
  readonly title: string;
  readonly family: string;
  readonly level: number;
  readonly ask: string;
  readonly possible: number;
  readonly best: KeyAnswer;
  /** Why it is the best, a line each. */
  readonly why: readonly string[];
  /** Others with a good mark, the best first. */
  readonly alsoGood: readonly KeyAnswer[];
  /** Good answers that are not written out; undefined where not every answer was tried. */
  readonly more: number | undefined;
  /** Wrong ones that tempt. */
  readonly traps: readonly KeyAnswer[];
}

function keyOf({ studio }: Handout, { drill, points: possible }: Question): KeyQuestion {
  const kind = kindOf(studio, drill);
  const fields = kind.fields(drill);
  const { best, traps } = lookAt(studio, drill);
  const entry = (answer: Answer, mark: number): KeyAnswer => ({
    answer,
    label: kind.label(drill, answer),
    mark,
    points: Math.round(mark * possible * 10) / 1000,
  });
  const seen = ({ answer, grade }: SeenAnswer): KeyAnswer => entry(answer, grade.mark);
  const isWhole = countAnswers(fields) <= MOST_TRIED;
  const tried = isWhole
    ? [...everyAnswer(fields)].map((answer) => entry(answer, markOf(studio, drill, answer)))
    : traps.map(seen);
  const good = tried
    .filter(({ mark, label }) => mark >= GOOD_MARK && label !== best.label)
    .sort((a, b) => b.mark - a.mark);
  return {
    drill: drill.id,
    title: cleanText(drill.title),
    family: findFamily(drill.family)?.name ?? drill.family,
    level: drill.level,
    ask: cleanText(drill.ask),
    possible,
    best: seen(best),
    why: sayAll(best.grade.told, WRITTEN),
    alsoGood: good.slice(0, MOST_OTHERS),
    more: isWhole ? Math.max(0, good.length - MOST_OTHERS) : undefined,
    traps: misses(traps).slice(0, MOST_TRAPS).map(seen),
  };
}

/** The key of a handout, questions in its order. */
export function quizKey(handout: Handout): KeyQuestion[] {
  return handout.questions.map((question) => keyOf(handout, question));
}

const marked = ({ label, points, mark }: KeyAnswer, possible: number): string =>
  `${label}: ${shownPoints(points)} of ${shownPoints(possible)} (mark ${mark})`;

function questionLines(question: KeyQuestion, index: number): string[] {
  const { title, family, level, drill, ask, possible, best, why, alsoGood, more, traps } = question;
  const rest =
    more === undefined
      ? ['there may be others: not every answer was tried']
      : more > 0
        ? [`and ${more} more`]
        : [];
  const part = (head: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : [head, ...lines.map((line) => `  ${line}`)];
  return [
    `${index + 1}. ${title}`,
    ...[
      `${family}, level ${level}, ${drill}`,
      ask,
      `Best: ${marked(best, possible)}`,
      ...part('Why:', why),
      ...part('Also good:', [...alsoGood.map((answer) => marked(answer, possible)), ...rest]),
      ...part(
        'Tempting and wrong:',
        traps.map((answer) => marked(answer, possible)),
      ),
    ].map((line) => `   ${line}`),
  ];
}

/** The key as text. @param columns width of the page */
export function keyText({ title }: Handout, key: readonly KeyQuestion[], columns: number): string {
  const possible = key.reduce((sum, question) => sum + question.possible, 0);
  const head = [
    `Key: ${title}`,
    `${key.length} question${key.length === 1 ? '' : 's'}, ${shownPoints(possible)} points`,
  ];
  const blocks = key.map((question, index) =>
    questionLines(question, index).flatMap((line) => {
      const indent = ' '.repeat(line.length - line.trimStart().length);
      return wrapText(line.trimStart(), columns - indent.length).map((piece) => indent + piece);
    }),
  );
  return `${[head, ...blocks].map((block) => block.join('\n')).join('\n\n')}\n`;
}
