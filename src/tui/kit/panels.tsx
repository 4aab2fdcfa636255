/** Plain screens that every program has: texts, the list of keys, the caution of a paint. */
import { CAUTION_ADVICE, cautionOf, type Pigment } from '../../paints/index.js';
import { cleanText } from '../../text/sanitize.js';
import { padText, wrapText } from '../../text/wrap.js';
import { aboutPaint } from '../../words/about-paint.js';
import { withCaution } from './cautions.js';
import { type Binding, shownKeys } from './keys.js';
import { innerColumns, SMALLEST } from './layout.js';
import { bodyRows } from './notes.js';
import type { View } from './program.js';
import { type Piece, Row, Rows } from './row.js';
import { useSurroundings } from './surroundings.js';

/** Widest text that is read easily. */
const WIDEST = 90;

/** Paragraphs; an empty one is a blank line. */
function Paragraphs({ texts }: { readonly texts: readonly string[] }): React.JSX.Element {
  const { state } = useSurroundings();
  const columns = Math.min(WIDEST, innerColumns(state.size));
  const lines = texts.flatMap((text) => (text === '' ? [''] : wrapText(text, columns)));
  return (
    <Rows
      lines={lines
        .slice(0, bodyRows(state))
        .filter((text) => text !== '' || !state.settings.screenReader)
        .map((text): Piece[] => [{ text }])}
    />
  );
}

export const textView = (title: string, texts: readonly string[]): View => ({
  title,
  body: <Paragraphs texts={texts} />,
});

function KeyList({ keys }: { readonly keys: readonly Binding[] }): React.JSX.Element {
  const { glyphs } = useSurroundings();
  return (
    <Rows
      lines={keys.map((binding): Piece[] => [
        { text: padText(shownKeys(binding, glyphs), 12), role: 'key' },
        { text: binding.does },
      ])}
    />
  );
}

/** All keys of the screen behind it. */
export const keysView = (keys: readonly Binding[]): View => ({
  title: 'Keys that work here',
  body: <KeyList keys={keys} />,
});

interface PaintsProps {
  readonly pigments: readonly string[];
  readonly say: (pigment: Pigment) => string | undefined;
}

function Paints({ pigments, say }: PaintsProps): React.JSX.Element {
  const { world } = useSurroundings();
  const paints = pigments.flatMap((id) => world.studio.paints.find((pigment) => pigment.id === id) ?? []);
  const advice = withCaution(world, pigments).length > 0 ? CAUTION_ADVICE : [];
  const texts = [...paints.map((paint) => cleanText(say(paint) ?? '', 400)), ...advice];
  return <Paragraphs texts={texts.flatMap((text) => [text, ''])} />;
}

/** Before a paint that asks for care is used. */
export const cautionView = (pigments: readonly string[]): View => ({
  title: 'Before this paint goes near your hands',
  body: <Paints pigments={pigments} say={cautionOf} />,
});

/** What there is to know of paints, cautions among it. */
export const aboutView = (pigments: readonly string[]): View => ({
  title: pigments.length === 1 ? 'About this paint' : 'About these paints',
  body: <Paints pigments={pigments} say={aboutPaint} />,
});

export function TooSmall(): React.JSX.Element {
  const { state } = useSurroundings();
  const { columns, rows } = state.size;
  return (
    <Row
      pieces={[
        { text: `Mudlark needs ${SMALLEST.columns} x ${SMALLEST.rows}; this is ${columns} x ${rows}.` },
      ]}
    />
  );
}
