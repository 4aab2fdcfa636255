/** What commands that print share: the size of the sheet, and letters that the font does not have. */
import { UsageError } from '../errors.js';
import { PAGE_SIZES, type PaperDocument, type PaperId } from '../paper/types.js';
import { cleanText } from '../text/sanitize.js';

/** The sheet by its name. @throws UsageError */
export function sizeOf(text: string): PaperId {
  const id = text.toLowerCase();
  if (!Object.hasOwn(PAGE_SIZES, id))
    throw new UsageError(
      `--size must be ${Object.keys(PAGE_SIZES).join(' or ')}, not "${cleanText(text, 40)}"`,
    );
  return id as PaperId;
}

/** Every text that a document prints. */
export const textsOf = ({ pages }: PaperDocument): string =>
  pages.flatMap((marks) => marks.map((mark) => (mark.kind === 'text' ? mark.text : ''))).join('');

/** That some letters are printed as boxes; nothing where all are there. */
export const missingLines = (signs: readonly string[]): string[] =>
  signs.length === 0
    ? []
    : [`The font has Latin, Greek and Cyrillic letters; printed as boxes: ${signs.slice(0, 20).join(' ')}`];
