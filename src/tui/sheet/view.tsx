/** The little sheet with its caption: on a screen, or as large as there is room. */
import { Text } from 'ink';
import { useMemo } from 'react';
import { type DrillScene, inWords } from '../../pictures/index.js';
import { widthOf, wrapText } from '../../text/wrap.js';
import { innerColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import type { View } from '../kit/program.js';
import { type Piece, Rows } from '../kit/row.js';
import type { Settings, Stage, World } from '../kit/stage.js';
import { useSurroundings } from '../kit/surroundings.js';
import { isJudged, type Pictured } from './keys.js';
import { isInSigns, sheetPicture, sheetSize } from './picture.js';

/** The picture that goes with a screen, with what lies in it now. */
export function sceneOn(world: World, screen: Pictured): DrillScene | undefined {
  if (!isJudged(screen)) return world.sceneOf(screen.drill);
  const { drill, answer, grade } = screen.answered;
  return world.sceneOf(drill, screen.ofBest === true ? grade.best.answer : answer);
}

function wordsOf({ painted }: DrillScene, area: string | undefined): string | undefined {
  return painted.picture.areas.find(({ id }) => id === area)?.words;
}

/** What is open, or what lies in it; where there are no colours, how to read the signs. The fullest comes first. */
function captionsOf(state: Stage, screen: Pictured, scene: DrillScene): string[] {
  const start = wordsOf(scene, scene.start);
  const passage = wordsOf(scene, scene.passage);
  const flat = isInSigns({ level: state.colourLevel, inGrey: screen.inGrey === true });
  const signs = flat ? '; denser is darker' : '';
  if (isJudged(screen) && scene.still === undefined)
    return [`${screen.ofBest === true ? 'best' : 'yours'}: ${passage ?? 'the passage as it is'}${signs}`];
  if (passage === undefined) return [`the passage as it was laid${signs}`];
  const open = `open${flat ? ' (/)' : ''}: ${passage}${signs}`;
  return start === undefined ? [open] : [`start: ${start}; ${open}`, open];
}

/** Lines under a picture so many columns wide. */
function captionLines(state: Stage, screen: Pictured, scene: DrillScene, columns: number): string[] {
  const captions = captionsOf(state, screen, scene);
  const text = captions.find((caption) => widthOf(caption) <= columns) ?? captions.at(-1) ?? '';
  return wrapText(text, columns);
}

/** Room for a picture with its caption. */
export interface SheetRoom {
  /** Columns of the caption; the picture may be narrower. */
  readonly room: number;
  readonly columns: number;
  readonly lines: number;
  readonly captionRows: number;
}

/** How large the picture of a screen can be in so much room; undefined where it has none, or not enough. */
export function sheetRoom(
  state: Stage,
  world: World,
  screen: Pictured,
  columns: number,
  lines: number,
): SheetRoom | undefined {
  const scene = sceneOn(world, screen);
  if (scene === undefined || state.settings.screenReader) return undefined;
  const captionRows = captionLines(state, screen, scene, columns).length;
  const size = sheetSize(columns, lines - captionRows);
  return size && { ...size, room: columns, captionRows };
}

interface SheetProps {
  readonly screen: Pictured;
  readonly size: SheetRoom;
}

/** The picture with its caption under it. */
export function Sheet({ screen, size }: SheetProps): React.JSX.Element | null {
  const { state, world, glyphs } = useSurroundings();
  const scene = sceneOn(world, screen);
  const painted = scene?.painted;
  const level = state.colourLevel;
  const inGrey = screen.inGrey === true;
  const { columns, lines } = size;
  const drawn = useMemo(
    () => painted && sheetPicture(painted, { columns, lines, level, glyphs, inGrey }),
    [painted, columns, lines, level, glyphs, inGrey],
  );
  if (scene === undefined || drawn === undefined) return null;
  const caption = captionLines(state, screen, scene, size.room);
  return (
    <Rows
      lines={[
        ...drawn,
        ...Array.from({ length: size.captionRows }, (_, at): Piece[] => [
          { text: caption[at] ?? ' ', role: 'muted' },
        ]),
      ]}
    />
  );
}

/** The areas of a picture in the order in which they are read out, for the ear. */
export const sceneLines = ({ painted, unread }: DrillScene, settings: Settings): string[] =>
  inWords(painted, voiceOf(settings), unread);

/** The picture as large as there is room; for the ear its areas, one a line. Undefined where there is none. */
export function sheetView(state: Stage, world: World, screen: Pictured): View | undefined {
  const scene = sceneOn(world, screen);
  if (scene === undefined) return undefined;
  const { title } = scene.painted.picture;
  if (state.settings.screenReader) {
    return {
      title: `${title}, ${captionsOf(state, screen, scene)[0]}`,
      body: sceneLines(scene, state.settings).map((line) => <Text key={line}>{line}</Text>),
    };
  }
  const size = sheetRoom(state, world, screen, innerColumns(state.size), bodyRows(state));
  return { title, body: size && <Sheet screen={screen} size={size} /> };
}
