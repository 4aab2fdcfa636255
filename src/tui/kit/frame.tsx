/** What every screen stands in: a title, the body, notes and the help line. */
import { Box } from 'ink';
import { fitWords, padText, widthOf } from '../../text/wrap.js';
import { type Binding, LEFT_RIGHT, shownKeys } from './keys.js';
import { frameRows, innerColumns, isAiry } from './layout.js';
import { bodyRows, notesOf } from './notes.js';
import type { View } from './program.js';
import { type Piece, Row } from './row.js';
import { useSurroundings } from './surroundings.js';

interface HelpEntry {
  readonly keys: string;
  readonly does: string;
  readonly stays: boolean;
  /** Left and right. */
  readonly isSide: boolean;
}

/** The last keys that the help line drops. */
const WAYS_OUT: readonly string[] = ['Esc', '?'];

/** On a narrow screen the arrows that choose stand together. */
function together(entries: readonly HelpEntry[], columns: number): readonly HelpEntry[] {
  const [first, second, ...rest] = entries;
  const isPair = second?.isSide === true && first !== undefined;
  if (columns >= 70 || !isPair) return entries;
  return [{ keys: `${first.keys}${second.keys}`, does: 'choose', stays: true, isSide: false }, ...rest];
}

/** The keys that work now, as many as fit: first the way out, then those that stay, then the others in their order. */
function helpPieces(columns: number, entries: readonly HelpEntry[]): Piece[] {
  const gap = columns < 70 ? 2 : 3;
  const shown = new Set<HelpEntry>();
  let used = -gap;
  const weightOf = ({ keys, stays }: HelpEntry): number => (WAYS_OUT.includes(keys) ? 0 : stays ? 1 : 2);
  for (const entry of entries.toSorted((one, other) => weightOf(one) - weightOf(other))) {
    const width = gap + widthOf(entry.keys) + 1 + widthOf(entry.does);
    if (used + width > columns) continue;
    shown.add(entry);
    used += width;
  }
  return entries
    .filter((entry) => shown.has(entry))
    .flatMap(({ keys, does }, index): Piece[] => [
      ...(index === 0 ? [] : [{ text: ' '.repeat(gap) }]),
      { text: keys, role: 'key' },
      { text: ` ${does}`, role: 'muted' },
    ]);
}

interface FrameProps {
  readonly view: View;
  /** Those that work now. */
  readonly keys: readonly Binding[];
}

export function Frame({ view, keys }: FrameProps): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const { title, side = '', body: children } = view;
  const columns = innerColumns(state.size);
  const notes = notesOf(state);
  const body = bodyRows(state);
  const entries = keys
    .filter(({ quiet }) => quiet !== true)
    .map((binding) => ({
      keys: shownKeys(binding, glyphs),
      does: binding.does,
      stays: binding.stays === true,
      isSide: binding.show === LEFT_RIGHT,
    }));
  const titles = typeof title === 'string' ? [title] : title;
  const room = columns - widthOf(side) - 2;
  const heading = fitWords(
    titles.find((text) => widthOf(text) <= room) ?? titles.at(-1) ?? '',
    room,
    glyphs.cut,
  );
  if (state.settings.screenReader) {
    return (
      <Box flexDirection="column">
        <Row pieces={[{ text: [titles[0], side].filter(Boolean).join(', ') }]} />
        {children}
        {notes.map((note) => (
          <Row key={note} pieces={[{ text: note }]} />
        ))}
        {state.notice === undefined ? null : <Row pieces={[{ text: state.notice }]} />}
        <Row pieces={[{ text: `Keys: ${entries.map(({ keys, does }) => `${keys} ${does}`).join('; ')}.` }]} />
      </Box>
    );
  }
  return (
    <Box flexDirection="column" paddingX={1} height={frameRows(state.size)} overflowY="hidden">
      <Row
        pieces={[
          { text: padText(heading, columns - widthOf(side)), role: 'title' },
          { text: side, role: 'muted' },
        ]}
      />
      {isAiry(state.size) ? <Row pieces={[{ text: ' ' }]} /> : null}
      <Box flexDirection="column" height={body} flexShrink={0} overflowY="hidden">
        {children}
      </Box>
      {isAiry(state.size) ? <Row pieces={[{ text: ' ' }]} /> : null}
      {notes.map((note) => (
        <Row key={note} pieces={[{ text: note, role: 'notice' }]} />
      ))}
      {state.notice === undefined ? null : <Row pieces={[{ text: state.notice, role: 'notice' }]} />}
      <Row pieces={helpPieces(columns, together(entries, columns))} />
    </Box>
  );
}
