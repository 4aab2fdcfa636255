/** Quizzes. */
import type { Program } from './program.js';

/** Adds the quiz commands. */
export function addClassroomCommands(_program: Program, _version: string): void {}
