/** A photographed painting: the picture with its masses, the one in front in figures; before and after side by side where there is room. */
import { Box } from 'ink';
import { chromaWord, colourInWords, valueWord } from '../../colour/index.js';
import type { PaintingReading } from '../../painting/index.js';
import { wrapText } from '../../text/wrap.js';
import { percent, sentence, stepsWords } from '../../words/laid.js';
import { placeWords } from '../../words/sentences/painting.js';
import { scaleUnit, stepText, stepWords, type Voice } from '../../words/voice.js';
import { innerColumns, isWide } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { TextPage } from '../kit/text-page.js';
import { MassAsking, MassRecipeList } from './from-mass.js';
import { cellsFor, photographLines } from './picture.js';
import { type PhotographState, type PhotographWorld, paintingIn } from './state.js';
import { toldPage } from './told.js';

/** Columns of what is said beside a picture, and between two pictures. */
const SIDE = 36;
const GAP = 2;
/** Columns from which before and after stand side by side, with what is said. */
const ROOM_FOR_TWO = 116;
/** Lines that are left for words under a picture. */
const LINES_UNDER = 5;

/** Neighbours of a mass that are told. */
const NEIGHBOURS = 2;

/** "Mass 3 of 7, dark brown, lower left", its figures, its neighbours and what is wrong with it. */
export function massWords({ masses, borders, veil }: PaintingReading, mass: number, voice: Voice): string[] {
  const one = masses[mass];
  if (one === undefined) return [];
  const { colour, share } = one;
  const beside = borders
    .filter(({ between }) => between.includes(mass))
    .slice(0, NEIGHBOURS)
    .map(({ between: [light, dark], steps }) => {
      const other = light === mass ? dark : light;
      return `Beside mass ${other + 1}: ${stepsWords(steps)} apart.`;
    });
  const veiled = veil.masses
    .filter((each) => each.mass === mass)
    .map(
      ({ from, below }) => `Duller than the shade of mass ${from + 1} by chroma ${below.toFixed(0)}: a veil.`,
    );
  return [
    `Mass ${mass + 1} of ${masses.length}: ${colourInWords(colour.lab)}, ${placeWords(one)}.`,
    `${sentence(valueWord(colour.value))}, ${stepWords(colour.step, voice)}; ${chromaWord(colour.lab)}, chroma ${colour.chroma.toFixed(0)}; ${percent(share)} of the painting.`,
    ...beside,
    ...veiled,
  ];
}

/** The painting as a whole. */
export function wholeWords({ range, shares }: PaintingReading, voice: Voice): string[] {
  return [
    `Values ${stepWords(range.light, voice)} to ${stepText(range.dark, voice)}.`,
    `Light ${percent(shares.light)}, middle ${percent(shares.middle)}, dark ${percent(shares.dark)}.`,
  ];
}

/** Bars of the shares of the ten steps, each with its step. */
function histogramLines(
  { histogram }: PaintingReading,
  voice: Voice,
  columns: number,
  full: string,
): Piece[][] {
  const most = Math.max(...histogram);
  const room = columns - 11;
  return [
    [{ text: `Share of each ${scaleUnit(voice) === 'V' ? 'value' : 'step'}`, role: 'muted' }],
    ...histogram.map((share, index): Piece[] => [
      {
        text: stepText(index + 1, voice)
          .replace(/\.0$/, '')
          .padStart(3),
        role: 'muted',
      },
      { text: ` ${full.repeat(Math.round((room * share) / most))} ` },
      { text: share < 0.005 ? '' : percent(share), role: 'muted' },
    ]),
  ];
}

const LOOK_WORDS = {
  colour: '',
  grey: 'in greys',
  2: 'in two values',
  3: 'in three values',
  5: 'in five values',
} as const;
export const WHICH = ['before', 'after'] as const;

/** "after, in greys"; nothing of one picture in its colours. */
export const lookWords = (world: PhotographWorld, { painting, look }: PhotographState): string =>
  [world.paintings.length > 1 ? WHICH[painting] : '', LOOK_WORDS[look]].filter(Boolean).join(', ');

function Picture({
  screen,
  world,
}: {
  readonly screen: PhotographState;
  readonly world: PhotographWorld;
}): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const voice = voiceOf(state.settings);
  const [columns, rows] = [innerColumns(state.size), bodyRows(state)];
  const { reading } = paintingIn(world, screen);
  const beside = isWide(state.size);
  const two = world.paintings.length > 1 && columns >= ROOM_FOR_TWO;
  const room = beside ? columns - SIDE - GAP : columns;
  const each = two ? Math.floor((room - GAP) / 2) : room;
  const lines = beside ? rows - (two ? 1 : 0) : rows - LINES_UNDER;
  const shown = two ? world.paintings.map((_, index) => index) : [screen.painting];
  const drawn = shown.map((index) => {
    const own = world.paintings[index]?.reading ?? reading;
    const cells = cellsFor(own, each, lines);
    const { colourLevel: level } = state;
    const mark = index === screen.painting ? { mass: screen.mass } : {};
    return {
      index,
      cells,
      lines: photographLines(own, { ...cells, look: screen.look, level, glyphs, ...mark }),
    };
  });
  const words = [
    ...massWords(reading, screen.mass, voice),
    ...(beside ? ['', ...wholeWords(reading, voice)] : []),
  ];
  const width = beside
    ? Math.max(SIDE, columns - GAP - drawn.reduce((sum, { cells }) => sum + cells.columns + GAP, 0))
    : columns;
  const text = words.flatMap((line) => (line === '' ? [''] : wrapText(line, Math.min(width, 60))));
  const histogram =
    beside && rows >= text.length + 12
      ? [[{ text: ' ' }], ...histogramLines(reading, voice, Math.min(width, 44), glyphs.full)]
      : [];
  const side: Piece[][] = [...text.map((line): Piece[] => [{ text: line || ' ' }]), ...histogram].slice(
    0,
    beside ? rows : LINES_UNDER,
  );
  const pictures = drawn.map(({ index, cells, lines: own }) => (
    <Box key={index} flexDirection="column" width={cells.columns} marginRight={GAP} flexShrink={0}>
      <Rows
        lines={[
          ...(two
            ? [
                [
                  {
                    text: WHICH[index] ?? '',
                    role: index === screen.painting ? 'selected' : 'muted',
                  } as const,
                ],
              ]
            : []),
          ...own,
        ]}
      />
    </Box>
  ));
  return (
    <Box flexDirection={beside ? 'row' : 'column'}>
      {pictures}
      <Box flexDirection="column" width={width} flexShrink={0}>
        <Rows lines={side} />
      </Box>
    </Box>
  );
}

/** The painting for the ear: as a whole, then each mass in the order in which they are walked. */
function Spoken({
  screen,
  world,
}: {
  readonly screen: PhotographState;
  readonly world: PhotographWorld;
}): React.JSX.Element {
  const { state } = useSurroundings();
  const voice = voiceOf(state.settings);
  const { reading } = paintingIn(world, screen);
  const texts = [...wholeWords(reading, voice), 'Now at:', ...massWords(reading, screen.mass, voice)];
  return <Rows lines={texts.map((text): Piece[] => [{ text }])} />;
}

export function Photograph({
  screen,
  world,
}: {
  readonly screen: PhotographState;
  readonly world: PhotographWorld;
}): React.JSX.Element {
  const { state } = useSurroundings();
  const { looking } = screen;
  if (looking?.name === 'told') {
    const page = toldPage(world, screen);
    if (state.settings.screenReader)
      return <Rows lines={world.told.filter(Boolean).map((text): Piece[] => [{ text }])} />;
    return <TextPage page={page} top={looking.top} />;
  }
  if (looking?.name === 'asking') return <MassAsking asking={looking} />;
  if (looking?.name === 'recipes') return <MassRecipeList looking={looking} />;
  return state.settings.screenReader ? (
    <Spoken screen={screen} world={world} />
  ) : (
    <Picture screen={screen} world={world} />
  );
}

/** A mass for a title: "mass 3, dark brown". */
export const massTitle = (world: PhotographWorld, state: PhotographState): string => {
  const { masses } = paintingIn(world, state).reading;
  const mass = masses[state.mass];
  return mass === undefined ? '' : `mass ${state.mass + 1}, ${colourInWords(mass.colour.lab)}`;
};
