/** The root reducer: panels first, then keys that work everywhere, then the screen in front. Pure. */

import { updateBench } from '../bench/update.js';
import { drillLayout } from '../drill/layout.js';
import { onSceneKey } from '../drill/scene-panel.js';
import { showSummary, startSet, takeAnswer } from '../drill/set.js';
import { lay, updateDrill } from '../drill/update.js';
import { updateFamilies } from '../families/update.js';
import { chooseAtHome } from '../home/update.js';
import { commandOf } from '../kit/keys.js';
import { ask, show, withNotice, withOverlay, withoutOverlay } from '../kit/moves.js';
import { scrolled } from '../kit/page.js';
import { onSheetKey, updateSheet } from '../kit/sheet-update.js';
import type { Action, Size, State, World } from '../kit/state.js';
import { textOf } from '../pages/texts.js';
import { resultLayout } from '../result/layout.js';
import { updateResult } from '../result/update.js';
import { chooseSetting } from '../settings/update.js';
import { updateSummary } from '../summary/update.js';
import { updateWelcome } from '../welcome/update.js';

/** Exit code after Ctrl+C. */
const INTERRUPTED = 130;

function leaveSet(state: State): State {
  const answered = (state.set?.attempts.length ?? 0) > 0;
  return answered ? showSummary(state) : show(state, { name: 'home' });
}

function onOverlayKey(state: State, world: World, command: string, at: number): State {
  const { overlay, screen } = state;
  if (command !== 'confirm') return withoutOverlay(state);
  if (overlay?.name === 'leave') return leaveSet(state);
  if (overlay?.name === 'caution' && overlay.onward === 'lay' && screen.name === 'drill') {
    return lay(withoutOverlay(state), world, screen, at);
  }
  return withoutOverlay(state);
}

function onKey(before: State, world: World, key: string, at: number): State {
  const { notice: _read, ...state } = before;
  const command = commandOf(state, key);
  if (state.overlay?.name === 'sheet' && command !== 'stop') return onSheetKey(state, command);
  if (command === undefined) return before;
  if (state.overlay?.name === 'scene' && command !== 'stop') return onSceneKey(state, world, command);
  if (command === 'stop') return ask(state, { type: 'exit', code: INTERRUPTED });
  if (state.overlay !== undefined) return onOverlayKey(state, world, command, at);
  if (command === 'keys') return withOverlay(state, { name: 'keys' });
  if (command === 'quit') return ask(state, { type: 'exit', code: 0 });
  const { screen } = state;
  if (screen.name === 'drill' || screen.name === 'result') {
    // Asked for its keys alone: where the picture stands is worked out.
    const isSeen = (): boolean => {
      if (screen.name === 'drill') return drillLayout(state, world, screen).sheet !== undefined;
      const { sheet, isPair } = resultLayout(state, world, screen);
      // Where yours and the best stand side by side, b shows the best alone, as large as there is room.
      return sheet !== undefined && !(isPair && command === 'best');
    };
    const changed = updateSheet(state, screen, command, isSeen);
    if (changed !== undefined) return changed;
  }
  switch (screen.name) {
    case 'drill':
      return updateDrill(state, world, screen, command, key, at);
    case 'result':
      return updateResult(state, world, screen, command, at);
    case 'why':
      return show(state, screen.back);
    case 'summary':
      return updateSummary(state, screen, command);
    case 'bench':
      return updateBench(state, world, screen, command);
    case 'families':
      return updateFamilies(state, world, screen, command, key);
    case 'welcome':
      return updateWelcome(state, world, screen, command, key, at);
    case 'progress':
    case 'help':
      if (command === 'back') return show(state, { name: 'home' });
      return { ...state, screen: { ...screen, top: scrolled(textOf(state, world), screen.top, command) } };
    case 'settings':
    case 'waiting':
      return command === 'back' ? show(state, { name: 'home' }) : state;
    default:
      return state;
  }
}

function onMenu(state: State, world: World, value: string, at: number): State {
  if (state.overlay !== undefined) return state;
  if (state.screen.name === 'home') return chooseAtHome(state, world, value, at);
  return state.screen.name === 'settings' ? chooseSetting(state, world, value) : state;
}

function onLaid(state: State, world: World, action: Extract<Action, { type: 'laid' }>): State {
  const { attempt, place, worked, at } = action;
  if (worked) return show(state, { name: 'result', attempt, place, worked, top: 0, from: 'set' });
  const { savingNote: _before, ...rest } = state;
  // Whether answers are being saved can change at any of them; the standing note says so on every screen from then on.
  const savingNote = attempt.saved ? undefined : (attempt.note ?? state.savingNote);
  const counted: State = {
    ...rest,
    ...(savingNote === undefined ? {} : { savingNote }),
    answered: state.answered + 1,
    unsaved: state.unsaved + (attempt.saved ? 0 : 1),
  };
  const isSaidAlready = attempt.note === undefined || attempt.note === savingNote;
  const noted = (next: State): State => (isSaidAlready ? next : withNotice(next, attempt.note ?? ''));
  if (attempt.entry.attempt === 1) return noted(takeAnswer(counted, world, attempt, at));
  const first = counted.set?.attempts[place];
  const result = { name: 'result', attempt, place, worked, top: 0, from: 'set' } as const;
  return noted(show(counted, first === undefined ? result : { ...result, first }));
}

const sameSize = (one: Size, other: Size): boolean =>
  one.columns === other.columns && one.rows === other.rows;

/** Makes the reducer over what is fixed for the run. */
export function createReducer(world: World): (state: State, action: Action) => State {
  return (state, action) => {
    switch (action.type) {
      case 'key':
        return onKey(state, world, action.key, action.at);
      case 'resize':
        return sameSize(state.size, action.size) ? state : { ...state, size: action.size };
      case 'menu':
        return onMenu(state, world, action.value, action.at);
      case 'set-ready':
        return startSet(state, world, action);
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
      case 'summary-ready':
        return state.set === undefined ? state : { ...state, set: { ...state.set, summary: action.summary } };
      case 'notice':
        // Nothing else will come to a screen that waits.
        return withNotice(
          state.screen.name === 'waiting' ? show(state, { name: 'home' }) : state,
          action.text,
        );
    }
  };
}
