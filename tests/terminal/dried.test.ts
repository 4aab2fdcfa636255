/** `mudlark dried` in a real terminal: what was typed is not lost to one Enter. */
import { afterEach, expect, it } from 'vitest';
import { cleanEnv, mudlark } from '../program/run-cli.js';
import { closeAll, ENTER, Terminal } from './terminal.js';

afterEach(closeAll);

it('asks once more for the mixture of a wash that was read, and breaks its lines between words', async () => {
  const env = cleanEnv();
  mudlark(['box', 'new', 'mine', '--paints', 'burnt-sienna,ultramarine-blue,prussian-blue'], env);
  const terminal = new Terminal({ args: ['dried', '--box', 'mine'], env, rows: 50 });
  await terminal.shows('1. The wash alone: ');
  await terminal.type(`five${ENTER}`, /nothing that dried[\s\S]*wash alone: $/m);
  expect(terminal.text.replace(/\s+/g, ' ')).toContain('V 6 for a Munsell value, lab(40 10 20) or 7.5YR 4/4');
  await terminal.type(`4${ENTER}`, '1. With what was stirred in: ');
  await terminal.type(ENTER, 'Enter again drops this reading');
  await terminal.type(`7${ENTER}`, '2. The wash alone: ');
  expect(terminal.text).toMatch(/ kept$/m);
  await terminal.type(`4${ENTER}`, '2. With what was stirred in: ');
  await terminal.type(ENTER, /2\. With what[\s\S]*2\. With what/);
  await terminal.type(ENTER, 'not kept: the mixture was not read');
  await terminal.type('\u0003', 'program ended with 130');
  const { readings } = JSON.parse(mudlark(['dried', 'show', '--json', '--box', 'mine'], terminal.env).out);
  expect(readings).toHaveLength(1);
});
