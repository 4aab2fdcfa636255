/** Runs a sitting. Loads Ink: check the terminal first (terminal-check.ts). */
import type { Sitting } from '../../quiz/answers.js';
import type { Handout } from '../../quiz/handout.js';
import { createGrader } from '../../quiz/marking.js';
import { questionOrder } from '../../quiz/order.js';
import { type QuizProgram, runQuizProgram } from './quiz-app.js';
import type { SitState, SitWorld } from './sit-state.js';
import { createSitReducer } from './sit-update.js';
import { sitView } from './sit-view.js';
import { type QuizDeps, quizWorld } from './stage.js';

/** A sitting to be put on the screen. */
export interface SitRequest {
  readonly deps: QuizDeps;
  readonly handout: Handout;
  readonly sitting: Sitting;
  readonly isResumed: boolean;
  /** A sitting that the teacher has released: only to be read, results first. */
  readonly released?: { readonly caution?: string };
  /** Must have the sitting on disk when it returns. */
  save(sitting: Sitting): void;
}

/** How a sitting ended. */
export interface SitEnding {
  /** 0 left or handed in, 1 not saved, 130 interrupted. */
  readonly code: number;
  readonly sitting: Sitting;
  /** What could not be saved. */
  readonly fault?: string;
}

/** A sitting as a program of the screens. */
export function sitProgram(request: SitRequest, size: SitState['size']): QuizProgram<SitState> {
  const { deps, handout, sitting, isResumed, released } = request;
  const world: SitWorld = {
    handout,
    order: questionOrder(handout, sitting.name),
    grader: createGrader(handout),
    world: quizWorld(handout, deps),
  };
  let saved = sitting;
  return {
    deps,
    world: world.world,
    initial: {
      screen: released === undefined ? { name: 'begin' } : { name: 'done', selected: 0 },
      ...(released?.caution === undefined ? {} : { notice: released.caution }),
      sitting,
      isResumed,
      now: deps.now(),
      size,
      settings: deps.settings,
      colourLevel: world.world.colourLevelFor(deps.settings.colour),
    },
    reduce: createSitReducer(world),
    view: (state, glyphs) => sitView(world, state, glyphs),
    save: ({ sitting: now }) => {
      if (now === saved) return;
      request.save(now);
      saved = now;
    },
    ticks: ({ screen }) => handout.rules.timePerQuestionSeconds !== undefined && screen.name === 'question',
  };
}

export async function runSit(request: SitRequest): Promise<SitEnding> {
  const size = { columns: process.stdout.columns || 80, rows: process.stdout.rows || 24 };
  const last = await runQuizProgram(sitProgram(request, size));
  const { fault } = last;
  return {
    code: fault !== undefined && last.ending === 0 ? 1 : (last.ending ?? 1),
    sitting: last.sitting,
    ...(fault === undefined ? {} : { fault }),
  };
}
