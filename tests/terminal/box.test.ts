/** Boxes on the screen in a real terminal: what was ticked, named and corrected is kept at once, also when the program is stopped. */
import { afterEach, expect, it } from 'vitest';
import { cleanEnv, mudlark } from '../program/run-cli.js';
import { closeAll, ENTER, Terminal } from './terminal.js';

afterEach(closeAll);

const RUBBED_OUT = '\u007f'.repeat(6);

it('takes a name, a strength, a tick and another name of the box, tells what it refuses, and loses nothing', async () => {
  const env = cleanEnv();
  mudlark(['box', 'new', 'studio', '--paints', 'cadmium-red,ultramarine-blue'], env);
  mudlark(['box', 'use', 'studio'], env);
  const terminal = new Terminal({ env });
  await terminal.shows('Settings');
  await terminal.type('5', 'Box of paints');
  await terminal.type('2', '* studio box');
  await terminal.type('r', 'What is the box studio to be called?');
  await terminal.type(`${RUBBED_OUT}six${ENTER}`, 'there is a box called six already');
  await terminal.type(`${RUBBED_OUT}quay${ENTER}`, '* quay box');
  await terminal.type('e', '[x] cadmium red');
  await terminal.type('n', 'What do you call your cadmium red?');
  // So many signs at once are taken for a paste, in which Enter is no key.
  await terminal.type('Zinnober ö?', 'Zinnober ö?_');
  await terminal.type(ENTER, '[x] Zinnober ö?');
  await terminal.type('s', 'How many times as strongly');
  await terminal.type(`9${ENTER}`, '0.25 to 4 times');
  await terminal.type(`${RUBBED_OUT}1.4${ENTER}`, '1.4 times');
  await terminal.type('\u001b[B ', '[x] alizarin crimson');
  await terminal.type('\u0003', 'program ended with 130');
  expect(JSON.parse(mudlark(['box', 'show', '--json'], terminal.env).out)).toMatchObject({
    id: 'quay',
    inUse: true,
    paints: [
      { id: 'cadmium-red', name: 'Zinnober ö?', strength: 1.4 },
      { id: 'ultramarine-blue', strength: 1 },
      { id: 'alizarin-crimson', strength: 1 },
    ],
  });
});
