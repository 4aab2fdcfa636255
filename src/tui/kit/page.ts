/** Texts that may be longer than the screen: their lines, how many fit, and scrolling through them. */
import { printable } from '../../text/sanitize.js';
import { wrapText } from '../../text/wrap.js';
import { helpText } from '../pages/texts.js';
import { resultLayout, resultTexts } from '../result/layout.js';
import type { Command } from './keys.js';
import { frameParts, innerColumns } from './layout.js';
import { notesOf } from './notes.js';
import type { State, World } from './state.js';

export interface Page {
  readonly lines: readonly string[];
  /** Lines that fit. */
  readonly rows: number;
}

/** The text of the screen in front, broken to its width. */
export function pageOf(state: State, world: World): Page {
  const columns = innerColumns(state.size);
  const { screen } = state;
  const body = frameParts(state, notesOf(state).length).body;
  if (screen.name === 'progress') return { lines: printable(screen.text ?? '').split('\n'), rows: body - 1 };
  if (screen.name === 'help') {
    return {
      lines: helpText(state, world).flatMap((line) => (line === '' ? [''] : wrapText(line, columns))),
      rows: body - 1,
    };
  }
  if (screen.name === 'result') {
    const { textRows } = resultLayout(state, world, screen);
    const texts = resultTexts(screen, state.colourLevel > 0);
    return { lines: texts.flatMap((line) => hanging(line, columns)), rows: textRows };
  }
  return { lines: [], rows: body };
}

/** Wrapped with the further lines set in, so that one sees where each point begins. */
function hanging(line: string, columns: number): string[] {
  return wrapText(line, columns - 2).map((part, index) => (index === 0 ? part : `  ${part}`));
}

/** Last line that may stand at the top. */
export const lastTop = ({ lines, rows }: Page): number => Math.max(0, lines.length - rows);

/** The top line after a scrolling command; other commands leave it. */
export function scrolled(state: State, world: World, top: number, command: Command): number {
  const page = pageOf(state, world);
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
