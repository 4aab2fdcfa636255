/** Ten greys on either scale of value, and beside each the dots that show whether the printer kept it. */
import {
  BLACK_FIRST,
  formatStep,
  PAPER_FIRST,
  PAPER_VALUE,
  scaleEnds,
  type ValueScale,
} from '../../colour/value.js';
import { type Block, beside, box, inset, line, over, paragraph, stack } from '../../paper/block.js';
import type { Group } from '../../paper/flow.js';
import { type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { INK } from '../../paper/types.js';
import { blackShare, dotsOf, printedGrey } from '../dots.js';
import type { ChartRequest } from '../types.js';
import type { Chart } from './frame.js';

const EDGE = { colour: INK.line, width: 0.5 } as const;
const BLACK = '#000000';
const PAPER = '#ffffff';
const HEIGHTS = { grey: 62, check: 96, square: 20 } as const;
const GAP = 4;
/** Lighter, as it is, darker: in steps. */
const SQUARES = [0.5, 0, -0.5] as const;
const FIGURES = { size: 7.5, leading: 1.25 } as const;

/** Whole steps of each scale as Munsell values, light to dark: of paper-first 1 to 10, of Munsell value 10 to 1. */
const VALUES: readonly (readonly [scale: ValueScale, values: readonly number[]])[] = [
  [PAPER_FIRST, Array.from({ length: 10 }, (_, at) => 9.5 - at)],
  [BLACK_FIRST, Array.from({ length: 10 }, (_, at) => 10 - at)],
];

/** Dots with three squares on them: half a step lighter, the grey itself, half a step darker. */
function check(value: number, width: number): Block {
  const { check: height, square } = HEIGHTS;
  const { isFieldBlack, size, at } = dotsOf(value, width, height);
  const [field, ink] = isFieldBlack ? [BLACK, PAPER] : [PAPER, BLACK];
  const dots = at.map(([x, y]) => inset(box(size[0], size[1], { fill: ink }), x, y));
  const gap = (height - SQUARES.length * square) / (SQUARES.length + 1);
  const squares = SQUARES.flatMap((more, row) => {
    const shade = value + more;
    if (shade > PAPER_VALUE || shade < 0) return [];
    const grey = box(square, square, { fill: printedGrey(shade) });
    return [inset(grey, (width - square) / 2, gap + row * (square + gap))];
  });
  return over(box(width, height, { fill: field }), ...dots, ...squares, box(width, height, { edge: EDGE }));
}

function column(value: number, scale: ValueScale, width: number, { ruler }: PaperStyle): Block {
  const middle = (text: string, type: Parameters<typeof line>[2]): Block =>
    line(text, width, type, ruler, 'middle');
  const other =
    scale === PAPER_FIRST ? `V ${formatStep(value, BLACK_FIRST)}` : `step ${formatStep(value, PAPER_FIRST)}`;
  const figures = [middle(String(scale.stepOf(value)), TYPE.ask), middle(other, FIGURES)];
  const quiet = { ...FIGURES, colour: INK.muted };
  // Bare paper is outlined: there is no print to check.
  if (value >= PAPER_VALUE)
    return stack([box(width, HEIGHTS.grey, { edge: EDGE }), ...figures, middle('bare', quiet)]);
  return stack([
    box(width, HEIGHTS.grey, { fill: printedGrey(value), edge: EDGE }),
    ...figures,
    middle(`ink ${(100 * blackShare(value)).toFixed(0)} %`, quiet),
    { height: 3, marks: [] },
    check(value, width),
    middle('print ____', quiet),
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
  'The check: hold the page at arm’s length, or further, and half close your eyes until the dots melt into one grey. The middle square of each field should melt with them: then the printer kept that step.',
  'Where the upper, lighter square melts instead, the print is half a step too dark there; where the lower, darker one does, half a step too light. Write what your print has below the field, and count with it.',
  'The dots are full black on bare paper, or bare paper in black, in the share that gives the step; "ink" is the share of black. Step 1, V 9.5, is the bare paper, and steps are counted from this paper to this ink: no ink is as dark as step 10, and no paper as light as V 10.',
  'The check is for the print. On a screen dots and greys melt only where the page is shown large.',
] as const;

/** The scale that is set here comes first. */
export function valuesChart({ progress }: ChartRequest, style: PaperStyle): Chart {
  const own = VALUES.toSorted(
    ([one], [other]) => Number(other.id === style.voice.scale) - Number(one.id === style.voice.scale),
  );
  const groups = own.map(([scale, values]) => scaleGroup(scale, values, style));
  progress(1, 1);
  return { title: 'Ten steps of value', notes: NOTES, groups, paints: [] };
}
