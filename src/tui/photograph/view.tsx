/** A photographed painting: the picture with its masses, the one in front in figures; before and after together where there is room. */
import { Box } from 'ink';
import { wrapText } from '../../text/wrap.js';
import { toVoice } from '../../words/voice.js';
import { voiceOf } from '../kit/look.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { TextPage } from '../kit/text-page.js';
import { MassAsking, MassRecipeList } from './from-mass.js';
import { GAP, layoutOf, type Placed } from './layout.js';
import { photographLines } from './picture.js';
import { type PhotographState, type PhotographWorld, paintingIn } from './state.js';
import { toldPage } from './told.js';
import { histogramLines, massWords, WHICH, wholeWords } from './words.js';

interface PhotographProps {
  readonly screen: PhotographState;
  readonly world: PhotographWorld;
}

/** Widest words beside a picture, and bars of shares. */
const WIDEST = { words: 60, bars: 44 } as const;
/** Lines of the shares of ten steps, with what stands over them. */
const SHARE_LINES = 12;

function Pictures({ screen, world, placed }: PhotographProps & { readonly placed: readonly Placed[] }) {
  const { state, glyphs } = useSurroundings();
  return placed.map(({ index, reading, cells }) => {
    const isHere = index === screen.painting;
    const name: Piece = { text: WHICH[index] ?? '', role: isHere ? 'selected' : 'muted' };
    const lines = photographLines(reading, {
      ...cells,
      look: screen.look,
      level: state.colourLevel,
      glyphs,
      ...(isHere ? { mass: screen.mass } : {}),
    });
    return (
      <Box
        key={world.paintings[index]?.name ?? index}
        flexDirection="column"
        width={cells.columns}
        marginRight={GAP}
        flexShrink={0}
      >
        <Rows lines={placed.length > 1 ? [[name], ...lines] : lines} />
      </Box>
    );
  });
}

function Picture({ screen, world }: PhotographProps): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const voice = voiceOf(state.settings);
  const { reading } = paintingIn(world, screen);
  const { isBeside, isStacked, pictures, words } = layoutOf(world, screen);
  const said = [
    ...massWords(reading, screen.mass, voice),
    ...(isBeside ? ['', ...wholeWords(reading, voice)] : []),
  ];
  const text = said.flatMap((line) =>
    line === '' ? [''] : wrapText(line, Math.min(words.columns, WIDEST.words)),
  );
  const hasShares = isBeside && words.lines >= text.length + SHARE_LINES;
  const shares = hasShares
    ? [[{ text: ' ' }], ...histogramLines(reading, voice, Math.min(words.columns, WIDEST.bars), glyphs.full)]
    : [];
  const lines = [...text.map((line): Piece[] => [{ text: line || ' ' }]), ...shares];
  return (
    <Box flexDirection={isBeside ? 'row' : 'column'}>
      <Box flexDirection={isStacked ? 'column' : 'row'} flexShrink={0}>
        <Pictures screen={screen} world={world} placed={pictures} />
      </Box>
      <Box flexDirection="column" width={words.columns} flexShrink={0}>
        <Rows lines={lines.slice(0, words.lines)} />
      </Box>
    </Box>
  );
}

/** The painting for the ear: as a whole, then the mass that is in front. */
function Spoken({ screen, world }: PhotographProps): React.JSX.Element {
  const { state } = useSurroundings();
  const voice = voiceOf(state.settings);
  const { reading } = paintingIn(world, screen);
  const texts = [...wholeWords(reading, voice), 'Now at:', ...massWords(reading, screen.mass, voice)];
  return <Rows lines={texts.map((text): Piece[] => [{ text: toVoice(text, voice) }])} />;
}

export function Photograph({ screen, world }: PhotographProps): React.JSX.Element {
  const { state } = useSurroundings();
  const { looking } = screen;
  const spoken = state.settings.screenReader;
  switch (looking?.name) {
    case 'told':
      return spoken ? (
        <Rows lines={world.told.filter(Boolean).map((text): Piece[] => [{ text }])} />
      ) : (
        <TextPage page={toldPage(world, screen)} top={looking.top} />
      );
    case 'asking':
      return <MassAsking asking={looking} />;
    case 'recipes':
      return <MassRecipeList looking={looking} />;
    default:
      return spoken ? <Spoken screen={screen} world={world} /> : <Picture screen={screen} world={world} />;
  }
}
