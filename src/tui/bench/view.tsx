/** The mixing bench: up to four paints; here, unlike in a drill, the colour is shown while it changes. */
import { Box } from 'ink';
import { shownKeys, upDown } from '../kit/keys.js';
import { isWide, textColumns } from '../kit/layout.js';
import { bodyRows } from '../kit/notes.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { Doings } from './doings.js';
import { Panel } from './panels.js';
import { AboutRow, benchRow, rowsInSight } from './rows.js';
import { SpokenBench } from './spoken.js';
import type { BenchState } from './state.js';

const LEAST_LEFT = 44;
/** Columns from which the path stands beside the rows. */
const ROOM_FOR_PATH = 110;

export function Bench({ screen }: { readonly screen: BenchState }): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  if (state.settings.screenReader) return <SpokenBench screen={screen} />;
  const columns = textColumns(state.size);
  const body = bodyRows(state);
  if (screen.doing !== undefined)
    return <Doings screen={screen} doing={screen.doing} columns={columns} rows={body} />;
  const isBeside = isWide(state.size) && (screen.panel !== 'path' || state.size.columns >= ROOM_FOR_PATH);
  const sight = { ...glyphs, flat: state.colourLevel === 0 };
  // Under the path and the ways only the row in focus has room on a narrow screen.
  const all = rowsInSight(screen);
  const seen = isBeside || screen.panel === 'colour' ? all : [screen.focus];
  const place = `  row ${all.indexOf(screen.focus) + 1} of ${all.length}; ${shownKeys(upDown(''), glyphs)} for the others`;
  const hidden: Piece[] = seen.length < all.length ? [{ text: place, role: 'muted' }] : [];
  const rows = seen.map((row): Piece[] => benchRow(screen, world, row, sight));
  const left = isBeside ? Math.max(LEAST_LEFT, Math.floor(columns * 0.52)) : columns;
  const right = isBeside ? columns - left - 2 : columns;
  const panelRows = isBeside ? body : body - rows.length - 2;
  return (
    <Box flexDirection={isBeside ? 'row' : 'column'}>
      <Box flexDirection="column" width={left} flexShrink={0}>
        <Row pieces={[{ text: 'ON THE BENCH', role: 'label' }, ...hidden]} />
        <Rows lines={rows} />
        {isBeside ? <AboutRow screen={screen} columns={left} /> : null}
      </Box>
      <Box width={2} height={1} flexShrink={0} />
      <Panel screen={screen} columns={right} rows={panelRows} isBeside={isBeside} />
    </Box>
  );
}
