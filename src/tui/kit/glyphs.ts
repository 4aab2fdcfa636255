/** The few signs that the screens draw with. All are one column wide; none is an emoji. */
import { widthOf } from '../../text/wrap.js';

export interface Glyphs {
  readonly pointer: string;
  readonly chosen: string;
  readonly open: string;
  readonly good: string;
  readonly fair: string;
  readonly off: string;
  readonly less: string;
  readonly more: string;
  readonly up: string;
  readonly down: string;
  readonly left: string;
  readonly right: string;
  readonly upMark: string;
  readonly downMark: string;
  readonly full: string;
  readonly empty: string;
  readonly line: string;
  readonly band: string;
  readonly vertical: string;
  readonly corners: readonly [string, string, string, string];
  readonly dot: string;
  readonly cut: string;
  readonly minus: string;
  /** Whether dots may be drawn in braille cells, eight to a character. */
  readonly braille: boolean;
  /** Whether texts must keep to ASCII too. */
  readonly plainTexts: boolean;
}

export const UNICODE: Glyphs = {
  pointer: '❯',
  chosen: '●',
  open: '○',
  good: '✓',
  fair: '±',
  off: '✗',
  less: '‹',
  more: '›',
  up: '↑',
  down: '↓',
  left: '←',
  right: '→',
  upMark: '▲',
  downMark: '▼',
  full: '█',
  empty: '░',
  line: '─',
  band: '━',
  vertical: '│',
  corners: ['┌', '┐', '└', '┘'],
  dot: '·',
  cut: '…',
  minus: '−',
  braille: true,
  plainTexts: false,
};

export const ASCII: Glyphs = {
  pointer: '>',
  chosen: '*',
  open: 'o',
  good: '+',
  fair: '=',
  off: 'x',
  less: '<',
  more: '>',
  up: 'up',
  down: 'down',
  left: 'left',
  right: 'right',
  upMark: '^',
  downMark: 'v',
  full: '#',
  empty: '.',
  line: '-',
  band: '=',
  vertical: '|',
  corners: ['+', '+', '+', '+'],
  dot: '-',
  cut: '~',
  minus: '-',
  braille: false,
  plainTexts: true,
};

/** Read aloud, signs are noise; these are words where a word is shorter than its sign's name. */
export const SPOKEN: Glyphs = {
  ...ASCII,
  plainTexts: false,
  less: '',
  more: '',
  good: '',
  fair: '',
  off: '',
};

/** ASCII on a dumb terminal or where the locale is not UTF-8. */
export function glyphsFor(env: Readonly<Record<string, string | undefined>>): Glyphs {
  const locale = [env['LC_ALL'], env['LC_CTYPE'], env['LANG']].find((value) => (value ?? '') !== '');
  if (env['TERM'] === 'dumb' || env['TERM'] === 'linux') return ASCII;
  // A terminal on Windows and macOS takes UTF-8 without saying so in LANG.
  if (locale === undefined) return UNICODE;
  return /utf-?8/i.test(locale) ? UNICODE : ASCII;
}

/** Signs of our texts that ASCII has another way to write. */
const WRITTEN: Readonly<Record<string, string>> = {
  '’': "'",
  '‘': "'",
  '“': '"',
  '”': '"',
  '–': '-',
  '—': '-',
  '−': '-',
  // One sign for one: it stands where a text was cut to its columns.
  '…': '~',
  '·': '-',
  '°': ' deg',
  '×': 'x',
  '±': '+-',
  '→': '->',
  '≤': '<=',
  '≥': '>=',
};

/** Columns that a text takes more where its signs are written out in ASCII. */
export const moreInAscii = (text: string): number => Math.max(0, inAscii(text).length - widthOf(text));

/** A text in ASCII: accents are taken off, signs are written out, what is left becomes a question mark. */
export function inAscii(text: string): string {
  return text
    .replace(/[^\u0020-\u007e]/g, (sign) => WRITTEN[sign] ?? sign)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\u0020-\u007e]/gu, '?');
}
