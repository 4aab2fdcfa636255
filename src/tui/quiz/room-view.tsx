/** The screens of a quiz in the room. */

import { Box } from 'ink';
import type { ReactNode } from 'react';
import { kindOf } from '../../drills/kinds/index.js';
import { cleanText } from '../../text/sanitize.js';
import { wrapText } from '../../text/wrap.js';
import { sayAll } from '../../words/tell.js';
import { Frame } from '../kit/frame.js';
import type { Glyphs } from '../kit/glyphs.js';
import { innerColumns, isAiry } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { type Piece, Rows } from '../kit/row.js';
import type { Screen } from '../kit/state.js';
import { type FrameWords, useSurroundings } from '../kit/surroundings.js';
import { Result } from '../result/view.js';
import { ItemList, KeyList, type ListItem, Paragraphs, useBodyRows } from './quiz-pages.js';
import { FieldCounts, LargePatches, letterOf } from './room-parts.js';
import {
  countsOf,
  fieldsIn,
  handsWords,
  isCounted,
  questionIn,
  type RoomState,
  type RoomWorld,
  roomBindings,
  roomGrade,
} from './room-state.js';
import { roomResult } from './room-update.js';

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
  const rows = useBodyRows();
  return (
    <Frame title="">
      <Rows lines={lines} />
      <Rows lines={[[]]} />
      <LargePatches
        swatches={kindOf(world.handout.studio, drill).given(drill)}
        rows={Math.max(4, rows - lines.length - 1)}
      />
    </Frame>
  );
}

function CountScreen(props: RoomProps): React.JSX.Element | null {
  const { world, room } = props;
  const lines = useQuestionLines(props, false);
  const rows = useBodyRows();
  if (room.stage.name !== 'count') return null;
  const { field: at, option } = room.stage;
  const field = fieldsIn(world, room.place)[at];
  if (field === undefined) return null;
  return (
    <Frame title="">
      <Rows lines={[...lines, []]} />
      <FieldCounts
        field={field}
        hands={countsOf(room, room.place, at)}
        option={option}
        rows={rows - lines.length - 1}
      />
    </Frame>
  );
}

/** All rows of choices with their hands; where they do not all fit, choices without hands are left out. */
function ShownScreen(props: RoomProps): React.JSX.Element {
  const { world, room } = props;
  const { state } = useSurroundings();
  const lines = useQuestionLines(props, false);
  const rows = useBodyRows() - lines.length - 1;
  const fields = fieldsIn(world, room.place);
  const wanted = fields.reduce((sum, { options }) => sum + options.length + 1, 0);
  const isTight = !state.settings.screenReader && wanted > rows;
  const kept = fields.map(({ options }, index) =>
    options.map((_, at) => at).filter((at) => !isTight || (countsOf(room, room.place, index)[at] ?? 0) > 0),
  );
  const choices = kept.reduce((sum, each) => sum + each.length, 0);
  const tall = Math.max(1, Math.floor((rows - fields.length) / Math.max(1, choices)));
  return (
    <Frame title="">
      <Rows lines={[...lines, []]} />
      <Box flexDirection="column" flexShrink={0} height={rows} overflow="hidden">
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
    </Frame>
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
  if (room.overlay?.name === 'keys') {
    const { overlay: _closed, ...behind } = room;
    return <KeyList bindings={roomBindings(world, behind)} />;
  }
  if (room.overlay?.name === 'leave')
    return (
      <Paragraphs
        texts={['Leave the quiz?', '', 'The counts are not kept; they are printed once after leaving.']}
      />
    );
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
    case 'result': {
      const graded = roomResult(world, room);
      return graded === undefined ? null : <Result screen={graded} />;
    }
  }
}

function roomTitle(world: RoomWorld, room: RoomState): string {
  if (room.overlay !== undefined) return room.overlay.name === 'keys' ? 'Keys that work here' : 'Leave';
  if (room.isOver) return world.handout.title;
  const { drill } = questionIn(world, room.place);
  const title = cleanText(drill.title, 80);
  if (room.stage.name !== 'result') return title;
  return isCounted(room, room.place)
    ? `Most hands (${handsWords(world, room, room.place)}): ${title}`
    : `The best answer: ${title}`;
}

/** The screen in front, what it stands for to the practice components, and the words around it. */
export function roomView(
  world: RoomWorld,
  room: RoomState,
  glyphs: Glyphs,
): { readonly screen: Screen; readonly frame: FrameWords; readonly body: ReactNode } {
  return {
    screen: roomResult(world, room) ?? { name: 'waiting' },
    frame: {
      title: roomTitle(world, room),
      side:
        room.isOver || room.overlay !== undefined
          ? ''
          : `${room.place + 1} of ${world.handout.questions.length}`,
      help: roomBindings(world, room),
    },
    body: roomBody(world, room, glyphs),
  };
}
