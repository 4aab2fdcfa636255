/** A quiz on paper. */

import type { Drill } from '../../drills/kinds/index.js';
import type { DrillScene } from '../../pictures/scene.js';
import type { Voice } from '../../words/voice.js';
import type { Handout } from '../handout.js';
import { letteredHandout } from '../lettered.js';
import { type PaperQuiz, sheetCode } from './style.js';

export { handoutPaper, readsValues } from './handout-paper.js';
export { keyPaper } from './key-paper.js';
export type { PaperQuiz } from './style.js';
export { sheetCode } from './style.js';

/** A handout with its letters and pictures. @param sceneOf what a drill lies in before it is answered, where it has a picture */
export function paperQuiz(
  handout: Handout,
  sceneOf: (drill: Drill) => DrillScene | undefined,
  voice: Voice,
): PaperQuiz {
  const lettered = letteredHandout(handout, voice);
  return {
    handout,
    code: sheetCode(lettered),
    questions: handout.questions.map((question, at) => {
      const scene = sceneOf(question.drill);
      return {
        number: at + 1,
        question,
        lettered: lettered[at] ?? [],
        ...(scene === undefined ? {} : { scene }),
      };
    }),
  };
}
