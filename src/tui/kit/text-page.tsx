/** A text that may be longer than its room, as a window with a mark where more follows. */
import { padText, widthOf } from '../../text/wrap.js';
import { textColumns } from './layout.js';
import { lastTop, type Page } from './page.js';
import { type Piece, Rows } from './row.js';
import { useSurroundings } from './surroundings.js';

export function TextPage({ page, top }: { readonly page: Page; readonly top: number }): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const columns = textColumns(state.size);
  const last = lastTop(page);
  const from = Math.min(top, last);
  const lines = page.lines.slice(from, from + page.rows);
  return (
    <Rows
      lines={lines.map((text, index): Piece[] => {
        const below = index === lines.length - 1 && from < last;
        const above = index === 0 && from > 0;
        if (!below && !above) return [{ text: text || ' ' }];
        const key = below ? glyphs.down : glyphs.up;
        const mark = below ? glyphs.downMark : glyphs.upMark;
        // The key goes where there is room for it; the sign is always there.
        const named = `${mark} more: ${key}`;
        const word = widthOf(text) + widthOf(named) + 2 <= columns ? named : mark;
        const room = Math.max(widthOf(text), columns - widthOf(word) - 1);
        return [{ text: padText(text, room) }, { text: ` ${word}`, role: 'key' }];
      })}
    />
  );
}
