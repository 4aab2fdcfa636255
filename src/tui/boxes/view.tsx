/** The boxes as they look: a list, the paints of one with those that are in it ticked, or what is typed. */
import { Text } from 'ink';
import { type Palette, STRENGTH_FACTOR } from '../../paints/index.js';
import { wrapText } from '../../text/wrap.js';
import { textColumns } from '../kit/layout.js';
import { ItemList, type ListItem } from '../kit/list.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { type BoxesScreen, type BoxTyping, boxAt, openBox, saidOf } from './state.js';

const counted = (n: number): string => `${n} paint${n === 1 ? '' : 's'}`;

/** What stays the same whatever box is in use. */
const usualName = (id: string): string => id.replaceAll('-', ' ');

function Boxes({ selected }: { readonly selected: number }): React.JSX.Element {
  const { state, world } = useSurroundings();
  const { palettes } = world.studio;
  const sideOf = ({ id, pigments }: Palette): string =>
    id === state.settings.palette ? `${counted(pigments.length)}, in use` : counted(pigments.length);
  const box = palettes[selected];
  if (state.settings.screenReader) {
    return (
      <Text>
        {box === undefined
          ? ''
          : `${box.name}: ${box.note}. ${sideOf(box)}. ${selected + 1} of ${palettes.length}.`}
      </Text>
    );
  }
  const items = palettes.map(
    (each): ListItem => ({
      key: each.id,
      lead: { text: each.id === state.settings.palette ? '* ' : '  ' },
      text: each.name,
      side: sideOf(each),
    }),
  );
  const head = [
    'Practice, bench and recipes keep to a box of your own while it is in use.',
    box?.note ?? '',
    '',
  ];
  return <ItemList head={head} items={items} selected={selected} />;
}

function Paints({
  open: { selected },
  box,
  paint: here,
}: NonNullable<ReturnType<typeof openBox>>): React.JSX.Element {
  const { state, world } = useSurroundings();
  const all = world.studio.paints;
  const sideOf = (id: string): string => {
    const { strength } = saidOf(box, id);
    return strength === undefined ? '' : `${strength} times`;
  };
  if (state.settings.screenReader) {
    const { name, strength } = saidOf(box, here.id);
    const called = name === undefined ? '' : `, which you call ${name}`;
    const strong = strength === undefined ? '' : `, ${strength} times as strong as the library’s`;
    const isIn = box.pigments.includes(here.id);
    return (
      <Text>
        {`${usualName(here.id)}${called}${strong}, ${isIn ? 'in the box' : 'not in the box'}. ${selected + 1} of ${all.length}. The box holds ${counted(box.pigments.length)}.`}
      </Text>
    );
  }
  const items = all.map(
    ({ id }): ListItem => ({
      key: id,
      lead: { text: box.pigments.includes(id) ? '[x] ' : '[ ] ' },
      text: saidOf(box, id).name ?? usualName(id),
      side: sideOf(id),
    }),
  );
  const head = [
    'Which of these paints do you have? Each change is kept at once.',
    `Here: ${usualName(here.id)}`,
    '',
  ];
  return <ItemList head={head} items={items} selected={selected} />;
}

/** What is asked, what stands before the text, and what it takes. */
function questionOf(what: BoxTyping['what'], name: string): readonly [string, string, readonly string[]] {
  const { least, most } = STRENGTH_FACTOR;
  switch (what) {
    case 'box':
      return [
        `What is the box ${name} to be called?`,
        'name',
        ['Small letters, digits and hyphens, at most 30. What dried of its tubes goes along with it.'],
      ];
    case 'name':
      return [
        `What do you call your ${name}?`,
        'name',
        [`It stands wherever the paint is named. Empty: ${name}, as in the library.`],
      ];
    case 'strength':
      return [
        `How many times as strongly as the library’s does your ${name} tint?`,
        'times',
        [
          `${least} to ${most}; 1 or empty: like the library’s.`,
          'A part of a tube of 2 does what two parts of the library’s do. How strong yours is, your own paper tells: mudlark dried.',
        ],
      ];
  }
}

interface TypingProps {
  readonly typing: BoxTyping;
  /** Of what is named or corrected. */
  readonly name: string;
}

function Typing({ typing: { what, text, refused }, name }: TypingProps): React.JSX.Element {
  const { state } = useSurroundings();
  const [question, label, notes] = questionOf(what, name);
  if (state.settings.screenReader)
    return (
      <Text>{`${refused === undefined ? '' : `Not kept: ${refused}. `}${question} ${notes.join(' ')} Typed: ${text === '' ? 'nothing yet' : text}.`}</Text>
    );
  const columns = textColumns(state.size);
  const plain = (line: string): Piece[] => [{ text: line }];
  const muted = (line: string): Piece[] => [{ text: line, role: 'muted' }];
  return (
    <Rows
      lines={[
        ...wrapText(question, columns).map(plain),
        [{ text: ' ' }],
        [
          { text: `${label}  `, role: 'muted' },
          { text: `${text}_`, role: 'selected' },
        ],
        [{ text: ' ' }],
        ...(refused === undefined ? [] : wrapText(`Not kept: ${refused}.`, columns)).map(plain),
        ...notes.flatMap((note) => wrapText(note, columns)).map(muted),
      ]}
    />
  );
}

export function BoxesBody(screen: BoxesScreen): React.JSX.Element {
  const { world } = useSurroundings();
  const shown = openBox(world, screen);
  if (screen.typing !== undefined) {
    const name = shown === undefined ? (boxAt(world, screen)?.id ?? '') : usualName(shown.paint.id);
    return <Typing typing={screen.typing} name={name} />;
  }
  return shown === undefined ? <Boxes selected={screen.selected} /> : <Paints {...shown} />;
}
