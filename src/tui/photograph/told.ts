/** What is said of a painting, as a page that is scrolled. Pure. */
import { wrapText } from '../../text/wrap.js';
import { textColumns } from '../kit/layout.js';
import { bodyRows } from '../kit/notes.js';
import type { Page } from '../kit/page.js';
import type { PhotographState, PhotographWorld } from './state.js';

/** Columns that the mark of further lines takes. */
const MARK = 9;

export function toldPage({ told }: PhotographWorld, state: PhotographState): Page {
  const columns = textColumns(state.size) - MARK;
  const lines = told.flatMap((text) => (text === '' ? [''] : wrapText(text, columns)));
  return { lines, rows: bodyRows(state) };
}
