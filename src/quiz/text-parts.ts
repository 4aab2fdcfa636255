/** What reports in text are laid out with. */
import { wrapText } from '../text/wrap.js';

/** How the text is laid out. */
export interface TextLook {
  readonly columns: number;
  /** One column each: a filled and an empty part of a bar. */
  readonly full: string;
  readonly empty: string;
}

/** Room for a name. */
export const NAME_COLUMNS = 24;

/** A bar of a share 0-1; anything above nothing shows. */
export function bar(
  share: number,
  columns: number,
  { full, empty }: Pick<TextLook, 'full' | 'empty'>,
): string {
  const filled = share > 0 ? Math.max(1, Math.round(Math.min(1, share) * columns)) : 0;
  return full.repeat(filled) + empty.repeat(columns - filled);
}

/** Lines wrapped behind so many blanks; what goes on is set in further. */
export function indented(
  lines: readonly string[],
  { columns }: Pick<TextLook, 'columns'>,
  blanks = 2,
): string[] {
  return lines.flatMap((line) =>
    wrapText(line, columns - blanks - 2).map(
      (part, at) => `${' '.repeat(at === 0 ? blanks : blanks + 2)}${part}`,
    ),
  );
}
