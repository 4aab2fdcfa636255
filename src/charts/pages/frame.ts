/** What every chart has: its title, how to read it, cautions, feet. */
import { scaleEnds, VALUE_SCALES } from '../../colour/value.js';
import { cautionsOf, type Pigment } from '../../paints/index.js';
import { type Block, EMPTY, paragraph, rule, stack } from '../../paper/block.js';
import { flow, type Group, withFeet } from '../../paper/flow.js';
import { greyScale } from '../../paper/grey-scale.js';
import { NEAR_NOTE, NEAR_SIGN } from '../../paper/patch.js';
import { cutTitle, frameOf, type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import type { PaperDocument } from '../../paper/types.js';
import { GUESS_SIGN } from './cell.js';

/** Between the rows of a chart. */
const ROW_GAP = 9;
const FOOT = `below each colour the grey of its value; ${NEAR_SIGN} printed only near`;
const SCALE = { width: 300, height: 12 } as const;

/** A chart before it is set on pages. */
export interface Chart {
  readonly title: string;
  /** How to read it, a paragraph each. */
  readonly notes: readonly string[];
  readonly groups: readonly Group[];
  /** Those that are on it. */
  readonly paints: readonly Pigment[];
}

const small = (text: string, style: PaperStyle): Block =>
  paragraph(text, textWidth(style), TYPE.small, style.ruler);

/** What the patches and their lines mean, on every chart of paints. */
function reading({ paints }: Chart, { voice }: PaperStyle): string[] {
  if (paints.length === 0) return [];
  const isGuessed = paints.some(({ strengthEvidence }) => strengthEvidence === 'assumed');
  return [
    `The strip below a colour is the grey of its value. Value is counted in steps, ${scaleEnds(VALUE_SCALES[voice.scale])}; chroma is strength of colour, 0 for a grey. All colours are predicted, dry on white paper.`,
    'Figures before names are parts of tube paint. Water 1:12 is one part of all the paint to twelve parts of water; the darkest wash of a paint has about 1:3.',
    ...(isGuessed
      ? [
          `${GUESS_SIGN} How strong this paint is in the tube is a guess: the colours hold, its parts may be far off.`,
        ]
      : []),
    NEAR_NOTE,
  ];
}

function head(chart: Chart, style: PaperStyle): Group {
  const { ruler, voice } = style;
  const width = textWidth(style);
  const said = [...chart.notes, ...reading(chart, style)].map((text) => small(text, style));
  const cautions = cautionsOf(chart.paints);
  const care =
    cautions.length === 0
      ? []
      : [paragraph('Cautions', width, TYPE.strong, ruler), small(cautions.join(' '), style)];
  const scale = chart.paints.length === 0 ? EMPTY : greyScale(SCALE.width, SCALE.height, voice.scale, ruler);
  return {
    parts: [
      stack([paragraph(chart.title, width, TYPE.title, ruler), ...said, ...care], 2),
      scale,
      rule(width),
    ].filter(({ height }) => height > 0),
    gap: 6,
  };
}

/** Sets a chart on its pages. */
export function chartDocument(chart: Chart, style: PaperStyle): PaperDocument {
  const frame = frameOf(style.size);
  const groups = [head(chart, style), ...chart.groups];
  // What a loose page needs to be read.
  const foot = { left: cutTitle(chart.title), middle: chart.paints.length === 0 ? '' : FOOT };
  const pages = withFeet(flow(groups, frame, ROW_GAP), frame, foot, style.ruler);
  return { title: chart.title, size: style.size, pages, madeMs: style.madeMs };
}
