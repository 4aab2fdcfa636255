/** Texts that may be longer than the screen: their lines, how many fit, and scrolling through them. */
import type { Command } from './keys.js';

export interface Page {
  readonly lines: readonly string[];
  /** Lines that fit. */
  readonly rows: number;
}

/** Last line that may stand at the top. */
export const lastTop = ({ lines, rows }: Page): number => Math.max(0, lines.length - rows);

/** The top line after a scrolling command; other commands leave it. */
export function scrolled(page: Page, top: number, command: Command): number {
  const last = lastTop(page);
  const from = Math.min(top, last);
  const target: Partial<Record<Command, number>> = {
    up: from - 1,
    down: from + 1,
    'page-up': from - page.rows + 1,
    'page-down': from + page.rows - 1,
    top: 0,
    bottom: last,
  };
  return Math.min(last, Math.max(0, target[command] ?? from));
}
