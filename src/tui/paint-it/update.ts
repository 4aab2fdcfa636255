/** The mixture of a result painted on the learner's own paper: what can be painted, the keys, and what they do. Pure. */
import type { Answer } from '../../drills/types.js';
import { paintable } from '../../readings/findings.js';
import { wrapText } from '../../text/wrap.js';
import type { Wash } from '../../washes/index.js';
import { dueCautions } from '../kit/cautions.js';
import { type Binding, digits, enter, leftRight, letter, scroll, typed, upDown } from '../kit/keys.js';
import { textColumns } from '../kit/layout.js';
import { turn } from '../kit/moves.js';
import { bodyRows } from '../kit/notes.js';
import { type Page, scrolled } from '../kit/page.js';
import type { Stage, World } from '../kit/stage.js';
import { ask, show, withOverlay } from '../practice/moves.js';
import type { PaintingScreen, PracticeWorld, Pressed, ResultScreen, State } from '../practice/state.js';
import type { Judged } from '../result/judged.js';

/** A mixture that can be painted. */
interface Painting {
  readonly whose: 'best' | 'yours';
  readonly answer: Answer;
  readonly wash: Wash;
}

/** The best and the learner's, where each is one puddle; once where they are the same. */
export function paintings(world: World, { answered: { drill, answer, grade }, worked }: Judged): Painting[] {
  const { laid } = world.kindOf(drill);
  if (laid === undefined || worked === true) return [];
  const both = [['best', grade.best.answer] as const, ['yours', answer] as const].flatMap(
    ([whose, lain]): Painting[] => {
      const wash = paintable(world.studio, laid(drill, lain));
      return wash === undefined ? [] : [{ whose, answer: lain, wash }];
    },
  );
  return both.filter(({ wash }, at) => at === 0 || JSON.stringify(wash) !== JSON.stringify(both[0]?.wash));
}

const paintsOf = ({ paints, add = {} }: Wash): string[] => [...Object.keys(paints), ...Object.keys(add)];

/** Whether what dried can be kept: of tubes of the learner's own alone. */
export const isReadable = ({ settings }: State, { keepsReadings, studio }: PracticeWorld): boolean =>
  keepsReadings && studio.palettes.find(({ id }) => id === settings.palette)?.isOwn === true;

/** The screen, after the cautions of the paints that are to be handled. */
function withCautions(state: State, world: PracticeWorld, screen: PaintingScreen): State {
  const wash = paintings(world, screen.back)[screen.at]?.wash;
  const { due, told } = dueCautions(state, world, wash === undefined ? [] : paintsOf(wash));
  const next = show(told, screen);
  return due.length === 0 ? next : withOverlay(next, { name: 'caution', pigments: due, onward: 'paint' });
}

/** From the result to its mixtures. */
export function toPaint(state: State, world: PracticeWorld, back: ResultScreen): State {
  const typed = paintings(world, back).map(() => ({ alone: '', mixed: '' }));
  return withCautions(state, world, { name: 'painting', back, at: 0, typed, field: 'alone', top: 0 });
}

const LEAVE: Binding = { keys: { escape: 'back', q: 'back' }, show: 'Esc', does: 'result', stays: true };
/** Out of a screen where nothing is typed. */
const CLOSE: Binding = { ...LEAVE, keys: { ...LEAVE.keys, enter: 'back' } };
const DIGITS = digits('0', 'what you read', false);
const READ: Binding = { ...DIGITS, keys: { ...DIGITS.keys, '.': 'type', erase: 'erase' }, writes: 'signs' };
const FIELD: Binding = { ...upDown('line'), keys: { ...upDown('').keys, tab: 'down', 'back-tab': 'up' } };
const ABOUT = letter('c', 'caution', 'about these paints', true);

export function paintingKeys(state: State, world: PracticeWorld, screen: PaintingScreen): Binding[] {
  if (screen.told !== undefined) return [scroll(false), CLOSE];
  const other = screen.typed.length > 1 ? [leftRight('best, yours')] : [];
  if (!isReadable(state, world)) return [...other, ABOUT, CLOSE];
  return [FIELD, ...other, READ, enter('keep it'), ABOUT, LEAVE];
}

/** What came of a reading: a sentence begins at the margin, its further lines are set in. */
export function toldPage(stage: Stage, told: readonly string[]): Page {
  // A column for the sign that more follows.
  const columns = textColumns(stage.size) - 4;
  const lines = told.flatMap((text) =>
    wrapText(text, columns).map((line, at) => (at === 0 ? line : `  ${line}`)),
  );
  return { lines, rows: bodyRows(stage) };
}

/** Signs of a number that is typed: "10.5" and one to spare. */
const MOST_SIGNS = 5;

export function updatePainting(
  state: State,
  world: PracticeWorld,
  screen: PaintingScreen,
  { command, key }: Pressed,
): State {
  const { back, at, typed: texts, field, told, keeping } = screen;
  const wash = paintings(world, back)[at]?.wash;
  const mine = texts[at];
  const to = (next: Partial<PaintingScreen>): State => ({ ...state, screen: { ...screen, ...next } });
  if (command === 'back' || wash === undefined || mine === undefined) return show(state, back);
  if (told !== undefined) return to({ top: scrolled(toldPage(state, told), screen.top, command) });
  switch (command) {
    case 'less':
    case 'more':
      return withCautions(state, world, { ...screen, at: turn(at, 1, texts.length) });
    case 'up':
    case 'down':
      return to({ field: field === 'alone' ? 'mixed' : 'alone' });
    case 'caution':
      return withOverlay(state, { name: 'caution', pigments: paintsOf(wash), onward: 'close' });
    case 'confirm':
      return keeping === true
        ? state
        : ask(to({ keeping: true }), { type: 'keep-reading', wash, texts: mine });
    default: {
      if (key === '.' && mine[field].includes('.')) return state;
      const text = typed(mine[field], key, MOST_SIGNS);
      return to({ typed: texts.map((each, i) => (i === at ? { ...each, [field]: text } : each)) });
    }
  }
}

/** The state once it was tried to keep a reading: what it told, or what was typed stays. */
export const afterKeeping = (state: State, told?: readonly string[]): State => {
  const { screen } = state;
  if (screen.name !== 'painting') return state;
  return { ...state, screen: { ...screen, keeping: false, ...(told === undefined ? {} : { told }) } };
};
