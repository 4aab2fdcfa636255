/** The value ladder of each paint: from its strongest wash to a pale one. */
import { paintOf } from '../../paints/index.js';
import { line, stack } from '../../paper/block.js';
import { type PaperStyle, TYPE, textWidth } from '../../paper/style.js';
import { consistency, seeAlone, WATERS, washStrength, waterStrength } from '../../washes/index.js';
import type { ChartRequest } from '../types.js';
import { cell, cellWidth, coded } from './cell.js';
import type { Chart } from './frame.js';
import { cellRow } from './pairs.js';

const PATCH_HEIGHT = 40;
const RUNGS = WATERS.toReversed();

export function laddersChart({ studio, paints, box, progress }: ChartRequest, style: PaperStyle): Chart {
  const each = cellWidth(RUNGS.length, textWidth(style));
  return {
    title: `Value ladders of ${box}`,
    notes: [
      'Each paint alone, from its strongest wash to a pale one. From one wash to the next the water to one part of paint doubles.',
    ],
    paints: paints.map((id) => paintOf(studio, id)),
    groups: paints.map((id, at) => {
      const rungs = RUNGS.map((water) => {
        const seen = seeAlone(studio, id, washStrength(paintOf(studio, id), water));
        const thick = consistency(waterStrength(water), seen.colour.step);
        const lines = [`1 part, water ${water}`, ...(thick === undefined ? [] : [thick])];
        return cell(seen, lines, { width: each, height: PATCH_HEIGHT }, style);
      });
      progress(at + 1, paints.length);
      const head = line(coded(paintOf(studio, id)), textWidth(style), TYPE.strong, style.ruler);
      return { parts: [stack([head, cellRow(rungs, each)], 2)] };
    }),
  };
}
