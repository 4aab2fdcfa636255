/** Standing notes at the foot of a screen: nothing is saved, two scales of value, colours are approximate. */
import { colourNote } from './colour-level.js';
import type { State } from './state.js';

/** Sentences of drills are written once, in painter's steps, for quizzes and files alike. */
const IN_STEPS = "Sentences count in painter's steps: step = 10.5 - V.";
const WITH_STEPS: readonly string[] = ['drill', 'result'];

const WITH_COLOURS: readonly string[] = ['drill', 'result', 'bench', 'welcome'];

export function notesOf({
  savingNote,
  colourLevel,
  screen,
  settings,
}: Pick<State, 'savingNote' | 'colourLevel' | 'screen' | 'settings'>): string[] {
  const approximate = colourLevel === 1 || colourLevel === 2;
  return [
    ...(savingNote === undefined ? [] : [savingNote]),
    ...(settings.valueScale === 'black-first' && WITH_STEPS.includes(screen.name) ? [IN_STEPS] : []),
    ...(approximate && !settings.screenReader && WITH_COLOURS.includes(screen.name)
      ? [colourNote(colourLevel)]
      : []),
  ];
}
