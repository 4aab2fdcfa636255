/** The screens of a photographed painting, one after another, and what does not fit of them. */
import { findFamily } from '../../src/drills/families.js';
import { adviceOf, compared, comparisonTold, paintingTold } from '../../src/painting/index.js';
import { findPalette } from '../../src/paints/index.js';
import { colourLevel } from '../../src/tui/kit/colour-level.js';
import type { Size } from '../../src/tui/kit/stage.js';
import { photographProgram } from '../../src/tui/photograph/program.js';
import type { PhotographState, RecipesFound } from '../../src/tui/photograph/state.js';
import { sayAll } from '../../src/words/tell.js';
import { kindOf, STUDIO } from '../studio.js';
import { frameFaults, keyFaults } from '../tui/fits.js';
import type { Stills } from '../tui/still.js';
import type { Form } from '../tui/walk.js';
import { demoReading } from './readings.js';

const TWELVE = findPalette(STUDIO, 'twelve')?.pigments ?? [];

/** One painting, or before and after, on the screen. */
export function programOf({ env, isSpoken = false }: Form, both: boolean) {
  const [before, after] = [demoReading('harbour-roofs', 'before'), demoReading('harbour-roofs', 'after')];
  const voice = { scale: 'paper-first', spoken: isSpoken } as const;
  const told = both
    ? sayAll(comparisonTold(before, after, compared(before, after)), voice)
    : paintingTold(STUDIO, before, adviceOf(STUDIO, before), voice);
  return photographProgram(
    {
      world: {
        studio: STUDIO,
        kindOf,
        familyName: (id) => findFamily(id)?.name ?? id,
        sceneOf: () => undefined,
        colourLevelFor: (setting) => colourLevel({ env, setting }),
      },
      settings: { valueScale: 'paper-first', palette: 'twelve', screenReader: isSpoken, colour: 'auto' },
      env,
      paintings: [
        { name: 'harbour-before.jpg', reading: before },
        ...(both ? [{ name: 'harbour-after.jpg', reading: after }] : []),
      ],
      told,
      tray: { paints: TWELVE, others: [] },
      now: () => 0,
    },
    { columns: 80, rows: 24 },
  );
}

type PhotographProgram = ReturnType<typeof programOf>;

/** The state after keys; what is asked of the outside is waited for. */
export async function pressed(
  program: PhotographProgram,
  from: PhotographState,
  keys: readonly string[],
): Promise<PhotographState> {
  let state = from;
  for (const key of keys) {
    const { effects = [], ...next } = program.update(state, { type: 'key', key, at: 0 });
    state = next;
    for (const effect of effects)
      await program.perform?.(effect, state, (action: RecipesFound) => {
        state = program.update(state, action);
      });
  }
  return state;
}

/** Ways to the screens that there are. */
const WAYS: Readonly<Record<string, readonly string[]>> = {
  picture: [],
  'another mass': ['right', 'right'],
  'in grey': ['g'],
  'two values': ['v'],
  'three values': ['v', 'v'],
  'five values': ['v', 'v', 'v'],
  told: ['enter'],
  'told to its end': ['enter', 'end'],
  asking: ['r', 'right', 'down', 'right'],
  recipes: ['r', 'enter'],
  'third recipe': ['r', 'enter', 'down', 'down'],
  'no wash like it': ['r', 'right', 'enter'],
};

/** What does not fit, with where. */
export async function faultsOf(sizes: readonly Size[], form: Form, stills: Stills): Promise<string[]> {
  const faults: string[] = [];
  for (const both of [false, true]) {
    const program = programOf(form, both);
    const ways = both ? { ...WAYS, after: ['b'] } : WAYS;
    for (const [name, keys] of Object.entries(ways)) {
      const stood = await pressed(program, program.initial, keys);
      for (const size of sizes) {
        const state = { ...stood, size };
        const still = stills.of(state, program);
        faults.push(
          ...[
            ...frameFaults(still, state, form.env),
            ...(form.isSpoken === true
              ? []
              : keyFaults({ program, stills, env: form.env }, state, still.lines)),
          ].map(
            (fault) =>
              `${name}${both ? ', of two' : ''} at ${size.columns}x${size.rows}, ${form.name}: ${fault}`,
          ),
        );
      }
    }
  }
  return faults;
}
