/** A sheet for the marks of a class: a row a student, a column a question. */
import { type Block, beside, line, paragraph, stack, startsOf } from '../../paper/block.js';
import { columnHeight, type Group } from '../../paper/flow.js';
import { frameOf, type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { INK, type Mark } from '../../paper/types.js';
import type { PaperQuestion, PaperQuiz } from './style.js';

const NAME_WIDTH = 150;
const TOTAL_WIDTH = 44;
/** Narrowest column that two figures are written in, in points. */
const LEAST_COLUMN = 19;
const ROW_HEIGHT = 19;
const MOST_ROWS = 30;
const EDGE = { colour: INK.line, width: 0.5 };

/** Lines across and down. @param columns widths */
function grid(columns: readonly number[], rows: number): Block {
  const width = columns.reduce((sum, each) => sum + each, 0);
  const height = rows * ROW_HEIGHT;
  const ends = [...startsOf(columns), width];
  const across = Array.from(
    { length: rows + 1 },
    (_, row): Mark => ({
      kind: 'figure',
      outline: {
        path: [
          [0, row * ROW_HEIGHT],
          [width, row * ROW_HEIGHT],
        ],
      },
      edge: EDGE,
    }),
  );
  const down = ends.map(
    (x): Mark => ({
      kind: 'figure',
      outline: {
        path: [
          [x, 0],
          [x, height],
        ],
      },
      edge: EDGE,
    }),
  );
  return { height, marks: [...across, ...down] };
}

function page(
  questions: readonly PaperQuestion[],
  isLast: boolean,
  { handout }: PaperQuiz,
  style: PaperStyle,
): Group {
  const { ruler } = style;
  const width = textWidth(style);
  const column = Math.min(34, (width - NAME_WIDTH - TOTAL_WIDTH) / questions.length);
  const columns = [NAME_WIDTH, ...questions.map(() => column), ...(isLast ? [TOTAL_WIDTH] : [])];
  const heads = ['Name', ...questions.map(({ number }) => String(number)), ...(isLast ? ['points'] : [])];
  const lead = stack(
    [
      paragraph(`${handout.title}: marks`, width, TYPE.heading, ruler),
      paragraph('Group ______________________   Date ______________________', width, TYPE.body, ruler),
    ],
    6,
  );
  const starts = startsOf(columns);
  const labels = beside(
    heads.map((text, at): readonly [number, Block] => [
      starts[at] as number,
      line(text, columns[at] as number, TYPE.strong, ruler, at === 0 ? 'left' : 'middle'),
    ]),
  );
  const rows = Math.min(
    MOST_ROWS,
    Math.floor((columnHeight(frameOf(style.size)) - lead.height - 40) / ROW_HEIGHT),
  );
  return {
    onNewPage: true,
    gap: 8,
    parts: [lead, stack([labels, grid(columns, rows)])],
  };
}

/** The sheet, over as many pages as the questions need. */
export function classSheet(quiz: PaperQuiz, style: PaperStyle): Group[] {
  const { questions } = quiz;
  const most = Math.floor((textWidth(style) - NAME_WIDTH - TOTAL_WIDTH) / LEAST_COLUMN);
  const pages = Math.ceil(questions.length / most);
  const each = Math.ceil(questions.length / pages);
  return Array.from({ length: pages }, (_, at) =>
    page(questions.slice(at * each, (at + 1) * each), at === pages - 1, quiz, style),
  );
}
