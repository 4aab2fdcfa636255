/** Ten greys on either scale of value, and beside each the bars that show whether the printer kept it. */
import { greyOfValue } from '../../colour/screen.js';
import { BLACK_FIRST, formatStep, PAPER_FIRST, scaleEnds, type ValueScale } from '../../colour/value.js';
import { type Block, beside, box, inset, line, over, paragraph, stack } from '../../paper/block.js';
import type { Group } from '../../paper/flow.js';
import { type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { INK } from '../../paper/types.js';
import { barsOf, blackShare } from '../bars.js';
import type { ChartRequest } from '../types.js';
import type { Chart } from './frame.js';

const EDGE = { colour: INK.line, width: 0.5 } as const;
const BLACK = '#000000';
const HEIGHTS = { grey: 62, check: 108, square: 20 } as const;
const GAP = 4;
/** Lighter, as it is, darker: in steps. */
const SQUARES = [0.5, 0, -0.5] as const;
const FIGURES = { size: 7.5, leading: 1.25 } as const;

/** Whole steps of each scale as Munsell values, light to dark: of paper-first 1 to 10, of Munsell value 10 to 1. */
const VALUES: readonly (readonly [scale: ValueScale, values: readonly number[]])[] = [
  [PAPER_FIRST, Array.from({ length: 10 }, (_, at) => 9.5 - at)],
  [BLACK_FIRST, Array.from({ length: 10 }, (_, at) => 10 - at)],
];

/** Bars with three squares on them: one of the grey, one half a step lighter, one half a step darker. */
function check(value: number, width: number): Block {
  const { check: height, square } = HEIGHTS;
  const known = barsOf(value, height);
  if (known === undefined) return { height, marks: [] };
  const frame = box(width, height, { edge: EDGE });
  const bars = known.bars.map(({ top, thick }) => inset(box(width, thick, { fill: BLACK }), 0, top));
  const gap = (height - SQUARES.length * square) / (SQUARES.length + 1);
  const squares = SQUARES.flatMap((more, at) => {
    const shade = value + more;
    if (shade > 10 || shade < 0) return [];
    const grey = box(square, square, { fill: greyOfValue(shade) });
    return [inset(grey, (width - square) / 2, gap + at * (square + gap))];
  });
  return over({ height, marks: [] }, ...bars, ...squares, frame);
}

function column(value: number, scale: ValueScale, width: number, { ruler }: PaperStyle): Block {
  const middle = (text: string, type: Parameters<typeof line>[2]): Block =>
    line(text, width, type, ruler, 'middle');
  const other =
    scale === PAPER_FIRST ? `V ${formatStep(value, BLACK_FIRST)}` : `step ${formatStep(value, PAPER_FIRST)}`;
  return stack([
    box(width, HEIGHTS.grey, { fill: greyOfValue(value), edge: EDGE }),
    middle(String(scale.stepOf(value)), TYPE.ask),
    middle(other, FIGURES),
    middle(`ink ${(100 * blackShare(value)).toFixed(0)} %`, { ...FIGURES, colour: INK.muted }),
    { height: 3, marks: [] },
    check(value, width),
  ]);
}

function scaleGroup(scale: ValueScale, values: readonly number[], style: PaperStyle): Group {
  const width = textWidth(style);
  const each = (width - GAP * (values.length - 1)) / values.length;
  const columns = values.map((value, at): readonly [number, Block] => [
    at * (each + GAP),
    column(value, scale, each, style),
  ]);
  const title = `${scale === PAPER_FIRST ? "Painter's steps" : 'Munsell value'}: ${scaleEnds(scale)}`;
  return { parts: [paragraph(title, width, TYPE.heading, style.ruler), beside(columns)], gap: 4 };
}

const NOTES = [
  'Print at full size (100 %), without any setting that makes prints lighter, darker or more brilliant. Look at the check in daylight before you trust the scale.',
  'The check: hold the page at arm’s length, or further, and half close your eyes until the bars melt into one grey. The middle square of each should melt with them: then the printer kept that step.',
  'Where the upper, lighter square melts instead, the print is half a step too dark there; where the lower, darker one does, half a step too light. Write it below the column and count with it.',
  'The bars are bare paper and full black, in the shares that give the step; "ink" is the share of black. The darkest have no check: no printer keeps gaps so thin, and no ink is as dark as that. The first step is a little darker than the bare paper.',
  'The check is for the print. On a screen bars and greys melt only where the page is shown large.',
] as const;

/** The scale that is set here comes first. */
export function valuesChart({ progress }: ChartRequest, style: PaperStyle): Chart {
  const own = VALUES.toSorted(
    ([one], [other]) => Number(other.id === style.voice.scale) - Number(one.id === style.voice.scale),
  );
  const groups = own.map(([scale, values]) => scaleGroup(scale, values, style));
  progress(1, 1);
  return { title: 'Ten steps of value', box: '', notes: NOTES, groups, paints: [] };
}
