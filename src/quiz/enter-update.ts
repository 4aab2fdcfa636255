/** Typing in a class from paper, line by line: name, then letters, with undo and corrections. Pure: what is to be saved is handed out. */
import { nameKey } from './names.js';
import {
  answeredIn,
  BLANK,
  type Entry,
  grouped,
  isWholeLine,
  type Letters,
  type Read,
  readLetters,
  readLine,
  readName,
} from './paper-entry.js';

/** What is there already under a name: letters typed in before, or something that must stay. */
export type Known = Entry | { readonly why: string };

/** What entering needs to know. */
export interface EnterWorld {
  readonly letters: Letters;
  /** What has been saved under a name, in this round or before. */
  known(name: string): Known | undefined;
}

/** The sheet in hand. */
interface Open extends Entry {
  /** As it was saved before; absent for a new one. */
  readonly before?: Entry;
}

export interface EnterState {
  /** Saved in this round, in order. */
  readonly done: readonly Entry[];
  readonly open?: Open;
  /** The rest of the questions is left blank at the next empty line. */
  readonly mayBlank: boolean;
  readonly isOver: boolean;
}

/** What a typed line leads to. */
export interface EnterStep {
  readonly state: EnterState;
  /** To be shown. */
  readonly lines: readonly string[];
  /** To be saved, in the place of an earlier entry where there is one. */
  readonly save?: { readonly entry: Entry; readonly before?: Entry };
}

export const EMPTY_ENTERING: EnterState = { done: [], mayBlank: false, isOver: false };

/** The keys, a line each. */
const ENTER_HELP: readonly string[] = [
  'Name first, then the letters: one a line, or all at once, like ACB-D.',
  'A dash stands for a blank answer. Or both on one line: Ann Lee; ACB-D',
  '  <      take back the last letter, then the name;',
  '         at the name: open the last student again',
  '  5=C    correct question 5',
  '  =Ann   correct the name of the open student',
  '  *      list the students so far',
  '  ?      this help',
  '  Enter  at the name: stop; at the letters: leave the rest blank',
];

const rowOf = ({ name, letters }: Entry): string => `${name}: ${grouped(letters)}`;

/** The running list. */
function listLines(done: readonly Entry[]): string[] {
  if (done.length === 0) return ['no students yet'];
  return done.map((entry, at) => `${String(at + 1).padStart(3)}. ${rowOf(entry)}`);
}

/** What to show before the next line is typed. */
export function promptOf({ open, done }: EnterState, { letters }: EnterWorld): string {
  if (open === undefined) return `Name ${done.length + 1}: `;
  const given = open.letters.length;
  const at = given < letters.length ? `${given + 1} of ${letters.length}` : 'Enter to save';
  return given === 0 ? `  ${at}: ` : `  ${grouped(open.letters)}  ${at}: `;
}

const still = (state: EnterState, ...lines: string[]): EnterStep => ({
  state: { ...state, mayBlank: false },
  lines,
});

function saved(state: EnterState, { before, ...entry }: Open): EnterStep {
  const isSame = (one: Entry): boolean => nameKey(one.name) === nameKey(before?.name ?? entry.name);
  const place = state.done.findIndex(isSame);
  const done = place < 0 ? [...state.done, entry] : state.done.with(place, entry);
  const number = (place < 0 ? done.length - 1 : place) + 1;
  const { open: _closed, ...rest } = state;
  return {
    state: { ...rest, done, mayBlank: false },
    lines: [
      `${String(number).padStart(3)}. ${rowOf(entry)}  ${answeredIn(entry)} of ${entry.letters.length} answered`,
    ],
    save: { entry, ...(before === undefined ? {} : { before }) },
  };
}

/** Opens a name, with what is there under it. */
function opened(
  state: EnterState,
  world: EnterWorld,
  name: string,
  letters: readonly string[] = [],
): EnterStep {
  const there = world.known(name);
  if (there !== undefined && 'why' in there) return still(state, `  ${there.why}`);
  if (there === undefined) return still({ ...state, open: { name, letters } });
  const asked = letters.length === 0 ? there.letters : letters;
  return still(
    { ...state, open: { name: there.name, letters: asked, before: there } },
    `  entered before: ${rowOf(there)}. Correct it (5=C, or < and letters), then Enter; < on and on leaves it as it was`,
  );
}

function atName(state: EnterState, world: EnterWorld, line: string): EnterStep {
  if (line === '') return { state: { ...state, isOver: true }, lines: [] };
  if (line === '<') {
    const last = state.done.at(-1);
    return last === undefined ? still(state, '  nothing to take back') : opened(state, world, last.name);
  }
  if (isWholeLine(line)) {
    const read = readLine(line, world.letters);
    if ('fault' in read) return still(state, `  ${read.fault}`);
    const { name, letters } = read.value;
    const step = opened(state, world, name, letters);
    const { open } = step.state;
    return open === undefined || open.before !== undefined ? step : saved(state, open);
  }
  const name = readName(line);
  return 'fault' in name ? still(state, `  ${name.fault}`) : opened(state, world, name.value);
}

function renamed(state: EnterState, world: EnterWorld, open: Open, typed: string): EnterStep {
  const name = readName(typed);
  if ('fault' in name) return still(state, `  ${name.fault}`);
  const isOwn = open.before !== undefined && nameKey(open.before.name) === nameKey(name.value);
  if (!isOwn && world.known(name.value) !== undefined)
    return still(state, `  ${name.value} has been entered already; choose another name`);
  return still({ ...state, open: { ...open, name: name.value } }, `  now ${name.value}`);
}

function corrected(
  state: EnterState,
  { letters }: EnterWorld,
  open: Open,
  number: number,
  typed: string,
): EnterStep {
  const given = open.letters.length;
  if (number < 1 || number > given)
    return still(state, given === 0 ? '  no letters yet' : `  only 1 to ${given} have a letter yet`);
  const read: Read<string[]> = readLetters(typed, letters, number - 1);
  if ('fault' in read) return still(state, `  ${read.fault}`);
  const [letter = BLANK] = read.value;
  return still({ ...state, open: { ...open, letters: open.letters.with(number - 1, letter) } });
}

function onEmpty(state: EnterState, { letters }: EnterWorld, open: Open): EnterStep {
  const given = open.letters.length;
  if (given === letters.length) return saved(state, open);
  if (state.mayBlank)
    return saved(state, { ...open, letters: letters.map((_, at) => open.letters[at] ?? BLANK) });
  const rest = given + 1 === letters.length ? `${given + 1} is` : `${given + 1} to ${letters.length} are`;
  return {
    state: { ...state, mayBlank: true },
    lines: [`  ${rest} open; Enter once more leaves them blank`],
  };
}

function takenBack(state: EnterState, open: Open): EnterStep {
  if (open.letters.length > 0)
    return still({ ...state, open: { ...open, letters: open.letters.slice(0, -1) } });
  const { open: _closed, ...rest } = state;
  return still(rest, open.before === undefined ? '' : `  ${open.before.name} stays as it was`);
}

function atLetters(state: EnterState, world: EnterWorld, open: Open, line: string): EnterStep {
  if (line === '') return onEmpty(state, world, open);
  if (line === '<') return takenBack(state, open);
  if (line.startsWith('=')) return renamed(state, world, open, line.slice(1));
  const [, number, letter] = /^(\d{1,3})\s*=\s*(\S)$/u.exec(line) ?? [];
  if (number !== undefined && letter !== undefined)
    return corrected(state, world, open, Number(number), letter);
  const read = readLetters(line, world.letters, open.letters.length);
  if ('fault' in read) return still(state, `  ${read.fault}`);
  const next = { ...open, letters: [...open.letters, ...read.value] };
  return next.letters.length === world.letters.length ? saved(state, next) : still({ ...state, open: next });
}

/** Takes a typed line. */
export function enterLine(state: EnterState, world: EnterWorld, typed: string): EnterStep {
  const line = typed.trim();
  if (line === '?') return still(state, ...ENTER_HELP);
  if (line === '*') return still(state, ...listLines(state.done));
  const step =
    state.open === undefined ? atName(state, world, line) : atLetters(state, world, state.open, line);
  return { ...step, lines: step.lines.filter((each) => each !== '') };
}
