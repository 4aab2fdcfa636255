/** One line made of pieces. A line is one Text with pieces inside it: many cells as one Text each draw at half the speed. */
import { Box, Text } from 'ink';
import { isNarrow } from '../../text/narrow.js';
import { inAscii } from './glyphs.js';
import { standIn } from './stand-ins.js';
import { useSurroundings } from './surroundings.js';
import { type Role, styleOf, type TextStyle } from './theme.js';

/** A piece of a line. */
export interface Piece {
  readonly text: string;
  readonly role?: Role;
  /** Paint instead of a role. */
  readonly style?: TextStyle;
}

function styled(pieces: readonly Piece[]): React.JSX.Element[] {
  return pieces.map(({ text, role = 'plain', style }, index) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: pieces have no identity beyond their place
    <Text key={index} {...(style ?? styleOf(role))}>
      {text}
    </Text>
  ));
}

/** A line of so many colours, all in signs of one column, is kept from Ink. */
const MANY = 2;
const isPainted = (pieces: readonly Piece[]): boolean =>
  pieces.filter(({ style }) => style !== undefined).length >= MANY &&
  pieces.every(({ text }) => isNarrow(text));

/** Pieces one after another on one line; what does not fit is cut, but never in the form that is read aloud. */
export function Row({ pieces }: { readonly pieces: readonly Piece[] }): React.JSX.Element {
  const { glyphs, state } = useSurroundings();
  const spoken = state.settings.screenReader;
  const shown = glyphs.plainTexts ? pieces.map((piece) => ({ ...piece, text: inAscii(piece.text) })) : pieces;
  const standing = state.colourLevel > 0 && !spoken && isPainted(shown) ? standIn(shown) : undefined;
  if (standing !== undefined) return <Text wrap="truncate">{standing}</Text>;
  if (spoken || !glyphs.plainTexts) return <Text wrap={spoken ? 'wrap' : 'truncate'}>{styled(shown)}</Text>;
  // Ink marks a cut with a sign that is not ASCII, so here the line keeps its length and its box is cut instead.
  const width = shown.reduce((sum, { text }) => sum + text.length, 0);
  return (
    <Box overflowX="hidden" height={1} flexShrink={0}>
      <Box width={width} flexShrink={0}>
        <Text>{styled(shown)}</Text>
      </Box>
    </Box>
  );
}

/** Several lines of pieces. */
export function Rows({ lines }: { readonly lines: readonly (readonly Piece[])[] }): React.JSX.Element {
  return (
    <>
      {lines.map((pieces, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: lines have no identity beyond their place
        <Row key={index} pieces={pieces.length === 0 ? [{ text: ' ' }] : pieces} />
      ))}
    </>
  );
}
