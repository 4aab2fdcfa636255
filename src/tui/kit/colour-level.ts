/**
 * How many colours are used, decided once before Ink loads: Ink's chalk ignores NO_COLOR, and knows nothing of the
 * setting. Order: the flag, NO_COLOR, FORCE_COLOR, the setting, then what the terminal says of itself.
 */

/** 0 none, 1 sixteen colours, 2 two hundred and fifty-six, 3 all of them (24 bits). */
export type ColourLevel = 0 | 1 | 2 | 3;

/** The setting: `auto` goes by the terminal; then one for each level, in their order. */
export const COLOUR_SETTINGS = ['auto', 'none', '16', '256', 'full'] as const;
export type ColourSetting = (typeof COLOUR_SETTINGS)[number];

type Env = Readonly<Record<string, string | undefined>>;

const FORCED: Readonly<Record<string, ColourLevel>> = { '0': 0, false: 0, '1': 1, '2': 2, '3': 3 };

/** Terminals that take 24-bit colour without announcing it in COLORTERM. */
const FULL_COLOUR_TERM = /-direct$|^(xterm-kitty|xterm-ghostty|wezterm|alacritty|foot|contour)/;

function levelOfTerminal(env: Env): ColourLevel {
  const { TERM: term = '', COLORTERM: announced = '' } = env as { TERM?: string; COLORTERM?: string };
  if (term === 'dumb' || term === '') return 0;
  if (announced === 'truecolor' || announced === '24bit' || FULL_COLOUR_TERM.test(term)) return 3;
  return /-256(color)?$/.test(term) ? 2 : 1;
}

/** The setting that would give a level. */
export const settingOf = (level: ColourLevel): ColourSetting => COLOUR_SETTINGS[level + 1] as ColourSetting;

/** What the decision is made from. */
export interface ColourFacts {
  /** `--no-color` was given. */
  readonly noColourFlag?: boolean;
  readonly env: Env;
  readonly setting: ColourSetting;
}

/** Whether something outside the settings decides, so that changing the setting will not show. */
export function colourIsForced({ noColourFlag = false, env }: ColourFacts): boolean {
  return noColourFlag || (env['NO_COLOR'] ?? '') !== '' || env['FORCE_COLOR'] !== undefined;
}

/** The colour level in force. */
export function colourLevel(facts: ColourFacts): ColourLevel {
  const { noColourFlag = false, env, setting } = facts;
  if (noColourFlag || (env['NO_COLOR'] ?? '') !== '') return 0;
  const forced = env['FORCE_COLOR'];
  if (forced !== undefined) {
    return FORCED[forced] ?? (Math.max(1, levelOfTerminal(env)) as ColourLevel);
  }
  return setting === 'auto' ? levelOfTerminal(env) : ((COLOUR_SETTINGS.indexOf(setting) - 1) as ColourLevel);
}

/** One line about how far the colours on the screen can be trusted. */
export function colourNote(level: ColourLevel): string {
  if (level === 0) return 'No colours here: every paint is given in words and as a value.';
  if (level === 3) return '';
  return `Colours are approximate (${level === 1 ? 16 : 256} only): trust the words.`;
}
