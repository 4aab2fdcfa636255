/** Scene, question, goal and hint of a drill, broken to the width. */

import { HINT_COST } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { padText, widthOf, wrapText } from '../../text/wrap.js';
import { sayAll } from '../../words/tell.js';
import type { Voice } from '../../words/voice.js';
import type { Piece } from '../kit/row.js';
import type { World } from '../kit/stage.js';
import type { Question } from './question.js';

const WORKED =
  'A worked example: the choice is made for you. Look at the start and the goal, guess what it will give, then press Enter to lay it down.';

/** Most characters of one text of a drill that are shown. */
const LONGEST = 600;

const lines = (texts: readonly string[], columns: number, role: Piece['role']): Piece[][] =>
  texts.flatMap((text) => wrapText(text, columns)).map((text): Piece[] => [{ text, ...(role && { role }) }]);

export interface SceneTexts {
  /** Left from the drill before, or about the worked example. */
  readonly message: Piece[][];
  readonly scene: Piece[][];
  readonly ask: Piece[][];
  readonly goal: Piece[][];
  readonly hint: Piece[][];
}

/** What the learner is offered or told when asking for help. */
export function hintTexts({ hint, drill }: Question): string[] {
  if (hint === 'hidden' || drill.hint === undefined) return [];
  return hint === 'offered'
    ? [`A hint costs ${HINT_COST} marks. Press h again to see it, or go on without.`]
    : [`Hint: ${cleanText(drill.hint, LONGEST)}`];
}

/** All texts of a drill's screen. */
export function sceneTexts(screen: Question, world: World, columns: number, voice: Voice): SceneTexts {
  const { drill, worked, message } = screen;
  const goal = sayAll(world.kindOf(drill).goalLines(drill), voice);
  return {
    message: lines(
      [...(worked === true ? [WORKED] : []), ...(message === undefined ? [] : [message])],
      columns,
      'label',
    ),
    scene: lines([cleanText(drill.scene, LONGEST)], columns, 'plain'),
    ask: lines([cleanText(drill.ask, LONGEST)], columns, 'label'),
    goal: goalLines(
      goal.map((line) => cleanText(line, LONGEST)),
      columns,
    ),
    hint: lines(hintTexts(screen), columns, 'label'),
  };
}

/** Longest first word of a goal line that is set off. */
const LONGEST_HEAD = 16;

const headOf = (line: string): string => {
  const colon = line.indexOf(': ');
  return colon > 0 && colon <= LONGEST_HEAD ? line.slice(0, colon) : '';
};

/** "value: from …" with the first words set off in a column, and further lines under the text. */
function goalLines(texts: readonly string[], columns: number): Piece[][] {
  const indent = Math.max(6, ...texts.map((text) => widthOf(headOf(text)))) + 2;
  return texts.flatMap((text) => {
    const head = headOf(text);
    if (head === '') return lines([text], columns, 'plain');
    return wrapText(text.slice(head.length + 2), columns - indent).map((part, index): Piece[] => [
      { text: padText(index === 0 ? head : '', indent), role: 'muted' },
      { text: part },
    ]);
  });
}
