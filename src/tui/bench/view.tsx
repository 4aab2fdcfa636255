/** The mixing bench: up to three paints; here, unlike in a drill, the colour is shown while it changes. */
import { Box, Text } from 'ink';
import type { Spectrum } from '../../optics/index.js';
import type { Pigment } from '../../paints/index.js';
import { padText, widthOf, wrapText } from '../../text/wrap.js';
import { seeAlone, seeLaid } from '../../washes/index.js';
import { type Look, lookOf, spokenLook } from '../../words/look.js';
import { isWide, textColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import type { World } from '../kit/stage.js';
import { useSurroundings } from '../kit/surroundings.js';
import { factLines, patchLines } from '../kit/swatch.js';
import { patchStyle } from '../kit/theme.js';
import { windowAround } from '../kit/window.js';
import {
  type BenchState,
  benchLaid,
  benchOrder,
  slotWords,
  WATER_ROW,
  WAY_ROW,
  waterWords,
} from './state.js';

const WAY_WORDS = {
  puddle: 'stirred into the wash',
  glaze: 'glazed over the dry wash',
  strokes: 'strokes beside the wash',
} as const;

/** The mixture on the bench, or undefined with no wash on it. */
function benchMixture(screen: BenchState, world: World): Spectrum | undefined {
  const laid = benchLaid(screen);
  return laid === undefined ? undefined : seeLaid(world.studio, laid).reflectance;
}

const known = new WeakMap<Pigment, Look>();

/** A paint on its own, at half strength, to know it by. */
function paintLook(world: World, id: string | undefined): Look | undefined {
  const pigment = world.studio.paints.find((each) => each.id === id);
  if (pigment === undefined) return undefined;
  const look = known.get(pigment) ?? lookOf(seeAlone(world.studio, pigment.id, 0.5).reflectance);
  known.set(pigment, look);
  return look;
}

function rowsOfBench(
  screen: BenchState,
  world: World,
  sight: { pointer: string; flat: boolean; less: string; more: string },
): Piece[][] {
  const lead = (row: number): Piece => ({
    text: screen.focus === row ? `${sight.pointer} ` : '  ',
    role: 'here',
  });
  const value = (row: number, text: string): Piece =>
    screen.focus === row
      ? { text: `${sight.less}${text}${sight.more}`, role: 'selected' }
      : { text: ` ${text} ` };
  const slots = screen.slots.map(({ pigment: id }, row): Piece[] => {
    const pigment = world.studio.paints.find((each) => each.id === id);
    const look = paintLook(world, id);
    if (pigment === undefined || look === undefined)
      return [lead(row), { text: 'no paint (Enter to pick one)', role: 'muted' }];
    const swatch: Piece[] = sight.flat ? [] : [{ text: '   ', style: patchStyle(look.hex) }, { text: ' ' }];
    return [
      lead(row),
      ...swatch,
      { text: padText(pigment.name, 20), role: screen.focus === row ? 'selected' : 'plain' },
      value(row, slotWords(screen, row)),
    ];
  });
  return [
    ...slots,
    [lead(WAY_ROW), { text: padText('way', 12), role: 'muted' }, value(WAY_ROW, WAY_WORDS[screen.way])],
    [lead(WATER_ROW), { text: padText('water', 12), role: 'muted' }, value(WATER_ROW, waterWords(screen))],
  ];
}

function Picker({
  screen,
  columns,
  rows,
}: {
  readonly screen: BenchState;
  readonly columns: number;
  readonly rows: number;
}): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const order = benchOrder(world, state.settings.palette);
  const picked = screen.picking ?? 0;
  const seen = windowAround(order.length + 1, picked, rows);
  const flat = state.colourLevel === 0;
  const nameColumns = Math.max(...world.studio.paints.map(({ name }) => widthOf(name))) + 1;
  const lines = [undefined, ...order].slice(seen.from, seen.to).map((id, offset): Piece[] => {
    const chosen = seen.from + offset === picked;
    const lead: Piece = { text: chosen ? `${glyphs.pointer} ` : '  ', role: 'here' };
    const pigment = world.studio.paints.find((each) => each.id === id);
    const look = paintLook(world, id);
    if (pigment === undefined || look === undefined)
      return [lead, { text: 'no paint', role: chosen ? 'selected' : 'plain' }];
    const swatch: Piece[] = flat ? [] : [{ text: '   ', style: patchStyle(look.hex) }, { text: ' ' }];
    const notes = flat
      ? [spokenLook(look, voiceOf(state.settings)), look.words, '']
      : [pigment.ci.join('+'), ''];
    const note = notes.find((text) => widthOf(text) <= columns - nameColumns - (flat ? 2 : 6)) ?? '';
    return [
      lead,
      ...swatch,
      { text: padText(pigment.name, nameColumns), role: chosen ? 'selected' : 'plain' },
      { text: note, role: 'muted' },
    ];
  });
  return (
    <Box flexDirection="column" width={columns}>
      <Rows lines={lines} />
    </Box>
  );
}

/** What the rows without a paint are for. */
const ABOUT_ROW: Readonly<Record<number, string>> = {
  [WAY_ROW]: 'Stirred into the wash, laid over it dry, or beside it for the eye to join.',
  [WATER_ROW]: 'Stirring adds no water. This does: thinned to a half, every paint is half as thick.',
};

/** Code and looks of the paint in focus, or what the row is for, where there is room beside the mixture. */
function AboutPaint({
  screen,
  columns,
}: {
  readonly screen: BenchState;
  readonly columns: number;
}): React.JSX.Element | null {
  const { state, world } = useSurroundings();
  if (!isWide(state.size)) return null;
  const id = screen.slots[screen.focus]?.pigment;
  const pigment = world.studio.paints.find((each) => each.id === id);
  const look = paintLook(world, id);
  const texts =
    pigment === undefined || look === undefined
      ? [ABOUT_ROW[screen.focus] ?? '']
      : [pigment.ci.join(' + '), `alone ${spokenLook(look, voiceOf(state.settings))}`];
  return (
    <Rows
      lines={[
        [],
        ...texts.flatMap((text) => wrapText(text, columns)).map((text): Piece[] => [{ text, role: 'muted' }]),
      ]}
    />
  );
}

export function Bench({ screen }: { readonly screen: BenchState }): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const columns = textColumns(state.size);
  const body = bodyRows(state);
  const wide = isWide(state.size);
  const mixture = benchMixture(screen, world);
  const look = mixture === undefined ? undefined : lookOf(mixture);
  const flat = state.colourLevel === 0;
  const sight = { ...glyphs, flat: flat || state.settings.screenReader };
  const rows = rowsOfBench(screen, world, sight);
  if (state.settings.screenReader) return <SpokenBench screen={screen} rows={rows} look={look} />;
  if (screen.picking !== undefined) return <Picker screen={screen} columns={columns} rows={body} />;
  const left = wide ? Math.max(44, Math.floor(columns * 0.52)) : columns;
  const right = wide ? columns - left - 2 : columns;
  const patchColumns = Math.floor(right * 0.64);
  const greyColumns = Math.floor(right * 0.28);
  const patchRows = flat ? 0 : wide ? Math.min(9, body - 8) : Math.min(5, body - rows.length - 8);
  const colour =
    look === undefined ? (
      <Text>Pick a paint to begin.</Text>
    ) : (
      <Box flexDirection="column" width={right}>
        <Row pieces={[{ text: 'THE MIXTURE, DRY', role: 'label' }]} />
        <Box flexShrink={0}>
          <Box flexDirection="column" width={patchColumns} marginRight={1} flexShrink={0}>
            <Rows lines={patchLines(look.hex, patchColumns, patchRows)} />
          </Box>
          <Box flexDirection="column" width={greyColumns} flexShrink={0}>
            <Rows lines={patchLines(look.grey, greyColumns, patchRows)} />
          </Box>
        </Box>
        <Row pieces={[{ text: look.words, role: 'selected' }]} />
        <Rows lines={factLines(look, voiceOf(state.settings)).map((text): Piece[] => [{ text }])} />
        {look.inScreenGamut || flat ? null : (
          <Row pieces={[{ text: 'nearest this screen has', role: 'muted' }]} />
        )}
      </Box>
    );
  return (
    <Box flexDirection={wide ? 'row' : 'column'}>
      <Box flexDirection="column" width={left} flexShrink={0}>
        <Row pieces={[{ text: 'ON THE BENCH', role: 'label' }]} />
        <Rows lines={rows} />
        <AboutPaint screen={screen} columns={left} />
      </Box>
      <Box width={2} height={1} flexShrink={0} />
      {colour}
    </Box>
  );
}

function SpokenBench({
  screen,
  rows,
  look,
}: {
  readonly screen: BenchState;
  readonly rows: readonly (readonly Piece[])[];
  readonly look: Look | undefined;
}): React.JSX.Element {
  const { state, world } = useSurroundings();
  const order = [undefined, ...benchOrder(world, state.settings.palette)];
  const id = screen.picking === undefined ? undefined : order[screen.picking];
  const picked = world.studio.paints.find((pigment) => pigment.id === id);
  const pickedLook = paintLook(world, id);
  const name =
    picked === undefined || pickedLook === undefined
      ? 'no paint'
      : `${picked.name}, ${spokenLook(pickedLook, voiceOf(state.settings))}, ${picked.ci.join(' and ')}`;
  const lines =
    screen.picking === undefined
      ? [
          ...rows.map(
            (pieces, row) =>
              `${row === screen.focus ? 'Now at ' : ''}${pieces
                .slice(1)
                .map(({ text }) => text)
                .join('')
                .replace(/\s+/g, ' ')
                .trim()}`,
          ),
          look === undefined
            ? 'No paint on the bench.'
            : `The mixture is ${spokenLook(look, voiceOf(state.settings))}.`,
        ]
      : [`Pick: ${name}. ${screen.picking + 1} of ${order.length}.`];
  return <Text>{lines.join('\n')}</Text>;
}
