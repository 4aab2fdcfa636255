/** The screens of a quiz in the room. */
import type { ReactNode } from 'react';
import { leading, voteWords } from '../../../quiz/room-votes.js';
import { cleanText } from '../../../text/sanitize.js';
import type { Glyphs } from '../../kit/glyphs.js';
import { ItemList, type ListItem } from '../../kit/list.js';
import { keysView, textView } from '../../kit/panels.js';
import type { View } from '../../kit/program.js';
import { Result } from '../../result/view.js';
import { panelView } from '../../sheet/panel.js';
import { clockText } from '../sit/state.js';
import { Hands } from './bars.js';
import { picturedIn, roomKeys } from './keys.js';
import { Slide } from './slide.js';
import {
  judgedIn,
  lettersIn,
  mostVoted,
  questionIn,
  type RoomState,
  type RoomWorld,
  secondsLeft,
  votesAt,
} from './state.js';

function roomItems(world: RoomWorld, state: RoomState, glyphs: Glyphs): ListItem[] {
  return world.handout.questions.map(({ drill }, place): ListItem => {
    const text = `${place + 1}. ${cleanText(drill.title, 80)}`;
    const { first = [], second } = votesAt(world, state, place);
    const most = mostVoted(world, state, place);
    const answer = most === undefined ? undefined : lettersIn(world, place)[most]?.answer;
    const lead = leading(second ?? first);
    const side = lead.length > 1 ? 'a tie' : voteWords(lettersIn(world, place), second ?? first);
    if (answer === undefined) return { key: drill.id, lead: { text: '  -  ' }, text, side };
    const { mark, verdict } = world.grader.grade(place, answer);
    return {
      key: drill.id,
      lead: { text: `${String(mark).padStart(3)}  ` },
      text,
      side: `${glyphs[verdict]} ${verdict}, ${side}`,
    };
  });
}

function roomBody(world: RoomWorld, room: RoomState, glyphs: Glyphs): ReactNode {
  if (room.isOver)
    return (
      <ItemList
        head={[
          'Marks of the answers with most hands in the last vote. Open a question to talk about it.',
          '',
        ]}
        items={roomItems(world, room, glyphs)}
        selected={room.selected}
      />
    );
  switch (room.stage.name) {
    case 'shown':
      return <Hands world={world} room={room} />;
    case 'result':
      return <Result screen={judgedIn(world, room, room.stage)} />;
    default:
      return <Slide world={world} room={room} />;
  }
}

function roomTitle(world: RoomWorld, room: RoomState): string {
  if (room.isOver) return world.handout.title;
  const { stage, place, turn } = room;
  const title = cleanText(questionIn(world, place).drill.title, 80);
  if (stage.name === 'result') {
    const { first, second } = votesAt(world, room, place);
    const hands = [first, second].flatMap((vote) => (vote === undefined ? [] : [vote[stage.at] ?? 0]));
    const letter = lettersIn(world, place)[stage.at]?.letter ?? '';
    return `${letter}${hands.length === 0 ? '' : ` (hands: ${hands.join(', then ')})`}: ${title}`;
  }
  return turn === 'second' && stage.name !== 'shown' ? `Second vote: ${title}` : title;
}

/** The timer and the number of the question. Read aloud, a clock would speak each second: only its end is told. */
function roomSide(world: RoomWorld, room: RoomState): string {
  if (room.isOver) return '';
  const left = secondsLeft(room);
  const clock = left === 0 ? 'time is up' : room.settings.screenReader ? 'timer runs' : clockText(left ?? 0);
  const place = `${room.place + 1} of ${world.handout.questions.length}`;
  return left === undefined ? place : `${clock}   ${place}`;
}

function overlayView(world: RoomWorld, room: RoomState): View | undefined {
  switch (room.overlay?.name) {
    case 'keys': {
      const { overlay: _closed, ...behind } = room;
      return keysView(roomKeys(world, behind));
    }
    case 'leave': {
      const { file } = (room.goesOn ? world.found : undefined) ?? world.fresh;
      const isCounted = room.counts.questions.length > 0;
      return textView('Leave', [
        'Leave the quiz?',
        ...(isCounted ? ['', `The counts are kept in ${file}; start again to go on.`] : []),
      ]);
    }
    case 'sheet':
    case 'scene':
      return panelView(room, world.world, picturedIn(world, room), room.overlay);
    default:
      return undefined;
  }
}

function beginView({ found, note, fresh, handout }: RoomWorld): View {
  if (note !== undefined)
    return textView(handout.title, [
      `${note}. That file stays as it is.`,
      '',
      `The counts of this class are kept in ${fresh.file}.`,
    ]);
  const count = found?.counts.questions.length ?? 0;
  const held = new Date(found?.counts.held ?? 0).toLocaleString('en-GB', {
    dateStyle: 'long',
    timeStyle: 'short',
  });
  return textView(handout.title, [
    `${found?.file} has the counts of ${count} of ${handout.questions.length} questions, begun ${held}.`,
    '',
    'Enter: go on with this class.',
    `n: another class, kept in ${fresh.file}; the counts that are there stay.`,
  ]);
}

/** The screen in front, or the panel over it. */
export function roomView(world: RoomWorld, room: RoomState, glyphs: Glyphs): View {
  const overlay = overlayView(world, room);
  if (overlay !== undefined) return overlay;
  if (room.stage.name === 'begin') return beginView(world);
  return { title: roomTitle(world, room), side: roomSide(world, room), body: roomBody(world, room, glyphs) };
}
