/** Scene, question, goal and hint of a drill, broken to the width. */

import type { ResultSwatch } from '../../drills/types.js';
import { HINT_COST } from '../../practice/index.js';
import { cleanText } from '../../text/sanitize.js';
import { padText, widthOf, wrapText } from '../../text/wrap.js';
import { lookOf, swatchWords } from '../../words/look.js';
import { sayAll } from '../../words/tell.js';
import type { Voice } from '../../words/voice.js';
import { moreInAscii } from '../kit/glyphs.js';
import type { Piece } from '../kit/row.js';
import type { World } from '../kit/stage.js';
import { patchStyle } from '../kit/theme.js';
import type { Question } from './question.js';

const WORKED =
  'A worked example, the choice is made: guess what it will give, then press Enter to lay it down.';

/** Most characters of one text of a drill that are shown. */
const LONGEST = 600;

const lines = (texts: readonly string[], columns: number, role: Piece['role']): Piece[][] =>
  texts
    .flatMap((text) => wrapText(text, columns - moreInAscii(text)))
    .map((text): Piece[] => [{ text, ...(role && { role }) }]);

export interface SceneTexts {
  /** Left from the drill before, or about the worked example. */
  readonly message: Piece[][];
  readonly scene: Piece[][];
  readonly ask: Piece[][];
  readonly goal: Piece[][];
  readonly hint: Piece[][];
}

/** What of a drill's screen its texts come from. */
export type Told = Pick<Question, 'drill' | 'worked' | 'message' | 'hint'>;

/** What the learner is offered or told when asking for help. */
export function hintTexts({ hint, drill }: Pick<Told, 'hint' | 'drill'>): string[] {
  if (hint === 'hidden' || drill.hint === undefined) return [];
  return hint === 'offered'
    ? [`A hint costs ${HINT_COST} marks. Press h again to see it, Esc to go on without.`]
    : [`Hint: ${cleanText(drill.hint, LONGEST)}`];
}

/** Colours that stand in the lines of the goal that speak of them, where they have no place of their own. */
export interface Inline {
  readonly given: readonly ResultSwatch[];
  /** Without colours their words stand there; with them too, where no figures do. */
  readonly flat: boolean;
}

/** All texts of a drill's screen. */
export function sceneTexts(
  screen: Told,
  world: World,
  columns: number,
  voice: Voice,
  inline: Inline = { given: [], flat: false },
): SceneTexts {
  const { drill, worked, message } = screen;
  const goal = sayAll(world.kindOf(drill).goalLines(drill), voice);
  return {
    message: lines(
      [...(worked ? [WORKED] : []), ...(message === undefined ? [] : [message])],
      columns,
      'label',
    ),
    scene: lines([cleanText(drill.scene, LONGEST)], columns, 'plain'),
    ask: lines([cleanText(drill.ask, LONGEST)], columns, 'label'),
    goal: goalLines(
      goal.map((line) => cleanText(line, LONGEST)),
      columns,
      inline,
      voice,
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

/** Whether each of the colours has its own line among those of the goal. */
export const isToldOf = (
  world: World,
  { drill }: Pick<Told, 'drill'>,
  given: readonly ResultSwatch[],
  voice: Voice,
): boolean => {
  const heads = sayAll(world.kindOf(drill).goalLines(drill), voice).map(headOf);
  return given.length > 0 && given.every(({ label }) => heads.includes(label));
};

/** Columns of a colour in a line of the goal. */
const PATCH = 6;

/** A line of the goal with the words of its colour: all of them without colours; with them, if no figures tell it, what takes no further line. */
function withColour(
  told: string,
  swatch: ResultSwatch | undefined,
  flat: boolean,
  room: number,
  voice: Voice,
): string[] {
  const bare = wrapText(told, room);
  if (swatch === undefined || (!flat && swatch.unread !== 'figures')) return bare;
  const words = swatchWords(swatch, voice);
  const led = (some: string): string[] => wrapText(`${told}; it is ${some}`, room);
  if (flat) return led(words);
  const hue = words.slice(words.lastIndexOf(' ') + 1);
  return [led(words), led(hue)].find(({ length }) => length === bare.length) ?? bare;
}

/** "value: from …" with the first words set off in a column, and further lines under the text. */
function goalLines(
  texts: readonly string[],
  columns: number,
  { given, flat }: Inline,
  voice: Voice,
): Piece[][] {
  const head = Math.max(6, ...texts.map((text) => widthOf(headOf(text)))) + 2;
  const indent = head + (given.length === 0 || flat ? 0 : PATCH + 2);
  return texts.flatMap((text) => {
    const name = headOf(text);
    if (name === '') return lines([text], columns, 'plain');
    const swatch = given.find(({ label }) => label === name);
    const room = columns - indent - moreInAscii(text);
    const parts = withColour(text.slice(name.length + 2), swatch, flat, room, voice);
    return parts.map((part, index): Piece[] => [
      { text: padText(index === 0 ? name : '', head), role: 'muted' },
      ...patchPieces(index === 0 ? swatch : undefined, indent - head),
      { text: part },
    ]);
  });
}

function patchPieces(swatch: ResultSwatch | undefined, room: number): Piece[] {
  if (room === 0) return [];
  if (swatch === undefined) return [{ text: ' '.repeat(room) }];
  return [{ text: ' '.repeat(PATCH), style: patchStyle(lookOf(swatch.reflectance).hex) }, { text: '  ' }];
}
