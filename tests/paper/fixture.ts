/** Pages printed without compression, so that they can be read back. */
import { paperFonts } from '../../src/files/fonts.js';
import { openPress } from '../../src/paper/pdf.js';
import { PAGE_SIZES, type PaperDocument, type PaperId } from '../../src/paper/types.js';
import { WRITTEN } from '../../src/words/voice.js';
import { type ReadPdf, readPdf } from './pdf-reader.js';

export const PRESS = openPress(paperFonts());

/** 1 March 2026, 9:00 UTC. */
export const MADE_MS = Date.UTC(2026, 2, 1, 9);

export const styleOf = (paper: PaperId) => ({
  ruler: PRESS.ruler,
  voice: WRITTEN,
  size: PAGE_SIZES[paper],
  madeMs: MADE_MS,
});

export async function reread(document: PaperDocument): Promise<ReadPdf> {
  return readPdf(await PRESS.print(document, false));
}
