/** "Paint it": what to mix, what was read of it when dry, and what that tells. */
import { Text } from 'ink';
import { scaleEnds, VALUE_SCALES } from '../../colour/value.js';
import { paintingTold } from '../../readings/findings.js';
import { cleanText } from '../../text/sanitize.js';
import { padText, wrapText } from '../../text/wrap.js';
import { sayAll } from '../../words/tell.js';
import { textColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import { bodyRows } from '../kit/notes.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { TextPage } from '../kit/text-page.js';
import type { PatchTexts } from '../practice/deps.js';
import type { PaintingScreen, PracticeScreen, PracticeWorld, State } from '../practice/state.js';
import { isReadable, paintingKeys, paintings, toldPage, updatePainting } from './update.js';

const FIELDS = [
  ['alone', 'the wash alone'],
  ['mixed', 'the mixture'],
] as const satisfies readonly (readonly [keyof PatchTexts, string])[];

/** What to mix, and what can be done with what dried. */
function textsOf(state: State, world: PracticeWorld, { back, at }: PaintingScreen): string[] {
  const one = paintings(world, back)[at];
  if (one === undefined) return [];
  const { drill } = back.answered;
  const voice = voiceOf(state.settings);
  const label = world.kindOf(drill).label(drill, one.answer, voice);
  const rest = isReadable(state, world)
    ? `Let both dry, read them on a grey scale (${scaleEnds(VALUE_SCALES[voice.scale])}) and type what you read; one may stay empty.`
    : `Let both dry and compare. ${world.keepsReadings ? 'To keep what dried takes a box of your own: Settings, Box of paints, n makes one.' : 'Nothing can be kept here.'}`;
  return [
    `${one.whose === 'best' ? 'The best' : 'Yours'}: ${cleanText(label, 200)}.`,
    ...sayAll(paintingTold(world.studio, one.wash), voice).map((text) => cleanText(text, 400)),
    rest,
  ];
}

interface BodyProps {
  readonly screen: PaintingScreen;
  readonly texts: readonly string[];
  readonly isAsked: boolean;
}

function Painting({ screen, texts, isAsked }: BodyProps): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const { told, top, typed, at, field } = screen;
  const isHere = (id: string): boolean => id === field;
  const textOf = (id: keyof PatchTexts): string => typed[at]?.[id] ?? '';
  if (state.settings.screenReader) {
    const rows = FIELDS.map(
      ([id, name]) => `${isHere(id) ? 'Now at ' : ''}${name}: ${textOf(id) || 'nothing typed'}.`,
    );
    return (
      <>
        {(told ?? [...texts, ...(isAsked ? rows : [])]).map((line) => (
          <Text key={line}>{line}</Text>
        ))}
      </>
    );
  }
  if (told !== undefined) return <TextPage page={toldPage(state, told)} top={top} />;
  const columns = textColumns(state.size);
  // What is typed is always seen.
  const most = bodyRows(state) - (isAsked ? FIELDS.length + 1 : 0);
  const lines = texts.flatMap((text) => wrapText(text, columns)).slice(0, most);
  const rows = FIELDS.map(([id, name]): Piece[] => [
    { text: isHere(id) ? `${glyphs.pointer} ` : '  ', role: 'here' },
    { text: padText(name, 16) },
    { text: isHere(id) ? `${textOf(id)}_` : textOf(id), role: isHere(id) ? 'selected' : 'plain' },
  ]);
  return <Rows lines={[...lines.map((text): Piece[] => [{ text }]), ...(isAsked ? [[], ...rows] : [])]} />;
}

export const painting: PracticeScreen<'painting'> = {
  keys: paintingKeys,
  update: updatePainting,
  view: (state, world, screen) => ({
    title: screen.told === undefined ? 'Paint it' : 'What dried is kept',
    body: (
      <Painting screen={screen} texts={textsOf(state, world, screen)} isAsked={isReadable(state, world)} />
    ),
  }),
};
