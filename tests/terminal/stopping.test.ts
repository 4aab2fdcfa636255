/** Ctrl+Z, SIGTSTP and SIGCONT: a shell gets its terminal back, and the program comes back whole. */
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { cleanEnv, mudlark } from '../program/run-cli.js';
import { someHandoutText } from '../quiz/fixture.js';
import { CTRL_C, CTRL_Z, closeAll, DOWN, ENTER, Terminal } from './terminal.js';

// The clock of one takes its time, in which the others go on.
afterAll(closeAll);

const DRILL = /Enter lay it down/;
const practise = (extra: object = {}): Terminal =>
  new Terminal({ args: ['practise', 'darken-bright', '--level', '2', '--seed', '1'], jobs: true, ...extra });

const AS_BEFORE = { echo: true, canonical: true };

/** The terminal is the shell's. */
function isGivenBack(terminal: Terminal): void {
  expect(terminal.isAlternate).toBe(false);
  expect(terminal.isCursorShown).toBe(true);
  expect(terminal.marksPastes).toBe(false);
}

describe.concurrent('a program that is stopped', () => {
  it.each([
    ['Ctrl+Z', (terminal: Terminal) => terminal.type(CTRL_Z, 'program has stopped')],
    ['SIGTSTP', (terminal: Terminal) => Promise.resolve(terminal.kill('SIGTSTP'))],
  ])(
    'by %s gives the terminal back, and comes back whole in the size that there is by then',
    async (_, stop) => {
      const terminal = practise();
      await terminal.shows(DRILL);
      await terminal.type(DOWN, /❯ 2/);
      const before = terminal.text;
      await stop(terminal);
      expect(await terminal.stopped()).toEqual(AS_BEFORE);
      isGivenBack(terminal);
      await terminal.goOn(/❯ 2/);
      await terminal.until(
        () => terminal.text === before,
        () => `not as before:\n${terminal.text}`,
      );
      expect([terminal.isAlternate, terminal.isCursorShown, terminal.marksPastes]).toEqual([
        true,
        false,
        true,
      ]);

      await stop(terminal);
      await terminal.stopped();
      terminal.resize(60, 20);
      await terminal.goOn(/The lower$[\s\S]*❯ 2/m);
      expect(terminal.text.match(/START|Enter lay it down/g)?.length).toBeLessThanOrEqual(2);
      terminal.raw = '';
      await terminal.type('k', /❯ 1/);
      await terminal.type(CTRL_C, 'program ended with');
      expect(await terminal.ended()).toEqual({ code: 130, ...AS_BEFORE });
      isGivenBack(terminal);
    },
  );

  it('has what was answered in the record, and answers on', async () => {
    const terminal = practise();
    await terminal.shows(DRILL);
    await terminal.type(ENTER, /of 100|Before this paint goes near/);
    if (terminal.text.includes('Before this paint')) await terminal.type(ENTER, /of 100/);
    const home = terminal.env['HOME'] ?? '';
    const kept = (): number => {
      const files = readdirSync(home, { recursive: true, encoding: 'utf8' }).filter((name) =>
        name.endsWith('.jsonl'),
      );
      return files.flatMap((name) => readFileSync(join(home, name), 'utf8').match(/"drill"/g) ?? []).length;
    };
    await terminal.type(CTRL_Z, 'program has stopped');
    await terminal.stopped();
    expect(kept()).toBe(1);
    await terminal.goOn(/of 100/);
    await terminal.type(ENTER, /2 of 8/);
    await terminal.type(CTRL_C, '1 answer kept in your record.');
    expect(kept()).toBe(1);
  });

  it('reads its screen again to a screen reader, below what the shell wrote', async () => {
    const terminal = practise({ env: { INK_SCREEN_READER: 'true' }, rows: 60 });
    await terminal.shows('Now choosing second paint');
    await terminal.type(CTRL_Z, 'program has stopped');
    expect(await terminal.stopped()).toEqual(AS_BEFORE);
    await terminal.goOn(/icanon[\s\S]*Now choosing second paint/);
    await terminal.type(DOWN, /icanon[\s\S]*Now choosing second paint:[\s\S]*2 of/);
    expect(terminal.text.match(/Now choosing/g)).toHaveLength(2);
    expect(terminal.raw).not.toContain('\u001b[?1049h');
  });

  it('finds the clock of a quiz further on', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'mudlark-stopped-'));
    const handout = join(folder, 'week3.quiz.yaml');
    writeFileSync(handout, someHandoutText(2, { timePerQuestionSeconds: 5 }));
    const terminal = new Terminal({ args: ['quiz', 'sit', handout, '--name', 'Ana'], jobs: true });
    await terminal.shows('Enter begin');
    await terminal.type(ENTER, /start the clock|Enter/);
    await terminal.type(ENTER, /lay|take/);
    const over = Date.now() + 6_000;
    await terminal.type(CTRL_Z, 'program has stopped');
    await terminal.stopped();
    await terminal.until(
      () => Date.now() > over,
      () => 'the clock stands',
    );
    await terminal.goOn(/Time is up for question 1/);
  });

  it('goes on with the line that was begun, where lines are typed', async () => {
    const env = cleanEnv();
    mudlark(['box', 'new', 'mine', '--paints', 'burnt-sienna,ultramarine-blue,prussian-blue'], env);
    const terminal = new Terminal({ args: ['dried', '--box', 'mine'], env, jobs: true, rows: 40 });
    await terminal.shows('1. The wash alone: ');
    await terminal.type('4', 'alone: 4');
    await terminal.type(CTRL_Z, 'program has stopped');
    expect(await terminal.stopped()).toEqual(AS_BEFORE);
    isGivenBack(terminal);
    await terminal.goOn(/program has stopped[\s\S]*1\. The wash alone: 4$/m);
    await terminal.type('.5', 'alone: 4.5');
    expect(terminal.marksPastes).toBe(true);
    await terminal.type(ENTER, '1. With what was stirred in: ');
    await terminal.type(CTRL_C, 'program ended with 130');
    isGivenBack(terminal);
  });

  it('goes on by itself where no shell could tell it to', async () => {
    const terminal = practise({ jobs: false });
    await terminal.shows(DRILL);
    terminal.raw = '';
    await terminal.type(CTRL_Z, DRILL);
    await terminal.until(
      () => terminal.raw.includes('\u001b[?1049h'),
      () => `not back:\n${terminal.text}`,
    );
    await terminal.type(DOWN, /❯ 2/);
    await terminal.type(CTRL_C, 'program ended with 130');
  });
});
