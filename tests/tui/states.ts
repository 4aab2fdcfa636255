/** Every screen of practice beside the drill and its result, as states: for tests that look at all of them. */

import { withBoxes } from '../../src/paints/index.js';
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
/** To the last box of the list. */
const lastBox = STUDIO.palettes.map(() => 'down');
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
  progress: [
    {},
    (bench) =>
      bench
        .menu('progress')
        .send({ type: 'progress-ready', text: bench.deps.progressText(58) })
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
  summary: [
    { ...practice, nextSet: () => items(['one', 'two']) },
    (bench) => {
      bench.keys('enter', 'n', 'enter', 'n');
      const summary = bench.deps.summarise(bench.state.set?.answers ?? []);
      return summary === undefined ? bench : bench.send({ type: 'summary-ready', summary });
    },
  ],
};

/** The mixing bench is a program of its own. */
const BENCHES: Readonly<Record<string, readonly string[]>> = {
  bench: ['down', 'right'],
  'bench picker': ['enter', 'down'],
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
