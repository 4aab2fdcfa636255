/** The question slide: texts, the picture, large patches and lettered answers. While hands are counted it stays, with a line for the number. */
import { Box } from 'ink';
import { NONE } from '../../../quiz/room-votes.js';
import { cleanText } from '../../../text/sanitize.js';
import { lookOf, swatchWords } from '../../../words/look.js';
import { sayAll } from '../../../words/tell.js';
import { innerColumns } from '../../kit/layout.js';
import { voiceOf } from '../../kit/look.js';
import { type Piece, Row, Rows } from '../../kit/row.js';
import { useSurroundings } from '../../kit/surroundings.js';
import { patchStyle } from '../../kit/theme.js';
import { Sheet, sceneLines } from '../../sheet/view.js';
import { clockText } from '../sit/state.js';
import { LETTER_ROOM, largeText, letterSizes } from './large.js';
import { hasLargeTimer, type SlideLayout, slideLayout, TIMER_ROOM } from './layout.js';
import { labelLines, type Offered, offeredIn } from './offered.js';
import { LargePatches } from './patches.js';
import {
  lettersIn,
  questionIn,
  type RoomState,
  type RoomWorld,
  secondsLeft,
  shownQuestion,
} from './state.js';

export interface RoomProps {
  readonly world: RoomWorld;
  readonly room: RoomState;
}

/** Lines of one answer: its letter, the colour of what is chosen, its words. */
function useAnswerLines({ size, patchColumns, labelColumns }: SlideLayout) {
  const { glyphs } = useSurroundings();
  const { columns } = LETTER_ROOM[size];
  return ({ letter, label, swatch }: Offered, rows: number, isHere: boolean): Piece[][] => {
    const signs = largeText(letter, size, glyphs);
    const words = labelLines(label, labelColumns);
    // Under a large letter's top the words stand in the middle of it.
    const from = Math.max(0, Math.floor((Math.min(rows, signs.length) - words.length) / 2));
    return Array.from({ length: rows }, (_, row): Piece[] => [
      { text: row === 0 && isHere ? `${glyphs.pointer} ` : '  ', role: 'here' },
      { text: (signs[row] ?? '').padEnd(columns), role: 'label' },
      ...(patchColumns === 0
        ? []
        : [
            {
              text: ' '.repeat(patchColumns - 2),
              ...(swatch === undefined ? {} : { style: patchStyle(lookOf(swatch).hex) }),
            },
            { text: '  ' },
          ]),
      { text: words[row - from] ?? '', role: isHere ? 'selected' : 'plain' },
    ]);
  };
}

function Answers({ world, room, layout }: RoomProps & { readonly layout: SlideLayout }): React.JSX.Element {
  const { glyphs } = useSurroundings();
  const linesOf = useAnswerLines(layout);
  const { from, to, heights, gap, isAll } = layout;
  const offered = offeredIn(world, room);
  const here =
    room.stage.name === 'count'
      ? room.stage.at
      : room.stage.name === 'question' && !isAll
        ? room.stage.at
        : -1;
  const lettersOf = (some: readonly Offered[]): string =>
    some.length === 1 ? `${some[0]?.letter}` : `${some[0]?.letter} to ${some.at(-1)?.letter}`;
  const more = [
    ...(from > 0 ? [`${glyphs.upMark} ${lettersOf(offered.slice(0, from))}`] : []),
    ...(to < offered.length ? [`${glyphs.downMark} ${lettersOf(offered.slice(to))}`] : []),
  ];
  return (
    <>
      {offered.slice(from, to).map((each, offset) => {
        const at = from + offset;
        const lines = linesOf(each, heights[at] ?? 1, at === here);
        const blank = Array.from({ length: at === to - 1 ? 0 : gap }, (): Piece[] => []);
        return <Rows key={each.letter} lines={[...lines, ...blank]} />;
      })}
      {more.length === 0 ? null : <Row pieces={[{ text: `  ${more.join('   ')}`, role: 'key' }]} />}
    </>
  );
}

/** What is being typed: how many figures, never which. */
function entryWords({ world, room }: RoomProps, dot: string): string {
  if (room.stage.name !== 'count') return '';
  const { typed, at } = room.stage;
  const letter = lettersIn(world, room.place)[at]?.letter ?? NONE;
  const figures = typed[at]?.length ?? 0;
  const shown = room.settings.screenReader
    ? `${figures === 0 ? 'nothing' : figures === 1 ? 'one figure' : `${figures} figures`} typed`
    : dot.repeat(figures);
  const vote = room.turn === 'second' ? 'Second vote, hands' : 'Hands';
  return `${vote} for ${letter}: ${shown}`;
}

function Spoken(props: RoomProps): React.JSX.Element {
  const { world, room } = props;
  const { drill } = questionIn(world, room.place);
  const voice = voiceOf(room.settings);
  const kind = world.world.kindOf(drill);
  const scene = world.world.sceneOf(drill);
  if (room.stage.name === 'count') return <Rows lines={[[{ text: `${entryWords(props, '')}.` }]]} />;
  const texts = [
    cleanText(drill.scene, 600),
    ...(scene === undefined ? [] : sceneLines(scene, room.settings)),
    cleanText(drill.ask, 600),
    ...sayAll(kind.goalLines(drill), voice).map((line) => cleanText(line, 600)),
    ...kind.given(drill).map((swatch) => `${cleanText(swatch.label, 60)}: ${swatchWords(swatch, voice)}.`),
    ...offeredIn(world, room).map(({ letter, label }) => `${letter}: ${label}.`),
  ];
  return <Rows lines={texts.map((text): Piece[] => [{ text }])} />;
}

function Top({
  room,
  layout,
}: Pick<RoomProps, 'room'> & { readonly layout: SlideLayout }): React.JSX.Element {
  const { glyphs } = useSurroundings();
  const left = secondsLeft(room);
  if (left === undefined || !hasLargeTimer(room)) return <Rows lines={[...layout.top, []]} />;
  const rows = Math.max(TIMER_ROOM.rows, layout.top.length);
  return (
    <Box flexShrink={0} height={rows + 1} overflowY="hidden">
      <Box flexDirection="column" flexGrow={1} flexShrink={0}>
        <Rows lines={layout.top} />
      </Box>
      <Box flexDirection="column" flexShrink={0}>
        <Rows
          lines={largeText(clockText(left), 'full', glyphs).map((text): Piece[] => [{ text, role: 'label' }])}
        />
      </Box>
    </Box>
  );
}

export function Slide(props: RoomProps): React.JSX.Element {
  const { world, room } = props;
  const { glyphs } = useSurroundings();
  if (room.settings.screenReader) return <Spoken {...props} />;
  const layout = slideLayout(world, room, letterSizes(glyphs));
  const question = shownQuestion(world, room);
  const given = world.world.kindOf(question.drill).given(question.drill);
  const { leftColumns, sheet, givenRows } = layout;
  const columns = leftColumns === 0 ? innerColumns(room.size) : leftColumns;
  const patches =
    givenRows === 0 ? null : <LargePatches swatches={given} columns={columns} rows={givenRows} />;
  const answers = <Answers {...props} layout={layout} />;
  return (
    <>
      <Top room={room} layout={layout} />
      {leftColumns === 0 ? (
        <>
          {patches}
          {patches === null ? null : <Row pieces={[{ text: ' ' }]} />}
          {answers}
        </>
      ) : (
        <Box flexShrink={0} height={layout.rows}>
          <Box flexDirection="column" width={leftColumns} marginRight={3} flexShrink={0}>
            {sheet === undefined ? null : <Sheet screen={question} size={sheet} />}
            {sheet === undefined || patches === null ? null : <Row pieces={[{ text: ' ' }]} />}
            {patches}
          </Box>
          <Box flexDirection="column" flexGrow={1} flexShrink={0}>
            {answers}
          </Box>
        </Box>
      )}
      {room.stage.name === 'count' ? (
        <Rows lines={[[], [{ text: entryWords(props, glyphs.chosen), role: 'notice' }]]} />
      ) : null}
    </>
  );
}
