/** The sheet that a student hands in: a box for each letter, and under it one for the mark. */
import { type Block, beside, box, inset, line, over, paragraph, stack } from '../../paper/block.js';
import type { Group } from '../../paper/flow.js';
import { type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { INK } from '../../paper/types.js';
import type { PaperQuiz } from './style.js';

/** Boxes in a row. */
const ROW = 10;
const GAP = 6;
const THIN = { colour: INK.line, width: 0.5 };
const STRONG = { colour: INK.plain, width: 0.9 };

/** "Name" with a line to write on. */
function writeOn(label: string, width: number, { ruler }: PaperStyle): Block {
  const from = ruler(label, TYPE.body) + 6;
  const text = line(label, width, { ...TYPE.body, leading: 2 }, ruler);
  const under = {
    kind: 'figure',
    outline: {
      path: [
        [from, 16],
        [width, 16],
      ],
    },
    edge: THIN,
  } as const;
  return over(text, { height: 0, marks: [under] });
}

/** Lines for who sits and when. */
function nameLines(style: PaperStyle): Block {
  const width = textWidth(style);
  const part = (width - 2 * GAP) / 4;
  return beside([
    [0, writeOn('Name', 2 * part, style)],
    [2 * part + GAP, writeOn('Group', part, style)],
    [3 * part + 2 * GAP, writeOn('Date', part, style)],
  ]);
}

function cell(number: number, points: number, width: number, style: PaperStyle): Block {
  const { ruler } = style;
  const worth = box(width, 16, { edge: THIN });
  return stack([
    line(String(number), width, TYPE.strong, ruler, 'middle'),
    box(width, 26, { edge: STRONG }),
    over(worth, inset(line(`/ ${points}`, width - 3, { size: 7, colour: INK.muted }, ruler, 'right'), 0, 4)),
  ]);
}

/** The answer sheet, on a page of its own. */
export function answerSheet({ handout, questions }: PaperQuiz, style: PaperStyle): Group {
  const { ruler } = style;
  const width = textWidth(style);
  const each = (width - GAP * (ROW - 1)) / ROW;
  const cells = questions.map(({ number, question }) => cell(number, question.points, each, style));
  const rows = Array.from({ length: Math.ceil(cells.length / ROW) }, (_, row) =>
    beside(cells.slice(row * ROW, (row + 1) * ROW).map((block, at) => [at * (each + GAP), block])),
  );
  const possible = questions.reduce((sum, { question }) => sum + question.points, 0);
  const total = `Points: ________ of ${Math.round(possible * 1000) / 1000}`;
  return {
    onNewPage: true,
    gap: 12,
    parts: [
      stack(
        [
          paragraph(handout.title, width, TYPE.title, ruler),
          paragraph('Answer sheet', width, TYPE.heading, ruler),
        ],
        2,
      ),
      nameLines(style),
      paragraph(
        'One letter in each large box; leave it empty where you do not know. The small boxes are for the marks.',
        width,
        TYPE.body,
        ruler,
      ),
      ...rows,
      line(total, width, { ...TYPE.body, face: 'bold' }, ruler, 'right'),
    ],
  };
}
