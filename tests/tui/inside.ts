/** Whether a screen keeps inside its terminal. */
import stringWidth from 'string-width';
import { expect } from 'vitest';
import { fakeDeps } from './fakes.js';
import { FULL, type ROUTES } from './routes.js';
import { Stage } from './stage.js';

export const SIXTEEN = { ...FULL, FORCE_COLOR: '1' };
export const PLAIN = { ...FULL, NO_COLOR: '1' };
export const ASCII = { ...FULL, LANG: 'C' };

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
