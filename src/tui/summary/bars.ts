/** The figures of a set as bars. */
import { changeWord, type FigureRow } from '../../practice/index.js';
import { padText } from '../../text/wrap.js';
import type { Glyphs } from '../kit/glyphs.js';
import type { Piece } from '../kit/row.js';

/** Columns of a bar and of the words beside it. */
const BAR = 24;
const WORDS = 51;

interface BarSight {
  readonly glyphs: Glyphs;
  /** Columns of a full bar. */
  readonly length: number;
}

function barLine(label: string, when: string, share: number, text: string, sight: BarSight): Piece[] {
  const { glyphs, length } = sight;
  const full = Math.max(0, Math.min(length, Math.round(share * length)));
  return [
    { text: padText(label, 14), role: 'label' },
    { text: padText(when, 11), role: 'muted' },
    {
      text: glyphs.full.repeat(full) + glyphs.empty.repeat(length - full),
      role: when === 'before' ? 'muted' : 'plain',
    },
    { text: `  ${text}` },
  ];
}

/** The figures as bars, this time (or the answers of it that had one) over the time before; a fuller bar is better, and comes from the same rounded value as its number. */
export function figureBars(rows: readonly FigureRow[], glyphs: Glyphs, columns: number): Piece[][] {
  const sight: BarSight = { glyphs, length: Math.max(8, Math.min(BAR, columns - WORDS)) };
  return rows.flatMap((row) => {
    const { label, now, before, over } = row;
    const change = changeWord(row);
    return [
      barLine(
        label,
        over === undefined ? 'this time' : `${over} ${over === 1 ? 'answer' : 'answers'}`,
        now.fill,
        change === undefined ? now.text : `${now.text}: ${change}`,
        sight,
      ),
      ...(before === undefined ? [] : [barLine('', 'before', before.fill, before.text, sight)]),
    ];
  });
}
