/** Standing notes at the foot of a screen: nothing is saved, colours are approximate. */
import { colourNote } from './colour-level.js';
import type { State } from './state.js';

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
    ...(approximate && !settings.screenReader && WITH_COLOURS.includes(screen.name)
      ? [colourNote(colourLevel)]
      : []),
  ];
}
