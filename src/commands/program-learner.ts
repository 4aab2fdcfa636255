/** Practice and what belongs to a learner. */
import type { Program } from './program.js';

/** Adds practise, progress, settings and the record. */
export function addLearnerCommands({ command }: Program, _version: string): void {
  command.action(() => {});
}
