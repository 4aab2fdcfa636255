/** What a frame has to hold, whatever its size: nothing cut, no key that is told nowhere. */
import stringWidth from 'string-width';
import { ASCII, type Glyphs, inAscii, UNICODE } from '../../src/tui/kit/glyphs.js';
import { type Binding, commandIn, shownKeys } from '../../src/tui/kit/keys.js';
import type { AnyProgram } from '../../src/tui/kit/shell.js';
import type { Stage } from '../../src/tui/kit/stage.js';
import type { Still, Stills } from './still.js';

/** Signs that stand around a choice; without them a row of options reads as its words. */
const AROUND = /[[\]<>*?]/g;

const plainly = (text: string): string =>
  inAscii(text).replace(AROUND, ' ').toLowerCase().replace(/\s+/g, ' ').trim();

/** Whether the lines say a text in full: in one line, or broken over lines that follow each other, beside whatever else. */
export function says(lines: readonly string[], text: string): boolean {
  const rows = lines.map(plainly);
  const words = plainly(text).split(' ');
  const goesOn = (row: number, from: number): boolean => {
    const line = rows[row];
    if (line === undefined) return false;
    for (let to = words.length; to > from; to--) {
      if (!line.includes(words.slice(from, to).join(' '))) continue;
      return to === words.length || goesOn(row + 1, to);
    }
    return false;
  };
  return rows.some((_, row) => goesOn(row, 0));
}

/** What is wrong with any frame: its size, its signs, a mark of something cut off. */
export function frameFaults({ raw, text, lines }: Still, { size, settings }: Stage, env: Env): string[] {
  if (settings.screenReader) return /\u001b\[|[█░▄▲━┌❯‹●○…]/.test(raw) ? ['signs in what is read aloud'] : [];
  const wide = lines.filter((line) => stringWidth(line) > size.columns);
  return [
    ...(lines.length < size.rows ? [] : [`${lines.length} lines in ${size.rows} rows`]),
    ...wide.map((line) => `wider than ${size.columns}: ${line.trim()}`),
    ...lines.filter((line) => line.includes(UNICODE.cut)).map((line) => `cut off: ${line.trim()}`),
    ...(/Esc|Enter back/.test(lines.at(-1) ?? '') ? [] : ['no way out on the key line']),
    ...(env['NO_COLOR'] !== undefined && /\u001b\[/.test(raw) ? ['escapes without colours'] : []),
    ...(env['LANG'] === 'C' && !/^[\n -~]*$/.test(text) ? ['beyond ASCII'] : []),
  ];
}

export type Env = Readonly<Record<string, string | undefined>>;

/** Every key of a keyboard by its name. */
const ALL_KEYS = [
  ...'abcdefghijklmnopqrstuvwxyz0123456789?+-=',
  ...[
    'up',
    'down',
    'left',
    'right',
    'page-up',
    'page-down',
    'home',
    'end',
    'enter',
    'escape',
    'tab',
    'back-tab',
    'erase',
    'space',
  ],
];

/** Keys that do something and stand neither on the key line nor under `?`. */
export function keyFaults(
  { program, stills, env }: { readonly program: AnyProgram; readonly stills: Stills; readonly env: Env },
  state: Stage,
  lines: readonly string[],
): string[] {
  const glyphs: Glyphs = env['LANG'] === 'C' ? ASCII : UNICODE;
  const told = (binding: Binding, among: readonly string[]): boolean =>
    among.some(
      (line) =>
        line.includes(inAscii(shownKeys(binding, glyphs))) || line.includes(shownKeys(binding, glyphs)),
    );
  const table = program.keys(state);
  const onLine = table.filter((binding) => told(binding, [lines.at(-1) ?? '']));
  const rest = table.filter((binding) => !onLine.includes(binding));
  const opened =
    commandIn(table, '?') === 'keys'
      ? stills.of(program.update(state, { type: 'key', key: '?', at: 0 }), program).lines
      : [];
  const { notice: _read, ...still } = state;
  const silent = ALL_KEYS.filter(
    (key) =>
      !('overlay' in state) &&
      commandIn(table, key) === undefined &&
      program.update(still, { type: 'key', key, at: 0 }) !== still,
  );
  return [
    ...rest
      .filter((binding) => binding.keys['ctrl-c'] === undefined && !says(opened, binding.does))
      .map(({ show, does }) => `a key told nowhere: ${show} ${does}`),
    ...silent.map((key) => `a key without a row in the table: ${key}`),
  ];
}
