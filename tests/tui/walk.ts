/** Walks drills over the screens of practice at every size and in every form, and gathers what does not fit. */
import { firstAnswer } from '../../src/drills/answers.js';
import type { Drill } from '../../src/drills/kinds/index.js';
import { type GENERATED_FAMILIES, generateDrill } from '../../src/drills/make/index.js';
import type { Answer } from '../../src/drills/types.js';
import type { Answered } from '../../src/practice/index.js';
import type { Size } from '../../src/tui/kit/stage.js';
import type { DrillScreen, ResultScreen } from '../../src/tui/practice/state.js';
import { sayAll } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { kindOf, STUDIO } from '../studio.js';
import { SHIPPED } from '../words/answers.js';
import { Bench, fakeDeps } from './fakes.js';
import { frameFaults, keyFaults } from './fits.js';
import { ASCII, PLAIN } from './inside.js';
import { drillFaults, resultFaults } from './practice-fits.js';
import { FULL } from './routes.js';
import { withPicture } from './scenes.js';
import { STANDS, standAt } from './states.js';
import type { Stills } from './still.js';

export const SMALL: Size = { columns: 60, rows: 20 };
export const FIVE: readonly Size[] = [
  SMALL,
  { columns: 80, rows: 24 },
  { columns: 100, rows: 30 },
  { columns: 120, rows: 40 },
  { columns: 200, rows: 60 },
];

/** A form of the screens: what the terminal can, and whether it is read aloud. */
export interface Form {
  readonly name: string;
  readonly env: Readonly<Record<string, string>>;
  readonly isSpoken?: boolean;
}

export const COLOURED: Form = { name: 'all colours', env: FULL };
export const OTHER_FORMS: readonly Form[] = [
  { name: 'no colours', env: PLAIN },
  { name: 'ASCII', env: ASCII },
  { name: 'read aloud', env: FULL, isSpoken: true },
];

export const KINDS = [...new Set(SHIPPED.map(({ kind }) => kind))];

/** Characters that the screen of a drill has to find room for. */
function burdenOf(drill: Drill): number {
  const kind = kindOf(drill);
  const options = kind
    .fields(drill)
    .flatMap(({ label, options }) => [label, ...options.map((one) => one.label)]);
  return [drill.scene, drill.ask, ...sayAll(kind.goalLines(drill), WRITTEN), ...options].join(' ').length;
}

/** The written drills of a kind with the most to show, the fullest first. */
export const fullest = (kind: Drill['kind'], count: number): Drill[] =>
  SHIPPED.filter((drill) => drill.kind === kind)
    .map((drill) => ({ drill, burden: burdenOf(drill) }))
    .sort((one, other) => other.burden - one.burden)
    .slice(0, count)
    .map(({ drill }) => drill);

/** Drills made up for a family, one a level. */
export function madeDrills(levels: readonly number[], family: (typeof GENERATED_FAMILIES)[number]): Drill[] {
  const palette = STUDIO.palettes.find(({ id }) => id === 'twelve')?.pigments ?? [];
  return levels.map((level) => generateDrill(STUDIO, { seed: 11 + level, family, level, palette }));
}

/** The result of an answer, with all that a result may have to say. */
export function resultOf({ world }: Bench, drill: Drill, answer: Answer, hints: 0 | 1 = 0): ResultScreen {
  const grade = world.kindOf(drill).grade(drill, answer);
  const answered: Answered = {
    drill,
    answer,
    grade,
    mark: grade.mark,
    hints,
    attempt: 1,
    feedback: 'each',
    why: '',
    shownAt: 0,
    answeredAt: 0,
    kept: { saved: true, compared: 'Value 0.3 steps off now; last time it was 0.2.' },
  };
  return {
    name: 'result',
    answered,
    place: 0,
    worked: false,
    top: 0,
    from: 'set',
  };
}

/** What the first drill of a set says with a box of one's own. */
const LEFT_OUT =
  'With the studio box 209 of 260 written drills are left out: 201 need other paints, 8 do not hold at its strengths.';

/** What does not fit of a drill and its result, with where. */
export function faultsAt(
  drill: Drill,
  sizes: readonly Size[],
  { name, env, isSpoken = false }: Form,
  stills: Stills,
): string[] {
  const { settings } = fakeDeps();
  const deps = fakeDeps({ ...withPicture(drill), env, settings: { ...settings, screenReader: isSpoken } });
  const bench = new Bench(deps);
  const { program, world, drill: first } = bench;
  return sizes.flatMap((size) => {
    const sight = { state: { ...bench.state, size }, program, world, stills, env };
    const screens: DrillScreen[] = [
      ...first.fields.map((_, focus): DrillScreen => ({ ...first, focus })),
      ...(drill.hint === undefined ? [] : [{ ...first, hint: 'shown' as const }]),
      { ...first, message: LEFT_OUT },
    ];
    const results = [
      resultOf(bench, drill, firstAnswer(first.fields), 1),
      resultOf(bench, drill, world.kindOf(drill).best(drill)),
    ];
    const where = `${drill.kind} ${drill.id} at ${size.columns}x${size.rows}, ${name}`;
    return [
      ...screens.flatMap((screen) =>
        drillFaults(sight, screen).map(
          (fault) => `${where}, row ${screen.focus}${screen.hint === 'shown' ? ', hint' : ''}: ${fault}`,
        ),
      ),
      ...results.flatMap((screen) =>
        resultFaults(sight, screen).map((fault) => `${where}, result: ${fault}`),
      ),
    ];
  });
}

/** What does not fit of the other screens, with where. */
export function faultsElsewhere(
  sizes: readonly Size[],
  { name, env, isSpoken = false }: Form,
  stills: Stills,
): string[] {
  return STANDS.flatMap((stand) => {
    const { state: stood, program } = standAt(stand, env, isSpoken);
    return sizes.flatMap((size) => {
      const state = { ...stood, size };
      const still = stills.of(state, program);
      return [
        ...frameFaults(still, state, env),
        ...(isSpoken ? [] : keyFaults({ program, stills, env }, state, still.lines)),
        ...(state.savingNote === undefined || still.text.includes('Nothing is saved')
          ? []
          : ['not said that nothing is saved']),
      ].map((fault) => `${stand} at ${size.columns}x${size.rows}, ${name}: ${fault}`);
    });
  });
}
