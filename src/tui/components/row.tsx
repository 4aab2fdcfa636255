/** One line made of pieces. A line is one Text with pieces inside it: many cells as one Text each draw at half the speed. */
import { Text } from 'ink';
import { inAscii } from '../glyphs.js';
import { useSurroundings } from '../surroundings.js';
import { type Role, styleOf, type TextStyle } from '../theme.js';

/** A piece of a line. */
export interface Piece {
  readonly text: string;
  readonly role?: Role;
  /** Paint instead of a role. */
  readonly style?: TextStyle;
}

/** Pieces one after another on one line; what does not fit is cut. */
export function Row({ pieces }: { readonly pieces: readonly Piece[] }): React.JSX.Element {
  const { plainTexts } = useSurroundings().glyphs;
  return (
    <Text wrap="truncate">
      {pieces.map(({ text, role = 'plain', style }, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pieces have no identity beyond their place
        <Text key={index} {...(style ?? styleOf(role))}>
          {plainTexts ? inAscii(text) : text}
        </Text>
      ))}
    </Text>
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
