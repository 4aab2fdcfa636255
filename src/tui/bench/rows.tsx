/** What lies on the bench, row by row, and what there is to know of the row in focus. */
import type { Pigment } from '../../paints/index.js';
import { padText, wrapText } from '../../text/wrap.js';
import { seeAlone } from '../../washes/index.js';
import { type Look, lookOf, spokenLook } from '../../words/look.js';
import { voiceOf } from '../kit/look.js';
import { type Piece, Rows } from '../kit/row.js';
import type { World } from '../kit/stage.js';
import { useSurroundings } from '../kit/surroundings.js';
import { patchStyle } from '../kit/theme.js';
import { SLOTS } from './mixture.js';
import { type BenchState, ROWS, WAY_ROW } from './state.js';
import { aboutRow, rowWords } from './texts.js';

const known = new WeakMap<Pigment, Look>();

/** A paint on its own, at half strength, to know it by. */
export function paintLook(
  world: World,
  id: string | undefined,
): { pigment: Pigment; look: Look } | undefined {
  const pigment = world.studio.paints.find((each) => each.id === id);
  if (pigment === undefined) return undefined;
  const look = known.get(pigment) ?? lookOf(seeAlone(world.studio, pigment.id, 0.5).reflectance);
  known.set(pigment, look);
  return { pigment, look };
}

/** Signs before and after the value in focus. */
interface Sight {
  readonly pointer: string;
  readonly less: string;
  readonly more: string;
  /** No patches. */
  readonly flat: boolean;
}

/** One row: a paint with its amount, the way or the water. */
export function benchRow({ mixture, focus }: BenchState, world: World, row: number, sight: Sight): Piece[] {
  const isHere = focus === row;
  const lead: Piece = { text: isHere ? `${sight.pointer} ` : '  ', role: 'here' };
  const words = rowWords(mixture, row);
  const value: Piece = isHere
    ? { text: `${sight.less}${words}${sight.more}`, role: 'selected' }
    : { text: ` ${words} ` };
  if (row >= WAY_ROW)
    return [lead, { text: padText(row === WAY_ROW ? 'way' : 'water', 12), role: 'muted' }, value];
  const paint = paintLook(world, mixture.slots[row]?.pigment);
  if (paint === undefined)
    return [
      lead,
      { text: row === 0 ? 'no wash (Enter to pick one)' : 'no paint (Enter to pick one)', role: 'muted' },
    ];
  const swatch: Piece[] = sight.flat
    ? []
    : [{ text: '   ', style: patchStyle(paint.look.hex) }, { text: ' ' }];
  return [
    lead,
    ...swatch,
    { text: padText(paint.pigment.name, 20), role: isHere ? 'selected' : 'plain' },
    value,
  ];
}

/** Rows that are seen: of empty ones the first only, and that in focus. */
export function rowsInSight({ mixture, focus }: BenchState): number[] {
  const firstEmpty = mixture.slots.findIndex(({ pigment }) => pigment === undefined);
  return Array.from({ length: ROWS }, (_, row) => row).filter(
    (row) => row >= SLOTS || row === focus || row === firstEmpty || mixture.slots[row]?.pigment !== undefined,
  );
}

/** Code and looks of the paint in focus, or what the row is for. */
export function AboutRow({
  screen,
  columns,
}: {
  readonly screen: BenchState;
  readonly columns: number;
}): React.JSX.Element {
  const { state, world } = useSurroundings();
  const { mixture, focus } = screen;
  const paint = focus < SLOTS ? paintLook(world, mixture.slots[focus]?.pigment) : undefined;
  const texts =
    paint === undefined
      ? [aboutRow(focus)]
      : [paint.pigment.ci.join(' + '), `alone at 50 %: ${spokenLook(paint.look, voiceOf(state.settings))}`];
  const lines = texts
    .flatMap((text) => wrapText(text, columns))
    .map((text): Piece[] => [{ text, role: 'muted' }]);
  return <Rows lines={[[{ text: ' ' }], ...lines]} />;
}
