/** Every screen of practice beside the drill and its result, as states: for tests that look at all of them. */

import { boxStudio, withBoxes } from '../../src/paints/index.js';
import { pageColumns } from '../../src/tui/kit/layout.js';
import type { AnyProgram } from '../../src/tui/kit/shell.js';
import type { Stage } from '../../src/tui/kit/stage.js';
import type { TuiDeps } from '../../src/tui/practice/deps.js';
import { STUDIO } from '../studio.js';
import { Bench, type FakeDeps, fakeDeps, items, mixingBench, OWN_BOX } from './fakes.js';
import { practice } from './routes.js';

export interface Stand {
  readonly state: Stage;
  readonly program: AnyProgram;
}

/** A screen: what the ports are, and how to get there. */
type Way = readonly [deps: Partial<TuiDeps>, go: (bench: Bench) => Bench];

const own = { studio: withBoxes(STUDIO, [OWN_BOX]) } as const;
/** In the place of a shipped one, so that it is the one in use. */
const used = { ...OWN_BOX, id: 'six' };
const painted = {
  ...practice,
  studio: boxStudio(withBoxes(STUDIO, [used]), used),
  readings: { keep: () => [] },
} as const;
const READ = ['enter', 'd', ...'3.5', 'down', ...'10.5'];
/** More than a small screen holds. */
const TOLD = [
  'The wash alone, step: yours 3.5, predicted 3.3.',
  ...Array.from(
    { length: 9 },
    (_, at) =>
      `Your the old tube from the harbours ${at} is about 1.4 times as strong as the library’s, 0.71 to 2.7: too wide to go by yet.`,
  ),
  'To have the box reckon with these strengths: mudlark dried correct',
];
/** To the last box of the list. */
const lastBox = STUDIO.palettes.map(() => 'down');
const atSienna = (bench: Bench): Bench =>
  bench
    .menu('settings')
    .menu('palette')
    .keys(
      ...lastBox,
      'e',
      ...STUDIO.paints
        .slice(
          0,
          STUDIO.paints.findIndex(({ id }) => id === 'burnt-sienna'),
        )
        .map(() => 'down'),
    );
const first = { firstRun: true, placingIsOpen: () => true } as const;
const confirmed =
  (times: number) =>
  (bench: Bench): Bench =>
    bench.keys(...new Array<string>(times).fill('enter'));

const WAYS: Readonly<Record<string, Way>> = {
  home: [{ placingIsOpen: () => true }, (bench) => bench],
  families: [{}, (bench) => bench.menu('families').keys('down', 'right', 'right')],
  settings: [{}, (bench) => bench.menu('settings')],
  boxes: [own, (bench) => bench.menu('settings').menu('palette').keys('down')],
  'own box': [
    own,
    (bench) =>
      bench
        .menu('settings')
        .menu('palette')
        .keys(...lastBox),
  ],
  'paints of an own box': [
    own,
    (bench) =>
      bench
        .menu('settings')
        .menu('palette')
        .keys(...lastBox, 'e', 'page-down', 'enter'),
  ],
  'name of a paint': [own, (bench) => atSienna(bench).keys('n')],
  'strength of a paint': [own, (bench) => atSienna(bench).keys('s')],
  'strength of a paint, refused': [
    own,
    (bench) =>
      atSienna(bench).keys('s').send({
        type: 'notice',
        text: "the strength of burnt-sienna must be 0.25 to 4 times the library's",
      }),
  ],
  'name of a box': [
    own,
    (bench) =>
      bench
        .menu('settings')
        .menu('palette')
        .keys(...lastBox, 'r'),
  ],
  progress: [
    {},
    (bench) =>
      bench
        .menu('progress')
        .send({
          type: 'progress-ready',
          text: bench.deps.progressText(pageColumns({ columns: 60, rows: 20 })),
        })
        .keys('down'),
  ],
  help: [{}, (bench) => bench.menu('help')],
  'help, scrolled': [{}, (bench) => bench.menu('help').keys('page-down', 'down')],
  greeting: [first, confirmed(0)],
  colours: [first, confirmed(1)],
  palette: [first, confirmed(2)],
  scale: [first, confirmed(3)],
  'worked example': [first, confirmed(4)],
  'result of the worked example': [first, confirmed(5)],
  'placing round': [first, confirmed(6)],
  'drill of nine rows': [
    { ...practice, nextSet: () => items(['bare']) },
    (bench) => bench.keys('tab', 'tab'),
  ],
  'result without colours': [{ ...practice, nextSet: () => items(['bare']) }, (bench) => bench.keys('enter')],
  'keys of a drill': [practice, (bench) => bench.keys('?')],
  'scene of a drill': [practice, (bench) => bench.keys('s')],
  'leaving a set': [practice, (bench) => bench.keys('escape')],
  'caution of a paint': [practice, (bench) => bench.keys('3', 'enter')],
  result: [practice, (bench) => bench.keys('enter')],
  'result with the plane': [practice, (bench) => bench.keys('enter', 'p')],
  'keys of a result': [practice, (bench) => bench.keys('enter', '?')],
  why: [practice, (bench) => bench.keys('enter', 'w')],
  'painting it': [painted, (bench) => bench.keys(...READ)],
  'painting yours': [painted, (bench) => bench.keys(...READ, 'right')],
  'painting it, keys': [painted, (bench) => bench.keys(...READ, '?')],
  'painting it, kept': [
    painted,
    (bench) =>
      bench
        .keys(...READ, 'enter')
        .send({ type: 'reading-kept', told: TOLD })
        .keys('down'),
  ],
  'painting it from a shipped box': [
    { ...practice, readings: painted.readings },
    (bench) => bench.keys('enter', 'd'),
  ],
  'painting it, nothing kept': [practice, (bench) => bench.keys('enter', 'd')],
  summary: [
    { ...practice, nextSet: () => items(['one', 'two']) },
    (bench) => {
      bench.keys('enter', 'n', 'enter', 'n');
      const summary = bench.deps.summarise(bench.state.set?.answers ?? []);
      return summary === undefined ? bench : bench.send({ type: 'summary-ready', summary });
    },
  ],
};

/** A paint in each slot. */
const FOUR = ['down', 'down', 'enter', ...'pb29', 'enter', 'down', 'enter', ...'py42', 'enter'];

/** The mixing bench is a program of its own. */
const BENCHES: Readonly<Record<string, readonly string[]>> = {
  bench: ['down', 'right'],
  'bench with the path': ['down', 'p'],
  'bench with the path of water': ['down', 'down', 'down', 'down', 'down', 'p'],
  'bench in three ways': ['down', 'w'],
  'bench in a glaze': ['down', 'down', 'down', 'down', 'right', 'up', 'up', 'up', 's'],
  'bench of four paints': [...FOUR],
  'keys of the bench': [...FOUR, 's', 'n', ...'my dark', 'enter', '?'],
  'bench picker': ['enter', 'down'],
  'bench picker, searched': ['enter', ...'red'],
  'bench, set aside': [
    ...FOUR,
    's',
    'up',
    'right',
    's',
    'right',
    's',
    'right',
    's',
    'right',
    's',
    'right',
    's',
    'v',
  ],
  'bench, recipes asked': ['r', 'down'],
  'bench, recipes': ['r', 'enter'],
  'bench, a name': ['n', ...'harbour shade'],
  'bench, kept': ['n', ...'harbour shade', 'enter', 'right', 'n', ...'tar', 'enter', 'l'],
};

export const STANDS = [...Object.keys(WAYS), ...Object.keys(BENCHES)];

function standing(name: string, deps: FakeDeps): Stand {
  const keys = BENCHES[name];
  if (keys !== undefined) return mixingBench(undefined, deps).keys(...keys);
  const [, go] = WAYS[name] ?? [{}, (bench: Bench) => bench];
  return go(new Bench(deps));
}

/** The state of a screen in a form; with a standing note, as where nothing can be saved. */
export function standAt(name: string, env: TuiDeps['env'], isSpoken: boolean): Stand {
  const [deps] = WAYS[name] ?? [{}];
  const { settings } = fakeDeps();
  const savingNote = 'Nothing is saved: the disk is full.';
  const all = fakeDeps({ ...deps, env, savingNote, settings: { ...settings, screenReader: isSpoken } });
  const { state, program } = standing(name, all);
  return { program, state: { ...state, savingNote } };
}
