/** Standing notes at the foot of a screen: nothing is saved, colours are approximate. */
import { colourNote } from './colour-level.js';
import { frameParts } from './layout.js';
import type { Stage } from './stage.js';

export function notesOf({ savingNote, colourLevel, settings }: Stage): string[] {
  const approximate = colourLevel === 1 || colourLevel === 2;
  return [
    ...(savingNote === undefined ? [] : [savingNote]),
    ...(approximate && !settings.screenReader ? [colourNote(colourLevel)] : []),
  ];
}

/** Lines that the body of a screen has. */
export const bodyRows = (stage: Stage): number => frameParts(stage, notesOf(stage).length).body;
