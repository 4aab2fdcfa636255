/** The little sheet with its caption: on a screen, or as large as there is room. */
import { Text } from 'ink';
import { useMemo } from 'react';
import { type DrillScene, inWords } from '../../pictures/index.js';
import { widthOf, wrapText } from '../../text/wrap.js';
import type { Settings } from './deps.js';
import { Frame } from './frame.js';
import { frameParts, innerColumns } from './layout.js';
import { voiceOf } from './look.js';
import { notesOf } from './notes.js';
import { type Piece, Rows } from './row.js';
import { isInSigns, sheetPicture, sheetSize } from './sheet-picture.js';
import type { DrillScreen, ResultScreen, State, World } from './state.js';
import { useSurroundings } from './surroundings.js';

/** The picture that goes with a screen, with what lies in it now. */
export function sceneOn(world: World, screen: DrillScreen | ResultScreen): DrillScene | undefined {
  if (screen.name === 'drill') return world.sceneOf(screen.drill);
  const { drill, answer, grade } = screen.attempt.entry;
  return world.sceneOf(drill, screen.ofBest === true ? grade.best.answer : answer);
}

function wordsOf({ painted }: DrillScene, area: string | undefined): string | undefined {
  return painted.picture.areas.find(({ id }) => id === area)?.words;
}

/** What is open, or what lies in it; where there are no colours, how to read the signs. The fullest comes first. */
function captionsOf(state: State, screen: DrillScreen | ResultScreen, scene: DrillScene): string[] {
  const start = wordsOf(scene, scene.start);
  const passage = wordsOf(scene, scene.passage);
  const flat = isInSigns({ level: state.colourLevel, inGrey: screen.inGrey === true });
  const signs = flat ? '; denser is darker' : '';
  if (scene.still === 'setting')
    return [`where it is set: ${scene.painted.picture.title}${signs}`, `where it is set${signs}`];
  if (screen.name === 'result' && scene.still === undefined)
    return [`${screen.ofBest === true ? 'best' : 'yours'}: ${passage ?? 'the passage as it is'}${signs}`];
  if (passage === undefined) return [`the passage as it was laid${signs}`];
  const open = `open${flat ? ' (/)' : ''}: ${passage}${signs}`;
  return start === undefined ? [open] : [`start: ${start}; ${open}`, open];
}

/** Lines under a picture so many columns wide. */
function captionLines(
  state: State,
  screen: DrillScreen | ResultScreen,
  scene: DrillScene,
  columns: number,
): string[] {
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
  state: State,
  world: World,
  screen: DrillScreen | ResultScreen,
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
  readonly screen: DrillScreen | ResultScreen;
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

/** The picture as large as there is room; for the ear its areas, one a line. */
export function SheetPanel(): React.JSX.Element | null {
  const { state, world } = useSurroundings();
  const { screen, settings } = state;
  if (screen.name !== 'drill' && screen.name !== 'result') return null;
  const scene = sceneOn(world, screen);
  if (scene === undefined) return null;
  const { title } = scene.painted.picture;
  if (settings.screenReader) {
    return (
      <Frame title={`${title}, ${captionsOf(state, screen, scene)[0]}`}>
        {sceneLines(scene, settings).map((line) => (
          <Text key={line}>{line}</Text>
        ))}
      </Frame>
    );
  }
  const { body } = frameParts(state, notesOf(state).length);
  const size = sheetRoom(state, world, screen, innerColumns(state.size), body);
  return <Frame title={title}>{size && <Sheet screen={screen} size={size} />}</Frame>;
}
