/** Runs a photographed painting on the screen. Loads Ink: check the terminal first (terminal-check.ts). */
import { setImmediate } from 'node:timers/promises';
import { InputError } from '../../errors.js';
import { recipesOfMass, type Tray } from '../../painting/index.js';
import { glyphsFor } from '../kit/glyphs.js';
import { keysView } from '../kit/panels.js';
import type { Program, View } from '../kit/program.js';
import { runPrograms, terminalSize } from '../kit/shell.js';
import type { Settings, Size, World } from '../kit/stage.js';
import { photographKeys } from './keys.js';
import {
  type PhotographState,
  type PhotographWorld,
  paintingIn,
  type RecipesAsked,
  type RecipesFound,
} from './state.js';
import { updatePhotograph } from './update.js';
import { Photograph } from './view.js';
import { lookWords, massTitle } from './words.js';

/** A painting to look at. */
export interface PhotographRequest extends Omit<PhotographWorld, 'hasTray'> {
  readonly world: World;
  readonly settings: Settings;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Paints that recipes may take; absent where none are known. */
  readonly tray?: Tray;
  /** Milliseconds since 1970. */
  now(): number;
}

const TITLES = {
  told: 'What the painting says',
  asking: 'From here to where?',
  recipes: 'Recipes from here',
} as const;

function photographView(state: PhotographState, own: PhotographWorld): View {
  const { overlay, looking, settings } = state;
  if (overlay === 'keys') {
    const { overlay: _closed, ...behind } = state;
    return keysView(photographKeys(own, behind));
  }
  const body = <Photograph screen={state} world={own} />;
  const { name } = paintingIn(own, state);
  const look = lookWords(own, state);
  const title =
    looking === undefined
      ? [`Painting: ${name}${look === '' ? '' : `, ${look}`}`, `Painting${look === '' ? '' : `: ${look}`}`]
      : TITLES[looking.name];
  const side = looking?.name === 'told' ? '' : massTitle(own, state);
  return settings.screenReader ? { title, body } : { title, side, body };
}

function carriedOut(asked: RecipesAsked, { world, paintings, tray }: PhotographRequest): RecipesFound {
  const { painting, mass, aim, darker } = asked;
  const reading = paintings[painting]?.reading;
  if (reading === undefined || tray === undefined) return { type: 'found', asked };
  try {
    return {
      type: 'found',
      asked,
      found: recipesOfMass(world.studio, reading, mass, { aim, darker }, tray),
    };
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    return { type: 'found', asked, told: fault.message };
  }
}

export function photographProgram(
  request: PhotographRequest,
  size: Size,
): Program<PhotographState, RecipesFound, RecipesAsked> {
  const { world, settings, paintings, told, tray } = request;
  const own: PhotographWorld = { paintings, told, hasTray: tray !== undefined };
  return {
    name: 'photograph',
    world,
    initial: {
      size,
      settings,
      colourLevel: world.colourLevelFor(settings.colour),
      cautioned: [],
      painting: 0,
      mass: 0,
      look: 'colour',
    },
    glyphs: glyphsFor(request.env),
    now: () => request.now(),
    update: (state, action) => updatePhotograph(state, own, action),
    keys: (state) => photographKeys(own, state),
    view: (state) => photographView(state, own),
    perform: async (effect, _state, dispatch) => {
      // The screen that says that it is looked for is drawn first.
      await setImmediate();
      dispatch(carriedOut(effect, request));
    },
  };
}

/** @returns the exit code: 0 after leaving, 130 after Ctrl+C */
export async function runPhotograph(request: PhotographRequest): Promise<number> {
  const { ending } = await runPrograms(photographProgram(request, terminalSize()));
  return typeof ending === 'number' ? ending : 0;
}
