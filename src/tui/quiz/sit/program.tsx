/** Runs a sitting. Loads Ink: check the terminal first (terminal-check.ts). */
import { isOurs } from '../../../errors.js';
import type { Sitting } from '../../../quiz/answers.js';
import type { Handout } from '../../../quiz/handout.js';
import { createGrader } from '../../../quiz/marking.js';
import { questionOrder } from '../../../quiz/order.js';
import { glyphsFor } from '../../kit/glyphs.js';
import type { Program } from '../../kit/program.js';
import { runPrograms, terminalSize } from '../../kit/shell.js';
import type { Size } from '../../kit/stage.js';
import { type QuizDeps, quizStage, quizWorld } from '../classroom.js';
import { sitKeys } from './keys.js';
import type { SitState, SitWorld } from './state.js';
import { updateSitting } from './update.js';
import { sitView } from './view.js';

/** A sitting to be put on the screen. */
export interface SitRequest {
  readonly deps: QuizDeps;
  readonly handout: Handout;
  readonly sitting: Sitting;
  readonly isResumed: boolean;
  /** A sitting that the teacher has released: only to be read, results first. */
  readonly released?: { readonly name: string; readonly caution?: string };
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
export function sitProgram(request: SitRequest, size: Size): Program<SitState> {
  const { deps, handout, sitting, isResumed, released } = request;
  const world: SitWorld = {
    handout,
    // A sheet of paper has the order of the handout.
    order: sitting.source === 'paper' ? [...handout.questions.keys()] : questionOrder(handout, sitting.name),
    name: released?.name ?? sitting.name,
    grader: createGrader(handout),
    world: quizWorld(handout, deps),
  };
  let saved = sitting;
  return {
    name: 'sitting',
    world: world.world,
    initial: {
      ...quizStage(deps, world.world, size),
      screen: released === undefined ? { name: 'begin' } : { name: 'done', selected: 0 },
      ...(released?.caution === undefined ? {} : { notice: released.caution }),
      sitting,
      isResumed,
      now: deps.now(),
    },
    glyphs: glyphsFor(deps.env),
    now: () => deps.now(),
    update: (state, action) => updateSitting(world, state, action),
    keys: (state) => sitKeys(world, state),
    view: (state, glyphs) => sitView(world, state, glyphs),
    // What cannot be saved is said until it can: the next change tries again.
    keep: (state) => {
      const { savingNote: _before, ...rest } = state;
      if (rest.sitting === saved) return rest;
      try {
        request.save(rest.sitting);
      } catch (fault) {
        if (!isOurs(fault)) throw fault;
        return { ...rest, savingNote: fault.message };
      }
      saved = rest.sitting;
      return rest;
    },
    ticks: ({ screen }) => handout.rules.timePerQuestionSeconds !== undefined && screen.name === 'question',
  };
}

export async function runSit(request: SitRequest): Promise<SitEnding> {
  const last = (await runPrograms(sitProgram(request, terminalSize()))) as SitState;
  const { savingNote: fault, sitting, ending } = last;
  const code = typeof ending === 'number' ? ending : 1;
  return {
    code: fault !== undefined && code === 0 ? 1 : code,
    sitting,
    ...(fault === undefined ? {} : { fault }),
  };
}
