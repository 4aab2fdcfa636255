/** Eight mixtures to paint: each predicted, wash and mixture, with an empty box beside it and a line for the value that is read. */
import { paintOf, type Studio } from '../../paints/index.js';
import { type Block, box as drawnBox, line, paragraph, stack } from '../../paper/block.js';
import type { Group } from '../../paper/flow.js';
import { type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { INK } from '../../paper/types.js';
import { listWords } from '../../text/list-words.js';
import type { Seen } from '../../washes/index.js';
import { scaleUnit } from '../../words/voice.js';
import { EXERCISES, exercisesFor } from '../practice.js';
import type { ChartRequest, Exercise } from '../types.js';
import { addedLines, CELL_TYPE, cell, cellWidth, madeLines } from './cell.js';
import type { Chart } from './frame.js';
import { cellRow } from './pairs.js';

/** Of a box that is painted in: a brush has to have room. */
const BOX_HEIGHT = 74;
const IN_A_ROW = 4;

function predicted(
  label: string,
  seen: Seen,
  lines: readonly string[],
  width: number,
  style: PaperStyle,
): Block {
  const type = { ...CELL_TYPE, colour: INK.muted };
  return stack(
    [line(label, width, type, style.ruler), cell(seen, lines, { width, height: BOX_HEIGHT }, style)],
    1,
  );
}

function toPaint(width: number, style: PaperStyle): Block {
  const edge = { colour: INK.line, width: 0.8 };
  const type = { ...CELL_TYPE, colour: INK.muted };
  return stack([
    line('painted', width, type, style.ruler),
    { height: 1, marks: [] },
    drawnBox(width, BOX_HEIGHT, { edge }),
    { height: 2, marks: [] },
    line(`${scaleUnit(style.voice)} I read: ________`, width, CELL_TYPE, style.ruler),
  ]);
}

function row(
  studio: Studio,
  { title, family, wash, start, mixed }: Exercise,
  at: number,
  style: PaperStyle,
): Group {
  const width = textWidth(style);
  const each = cellWidth(IN_A_ROW, width);
  const cells = [
    predicted('first this wash', start, madeLines(studio, wash), each, style),
    toPaint(each, style),
    predicted('then stir in', mixed, addedLines(studio, wash), each, style),
    toPaint(each, style),
  ];
  const head = paragraph(`${at + 1}. ${title}: ${family.toLowerCase()}`, width, TYPE.ask, style.ruler);
  return { parts: [stack([head, cellRow(cells, each)], 2)] };
}

const idsOf = ({ wash }: Exercise): string[] => [...Object.keys(wash.paints), ...Object.keys(wash.add ?? {})];

export function practiceChart(
  { studio, paints, box, seed, progress }: ChartRequest,
  style: PaperStyle,
): Chart {
  const exercises = exercisesFor(studio, paints, seed, progress);
  const used = paints.filter((id) => exercises.some((exercise) => idsOf(exercise).includes(id)));
  const { voice } = style;
  const fewer = exercises.length === EXERCISES ? [] : [`This box gives ${exercises.length} of ${EXERCISES}.`];
  return {
    title: `Practice sheet ${seed}, with ${box}`,
    notes: [
      `Paint each wash in its empty box, or on the paper that you use, and let it dry. Then stir in what is named, parts to one part of the paint in the wash, and paint it too. Read the ${scaleUnit(voice)} of each on a scale of greys before you compare.`,
      `Paints of this sheet: ${listWords(used.map((id) => paintOf(studio, id).name))}. ${fewer.join('')}`.trim(),
    ],
    paints: used.map((id) => paintOf(studio, id)),
    groups: exercises.map((exercise, at) => row(studio, exercise, at, style)),
  };
}
