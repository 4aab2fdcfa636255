/** The screens of a quiz in the room. */

import { Box } from 'ink';
import type { ReactNode } from 'react';
import { kindOf } from '../../../drills/kinds/index.js';
import { cleanText } from '../../../text/sanitize.js';
import { wrapText } from '../../../text/wrap.js';
import { sayAll } from '../../../words/tell.js';
import type { Glyphs } from '../../kit/glyphs.js';
import { innerColumns, isAiry } from '../../kit/layout.js';
import { ItemList, type ListItem } from '../../kit/list.js';
import { voiceOf } from '../../kit/look.js';
import { bodyRows } from '../../kit/notes.js';
import { keysView, textView } from '../../kit/panels.js';
import type { View } from '../../kit/program.js';
import { type Piece, Rows } from '../../kit/row.js';
import { useSurroundings } from '../../kit/surroundings.js';
import { Result } from '../../result/view.js';
import { panelView } from '../../sheet/panel.js';
import { FieldCounts, LargePatches, letterOf } from './parts.js';
import {
  countsOf,
  fieldsIn,
  handsWords,
  isCounted,
  judgedIn,
  questionIn,
  type RoomState,
  type RoomWorld,
  roomGrade,
  roomKeys,
} from './state.js';

interface RoomProps {
  readonly world: RoomWorld;
  readonly room: RoomState;
}

function useQuestionLines({ world, room }: RoomProps, withScene: boolean): Piece[][] {
  const { state } = useSurroundings();
  const columns = innerColumns(state.size);
  const { drill } = questionIn(world, room.place);
  const lines = (text: string, role: Piece['role']): Piece[][] =>
    wrapText(cleanText(text, 600), columns).map((part): Piece[] => [{ text: part, ...(role && { role }) }]);
  const scene = withScene ? lines(drill.scene, 'plain') : [];
  const most = state.settings.screenReader ? scene.length : isAiry(state.size) ? 4 : 2;
  const shown = scene.slice(0, most);
  const last = shown.at(-1);
  if (shown.length < scene.length && last !== undefined)
    shown[shown.length - 1] = [...last, { text: ' ...' }];
  const goal = sayAll(kindOf(world.handout.studio, drill).goalLines(drill), voiceOf(state.settings)).flatMap(
    (line) => lines(line, 'plain'),
  );
  return [...shown, ...lines(drill.ask, 'label'), ...(withScene ? goal : [])];
}

function AskScreen(props: RoomProps): React.JSX.Element {
  const { world, room } = props;
  const { drill } = questionIn(world, room.place);
  const lines = useQuestionLines(props, true);
  const rows = bodyRows(room);
  return (
    <>
      <Rows lines={lines} />
      <Rows lines={[[]]} />
      <LargePatches
        swatches={kindOf(world.handout.studio, drill).given(drill)}
        rows={Math.max(4, rows - lines.length - 1)}
      />
    </>
  );
}

function CountScreen(props: RoomProps): React.JSX.Element | null {
  const { world, room } = props;
  const lines = useQuestionLines(props, false);
  const rows = bodyRows(room);
  if (room.stage.name !== 'count') return null;
  const { field: at, option } = room.stage;
  const field = fieldsIn(world, room.place)[at];
  if (field === undefined) return null;
  return (
    <>
      <Rows lines={[...lines, []]} />
      <FieldCounts
        field={field}
        hands={countsOf(room, room.place, at)}
        option={option}
        rows={rows - lines.length - 1}
      />
    </>
  );
}

/** All rows of choices with their hands; where they do not all fit, choices without hands are left out. */
function ShownScreen(props: RoomProps): React.JSX.Element {
  const { world, room } = props;
  const { state } = useSurroundings();
  const lines = useQuestionLines(props, false);
  const rows = bodyRows(room) - lines.length - 1;
  const fields = fieldsIn(world, room.place);
  const wanted = fields.reduce((sum, { options }) => sum + options.length + 1, 0);
  const isTight = !state.settings.screenReader && wanted > rows;
  const kept = fields.map(({ options }, index) =>
    options.map((_, at) => at).filter((at) => !isTight || (countsOf(room, room.place, index)[at] ?? 0) > 0),
  );
  const choices = kept.reduce((sum, each) => sum + each.length, 0);
  const tall = Math.max(1, Math.floor((rows - fields.length) / Math.max(1, choices)));
  return (
    <>
      <Rows lines={[...lines, []]} />
      <Box flexDirection="column" flexShrink={0} height={rows} overflowY="hidden">
        {fields.map((field, index) => {
          const shown = kept[index] ?? [];
          const hands = countsOf(room, room.place, index);
          return (
            <FieldCounts
              key={field.id}
              field={{ ...field, options: shown.flatMap((at) => field.options[at] ?? []) }}
              hands={shown.map((at) => hands[at] ?? 0)}
              letters={shown.map(letterOf)}
              rows={shown.length * tall + 1}
            />
          );
        })}
      </Box>
    </>
  );
}

function roomItems(world: RoomWorld, state: RoomState, glyphs: Glyphs): ListItem[] {
  return world.handout.questions.map(({ drill }, place) => {
    const text = `${place + 1}. ${cleanText(drill.title, 80)}`;
    if (!isCounted(state, place)) return { key: drill.id, lead: { text: '  -  ' }, text, side: 'no hands' };
    const { mark, verdict } = roomGrade(world, state, place);
    return {
      key: drill.id,
      lead: { text: `${String(mark).padStart(3)}  ` },
      text,
      side: `${glyphs[verdict]} ${verdict}, ${handsWords(world, state, place)}`,
    };
  });
}

function roomBody(world: RoomWorld, room: RoomState, glyphs: Glyphs): ReactNode {
  if (room.isOver)
    return (
      <ItemList
        head={['Marks of the answers with most hands. Open one to talk about it.', '']}
        items={roomItems(world, room, glyphs)}
        selected={room.selected}
      />
    );
  switch (room.stage.name) {
    case 'question':
      return <AskScreen world={world} room={room} />;
    case 'count':
      return <CountScreen world={world} room={room} />;
    case 'shown':
      return <ShownScreen world={world} room={room} />;
    case 'result':
      return <Result screen={judgedIn(world, room, room.stage)} />;
  }
}

function roomTitle(world: RoomWorld, room: RoomState): string {
  if (room.isOver) return world.handout.title;
  const { drill } = questionIn(world, room.place);
  const title = cleanText(drill.title, 80);
  if (room.stage.name !== 'result') return title;
  return isCounted(room, room.place)
    ? `Most hands (${handsWords(world, room, room.place)}): ${title}`
    : `The best answer: ${title}`;
}

function overlayView(world: RoomWorld, room: RoomState): View | undefined {
  switch (room.overlay?.name) {
    case 'keys': {
      const { overlay: _closed, ...behind } = room;
      return keysView(roomKeys(world, behind));
    }
    case 'leave':
      return textView('Leave', [
        'Leave the quiz?',
        '',
        'The counts are not kept; they are printed once after leaving.',
      ]);
    case 'sheet':
    case 'scene':
      return room.stage.name === 'result'
        ? panelView(room, world.world, judgedIn(world, room, room.stage), room.overlay)
        : undefined;
    default:
      return undefined;
  }
}

/** The screen in front, or the panel over it. */
export const roomView = (world: RoomWorld, room: RoomState, glyphs: Glyphs): View =>
  overlayView(world, room) ?? {
    title: roomTitle(world, room),
    side: room.isOver ? '' : `${room.place + 1} of ${world.handout.questions.length}`,
    body: roomBody(world, room, glyphs),
  };
