/** What is pasted never acts as keys. The marks of a paste: xterm, "Control Sequences", bracketed paste mode. */
import { mkdtempSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { cleanEnv, mudlark } from '../program/run-cli.js';
import { someHandoutText } from '../quiz/fixture.js';
import { CTRL_C, closeAll, ENTER, Terminal } from './terminal.js';

afterEach(closeAll);

/** Pauses that tell one read from the next are part of what is tested. */
const passes = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

const IGNORED = 'Nothing was pasted';
const HOME = 'Mixing bench';
/** Keys that would all do something at home: digits, letters, Enter, Ctrl+C, Esc. */
const KEYS = '3q?\r\n\u0003\u001b[B1';

describe('pasted text', () => {
  it('is asked to be marked as long as screens are up', async () => {
    const terminal = new Terminal();
    await terminal.shows(HOME);
    expect(terminal.marksPastes).toBe(true);
    await terminal.type('q', 'program ended with 0');
    await terminal.ended();
    expect(terminal.marksPastes).toBe(false);
  });

  it('does nothing on a screen without a field but to be told, once', async () => {
    const terminal = new Terminal();
    await terminal.shows(HOME);
    const before = terminal.lines().filter((line) => line.trim() !== '');
    await terminal.paste(KEYS, IGNORED);
    expect(terminal.text.match(/Nothing was pasted/g)).toHaveLength(1);
    await terminal.paste('q', IGNORED);
    expect(terminal.lines().filter((line) => line.trim() !== '' && !line.includes(IGNORED))).toEqual(before);
    await terminal.type('3', '30 %');
    expect(terminal.text).not.toContain(IGNORED);
  });

  it('does nothing in a menu that is read aloud', async () => {
    const terminal = new Terminal({ env: { INK_SCREEN_READER: 'true' } });
    await terminal.shows(HOME);
    await terminal.paste('3\r', IGNORED);
    await terminal.paste(`8${ENTER}`, IGNORED);
    await terminal.type('q', 'program ended with 0');
  });

  it('goes as text, clean and cut, into the search and the name of the bench', async () => {
    const terminal = new Terminal();
    await terminal.shows(HOME);
    await terminal.type('3', '30 %');
    await terminal.type(ENTER, /search/);
    await terminal.paste('prussian\u0007 \r\n bl\u001b[31mue', 'prussian blue');
    await terminal.type(ENTER, /Prussian blue|prussian blue/);
    await terminal.type('n', 'its name');
    await terminal.paste(`Hafenmauer größer ${'x'.repeat(100)}`, `Hafenmauer größer ${'x'.repeat(22)}`);
    expect(terminal.text).not.toContain('x'.repeat(23));
    await terminal.type(ENTER, /Hafenmauer/);
  });

  it('does nothing at 100 kB, and the next key works', async () => {
    const terminal = new Terminal();
    await terminal.shows(HOME);
    await terminal.paste('3q?\r1jk'.repeat(15_000), IGNORED);
    await terminal.type('3', '30 %');
  });

  // Again where this machine had no time for a tenth of a second: what is not marked has come in too long pauses then.
  it('does nothing in whatever pieces it comes', { retry: 2 }, async () => {
    const terminal = new Terminal();
    await terminal.shows(HOME);
    for (const reads of [
      // In several reads; with the beginning of an end in it; with an end in it; unfinished; not marked, in one read and in several.
      ['\u001b', '[20', '0~qqq', 'q\r\u0003', '\u001b[2', '01', '~'],
      ['\u001b[200~q\u001b[201q', '[201~q\u001b[2', '00~q\u001b[201~'],
      ['\u001b[200~a\u001b[201~q\r\u0003\u001b[201~'],
      ['\u001b[200~q\r\u0003'],
      ['quit here, quickly\rq\r8\r'],
      ['quit here, quickly\r', 'q\r8', '\r'],
    ]) {
      for (const read of reads) {
        terminal.send(read);
        await passes(20);
      }
      await terminal.shows(IGNORED);
      // What comes within a tenth of a second of an unmarked paste belongs to it.
      await passes(300);
      await terminal.type('j', /❯ 2/);
      expect(terminal.text).not.toContain(IGNORED);
      await terminal.type('k', /❯ 1/);
    }
    await terminal.type(CTRL_C, 'program ended with 130');
  });

  it('is not what fast hands type', async () => {
    const terminal = new Terminal();
    await terminal.shows(HOME);
    await terminal.type('3', '30 %');
    await terminal.type('jjjj', /❯ way/);
    await terminal.type('k'.repeat(40), /❯ .*burnt sienna/);
    expect(terminal.text).not.toContain(IGNORED);
  });
});

describe('a text pasted where a line is typed', () => {
  it('stands in it and ends none, at 100 kB as well', async () => {
    const env = cleanEnv();
    mudlark(['box', 'new', 'mine', '--paints', 'burnt-sienna,ultramarine-blue,prussian-blue'], env);
    const terminal = new Terminal({ args: ['dried', '--box', 'mine'], env, columns: 120, rows: 40 });
    await terminal.shows('1. The wash alone: ');
    expect(terminal.marksPastes).toBe(true);
    await terminal.paste('lab(40\r\n\u001b[A 10\u0003 20)', /1\. The wash alone: lab\(40 10 20\)$/m);
    await terminal.type(ENTER, '1. With what was stirred in: ');
    await terminal.paste('4\r\u001b[A'.repeat(25_000), /stirred in: 4 4 4/);
    await terminal.type(ENTER, 'nothing that dried');
    await terminal.type(`lab(30 5 10)${ENTER}`, '2. The wash alone: ');
    // Nothing of before comes back by a key.
    await terminal.type(`\u001b[A5${ENTER}`, '2. With what was stirred in: ');
    expect(terminal.text).toMatch(/2\. The wash alone: 5$/m);
    await terminal.type(CTRL_C, 'program ended with 130');
    expect(terminal.marksPastes).toBe(false);
  });

  it('types in a sheet from paper, without answering for the next', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'mudlark-paste-'));
    const handout = join(folder, 'week.quiz.yaml');
    writeFileSync(handout, someHandoutText(2));
    const terminal = new Terminal({ args: ['quiz', 'enter', handout], rows: 40 });
    await terminal.shows(/name/i);
    const asked = terminal.text.trimEnd().split('\n').at(-1) ?? '';
    await terminal.paste('Ann\r\nAB\r\n', `${asked.trimEnd()} Ann AB`);
    await terminal.type(CTRL_C, 'program ended with');
    expect(readdirSync(folder)).toEqual(['week.quiz.yaml']);
  });
});

it('a key that means nothing here, such as Ctrl+F1, is passed over', async () => {
  const terminal = new Terminal();
  await terminal.shows('Mixing bench');
  // Ctrl+F1, Ctrl+F5 and Ctrl+F13 as xterm sends them; Ink 6 has no name for the first and the last, and ends with a fault.
  terminal.send('\u001b[1;5P\u001b[15;5~\u001b[25;5~');
  await terminal.type('3', '30 %');
  await terminal.type('\u001b', 'Practise');
  await terminal.type('q', 'program ended with 0');
});
