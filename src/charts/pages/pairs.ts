/** Every two paints of a box in five amounts, a row a pair. */
import { type RelationKind, relationOf } from '../../judgement/index.js';
import { paintOf } from '../../paints/index.js';
import { type Block, beside, line, over, stack } from '../../paper/block.js';
import type { Group } from '../../paper/flow.js';
import { type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { INK } from '../../paper/types.js';
import type { Wash } from '../../washes/index.js';
import { AMOUNTS, fiveAmounts } from '../five-amounts.js';
import { CHART_WATER, type Pair, pairsOf } from '../two-paints.js';
import type { ChartRequest } from '../types.js';
import { CELL_GAP, cell, cellWidth, madeLines } from './cell.js';
import type { Chart } from './frame.js';

const PATCH_HEIGHT = 34;

/** What two paints do, as a head says it. */
const RELATION_WORDS: Readonly<Record<RelationKind, string>> = {
  around: 'around: the colour is kept all the way',
  between: 'between: a third colour appears, or part of the colour goes',
  across: 'across: they take each other’s colour, to a grey',
  neutral: 'one of the two is a black, a grey or a white',
};

/** A row of cells, tops level. */
export const cellRow = (cells: readonly Block[], each: number): Block =>
  beside(cells.map((block, at) => [at * (each + CELL_GAP), block]));

function row({ studio }: ChartRequest, pair: Pair, style: PaperStyle): Group {
  const width = textWidth(style);
  const each = cellWidth(AMOUNTS, width);
  const names = pair.map((id) => paintOf(studio, id).name).join(' with ');
  const { kind } = relationOf(studio, { [pair[0]]: 1 }, pair[1]);
  const head = over(
    line(names, width, TYPE.strong, style.ruler),
    line(RELATION_WORDS[kind], width, { size: 7.5, colour: INK.muted }, style.ruler, 'right'),
  );
  const cells = fiveAmounts(studio, pair).map((seen) =>
    cell(seen, madeLines(studio, seen.laid as Wash), { width: each, height: PATCH_HEIGHT }, style),
  );
  return { parts: [stack([head, cellRow(cells, each)], 2)] };
}

export function pairsChart(request: ChartRequest, style: PaperStyle): Chart {
  const { studio, paints, box, progress } = request;
  const pairs = pairsOf(paints);
  return {
    title: `Pairs of ${box}`,
    notes: [
      `Every two paints in five amounts, all with water ${CHART_WATER}. The steps from cell to cell are equal as the eye sees them, so the parts are not.`,
    ],
    paints: paints.map((id) => paintOf(studio, id)),
    groups: pairs.map((pair, at) => {
      const group = row(request, pair, style);
      progress(at + 1, pairs.length);
      return group;
    }),
  };
}
