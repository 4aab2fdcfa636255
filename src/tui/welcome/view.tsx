/** The first two minutes: what this terminal can show, which palette, which value scale. */
import { Text } from 'ink';
import { wrapText } from '../../text/wrap.js';
import { greyRamp } from '../kit/goal-picture.js';
import { innerColumns } from '../kit/layout.js';
import { type Piece, Row, Rows } from '../kit/row.js';
import { useSurroundings } from '../kit/surroundings.js';
import { patchStyle } from '../kit/theme.js';
import type { WelcomeScreen, WelcomeStep } from '../practice/state.js';
import { welcomeOptions } from './options.js';

export const TITLES: Readonly<Record<WelcomeStep, string>> = {
  greeting: 'Welcome to Mudlark',
  colours: 'Welcome, 1 of 3: what this terminal shows',
  palette: 'Welcome, 2 of 3: your paints',
  scale: 'Welcome, 3 of 3: how you count value',
  placing: 'Where to begin',
};

const TEXTS: Readonly<Record<WelcomeStep, string>> = {
  greeting:
    'A painting turns to mud when every darker mixture is also a duller one. Here you practise deciding before you stir: which second paint, how little of it, what it will do to value and to chroma. You choose, lay it down, and see.',
  colours: 'Look at the ten greys and the six hues. Can you tell every one from its neighbour?',
  palette: 'Which box of paints shall the drills keep to? It can be changed in the settings.',
  scale: 'Painters number values in both directions. Which one do you use?',
  placing:
    'Have you painted for a while? Eight decisions, easy and hard ones mixed, find the level to start at; the round ends sooner when it knows. Whatever comes of it, every skill and level can be chosen by hand.',
};

/** Six hues of our own, far apart on the wheel and of middling value. */
const HUES: readonly (readonly [string, string])[] = [
  ['red', '#c0392f'],
  ['orange', '#d07a24'],
  ['yellow', '#d8bc3a'],
  ['green', '#4c8a4a'],
  ['blue', '#2f62a8'],
  ['violet', '#6d4a97'],
];

const CELL = 8;

function Ramp({ columns }: { readonly columns: number }): React.JSX.Element {
  const { state, glyphs } = useSurroundings();
  const greys = greyRamp(columns, glyphs, state.colourLevel);
  const hues = HUES.map(([, hex]): Piece => ({ text: ' '.repeat(CELL), style: patchStyle(hex) }));
  const names = HUES.map(([name]): Piece => ({ text: name.padEnd(CELL), role: 'muted' }));
  return <Rows lines={[greys, greys, [], hues, hues, names, []]} />;
}

export function Welcome({ step, selected }: Omit<WelcomeScreen, 'name'>): React.JSX.Element {
  const { state, world, glyphs } = useSurroundings();
  const columns = Math.min(76, innerColumns(state.size));
  const options = welcomeOptions(step, world);
  if (state.settings.screenReader) {
    const option = `${options[selected]?.label ?? ''}. ${selected + 1} of ${options.length}.`;
    return <Text>{[TEXTS[step], option].join('\n')}</Text>;
  }
  return (
    <>
      <Rows lines={wrapText(TEXTS[step], columns).map((text): Piece[] => [{ text }])} />
      <Row pieces={[{ text: ' ' }]} />
      {step === 'colours' ? <Ramp columns={columns} /> : null}
      {options.map(({ value, label }, index) => (
        <Rows
          key={value}
          lines={wrapText(label, columns - 4).map((text, line): Piece[] => [
            { text: index === selected && line === 0 ? `${glyphs.pointer} ` : '  ', role: 'here' },
            { text: line === 0 ? `${index + 1} ` : '  ', role: 'muted' },
            { text, role: index === selected ? 'selected' : 'plain' },
          ])}
        />
      ))}
    </>
  );
}
