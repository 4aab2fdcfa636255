/** One line made of pieces. A line is one Text with pieces inside it: many cells as one Text each draw at half the speed. */
import { Box, Text } from 'ink';
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
const NARROW = /^[ -~\u2500-\u259f\u2800-\u28ff]*$/;
const isPainted = (pieces: readonly Piece[]): boolean =>
  pieces.filter(({ style }) => style !== undefined).length >= MANY &&
  pieces.every(({ text }) => NARROW.test(text));

/** Pieces one after another on one line; what does not fit is cut, but never in the form that is read aloud. */
export function Row({ pieces }: { readonly pieces: readonly Piece[] }): React.JSX.Element {
  const { glyphs, state } = useSurroundings();
  const standing =
    state.colourLevel > 0 && !state.settings.screenReader && isPainted(pieces) ? standIn(pieces) : undefined;
  if (standing !== undefined) return <Text wrap="truncate">{standing}</Text>;
  if (!glyphs.plainTexts)
    return <Text wrap={state.settings.screenReader ? 'wrap' : 'truncate'}>{styled(pieces)}</Text>;
  // Ink marks a cut with a sign that is not ASCII, so here the line keeps its length and its box is cut instead.
  const plain = pieces.map((piece) => ({ ...piece, text: inAscii(piece.text) }));
  if (state.settings.screenReader) return <Text>{styled(plain)}</Text>;
  const width = plain.reduce((sum, { text }) => sum + text.length, 0);
  return (
    <Box overflowX="hidden" height={1} flexShrink={0}>
      <Box width={width} flexShrink={0}>
        <Text>{styled(plain)}</Text>
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
