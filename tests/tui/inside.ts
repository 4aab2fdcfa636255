/** Whether a screen keeps inside its terminal. */
import stringWidth from 'string-width';
import { describe, expect } from 'vitest';
import { fakeDeps } from './fakes.js';
import { FULL, type ROUTES } from './routes.js';
import { Stage } from './stage.js';

export const SIXTEEN = { ...FULL, FORCE_COLOR: '1' };
export const PLAIN = { ...FULL, NO_COLOR: '1' };
export const ASCII = { ...FULL, LANG: 'C' };

const SIZES = [
  { columns: 60, rows: 18 },
  { columns: 60, rows: 20 },
  { columns: 79, rows: 23 },
  { columns: 80, rows: 24 },
  { columns: 100, rows: 30 },
  { columns: 120, rows: 40 },
  { columns: 200, rows: 60 },
];

const COLOURS: readonly [string, Readonly<Record<string, string>>][] = [
  ['all colours', FULL],
  ['256 colours', { ...FULL, FORCE_COLOR: '2' }],
  ['16 colours', SIXTEEN],
  ['no colours', PLAIN],
  ['ASCII', ASCII],
];

/** Tests at every size with every way of colour. */
export function everywhere(
  each: (size: (typeof SIZES)[number], env: Readonly<Record<string, string>>) => void,
): void {
  describe.each(COLOURS)('with %s', (_, env) => {
    describe.each(SIZES)('at $columns x $rows', (size) => each(size, env));
  });
}

/** Goes to a screen and looks at its height, width, help line, note and signs. */
export async function expectInside(
  { name, deps = {}, keys, shows }: (typeof ROUTES)[number],
  size: { readonly columns: number; readonly rows: number },
  env: Readonly<Record<string, string>>,
): Promise<void> {
  const note = { savingNote: 'Nothing is saved: the disk is full.' };
  const stage = new Stage(size, fakeDeps({ env, ...note, ...deps }));
  await stage.type(keys, shows);
  expect(stage.lines.length, 'at full height Ink clears the scrollback').toBeLessThanOrEqual(size.rows - 1);
  for (const line of stage.lines) expect(stringWidth(line)).toBeLessThanOrEqual(size.columns);
  expect(stage.lines.at(-1), 'the help line is never pushed out').toMatch(/\S/);
  expect(stage.lines.at(-1), 'the way out is the last to go').toMatch(/Esc|Enter back/);
  if (name === 'drill') expect(stage.lines.at(-1)).toMatch(/h hint/);
  expect(stage.text, 'said on every screen').toContain('Nothing is saved');
  if (env['NO_COLOR'] !== undefined) expect(stage.raw).not.toMatch(/\u001b\[/);
  if (env['LANG'] === 'C') expect(stage.text).toMatch(/^[\n -~]*$/);
}
