/** What comes over a screen, and the two screens that hold one line. */
import { Box, Text } from 'ink';
import { CAUTION_ADVICE, cautionOf } from '../../paints/index.js';
import { cleanText } from '../../text/sanitize.js';
import { padText, wrapText } from '../../text/wrap.js';
import { ScenePanel } from '../drill/scene-panel.js';
import { Frame } from './frame.js';
import { bindings, shownKeys } from './keys.js';
import { innerColumns, SMALLEST } from './layout.js';
import { withoutOverlay } from './moves.js';
import { type Piece, Row, Rows } from './row.js';
import { SheetPanel } from './sheet.js';
import type { Overlay } from './state.js';
import { useSurroundings } from './surroundings.js';

function KeysPanel(): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  return (
    <Frame title="Keys that work here">
      <Rows
        lines={bindings(withoutOverlay(state)).map((binding): Piece[] => [
          { text: padText(shownKeys(binding, glyphs), 12), role: 'key' },
          { text: binding.does },
        ])}
      />
    </Frame>
  );
}

function LeavePanel(): React.JSX.Element {
  const { state } = useSurroundings();
  const count = state.set?.attempts.length ?? 0;
  const kept = state.savingNote === undefined ? 'kept' : 'not kept, since nothing is saved';
  const text =
    count === 0
      ? 'Leave this set? Nothing is answered yet.'
      : `Leave this set? Your ${count === 1 ? 'answer is' : `${count} answers are`} ${kept}; you can go on with the rest from the home screen.`;
  return (
    <Frame title="Leave the set">
      <Text>{text}</Text>
    </Frame>
  );
}

function CautionPanel({ pigments }: { readonly pigments: readonly string[] }): React.JSX.Element {
  const { state, world } = useSurroundings();
  const columns = Math.min(76, innerColumns(state.size));
  const paints = pigments.flatMap((id) => world.studio.paints.find((pigment) => pigment.id === id) ?? []);
  const paragraphs = [...paints.map((paint) => cleanText(cautionOf(paint) ?? '', 400)), ...CAUTION_ADVICE];
  return (
    <Frame title="Before this paint goes near your hands">
      {paragraphs.map((text) => (
        <Box
          key={text}
          flexDirection="column"
          flexShrink={0}
          marginBottom={state.settings.screenReader ? 0 : 1}
        >
          <Rows lines={wrapText(text, columns).map((line) => [{ text: line }])} />
        </Box>
      ))}
    </Frame>
  );
}

export function Panel({ overlay }: { readonly overlay: Overlay }): React.JSX.Element | null {
  switch (overlay.name) {
    case 'keys':
      return <KeysPanel />;
    case 'sheet':
      return <SheetPanel />;
    case 'scene':
      return <ScenePanel top={overlay.top} />;
    case 'leave':
      return <LeavePanel />;
    case 'caution':
      return <CautionPanel pigments={overlay.pigments} />;
  }
}

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

export function Waiting(): React.JSX.Element {
  return (
    <Frame title="Mudlark">
      <Text>Choosing the drills ...</Text>
    </Frame>
  );
}
