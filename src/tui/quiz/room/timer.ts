/** The timer of the room: minutes and seconds to be seen, no sound. Pure. */
import type { Command } from '../../kit/keys.js';
import { clockText } from '../sit/state.js';
import { type RoomState, secondsLeft } from './state.js';

/** The timer goes by half minutes, up to half an hour. */
const TIMER_STEP = 30;
const MOST_TIMER = 1800;

/** After one of its keys: started or ended, or given more or less time. */
export function setTimer(state: RoomState, command: Command): RoomState {
  const { timerEnd, timerSeconds, now, ...rest } = state;
  if (command === 'time')
    return timerEnd === undefined
      ? { ...state, timerEnd: now + timerSeconds * 1000 }
      : { ...rest, timerSeconds, now };
  const by = command === 'more' ? TIMER_STEP : -TIMER_STEP;
  const seconds = Math.min(MOST_TIMER, Math.max(TIMER_STEP, timerSeconds + by));
  if (timerEnd === undefined)
    return {
      ...state,
      timerSeconds: seconds,
      notice: `The timer is set to ${clockText(seconds)}; t starts it.`,
    };
  // One that has run out is given time from now.
  const end = Math.min(now + MOST_TIMER * 1000, Math.max(now, timerEnd) + by * 1000);
  return { ...state, timerSeconds: seconds, timerEnd: Math.max(now, end) };
}

/** Whether the clock has to be watched. */
export const timerRuns = (state: RoomState): boolean => (secondsLeft(state) ?? 0) > 0;
