/**
 * The one table of keys: it maps keys to commands and draws the help line, so that the two cannot disagree.
 * Arrows first; letters for quick hands; nothing needs a modifier.
 */

import { showsAs } from './fields.js';
import type { Glyphs } from './glyphs.js';
import {
  type CommonCommand,
  commandIn,
  digits,
  enter,
  KEYS,
  type KeyBinding,
  leftRight,
  scroll,
  stop,
  upDown,
} from './key-bindings.js';
import type { KeyName } from './key-names.js';
import { isWide } from './layout.js';
import { sheetBindings, sheetLookBindings } from './sheet-keys.js';
import type { DrillScreen, ResultScreen, Size, State } from './state.js';

export type Command =
  | CommonCommand
  | 'quit'
  | 'hint'
  | 'again'
  | 'why'
  | 'picture'
  | 'sheet'
  | 'scene'
  | 'grey'
  | 'best'
  | 'home'
  | 'restart'
  | 'mend';

export type Binding = KeyBinding<Command>;

const STOP = stop('stop at once; answers are saved');
/** While an answer is graded and saved nothing else works, and the help line says what goes on. */
const LAYING: Binding = { ...stop('stop; the wash is being laid down'), quiet: false, stays: true };
const byNumber = digits('1', 'choose by number', true);
const LEVEL_BY_NUMBER: Binding = {
  keys: Object.fromEntries([...'012345'].map((each) => [each, 'digit' as const])),
  show: '0-5',
  does: 'level by number, 0 for your own',
  quiet: true,
};
const back = (does: string): Binding => ({
  keys: { escape: 'back', erase: 'back', q: 'back' },
  show: 'Esc',
  does,
  stays: true,
});

const HOME: Binding = {
  keys: { escape: 'home', q: 'home', erase: 'home' },
  show: 'Esc',
  does: 'home',
  stays: true,
};

/** Whether paint or water is chosen, or a question answered. */
const isLaid = ({ fields }: DrillScreen): boolean =>
  fields.some((field) => field.shape === 'scale' || field.options.some(({ swatch }) => swatch !== undefined));

/** Words for the focused field and the scale beside it: "paint", "amount". */
function drillBindings(state: State, screen: DrillScreen): Binding[] {
  const sheet = sheetBindings(state);
  if (screen.worked) return [enter('lay it down'), ...sheet, back('skip the example')];
  const field = screen.fields[screen.focus];
  const many = screen.fields.length > 1;
  const tray = field !== undefined && showsAs(field) === 'tray';
  const hasScale = screen.fields.some((each) => showsAs(each) !== 'tray');
  return [
    upDown(tray ? 'choose' : 'row'),
    ...(hasScale ? [leftRight('less, more')] : []),
    enter(isLaid(screen) ? 'lay it down' : 'answer'),
    ...(screen.drill.hint === undefined || screen.hint === 'shown'
      ? []
      : [{ keys: { h: 'hint' }, show: 'h', does: 'hint', stays: true } as const]),
    ...sheet,
    ...(many
      ? [
          {
            keys: { tab: 'next-field', 'back-tab': 'previous-field' },
            show: 'Tab',
            does: 'row',
            stays: true,
          } as const,
        ]
      : []),
    byNumber,
    { keys: { c: 'caution' }, show: 'c', does: 'caution for this paint', quiet: true },
    back('leave'),
  ];
}

function screenBindings(state: State): Binding[] {
  const { screen } = state;
  switch (screen.name) {
    case 'home':
      return [
        upDown('move'),
        enter('choose'),
        byNumber,
        { keys: { q: 'quit', escape: 'quit' }, show: 'q/Esc', does: 'quit', stays: true },
      ];
    case 'settings':
      return [upDown('move'), enter('change'), byNumber, back('home')];
    case 'families':
      return [upDown('skill'), enter('practise it'), leftRight('level'), LEVEL_BY_NUMBER, back('home')];
    case 'welcome':
      return [
        upDown('move'),
        enter('choose'),
        byNumber,
        {
          keys: { escape: 'back' },
          show: 'Esc',
          does: screen.step === 'placing' ? 'home' : 'skip the welcome',
          stays: true,
        },
      ];
    case 'drill':
      return screen.laying ? [] : drillBindings(state, screen);
    case 'result':
      return [
        {
          keys: { enter: 'next', n: 'next' },
          show: 'Enter',
          does: screen.from === 'summary' ? 'back to the set' : screen.worked ? 'go on' : 'next',
        },
        ...(screen.worked ? [] : [{ keys: { t: 'again' }, show: 't', does: 'try again' } as const]),
        { keys: { w: 'why' }, show: 'w', does: 'why' },
        ...pictureBinding(screen, state.size),
        ...sheetBindings(state),
        scroll(true),
        HOME,
      ];
    case 'why':
      return [
        {
          keys: { escape: 'back', enter: 'back', w: 'back', q: 'back', erase: 'back' },
          show: 'Enter',
          does: 'back to the result',
        },
      ];
    case 'summary': {
      const hasAnswers = (state.set?.attempts.length ?? 0) > 0;
      return [
        ...(hasAnswers ? [enter('open')] : []),
        ...((state.set?.summary?.mistakes.length ?? 0) > 0
          ? [{ keys: { m: 'mend' }, show: 'm', does: 'mend misses' } as const]
          : []),
        { keys: { n: 'restart' }, show: 'n', does: 'new set' },
        ...(hasAnswers ? [upDown('move')] : []),
        HOME,
      ];
    }
    case 'bench':
      return screen.picking === undefined
        ? [
            upDown('row'),
            leftRight('less, more'),
            enter(screen.focus < 3 ? 'pick a paint' : 'next row'),
            { keys: { c: 'caution' }, show: 'c', does: 'cautions', quiet: true },
            back('home'),
          ]
        : [upDown('paint'), enter('take it'), back('keep what was there')];
    case 'progress':
    case 'help':
      return [scroll(false), back('home')];
    default:
      return [back('home')];
  }
}

/** Swatches or plane, where one column has no room for both. */
function pictureBinding({ attempt, plane }: ResultScreen, size: Size): Binding[] {
  const { value, chroma } = attempt.entry.grade;
  if (isWide(size) || value === undefined || chroma === undefined) return [];
  return [{ keys: { p: 'picture' }, show: 'p', does: plane === true ? 'swatches' : 'plane' }];
}

/** The keys that work now, most used first. */
export function bindings(state: State): Binding[] {
  const { overlay } = state;
  if (overlay?.name === 'leave') {
    return [enter('leave the set'), { keys: { escape: 'back', n: 'back' }, show: 'Esc', does: 'stay' }, STOP];
  }
  if (overlay?.name === 'caution') {
    const does = overlay.onward === 'lay' ? 'understood, lay it down' : 'close';
    return [
      enter(does),
      { keys: { escape: 'back' }, show: 'Esc', does: overlay.onward === 'lay' ? 'choose again' : 'close' },
      STOP,
    ];
  }
  if (overlay?.name === 'sheet') {
    const keys = Object.fromEntries(
      ['escape', 'enter', 'v', 'q', 'erase', 'space'].map((key) => [key, 'back' as const]),
    );
    return [...sheetLookBindings(state), { keys, show: 'Esc', does: 'back', stays: true }, STOP];
  }
  if (overlay?.name === 'scene') return [scroll(false), back('back'), STOP];
  if (overlay?.name === 'keys') {
    return [
      { keys: { escape: 'back', enter: 'back', '?': 'back', q: 'back' }, show: 'Esc', does: 'close' },
      STOP,
    ];
  }
  const isLaying = state.screen.name === 'drill' && state.screen.laying;
  return [...screenBindings(state), KEYS, isLaying ? LAYING : STOP];
}

/** The command of a key, or undefined when it does nothing now. */
export function commandOf(state: State, key: KeyName): Command | undefined {
  return commandIn(bindings(state), key);
}

/** Keys as they are written on this terminal. */
export function shownKeys({ show }: Pick<Binding, 'show'>, glyphs: Glyphs): string {
  const drawn = show.replace(
    /\{(up|down|left|right)\}/g,
    (_, name: 'up' | 'down' | 'left' | 'right') => `${glyphs[name]} `,
  );
  return (glyphs.braille ? drawn.replaceAll(' ', '') : drawn.trim().replaceAll(' ', '/')) || show;
}
