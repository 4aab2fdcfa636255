/** What stands beside the rows of the bench: the colour, how it moves, or the same paint in three ways. */
import { Box, Text } from 'ink';
import { wrapText } from '../../text/wrap.js';
import { seeLaid, WAYS } from '../../washes/index.js';
import { lookOf } from '../../words/look.js';
import { HUE_LETTERS, huePicture } from '../kit/hue-circle.js';
import { voiceOf } from '../kit/look.js';
import { planePicture } from '../kit/plane-picture.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { factLines, PatchColumn, patchLines } from '../kit/swatch.js';
import { benchLaid, broughtAs, trail } from './mixture.js';
import type { BenchState } from './state.js';
import { hasTwo, pathCaption, WAY_NAMES } from './texts.js';

interface PanelProps {
  readonly screen: BenchState;
  readonly columns: number;
  readonly rows: number;
  /** The panel stands beside the rows, not under them. */
  readonly isBeside: boolean;
}

const muted = (text: string): Piece[] => [{ text, role: 'muted' }];

function Colour({ screen, columns, rows, isBeside }: PanelProps): React.JSX.Element {
  const { state, world } = useSurroundings();
  const laid = benchLaid(screen.mixture);
  if (laid === undefined) return <Text>Pick a paint to begin.</Text>;
  const look = lookOf(seeLaid(world.studio, laid).reflectance);
  const flat = state.colourLevel === 0;
  const facts: Piece[][] = [
    [{ text: look.words, role: 'selected' }],
    ...factLines(look, voiceOf(state.settings)).map((text): Piece[] => [{ text }]),
    ...(look.inScreenGamut || flat ? [] : [muted('nearest this screen has')]),
  ];
  const patchRows = flat ? 0 : isBeside ? Math.min(9, rows - facts.length - 1) : Math.min(7, rows - 1);
  const both = isBeside || flat ? columns : Math.floor(columns * 0.5);
  const [own, grey] = [Math.floor(both * 0.64), Math.floor(both * 0.28)];
  const patches =
    patchRows <= 0 ? null : (
      <Box flexShrink={0}>
        <Box flexDirection="column" width={own} marginRight={1} flexShrink={0}>
          <Rows lines={patchLines(look.hex, own, patchRows)} />
        </Box>
        <Box flexDirection="column" width={grey} marginRight={1} flexShrink={0}>
          <Rows lines={patchLines(look.grey, grey, patchRows)} />
        </Box>
      </Box>
    );
  return (
    <Box flexDirection="column" width={columns}>
      <Row pieces={[{ text: 'THE MIXTURE, DRY', role: 'label' }]} />
      <Box flexDirection={isBeside || flat ? 'column' : 'row'} flexShrink={0}>
        {patches}
        <Box flexDirection="column" flexShrink={0}>
          <Rows lines={facts.slice(0, Math.max(1, rows - 1))} />
        </Box>
      </Box>
    </Box>
  );
}

/** Columns of the plane and of the circle beside each other. */
const LEAST_BOTH = 50;

function Path({ screen, columns, rows }: PanelProps): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const laid = benchLaid(screen.mixture);
  if (laid === undefined) return <Text>Pick a paint to begin.</Text>;
  const here = seeLaid(world.studio, laid).colour;
  const path = trail(world.studio, screen.mixture, screen.focus);
  const letters = [[here, 'M'] as const];
  const caption = pathCaption(world.studio, screen);
  const texts = wrapText(
    `M the mixture${caption === '' ? '' : `, dots ${caption}`}; ${HUE_LETTERS}`,
    columns,
  );
  const isApart = columns >= LEAST_BOTH;
  const left = rows - texts.length;
  const [planeRows, circleRows] = isApart ? [left, left] : [Math.ceil(left / 2), Math.floor(left / 2)];
  const planeColumns = isApart ? Math.floor(columns * 0.58) : columns;
  const circleColumns = isApart ? columns - planeColumns - 2 : columns;
  const scale = state.settings.valueScale;
  return (
    <Box flexDirection="column" width={columns}>
      <Rows lines={texts.map(muted)} />
      <Box flexDirection={isApart ? 'row' : 'column'}>
        <Box flexDirection="column" width={planeColumns} marginRight={isApart ? 2 : 0} flexShrink={0}>
          <Rows
            lines={planePicture({ path, letters }, { columns: planeColumns, rows: planeRows, glyphs, scale })}
          />
        </Box>
        <Box flexDirection="column" width={circleColumns} flexShrink={0}>
          <Rows lines={huePicture(path, letters, { columns: circleColumns, rows: circleRows, glyphs })} />
        </Box>
      </Box>
    </Box>
  );
}

const MOST_PATCH = 10;

function Ways({ screen, columns, rows }: PanelProps): React.JSX.Element {
  const { state, world } = useSurroundings();
  const { mixture } = screen;
  if (!hasTwo(mixture))
    return (
      <Rows
        lines={wrapText('With a second paint the three ways are seen here side by side.', columns).map(muted)}
      />
    );
  const flat = state.colourLevel === 0;
  const each = Math.min(24, Math.floor((columns + 1) / WAYS.length) - 1);
  const head = wrapText('The same paint on the same stretch of paper', columns);
  const words = rows - head.length >= 7 ? 2 : 0;
  const patches = flat ? 0 : Math.min(MOST_PATCH, rows - head.length - 3 - words);
  const grey = Math.floor(patches / 3);
  return (
    <Box flexDirection="column" width={columns}>
      <Rows lines={head.map(muted)} />
      <Box>
        {WAYS.map((way) => {
          const laid = benchLaid(broughtAs(world.studio, mixture, way));
          return laid === undefined ? null : (
            <PatchColumn
              key={way}
              name={[WAY_NAMES[way]]}
              nameRows={1}
              reflectance={seeLaid(world.studio, laid).reflectance}
              columns={each}
              patchRows={patches - grey}
              greyRows={grey}
              wordRows={flat ? 3 : words}
            />
          );
        })}
      </Box>
    </Box>
  );
}

export function Panel(props: PanelProps): React.JSX.Element {
  if (props.screen.panel === 'path') return <Path {...props} />;
  return props.screen.panel === 'ways' ? <Ways {...props} /> : <Colour {...props} />;
}
