/** How the program's pages are set: sizes of type, margins, and what is handed in to set them. */
import type { Voice } from '../words/voice.js';
import { columnWidth, type Frame } from './flow.js';
import { MM, type PageSize, type Ruler } from './types.js';

/** Points; body text is read on a table, notes at arm's length. */
export const TYPE = {
  title: { size: 16, face: 'bold' },
  heading: { size: 11, face: 'bold' },
  body: { size: 9.5 },
  ask: { size: 9.5, face: 'bold' },
  small: { size: 8 },
  strong: { size: 8, face: 'bold' },
} as const;

/** From one group to the next, and between the parts of one. */
export const GAPS = { group: 16, part: 6 } as const;

/** What pages are set with. */
export interface PaperStyle {
  readonly ruler: Ruler;
  readonly voice: Voice;
  readonly size: PageSize;
  /** When they were made, milliseconds since 1970. */
  readonly madeMs: number;
}

/** The frame of every page: margins that any printer reaches. */
export function frameOf(size: PageSize): Frame {
  return { size, margins: { top: 15 * MM, right: 16 * MM, bottom: 18 * MM, left: 16 * MM } };
}

/** Width of the text. */
export const textWidth = ({ size }: PaperStyle): number => columnWidth(frameOf(size));

/** A title as short as the foot of a page has room for. */
export const cutTitle = (title: string): string =>
  [...title].length <= 48 ? title : `${[...title].slice(0, 45).join('')}...`;
