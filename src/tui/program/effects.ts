/** Carrying out what the reducer asks for. A port that throws becomes one line on the screen; practice goes on. */
import { sessionMark } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import type { AnswerEntry, SaveOutcome, TuiDeps } from '../kit/deps.js';
import { textColumns } from '../kit/layout.js';
import type { Action, DrillScreen, Effect, State, World } from '../kit/state.js';

type Dispatch = (action: Action) => void;

const messageOf = (error: unknown): string =>
  cleanText(error instanceof Error ? error.message : String(error), 160);

/** Grades the answer and hands it over for the record; only then is its result shown. */
async function lay(
  screen: DrillScreen,
  at: number,
  deps: TuiDeps,
  world: World,
  dispatch: Dispatch,
): Promise<void> {
  try {
    const { drill, answer, item } = screen;
    const hints = screen.hint === 'shown' ? 1 : 0;
    const grade = world.kindOf(drill).grade(drill, answer);
    const entry: AnswerEntry = {
      drill,
      answer,
      grade,
      mark: sessionMark(grade.mark, hints, screen.attempt),
      hints,
      attempt: screen.attempt,
      feedback: item.feedback,
      why: item.why,
      shownAt: screen.shownAt,
      answeredAt: at,
    };
    const outcome = screen.worked ? { saved: true } : await save(entry, deps);
    dispatch({
      type: 'laid',
      attempt: { entry, ...outcome, ...(screen.sheet && { sheet: screen.sheet }) },
      place: screen.place,
      worked: screen.worked,
      at: deps.now(),
    });
  } catch (error) {
    dispatch({ type: 'laying-failed', message: messageOf(error) });
  }
}

/** A record that cannot be written must not cost the learner the result. */
async function save(entry: AnswerEntry, deps: TuiDeps): Promise<SaveOutcome> {
  try {
    const { saved, note, compared } = await deps.saveAnswer(entry);
    return {
      saved,
      ...(note === undefined ? {} : { note: cleanText(note, 160) }),
      ...(compared === undefined ? {} : { compared }),
    };
  } catch (error) {
    return { saved: false, note: `This answer is not saved: ${messageOf(error)}` };
  }
}

/** Carries out one effect. */
export async function runEffect(
  effect: Effect,
  state: State,
  deps: TuiDeps,
  world: World,
  dispatch: Dispatch,
): Promise<void> {
  try {
    switch (effect.type) {
      case 'lay':
        return await lay(effect.screen, effect.at, deps, world, dispatch);
      case 'start-set': {
        const { choice } = effect;
        dispatch({ type: 'set-ready', items: deps.nextSet(choice), choice, at: deps.now() });
        return;
      }
      case 'save-settings': {
        const { saved, note } = await deps.saveSettings(effect.patch);
        if (!saved)
          dispatch({
            type: 'notice',
            text: cleanText(note ?? 'The setting holds for now but could not be saved.', 160),
          });
        return;
      }
      case 'summarise': {
        const summary = deps.summarise(effect.entries);
        if (summary !== undefined) dispatch({ type: 'summary-ready', summary });
        return;
      }
      case 'read-progress':
        dispatch({ type: 'progress-ready', text: deps.progressText(textColumns(state.size)) });
        return;
      case 'exit':
        return;
    }
  } catch (error) {
    dispatch({ type: 'notice', text: messageOf(error) });
  }
}
