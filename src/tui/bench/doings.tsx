/** The lists of the bench: paints to pick, swatches set aside, recipes from here, kept mixtures, a name. */
import { Box } from 'ink';
import { readColour } from '../../colour/reading.js';
import { padText, widthOf, wrapText } from '../../text/wrap.js';
import { seeLaid } from '../../washes/index.js';
import { lookOf, spokenLook } from '../../words/look.js';
import { stepWords } from '../../words/voice.js';
import { ItemList, type ListItem } from '../kit/list.js';
import { voiceOf } from '../kit/look.js';
import { type Piece, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { PatchColumn } from '../kit/swatch.js';
import { patchStyle } from '../kit/theme.js';
import { windowAround } from '../kit/window.js';
import { benchLaid } from './mixture.js';
import { paintLook } from './rows.js';
import { type BenchState, type Doing, MOST_PINS, pickable } from './state.js';
import { AIM_WORDS, darkerWords, figures, mixtureWords, reachWords, recipeWords } from './texts.js';

interface DoingProps<D extends Doing = Doing> {
  readonly screen: BenchState;
  readonly doing: D;
  readonly columns: number;
  readonly rows: number;
}
type Of<K extends Doing['name']> = DoingProps<Extract<Doing, { name: K }>>;

const plain = (text: string): Piece[] => [{ text: text || ' ' }];
const muted = (text: string): Piece[] => [{ text: text || ' ', role: 'muted' }];

function Picking({ doing, columns, rows }: Of<'picking'>): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const order = pickable(world, state.settings.palette, doing.text);
  const seen = windowAround(order.length, doing.at, rows - 1);
  const flat = state.colourLevel === 0;
  const nameColumns = Math.max(...world.studio.paints.map(({ name }) => widthOf(name))) + 1;
  const lines = order.slice(seen.from, seen.to).map((id, offset): Piece[] => {
    const isHere = seen.from + offset === doing.at;
    const lead: Piece = { text: isHere ? `${glyphs.pointer} ` : '  ', role: 'here' };
    const paint = paintLook(world, id);
    if (paint === undefined) return [lead, { text: 'no paint', role: isHere ? 'selected' : 'plain' }];
    const { pigment, look } = paint;
    const swatch: Piece[] = flat ? [] : [{ text: '   ', style: patchStyle(look.hex) }, { text: ' ' }];
    const notes = flat
      ? [spokenLook(look, voiceOf(state.settings)), look.words, '']
      : [pigment.ci.join('+'), ''];
    const note = notes.find((text) => widthOf(text) <= columns - nameColumns - (flat ? 2 : 6)) ?? '';
    return [
      lead,
      ...swatch,
      { text: padText(pigment.name, nameColumns), role: isHere ? 'selected' : 'plain' },
      { text: note, role: 'muted' },
    ];
  });
  const search: Piece[] = [
    { text: 'search ', role: 'muted' },
    {
      text: doing.text === '' ? 'type a name or a code' : `${doing.text}_`,
      role: doing.text === '' ? 'muted' : 'selected',
    },
  ];
  const none: Piece[][] =
    order.length === 0 ? [plain('No paint is called that: take some letters away.')] : [];
  return <Rows lines={[search, ...lines, ...none]} />;
}

/** Columns of "chroma 54". */
const LEAST_CHROMA = 9;

function Pins({ screen, doing, columns, rows }: Of<'pins'>): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const { pins } = screen;
  const flat = state.colourLevel === 0;
  const each = Math.min(20, Math.floor((columns + 1) / MOST_PINS) - 1);
  const chosen = pins[doing.at];
  const under = (chosen === undefined ? [] : mixtureWords(world.studio, chosen)).flatMap((text) =>
    wrapText(text, columns),
  );
  const words = flat ? 3 : 0;
  const patches = flat ? 0 : Math.max(3, Math.min(12, rows - under.length - 5));
  const grey = Math.floor(patches / 3);
  return (
    <Box flexDirection="column">
      <Box>
        {pins.map((pin, at) => {
          const laid = benchLaid(pin);
          return laid === undefined ? null : (
            <PatchColumn
              // biome-ignore lint/suspicious/noArrayIndexKey: a swatch is its place
              key={at}
              name={[`${at === doing.at ? glyphs.pointer : ' '} ${at + 1}`]}
              nameRows={1}
              reflectance={seeLaid(world.studio, laid).reflectance}
              columns={each}
              patchRows={patches - grey}
              greyRows={grey}
              wordRows={words}
              valueOnly={each < LEAST_CHROMA}
            />
          );
        })}
      </Box>
      <Rows lines={['', ...under].map(plain)} />
    </Box>
  );
}

/** What recipes are to be looked for. @param about what they start from and keep to */
export function Asking({
  doing,
  columns,
  about = 'The mixture on the bench is the wash to start from. Recipes keep to the paints of your box.',
}: Pick<Of<'asking'>, 'doing' | 'columns'> & { readonly about?: string }): React.JSX.Element {
  const { glyphs } = useSurroundings();
  const { row, aim, darker } = doing;
  const line = (at: number, label: string, words: string): Piece[] => [
    { text: at === row ? `${glyphs.pointer} ` : '  ', role: 'here' },
    { text: padText(label, 8), role: 'muted' },
    at === row ? { text: `${glyphs.less}${words}${glyphs.more}`, role: 'selected' } : { text: ` ${words} ` },
  ];
  return (
    <Rows
      lines={[
        line(0, 'aim', AIM_WORDS[aim]),
        line(1, 'value', darkerWords(darker)),
        plain(''),
        ...wrapText(about, columns).map(muted),
      ]}
    />
  );
}

/** Recipes that were found, the one in front in words. @param before what is said first */
export function RecipeList({
  doing,
  columns,
  rows,
  before = [],
}: Pick<Of<'recipes'>, 'doing' | 'columns' | 'rows'> & {
  readonly before?: readonly string[];
}): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const voice = voiceOf(state.settings);
  const { found, at } = doing;
  if (found === undefined) return <Rows lines={[plain('Looking for recipes...')]} />;
  const flat = state.colourLevel === 0;
  const reach = reachWords(doing, voice);
  const said = [...before, ...(reach === '' ? [] : [reach])];
  const head = said.length === 0 ? [] : [...said.flatMap((text) => wrapText(text, columns)), ''];
  const list = found.recipes.map(({ laid }, index): Piece[] => {
    const look = lookOf(seeLaid(world.studio, laid).reflectance);
    const swatch: Piece[] = flat ? [] : [{ text: '    ', style: patchStyle(look.hex) }, { text: ' ' }];
    return [
      { text: index === at ? `${glyphs.pointer} ` : '  ', role: 'here' },
      ...swatch,
      {
        text: `${figures(readColour(seeLaid(world.studio, laid).reflectance), voice)}, ${look.words}`,
        role: index === at ? 'selected' : 'plain',
      },
    ];
  });
  const under = recipeWords(world.studio, doing, at, voice).flatMap((text) => wrapText(text, columns));
  return <Rows lines={[...head.map(plain), ...list, plain(''), ...under.map(plain)].slice(0, rows)} />;
}

function Naming({ screen, doing, columns }: Of<'naming'>): React.JSX.Element {
  const { world } = useSurroundings();
  const what = mixtureWords(world.studio, screen.mixture).flatMap((text) => wrapText(text, columns));
  return (
    <Rows
      lines={[
        [
          { text: 'name  ', role: 'muted' },
          { text: `${doing.text}_`, role: 'selected' },
        ],
        plain(''),
        ...what.map(muted),
      ]}
    />
  );
}

function Kept({ screen, doing }: Of<'kept'>): React.JSX.Element {
  const { state, world } = useSurroundings();
  const flat = state.colourLevel === 0;
  const items = (screen.kept ?? []).map(({ name, laid }): ListItem => {
    const { colour, reflectance } = seeLaid(world.studio, laid);
    const lead: Piece = flat ? { text: '' } : { text: '    ', style: patchStyle(lookOf(reflectance).hex) };
    return {
      key: name,
      lead,
      text: ` ${name}`,
      side: stepWords(colour.step, voiceOf(state.settings)),
    };
  });
  return <ItemList head={[]} items={items} selected={doing.at} />;
}

export function Doings(props: DoingProps): React.JSX.Element {
  switch (props.doing.name) {
    case 'picking':
      return <Picking {...(props as Of<'picking'>)} />;
    case 'pins':
      return <Pins {...(props as Of<'pins'>)} />;
    case 'asking':
      return <Asking {...(props as Of<'asking'>)} />;
    case 'recipes':
      return <RecipeList {...(props as Of<'recipes'>)} />;
    case 'naming':
      return <Naming {...(props as Of<'naming'>)} />;
    case 'kept':
      return <Kept {...(props as Of<'kept'>)} />;
  }
}
