/** Real drills with their pictures, for screens that show them. */
import type { Drill } from '../../src/drills/kinds/index.js';
import { drillScenes } from '../../src/pictures/index.js';
import type { TuiDeps } from '../../src/tui/practice/deps.js';
import { SHIPPED_PICTURES } from '../exercises.js';
import { kindOf, STUDIO } from '../studio.js';
import { SHIPPED } from '../words/answers.js';
import { items } from './fakes.js';

const scenes = drillScenes(STUDIO, SHIPPED_PICTURES);

/** The shipped drills of which something lies in a picture. */
export const PICTURED: readonly Drill[] = SHIPPED.filter((drill) => scenes(drill) !== undefined);

export const drillCalled = (id: string): Drill => {
  const drill = PICTURED.find((one) => one.id === id);
  if (drill === undefined) throw new Error(`no drill with a picture is called ${id}`);
  return drill;
};

/** Ports with one drill in its set, and its picture. */
export const withPicture = (drill: Drill): Partial<TuiDeps> => ({
  startAt: { screen: 'practice' },
  drills: [drill],
  kindOf: (one) => kindOf(one as Drill) as unknown as ReturnType<TuiDeps['kindOf']>,
  sceneOf: (one, answer) => scenes(one as Drill, answer),
  nextSet: () => items([drill.id]),
});
