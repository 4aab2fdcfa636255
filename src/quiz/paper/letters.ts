/** The lettered answers on paper: a box for each letter, and beside it what it stands for. */
import { optionLabel } from '../../drills/answers.js';
import { kindOf } from '../../drills/kinds/index.js';
import { type Block, beside, box, inset, line, over, paragraph, stack, startsOf } from '../../paper/block.js';
import { type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { INK } from '../../paper/types.js';
import { cleanText } from '../../text/sanitize.js';
import type { Handout } from '../handout.js';
import type { PaperQuestion } from './style.js';

/** Type of what stands over a column or a row. */
export const LABEL = { ...TYPE.small, colour: INK.muted };
const LETTER_BOX = 12;
const LETTER_GAP = 6;

/** A letter in its box; the key fills the box of the best. */
export function letterBox(letter: string, isFilled: boolean, { ruler }: PaperStyle): Block {
  const edge = { colour: INK.plain, width: 0.7 };
  const frame = box(LETTER_BOX, LETTER_BOX, isFilled ? { fill: INK.plain, edge } : { edge });
  const colour = isFilled ? '#ffffff' : INK.plain;
  return over(
    frame,
    inset(line(letter, LETTER_BOX, { size: 9, face: 'bold', colour, leading: 1.33 }, ruler, 'middle'), 0),
  );
}

/** The width that a lettered line leaves for its words. */
export const letteredWidth = (width: number): number => width - LETTER_BOX - LETTER_GAP;

/** A letter with what it stands for. */
export function letteredLine(letter: Block, said: Block): Block {
  return beside([
    [0, letter],
    [LETTER_BOX + LETTER_GAP, said],
  ]);
}

/** Room between the columns of a table. */
const CELL_GAP = 14;
/** Width that a head of a column is given before it breaks. */
const HEAD_WIDTH = 54;

/** The answers as a table, a column a choice; undefined where it is wider than the page. */
function answersTable(
  { question: { drill }, lettered }: PaperQuestion,
  { studio }: Handout,
  style: PaperStyle,
): Block | undefined {
  const { ruler, voice } = style;
  const columns = kindOf(studio, drill)
    .fields(drill)
    .map(({ id, label, options }) => {
      const cells = lettered.map(({ answer }) => {
        const option = options.find((each) => each.id === answer[id]);
        return option === undefined ? '' : cleanText(optionLabel(option, voice.scale), 60);
      });
      const head = cleanText(label, 60);
      const widest = Math.max(...cells.map((cell) => ruler(cell, TYPE.body)));
      return {
        head,
        cells,
        width: Math.ceil(Math.max(widest, Math.min(HEAD_WIDTH, ruler(head, TYPE.small)))),
      };
    });
  const widths = columns.map(({ width }) => width + CELL_GAP);
  if (widths.reduce((sum, width) => sum + width, 0) > letteredWidth(textWidth(style))) return undefined;
  const starts = startsOf(widths);
  const rowOf = (texts: readonly string[], type: typeof TYPE.body | typeof LABEL): Block =>
    beside(
      texts.map((text, at) => [starts[at] as number, paragraph(text, columns[at]?.width ?? 0, type, ruler)]),
    );
  const head = rowOf(
    columns.map((column) => column.head),
    LABEL,
  );
  const rows = lettered.map(({ letter }, at) =>
    letteredLine(
      letterBox(letter, false, style),
      rowOf(
        columns.map(({ cells }) => cells[at] as string),
        TYPE.body,
      ),
    ),
  );
  return stack([inset(head, LETTER_BOX + LETTER_GAP), ...rows], 4);
}

/** The answers: in two columns where each fits on a line of half the page, as a table where they have several choices, else in lines. */
export function answersBlock(asked: PaperQuestion, handout: Handout, style: PaperStyle): Block[] {
  const { lettered } = asked;
  const { ruler } = style;
  const width = textWidth(style);
  const gap = 14;
  const half = (width - gap) / 2;
  const isShort = lettered.every(({ label }) => ruler(label, TYPE.body) <= letteredWidth(half));
  const each = (room: number): Block[] =>
    lettered.map(({ letter, label }) =>
      letteredLine(letterBox(letter, false, style), paragraph(label, letteredWidth(room), TYPE.body, ruler)),
    );
  const table =
    isShort || Object.keys(lettered[0]?.answer ?? {}).length < 2
      ? undefined
      : answersTable(asked, handout, style);
  if (table !== undefined) return [table];
  if (!isShort || lettered.length < 3) return [stack(each(width), 4)];
  const rows = Math.ceil(lettered.length / 2);
  const lines = each(half);
  return [
    beside([
      [0, stack(lines.slice(0, rows), 4)],
      [half + gap, stack(lines.slice(rows), 4)],
    ]),
  ];
}
