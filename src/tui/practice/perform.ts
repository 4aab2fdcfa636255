/** Carrying out what practice asks for. A fault of ours becomes one line on the screen and practice goes on; any other goes through. */
import { isOurs } from '../../errors.js';
import { type Answered, type Kept, sessionMark } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { pageColumns } from '../kit/layout.js';
import { voiceOf } from '../kit/look.js';
import type { TuiDeps } from './deps.js';
import type { Action, DrillScreen, Effect, PracticeWorld, State } from './state.js';

type Dispatch = (action: Action) => void;

/** The line of a fault that a person can do something about. @throws any other fault */
function lineOf(fault: unknown): string {
  if (!isOurs(fault)) throw fault;
  return cleanText(fault.message, 160);
}

/** Grades the answer and hands it over for the record; only then is its result shown. */
async function lay(
  screen: DrillScreen,
  answeredAt: number,
  deps: TuiDeps,
  world: PracticeWorld,
): Promise<Action> {
  const { drill, answer, item, attempt, shownAt, place, worked } = screen;
  const hints = screen.hint === 'shown' ? 1 : 0;
  const grade = world.kindOf(drill).grade(drill, answer);
  const mark = sessionMark(grade.mark, hints, attempt);
  const { feedback, why } = item;
  const graded = { drill, answer, grade, mark, hints, attempt, feedback, why, shownAt, answeredAt };
  const answered = worked ? graded : { ...graded, kept: await keep(graded, deps) };
  return { type: 'laid', answered, place, worked, at: deps.now() };
}

/** A record that cannot be written must not cost the learner the result. */
async function keep(answered: Answered, deps: TuiDeps): Promise<Kept> {
  try {
    const { note, ...kept } = await deps.saveAnswer(answered);
    return { ...kept, ...(note === undefined ? {} : { note: cleanText(note, 160) }) };
  } catch (fault) {
    return { saved: false, note: `This answer is not saved: ${lineOf(fault)}` };
  }
}

async function actionOf(
  effect: Effect,
  state: State,
  deps: TuiDeps,
  world: PracticeWorld,
): Promise<Action | undefined> {
  switch (effect.type) {
    case 'lay':
      return lay(effect.screen, effect.at, deps, world);
    case 'start-set': {
      const { choice } = effect;
      const items = deps.nextSet(choice);
      const note = deps.setNote?.();
      return { type: 'set-ready', items, choice, at: deps.now(), ...(note === undefined ? {} : { note }) };
    }
    case 'change-box':
    case 'copy-box': {
      const { id: before } = effect;
      const {
        saved,
        id = before,
        note = 'The box could not be kept.',
      } = await (effect.type === 'copy-box'
        ? deps.copyBox(before, effect.from)
        : deps.changeBox(before, effect.change));
      return saved ? { type: 'boxes-changed', before, id } : { type: 'notice', text: cleanText(note, 160) };
    }
    case 'save-settings': {
      const { saved, note = 'The setting holds for now but could not be saved.' } = await deps.saveSettings(
        effect.patch,
      );
      return saved ? undefined : { type: 'notice', text: cleanText(note, 160) };
    }
    case 'summarise': {
      const summary = deps.summarise(effect.answers);
      return summary && { type: 'summary-ready', summary };
    }
    case 'keep-reading': {
      const told = (await deps.readings?.keep(effect.wash, effect.texts, voiceOf(state.settings))) ?? [];
      return { type: 'reading-kept', told: told.map((line) => cleanText(line, 400)) };
    }
    case 'read-progress':
      return { type: 'progress-ready', text: deps.progressText(pageColumns(state.size)) };
  }
}

/** Carries out one effect. @throws a fault that is no one's but ours */
export async function perform(
  effect: Effect,
  state: State,
  deps: TuiDeps,
  world: PracticeWorld,
  dispatch: Dispatch,
): Promise<void> {
  let action: Action | undefined;
  try {
    action = await actionOf(effect, state, deps, world);
  } catch (fault) {
    const message = lineOf(fault);
    action = effect.type === 'lay' ? { type: 'laying-failed', message } : { type: 'notice', text: message };
  }
  if (action !== undefined) dispatch(action);
}
