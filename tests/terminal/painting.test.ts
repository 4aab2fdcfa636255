/** A photographed painting on a real terminal: opened, walked, told, left; and the plain form. */
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { demoFolder } from '../program/demo.js';
import { cleanEnv } from '../program/run-cli.js';
import { closeAll, ENTER, Terminal } from './terminal.js';

const before = join(demoFolder(), 'market-before.png');
const after = join(demoFolder(), 'market-after.png');

afterAll(closeAll);

it.concurrent('opens on the picture, walks its masses, tells what it says and leaves the terminal as it was', async () => {
  const terminal = new Terminal({ args: ['painting', before, after], env: cleanEnv() });
  await terminal.shows('Painting: market-before.png, before');
  expect(terminal.isAlternate).toBe(true);
  await terminal.type('\u001b[C', /Mass \d of \d/);
  await terminal.type('g', 'in greys');
  await terminal.type('b', 'market-after.png, after');
  await terminal.type(ENTER, 'The range is wider');
  await terminal.type('\u001b', 'Painting: market-after.png');
  await terminal.type('q', 'program ended with 0');
  expect(terminal.isAlternate).toBe(false);
});

it.concurrent('speaks: no pictures, the mass in front in words', async () => {
  const terminal = new Terminal({ args: ['painting', before, '--screen-reader'], env: cleanEnv() });
  await terminal.shows('Keys:');
  expect(terminal.isAlternate).toBe(false);
  expect(terminal.text).toMatch(/Mass 1 of \d: /);
  expect(terminal.text).not.toMatch(/[▀░▒▓█]/);
  await terminal.type('q', 'program ended with 0');
});

it.concurrent('prints text where it is asked for', async () => {
  const terminal = new Terminal({ args: ['painting', before, '--text'], env: cleanEnv(), rows: 60 });
  await terminal.shows('program ended with 0');
  expect(terminal.isAlternate).toBe(false);
  expect(terminal.text).toContain('no darks');
});
