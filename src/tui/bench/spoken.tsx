/** The bench read aloud: the rows and the colour, or the list that is open, in sentences. */
import { Text } from 'ink';
import { seeLaid, WAYS } from '../../washes/index.js';
import { spokenLook } from '../../words/look.js';
import type { Voice } from '../../words/voice.js';
import { voiceOf } from '../kit/look.js';
import type { World } from '../kit/stage.js';
import { useSurroundings } from '../kit/surroundings.js';
import { broughtAs, trail } from './mixture.js';
import { benchRow, paintLook, rowsInSight } from './rows.js';
import { type BenchState, type Doing, pickable } from './state.js';
import {
  AIM_WORDS,
  darkerWords,
  figures,
  hasTwo,
  mixtureWords,
  pathCaption,
  reachWords,
  recipeWords,
  spokenMixture,
  WAY_NAMES,
} from './texts.js';

const SIGHT = { pointer: '', less: '', more: '', flat: true } as const;

function rowTexts(screen: BenchState, world: World): string[] {
  return rowsInSight(screen).map((row) => {
    const words = benchRow(screen, world, row, SIGHT).slice(1);
    const text = words.map((piece) => piece.text).join('');
    return `${row === screen.focus ? 'Now at ' : ''}${text.replace(/\s+/g, ' ').trim()}`;
  });
}

function panelTexts(screen: BenchState, world: World, voice: Voice): string[] {
  const { mixture, panel, focus } = screen;
  if (mixture.slots[0]?.pigment === undefined) return ['No paint on the bench.'];
  const own = `The mixture is ${spokenMixture(world.studio, mixture, voice)}.`;
  if (panel === 'path') {
    const path = trail(world.studio, mixture, focus).map((colour) => figures(colour, voice));
    const caption = pathCaption(world.studio, screen);
    return [
      own,
      ...(path.length === 0 || caption === '' ? [] : [`Step by step ${caption}: ${path.join('; ')}.`]),
    ];
  }
  if (panel !== 'ways' || !hasTwo(mixture)) return [own];
  return WAYS.map(
    (way) =>
      `${WAY_NAMES[way]}: ${spokenMixture(world.studio, broughtAs(world.studio, mixture, way), voice)}.`,
  );
}

function doingTexts(screen: BenchState, doing: Doing, world: World, voice: Voice): string[] {
  const { studio } = world;
  switch (doing.name) {
    case 'picking': {
      const order = pickable(world, screen.settings.palette, doing.text);
      const search = doing.text === '' ? [] : [`Search: ${doing.text}.`];
      if (order.length === 0) return [...search, 'No paint is called that.'];
      const paint = paintLook(world, order[doing.at]);
      const name =
        paint === undefined
          ? 'no paint'
          : `${paint.pigment.name}, ${spokenLook(paint.look, voice)}, ${paint.pigment.ci.join(' and ')}`;
      return [...search, `Pick: ${name}. ${doing.at + 1} of ${order.length}.`];
    }
    case 'pins': {
      const pin = screen.pins[doing.at];
      return pin === undefined
        ? []
        : [
            `Set aside, ${doing.at + 1} of ${screen.pins.length}: ${spokenMixture(studio, pin, voice)}.`,
            ...mixtureWords(studio, pin),
          ];
    }
    case 'asking':
      return [
        `${doing.row === 0 ? 'Now at ' : ''}aim: ${AIM_WORDS[doing.aim]}`,
        `${doing.row === 1 ? 'Now at ' : ''}value: ${darkerWords(doing.darker)}`,
      ];
    case 'recipes': {
      const recipe = doing.found?.recipes[doing.at];
      if (recipe === undefined) return ['Looking for recipes.'];
      const reach = reachWords(doing, voice);
      return [
        ...(reach === '' ? [] : [reach]),
        `Recipe ${doing.at + 1} of ${doing.found?.recipes.length}: ${figures(seeLaid(studio, recipe.laid).colour, voice)}.`,
        ...recipeWords(studio, doing, doing.at, voice),
      ];
    }
    case 'naming':
      return [
        `Name: ${doing.text === '' ? 'nothing typed yet' : doing.text}`,
        ...mixtureWords(studio, screen.mixture),
      ];
    case 'kept': {
      const one = screen.kept?.[doing.at];
      return one === undefined
        ? ['Nothing is kept.']
        : [
            `Kept, ${doing.at + 1} of ${screen.kept?.length}: ${one.name}, ${figures(seeLaid(studio, one.laid).colour, voice)}.`,
          ];
    }
  }
}

export function SpokenBench({ screen }: { readonly screen: BenchState }): React.JSX.Element {
  const { state, world } = useSurroundings();
  const voice = voiceOf(state.settings);
  const lines =
    screen.doing === undefined
      ? [...rowTexts(screen, world), ...panelTexts(screen, world, voice)]
      : doingTexts(screen, screen.doing, world, voice);
  return <Text>{lines.join('\n')}</Text>;
}
