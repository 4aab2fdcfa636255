/** The key, for the teacher alone: what every letter is worth and why the best is best, then a sheet for the marks of a class. */
import { kindOf } from '../../drills/kinds/index.js';
import { ownSwatch } from '../../drills/look.js';
import type { Grade } from '../../drills/types.js';
import { type Block, beside, EMPTY, line, paragraph, rule, stack } from '../../paper/block.js';
import { flow, type Group, withFeet } from '../../paper/flow.js';
import { patchBox, patchLines } from '../../paper/patch.js';
import { cutTitle, frameOf, GAPS, type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { INK, type PaperDocument } from '../../paper/types.js';
import { cleanText } from '../../text/sanitize.js';
import { IDEAS } from '../../words/ideas.js';
import { sayAll } from '../../words/tell.js';
import type { Grader } from '../marking.js';
import { classSheet } from './class-sheet.js';
import { sheetWords } from './handout-paper.js';
import { letterBox, letteredLine, letteredWidth } from './letters.js';
import { headLine } from './question.js';
import { type PaperQuestion, type PaperQuiz, pointsWords } from './style.js';

/** Columns of a row, in points: the mark, then the colour that an answer gives. */
const MARK_WIDTH = 50;
const PATCH = { width: 46, height: 14 } as const;
const WORDS_WIDTH = 150;

/** "rim: " of a colour that is one part of the answer. */
const partOf = ({ label }: { readonly label: string }): string => {
  const part = label.replace(/^yours(, )?/, '');
  return part === '' ? '' : `${cleanText(part, 40)}: `;
};

function answerRow(letter: Block, label: string, grade: Grade, isBest: boolean, style: PaperStyle): Block {
  const { ruler, voice } = style;
  const width = letteredWidth(textWidth(style));
  const swatch = ownSwatch(grade);
  const right = swatch === undefined ? 0 : PATCH.width + WORDS_WIDTH + 12;
  const room = width - MARK_WIDTH - right - 6;
  const idea = grade.idea === undefined ? undefined : IDEAS.get(grade.idea);
  const said = stack([
    paragraph(label, room, isBest ? TYPE.ask : TYPE.body, ruler),
    idea === undefined ? EMPTY : paragraph(idea.did, room, { ...TYPE.small, colour: INK.muted }, ruler),
  ]);
  const colour =
    swatch === undefined
      ? []
      : ([
          [width - right, patchBox(swatch, PATCH.width, PATCH.height)],
          [
            width - WORDS_WIDTH,
            paragraph(
              `${partOf(swatch)}${patchLines(swatch, voice).slice(0, 2).join(', ')}`,
              WORDS_WIDTH,
              TYPE.small,
              ruler,
            ),
          ],
        ] as const);
  const mark = line(
    `${grade.mark} ${grade.verdict}`,
    MARK_WIDTH,
    { ...TYPE.body, face: isBest ? 'bold' : 'regular' },
    ruler,
  );
  return letteredLine(letter, beside([[0, mark], [MARK_WIDTH, said], ...colour]));
}

/** A question with the mark of each letter, the best in a filled box. */
function keyGroup(asked: PaperQuestion, { handout }: PaperQuiz, grader: Grader, style: PaperStyle): Group {
  const { number, question, lettered } = asked;
  const width = textWidth(style);
  const graded = lettered.map(({ answer }) => grader.grade(number - 1, answer));
  const top = Math.max(...graded.map(({ mark }) => mark));
  const best = graded.find(({ mark }) => mark === top) as Grade;
  const letters = lettered.filter((_, at) => graded[at]?.mark === top).map(({ letter }) => letter);
  const rows = lettered.map(({ letter, label }, at) => {
    const grade = graded[at] as Grade;
    const isBest = grade.mark === top;
    return answerRow(letterBox(letter, isBest, style), label, grade, isBest, style);
  });
  const kind = kindOf(handout.studio, question.drill);
  const goal = sayAll(kind.goalLines(question.drill), style.voice).join('; ');
  const small = (text: string, colour: string): Block =>
    paragraph(text, width, { ...TYPE.small, colour }, style.ruler);
  return {
    gap: GAPS.part,
    parts: [
      stack(
        [
          headLine(asked, `best: ${letters.join(', ')}; ${pointsWords(question.points)}`, style),
          paragraph(question.drill.ask, width, TYPE.body, style.ruler),
          small(goal, INK.muted),
        ],
        2,
      ),
      stack(rows, 4),
      small(sayAll(best.told, style.voice).join(' '), INK.plain),
    ],
  };
}

/** The key. @param grader of the same handout */
export function keyPaper(quiz: PaperQuiz, grader: Grader, style: PaperStyle): PaperDocument {
  const { handout, questions, code } = quiz;
  const frame = frameOf(style.size);
  const width = textWidth(style);
  const title = `${handout.title}: key`;
  const said = `For the teacher. The key of the sheets that bear ${code} at the foot. A mark is 0 to 100, right from 85; points are the mark's share of what a question is worth. Type the letters in with: mudlark quiz enter`;
  const groups: Group[] = [
    {
      gap: GAPS.part,
      parts: [
        stack(
          [paragraph(title, width, TYPE.title, style.ruler), paragraph(said, width, TYPE.body, style.ruler)],
          3,
        ),
        rule(width),
      ],
    },
    ...questions.map((asked) => keyGroup(asked, quiz, grader, style)),
    ...classSheet(quiz, style),
  ];
  const pages = flow(groups, frame, GAPS.group);
  const foot = { left: cutTitle(title), middle: sheetWords(code) };
  return {
    title,
    size: style.size,
    pages: withFeet(pages, frame, foot, style.ruler),
    madeMs: style.madeMs,
  };
}
