/** The hands of a question: every answer with its bar, the second vote beside the first. */

import { handsWords, leading, NONE, type Turn, type Vote, voteWords } from '../../../quiz/room-votes.js';
import { cleanText } from '../../../text/sanitize.js';
import { padText, widthOf, wrapText } from '../../../text/wrap.js';
import { type Glyphs, moreInAscii } from '../../kit/glyphs.js';
import { innerColumns } from '../../kit/layout.js';
import { bodyRows } from '../../kit/notes.js';
import { type Piece, Rows } from '../../kit/row.js';
import { useSurroundings } from '../../kit/surroundings.js';
import { LETTER_ROOM, largeText, letterSizes } from './large.js';
import { labelLines, offeredIn } from './offered.js';
import type { RoomProps } from './slide.js';
import { lettersIn, questionIn, type RoomState, type RoomWorld, votesAt } from './state.js';

/** A count as a bar; any hand at all shows. */
export function handsBar(hands: number, most: number, columns: number, sign: string): string {
  if (hands <= 0 || columns <= 0) return '';
  return sign.repeat(Math.max(1, Math.round((hands / Math.max(1, most)) * columns)));
}

/** What came out, a line a vote. */
function outcome(world: RoomWorld, state: RoomState): string[] {
  const { first, second } = votesAt(world, state, state.place);
  const letters = lettersIn(world, state.place);
  if (first === undefined) return ['No hands were counted. Type a letter to open its answer.'];
  if (second === undefined) {
    const isTie = leading(first).length > 1;
    const words = voteWords(letters, first);
    return [isTie ? `It is ${words}. Type a letter to open one.` : `Most hands: ${words}.`];
  }
  return [`First vote: ${voteWords(letters, first)}. After talking: ${voteWords(letters, second)}.`];
}

const NUMBER_COLUMNS = 4;
const NAMES: Readonly<Record<Turn, string>> = { first: '1st', second: '2nd' };
const MOST_BAR_ROWS = 3;

/** One vote on one answer. */
interface Bar {
  readonly turn: Turn;
  readonly hands: number;
}

/** Number and bar, over so many lines. */
function barLines(
  { turn, hands }: Bar,
  { most, columns, rows, isTwice }: { most: number; columns: number; rows: number; isTwice: boolean },
  { full, empty }: Glyphs,
): Piece[][] {
  const name = isTwice ? `${NAMES[turn]} ` : '';
  const head = `${name}${padText(String(hands), NUMBER_COLUMNS - 1, 'left')}  `;
  // The vote that counts is the darker one.
  const sign = isTwice && turn === 'first' ? empty : full;
  const bar = handsBar(hands, most, columns - widthOf(head), sign);
  return Array.from({ length: rows }, (_, row): Piece[] => [
    { text: row === 0 ? head : ' '.repeat(widthOf(head)), role: 'label' },
    { text: bar },
  ]);
}

/** Words cut to so many lines; dots say so. */
function shortened(label: string, columns: number, rows: number): string[] {
  const lines = labelLines(label, columns);
  if (lines.length <= rows) return lines;
  const kept = labelLines(label, columns - 4).slice(0, rows);
  return kept.map((line, at) => (at === rows - 1 ? `${line} ...` : line));
}

function Spoken({ world, room }: RoomProps): React.JSX.Element {
  const votes = votesAt(world, room, room.place);
  const offered = offeredIn(world, room);
  const spoken = (at: number): string => (votes.first === undefined ? '' : ` ${handsWords(votes, at)}.`);
  const texts = [
    ...outcome(world, room),
    ...offered.map(({ letter, label }, at) => `${letter}: ${label}.${spoken(at)}`),
    ...(votes.first === undefined ? [] : [`${NONE}:${spoken(offered.length)}`]),
  ];
  return <Rows lines={texts.map((text): Piece[] => [{ text }])} />;
}

export function Hands(props: RoomProps): React.JSX.Element {
  const { world, room } = props;
  const { glyphs } = useSurroundings();
  if (room.settings.screenReader) return <Spoken {...props} />;
  const columns = innerColumns(room.size);
  const wrapped = (text: string): string[] => wrapText(text, columns - moreInAscii(text));
  const said = outcome(world, room).flatMap(wrapped);
  const asked = wrapped(cleanText(questionIn(world, room.place).drill.ask, 600));
  const votes = votesAt(world, room, room.place);
  const turns = (['first', 'second'] as const).filter((turn) => votes[turn] !== undefined);
  const offered = offeredIn(world, room);
  const count = offered.length;
  const least = count * Math.max(1, turns.length) + 1;
  const body = bodyRows(room);
  // The question goes where the hands need its lines.
  const isAsked = body - said.length - asked.length >= least;
  const head = [
    ...(isAsked ? asked.map((text): Piece[] => [{ text, role: 'label' }]) : []),
    ...said.map((text): Piece[] => [{ text, role: 'selected' }]),
  ];
  const hasGap = body - head.length - 1 >= least;
  const rows = body - head.length - (hasGap ? 1 : 0);
  const hasNoneBar = rows >= (count + 1) * Math.max(1, turns.length);
  const noneRows = turns.length === 0 ? 0 : hasNoneBar ? turns.length : 1;
  const each = Math.max(1, Math.floor((rows - noneRows) / count));
  const gap = each > Math.max(2, turns.length) ? 1 : 0;
  const size = letterSizes(glyphs).find((one) => LETTER_ROOM[one].rows <= each - gap) ?? 'text';
  const inner = Math.min(each - gap, Math.max(LETTER_ROOM[size].rows, turns.length * MOST_BAR_ROWS, 3));
  const letterColumns = LETTER_ROOM[size].columns;
  const labelColumns =
    turns.length === 0
      ? columns - letterColumns - 2
      : Math.min(64, Math.max(22, Math.floor((columns - letterColumns) * 0.45)));
  const barRows = Math.max(
    1,
    Math.min(
      MOST_BAR_ROWS,
      Math.floor((inner - (each > inner || inner < 2 ? 0 : 1)) / Math.max(1, turns.length)),
    ),
  );
  const look = {
    most: Math.max(0, ...turns.flatMap((turn) => votes[turn] as Vote)),
    columns: columns - letterColumns - labelColumns - 2,
    rows: barRows,
    isTwice: turns.length > 1,
  };
  const barsOf = (at: number, barLook = look): Piece[][] =>
    turns.flatMap((turn) => barLines({ turn, hands: votes[turn]?.[at] ?? 0 }, barLook, glyphs));
  const lead = turns.length === 0 ? [] : leading(votes[turns.at(-1) as Turn] as Vote);
  const block = (
    signs: readonly string[],
    words: readonly string[],
    bars: Piece[][],
    height: number,
    isHere: boolean,
  ) =>
    Array.from({ length: height }, (_, row): Piece[] => [
      { text: (signs[row] ?? '').padEnd(letterColumns), role: 'label' },
      { text: padText(words[row] ?? '', labelColumns), role: isHere ? 'selected' : 'plain' },
      { text: '  ' },
      ...(bars[row] ?? []),
    ]);
  const answers = offered.flatMap(({ letter, label }, at) => [
    ...block(
      largeText(letter, size, glyphs),
      shortened(label, labelColumns, inner),
      barsOf(at),
      inner,
      lead.includes(at),
    ),
    ...Array.from({ length: Math.min(2, each - inner) }, (): Piece[] => []),
  ]);
  const none =
    noneRows === 0
      ? []
      : hasNoneBar
        ? block([], [NONE], barsOf(count, { ...look, rows: 1 }), noneRows, lead.includes(count))
        : [[{ text: `${NONE}: ${handsWords(votes, count)}` }]];
  return <Rows lines={[...head, ...(hasGap ? [[]] : []), ...answers, ...none]} />;
}
