/** The reducer of practice: panels first, then keys that work everywhere, then the screen in front. Pure. */
import { afterBoxChange, afterRefusal } from '../boxes/update.js';
import { lay } from '../drill/update.js';
import { type Binding, close, commandIn, enter, KEYS, stop } from '../kit/keys.js';
import type { Happening } from '../kit/program.js';
import { INTERRUPTED, type Size } from '../kit/stage.js';
import { afterKeeping } from '../paint-it/update.js';
import { panelKeys } from '../sheet/keys.js';
import { onPanel } from '../sheet/panel.js';
import { show, withNotice, withOverlay, withoutOverlay } from './moves.js';
import { screenOf } from './screens.js';
import { beginSet, showSummary, takeAnswer } from './set.js';
import type { Action, DrillScreen, PracticeWorld, Pressed, ResultScreen, Screen, State } from './state.js';

const STOP = stop('stop at once; answers are saved');
/** While an answer is graded and saved nothing else works, and the help line says what goes on. */
const LAYING: Binding = { ...stop('stop; the wash is being laid down'), quiet: false, stays: true };

/** A screen with a drill in front. */
export const isPictured = (screen: Screen): screen is DrillScreen | ResultScreen =>
  screen.name === 'drill' || screen.name === 'result';

/** The keys that work now, most used first. */
export function practiceKeys(state: State, world: PracticeWorld): readonly Binding[] {
  const { overlay, screen } = state;
  switch (overlay?.name) {
    case 'leave':
      return [
        enter('leave the set'),
        { keys: { escape: 'back', n: 'back' }, show: 'Esc', does: 'stay' },
        STOP,
      ];
    case 'caution': {
      const { onward } = overlay;
      const isLaying = onward === 'lay';
      return [
        enter(isLaying ? 'understood, lay it down' : onward === 'paint' ? 'understood' : 'close'),
        { keys: { escape: 'back' }, show: 'Esc', does: isLaying ? 'choose again' : 'close' },
        STOP,
      ];
    }
    case 'sheet':
    case 'scene':
      return [...(isPictured(screen) ? panelKeys(state, world, screen, overlay) : []), STOP];
    case 'keys':
      return [close(), STOP];
    default: {
      const isLaying = screen.name === 'drill' && screen.laying;
      const own = screenOf(screen).keys(state, world, screen);
      // Where text is typed, a question mark is text.
      return [...own, ...(commandIn(own, '?') === undefined ? [KEYS] : []), isLaying ? LAYING : STOP];
    }
  }
}

function leaveSet(state: State): State {
  const answered = (state.set?.answers.length ?? 0) > 0;
  return answered ? showSummary(state) : show(state, { name: 'home' });
}

function onOverlayKey(state: State, world: PracticeWorld, { command, at }: Pressed): State {
  const { overlay, screen } = state;
  if (command !== 'confirm') return withoutOverlay(state);
  if (overlay?.name === 'leave') return leaveSet(state);
  if (overlay?.name === 'caution' && overlay.onward === 'lay' && screen.name === 'drill') {
    return lay(withoutOverlay(state), world, screen, at);
  }
  return withoutOverlay(state);
}

function onKey(before: State, world: PracticeWorld, key: string, at: number): State {
  const command = commandIn(practiceKeys(before, world), key);
  if (command === 'stop') return { ...before, ending: INTERRUPTED };
  const { overlay } = before;
  if ((overlay?.name === 'sheet' || overlay?.name === 'scene') && isPictured(before.screen)) {
    const { shown, panel } = onPanel(before, world, before.screen, overlay, command);
    const next = withoutOverlay({ ...before, screen: shown });
    return panel === undefined ? next : withOverlay(next, panel);
  }
  if (command === undefined) return before;
  const { notice: _read, ...state } = before;
  const pressed = { command, key, at };
  if (state.overlay !== undefined) return onOverlayKey(state, world, pressed);
  if (command === 'keys') return withOverlay(state, { name: 'keys' });
  return screenOf(state.screen).update(state, world, state.screen, pressed);
}

function onLaid(state: State, world: PracticeWorld, action: Extract<Action, { type: 'laid' }>): State {
  const { answered, place, worked, at } = action;
  const result = { name: 'result', answered, place, worked, top: 0, from: 'set' } as const;
  if (worked) return show(state, result);
  const { savingNote: _before, ...rest } = state;
  const { saved, note } = answered.kept ?? { saved: true };
  // Whether answers are being saved can change at any of them; the standing note says so on every screen from then on.
  const savingNote = saved ? undefined : (note ?? state.savingNote);
  const paints = answered.grade.laid?.map(({ pigment }) => pigment);
  const counted: State = {
    ...rest,
    ...(savingNote === undefined ? {} : { savingNote }),
    ...(paints === undefined ? {} : { lastPaints: [...new Set(paints)] }),
    answered: state.answered + 1,
    unsaved: state.unsaved + (saved ? 0 : 1),
  };
  const isSaidAlready = note === undefined || note === savingNote;
  const noted = (next: State): State => (isSaidAlready ? next : withNotice(next, note));
  if (answered.attempt === 1) return noted(takeAnswer(counted, world, answered, at));
  const first = counted.set?.answers[place];
  return noted(show(counted, first === undefined ? result : { ...result, first }));
}

const sameSize = (one: Size, other: Size): boolean =>
  one.columns === other.columns && one.rows === other.rows;

/** The state after what came to it. */
export function updatePractice(state: State, world: PracticeWorld, action: Action | Happening): State {
  switch (action.type) {
    case 'key':
      return onKey(state, world, action.key, action.at);
    case 'resize':
      return sameSize(state.size, action.size) ? state : { ...state, size: action.size };
    case 'tick':
      return state;
    case 'set-ready':
      return beginSet(state, world, action);
    case 'laid':
      return onLaid(state, world, action);
    case 'laying-failed':
      return withNotice(
        state.screen.name === 'drill' ? { ...state, screen: { ...state.screen, laying: false } } : state,
        action.message,
      );
    case 'progress-ready':
      return state.screen.name === 'progress'
        ? { ...state, screen: { ...state.screen, text: action.text } }
        : state;
    case 'reading-kept':
      return afterKeeping(state, action.told);
    case 'boxes-changed':
      return afterBoxChange(state, action);
    case 'summary-ready':
      return state.set === undefined ? state : { ...state, set: { ...state.set, summary: action.summary } };
    case 'notice':
      // Nothing else will come to a screen that waits.
      return (
        afterRefusal(state, action.text) ??
        withNotice(
          state.screen.name === 'waiting' ? show(state, { name: 'home' }) : afterKeeping(state),
          action.text,
        )
      );
  }
}
