/** What the quiz screens share with practice: a drill and its result are drawn by the same components, from the same kind of state. */
import { findFamily } from '../../drills/families.js';
import { type Drill, kindOf } from '../../drills/kinds/index.js';
import type { Answer, DrillCommon, Field, Grade, Kind } from '../../drills/types.js';
import { drillScenes } from '../../pictures/scene.js';
import type { Picture } from '../../pictures/types.js';
import type { Handout } from '../../quiz/handout.js';
import { type ColourLevel, colourLevel } from '../kit/colour-level.js';
import type { Settings } from '../kit/deps.js';
import type { DrillScreen, ResultScreen, Screen, Size, State, World } from '../kit/state.js';

/** What every quiz screen's state holds. */
export interface QuizState {
  readonly size: Size;
  readonly settings: Settings;
  readonly colourLevel: ColourLevel;
  /** One line at the foot, until the next key. */
  readonly notice?: string;
  /** Shown as long as it holds: what could not be saved. */
  readonly fault?: string;
  /** Set when the screens are to close: the exit code. */
  readonly ending?: number;
}

/** What comes to a quiz screen. */
export type QuizAction =
  | { readonly type: 'key'; readonly key: string; readonly at: number }
  | { readonly type: 'resize'; readonly size: Size }
  | { readonly type: 'tick'; readonly at: number };

/** From the outside: settings, environment, clock. */
export interface QuizDeps {
  readonly version: string;
  readonly settings: Settings;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly noColourFlag: boolean;
  /** Those that drills are set in. */
  readonly pictures?: readonly Picture[];
  /** Milliseconds since 1970. */
  now(): number;
}

export const INTERRUPTED = 130;

/** What the practice components look up. */
export function quizWorld({ questions, studio }: Handout, { env, noColourFlag, pictures }: QuizDeps): World {
  const sceneOf = drillScenes(studio, pictures ?? []);
  return {
    drills: new Map(questions.map(({ drill }) => [drill.id, drill as DrillCommon])),
    kindOf: (drill) => kindOf(studio, drill as Drill) as unknown as Kind,
    families: [],
    placingIsOpen: () => false,
    sceneOf: (drill, answer) => sceneOf(drill as Drill, answer),
    familyName: (id) => findFamily(id)?.name ?? id,
    studio,
    colourLevelFor: (setting) => colourLevel({ env, setting, noColourFlag }),
  };
}

/** A state for the practice components. */
export function practiceState(state: QuizState, screen: Screen): State {
  const { size, settings, colourLevel: level, notice, fault } = state;
  return {
    screen,
    size,
    settings,
    colourLevel: level,
    cautioned: [],
    answered: 0,
    unsaved: 0,
    effects: [],
    nextEffectId: 1,
    ...(notice === undefined ? {} : { notice }),
    ...(fault === undefined ? {} : { savingNote: fault }),
  };
}

/** A question as the drill screen takes it. */
export function questionScreen(
  drill: DrillCommon,
  fields: readonly Field[],
  { answer, focus, hints, message }: { answer: Answer; focus: number; hints: boolean; message?: string },
): DrillScreen {
  return {
    name: 'drill',
    item: { drillId: drill.id, feedback: 'end', why: '' },
    drill,
    fields,
    answer,
    focus,
    hint: hints ? 'shown' : 'hidden',
    attempt: 1,
    place: 0,
    shownAt: 0,
    worked: false,
    laying: false,
    ...(message === undefined ? {} : { message }),
  };
}

/** A graded answer as the result screen takes it. */
export function gradedScreen(drill: DrillCommon, answer: Answer, grade: Grade, top: number): ResultScreen {
  return {
    name: 'result',
    attempt: {
      entry: {
        drill,
        answer,
        grade,
        mark: grade.mark,
        hints: 0,
        attempt: 1,
        feedback: 'end',
        why: '',
        shownAt: 0,
        answeredAt: 0,
      },
      saved: true,
    },
    place: 0,
    worked: false,
    top,
    from: 'set',
  };
}

/** "1:05". */
export function clockText(seconds: number): string {
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
