/** The greyest mixture of every pair that makes a grey, and which pairs do not. */

import { hueName } from '../../colour/hue.js';
import { chromaWord } from '../../colour/words.js';
import { NO_HUE_CHROMA } from '../../judgement/index.js';
import { paintOf, type Studio } from '../../paints/index.js';
import { type Block, paragraph } from '../../paper/block.js';
import type { Group } from '../../paper/flow.js';
import { type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import type { Wash } from '../../washes/index.js';
import { type Greyest, greyestOf, leanOf, type Makes } from '../greys.js';
import { CHART_WATER, pairsOf } from '../two-paints.js';
import type { ChartRequest } from '../types.js';
import { cell, cellWidth, madeLines } from './cell.js';
import type { Chart } from './frame.js';
import { cellRow } from './pairs.js';

const IN_A_ROW = 4;
const PATCH_HEIGHT = 40;
/** Lines of a list that are kept on one page. */
const KEPT = 6;

/** "near neutral, leans warm, to orange". */
function leanWords({ seen }: Greyest): string {
  const lean = leanOf(seen.colour);
  const grey = chromaWord(seen.colour.lab);
  if (lean === 'none') return `${grey}, leans nowhere`;
  return `${grey}, leans ${lean === 'neither' ? '' : `${lean}, `}to ${hueName(seen.colour.hue)}`;
}

/** What pairs do instead. */
const HEADS = {
  between: 'They dull each other or make a third colour, but no grey (least chroma):',
  around: 'They keep their colour (least chroma):',
  neutral:
    'One of the two is a grey, a black or a white already, and greys the other the more of it comes in:',
} as const;

/** Pairs that make no grey, by what they do instead: each once, under the first of the two, or the one that is grey by itself. */
function without({ studio }: ChartRequest, rest: readonly Greyest[], style: PaperStyle): Group[] {
  const width = textWidth(style);
  const nameOf = (id: string): string => paintOf(studio, id).name;
  return (['between', 'around', 'neutral'] as const).flatMap((kind): Group[] => {
    const pairs = rest.filter(({ relation }) => relation === kind);
    if (pairs.length === 0) return [];
    const headOf = ({ pair, duller }: Greyest): string => (kind === 'neutral' ? duller : pair[0]);
    const lines = [...new Set(pairs.map(headOf))].map((head): Block => {
      const others = pairs
        .filter((each) => headOf(each) === head)
        .map(({ pair, least }) => {
          const other = nameOf(pair[0] === head ? pair[1] : pair[0]);
          return kind === 'neutral' ? other : `${other} ${least.toFixed(0)}`;
        });
      return paragraph(`${nameOf(head)} with ${others.join(', ')}`, width, TYPE.small, style.ruler);
    });
    const parts = [paragraph(HEADS[kind], width, TYPE.strong, style.ruler), ...lines];
    return Array.from({ length: Math.ceil(parts.length / KEPT) }, (_, at) => ({
      parts: parts.slice(at * KEPT, (at + 1) * KEPT),
      gap: 2,
    }));
  });
}

function cellRows(studio: Studio, greys: readonly Greyest[], style: PaperStyle): Group[] {
  const each = cellWidth(IN_A_ROW, textWidth(style));
  const cells = greys.map((greyest) =>
    cell(
      greyest.seen,
      [leanWords(greyest), ...madeLines(studio, greyest.seen.laid as Wash)],
      { width: each, height: PATCH_HEIGHT },
      style,
    ),
  );
  return Array.from({ length: Math.ceil(cells.length / IN_A_ROW) }, (_, at) => ({
    parts: [cellRow(cells.slice(at * IN_A_ROW, (at + 1) * IN_A_ROW), each)],
  }));
}

/** The heading stays with what it is of. */
const headed = (heading: Block, [first, ...more]: readonly Group[]): Group[] =>
  first === undefined ? [] : [{ gap: 4, ...first, parts: [heading, ...first.parts] }, ...more];

export function greysChart(request: ChartRequest, style: PaperStyle): Chart {
  const { studio, paints, box, progress } = request;
  const pairs = pairsOf(paints);
  const all = pairs.map((pair, at) => {
    const greyest = greyestOf(studio, pair);
    progress(at + 1, pairs.length);
    return greyest;
  });
  const of = (makes: Makes): Greyest[] =>
    all
      .filter((each) => each.makes === makes)
      .sort((one, other) => one.seen.colour.chroma - other.seen.colour.chroma);
  const [greys, leaning] = [of('grey'), of('leaning')];
  const rest = all.filter(({ makes }) => makes === 'none');
  const head = (text: string): Block => paragraph(text, textWidth(style), TYPE.heading, style.ruler);
  return {
    title: `Greys of ${box}`,
    notes: [
      `Of ${pairs.length} ${pairs.length === 1 ? 'pair' : 'pairs'} ${greys.length} ${greys.length === 1 ? 'makes' : 'make'} a grey, ${leaning.length} a grey that keeps a lean, and ${rest.length} ${rest.length === 1 ? 'does' : 'do'} not grey. Each patch is the greyest that can be counted out of its pair, all with water ${CHART_WATER}.`,
    ],
    paints: paints.map((id) => paintOf(studio, id)),
    groups: [
      ...headed(
        head(`Greys: chroma ${NO_HUE_CHROMA} or less, the greyest first`),
        cellRows(studio, greys, style),
      ),
      ...headed(head('Greys that lean: a hue is left'), cellRows(studio, leaning, style)),
      ...headed(head('Pairs that do not grey'), without(request, rest, style)),
    ],
  };
}
