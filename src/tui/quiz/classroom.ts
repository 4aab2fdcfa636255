/** What sitting and room share: the ports, what is fixed for the run, and how their state begins. */
import { findFamily } from '../../drills/families.js';
import { type Drill, kindOf } from '../../drills/kinds/index.js';
import type { DrillCommon, Kind } from '../../drills/types.js';
import { drillScenes } from '../../pictures/scene.js';
import type { Picture } from '../../pictures/types.js';
import type { Handout } from '../../quiz/handout.js';
import { colourLevel } from '../kit/colour-level.js';
import type { Settings, Size, Stage, World } from '../kit/stage.js';

/** From the outside: settings, environment, clock. */
export interface QuizDeps {
  readonly settings: Settings;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly noColourFlag: boolean;
  /** Those that drills are set in. */
  readonly pictures?: readonly Picture[];
  /** Milliseconds since 1970. */
  now(): number;
}

/** What the screens look up. */
export function quizWorld({ studio }: Handout, { env, noColourFlag, pictures }: QuizDeps): World {
  const sceneOf = drillScenes(studio, pictures ?? []);
  return {
    kindOf: (drill) => kindOf(studio, drill as Drill) as unknown as Kind,
    sceneOf: (drill: DrillCommon, answer) => sceneOf(drill as Drill, answer),
    familyName: (id) => findFamily(id)?.name ?? id,
    studio,
    colourLevelFor: (setting) => colourLevel({ env, setting, noColourFlag }),
  };
}

/** The stage that a quiz begins on. */
export const quizStage = ({ settings }: QuizDeps, world: World, size: Size): Stage => ({
  size,
  settings,
  colourLevel: world.colourLevelFor(settings.colour),
  cautioned: [],
});
