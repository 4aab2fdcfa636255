/** `mudlark quiz enter` on files and by hand. */
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough, Readable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { type EnterOptions, enterCommand } from '../../src/commands/quiz-enter.js';
import { DataError, MudlarkError, UsageError } from '../../src/errors.js';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { openSitting } from '../../src/quiz/files/sitting-file.js';
import { letteredHandout } from '../../src/quiz/lettered.js';
import { sheetCode } from '../../src/quiz/paper/index.js';
import { lettersIn } from '../../src/quiz/paper-entry.js';
import { NINE, sittingOf, someHandout, someHandoutText } from './fixture.js';

const handout = someHandout(6);
const letters = letteredHandout(handout);

describe('quiz enter', () => {
  const room = () => {
    const folder = mkdtempSync(join(tmpdir(), 'mudlark-paper-'));
    const path = join(folder, 'week3.quiz.yaml');
    writeFileSync(path, someHandoutText(6));
    const run = (text: string, options: EnterOptions = {}) =>
      enterCommand(path, options, {
        input: Readable.from([Buffer.from(text)]),
        output: new PassThrough(),
        now: () => NINE,
      });
    const files = () =>
      readdirSync(folder)
        .filter((file) => file.endsWith('.answers.json'))
        .sort();
    return { folder, path, run, files };
  };

  it('writes a file for each student, says what it did not take, and does it twice without harm', async () => {
    const { run, files, folder } = room();
    const first = await run('Ann Lee; AAAAAA\nBo; AB\n../../evil; AAAAAA\n');
    expect(first.refused).toBe(1);
    expect(first.text).toContain('input, line 2: 2 letters for 6 questions');
    expect(files()).toHaveLength(2);
    expect(files()[0]).toBe('week3.ann-lee.answers.json');
    expect(files()[1]).toMatch(/^week3\.evil_[0-9a-f]{8}\.answers\.json$/);
    const before = readFileSync(join(folder, 'week3.ann-lee.answers.json'), 'utf8');
    expect((await run('ann lee; AAAAAA')).text).toContain('as before');
    expect((await run('Ann Lee; ABAAAA')).text).toContain('add --force');
    expect(readFileSync(join(folder, 'week3.ann-lee.answers.json'), 'utf8')).toBe(before);
    expect((await run('Ann Lee; ABAAAA', { force: true })).text).toContain('replaced');
  });

  it('leaves a sheet typed in alone when its student comes to sit on a screen', async () => {
    const { run, path } = room();
    await run('Ann; AAAAA-');
    expect(() => openSitting(path, handout, 'Ann', NINE)).toThrow(/typed in from paper/);
  });

  it('never writes over a sitting from a screen, nor over anything else', async () => {
    const { run, folder } = room();
    const path = join(folder, 'week3.ann.answers.json');
    for (const text of [sittingText(sittingOf(handout, 'Ann', [])), 'not a sitting']) {
      writeFileSync(path, text);
      const { refused } = await run('Ann; AAAAAA', { force: true });
      expect(refused).toBe(1);
      expect(readFileSync(path, 'utf8')).toBe(text);
    }
  });

  it('refuses the letters of other sheets, an empty table and what is no text', async () => {
    const { run } = room();
    await expect(run('Ann; AAAAAA', { sheet: 'ZZZZ' })).rejects.toThrow(/those of sheets that bear/);
    expect((await run('Ann; AAAAAA', { sheet: sheetCode(letters).toLowerCase() })).refused).toBe(0);
    await expect(run('\n\n')).rejects.toThrow(DataError);
    const bytes = (chunk: Buffer) => ({
      input: Readable.from([chunk]),
      output: new PassThrough(),
      now: () => NINE,
    });
    const { path } = room();
    await expect(enterCommand(path, {}, bytes(Buffer.from([0xff, 0xfe, 0x41])))).rejects.toThrow(/UTF-8/);
    await expect(enterCommand(path, {}, bytes(Buffer.alloc(600_000, 'A')))).rejects.toThrow(/larger/);
    const terminal = Object.assign(Readable.from([]), { isTTY: true });
    await expect(enterCommand(path, {}, { ...bytes(Buffer.alloc(0)), input: terminal })).rejects.toThrow(
      UsageError,
    );
    await expect(enterCommand(path, { from: join(path, 'none') }, bytes(Buffer.alloc(0)))).rejects.toThrow(
      MudlarkError,
    );
  });

  it('is typed by hand, and keeps half a sheet when it is left', async () => {
    const { path, files, folder } = room();
    const input = Object.assign(new PassThrough(), { isTTY: true });
    const output = Object.assign(new PassThrough(), { isTTY: true, columns: 60 });
    let shown = '';
    output.on('data', (chunk) => {
      shown += String(chunk);
    });
    const done = enterCommand(path, {}, { input, output, now: () => NINE });
    const type = async (line: string, until: string) => {
      input.write(`${line}\r`);
      await expect.poll(() => shown).toContain(until);
    };
    await expect.poll(() => shown).toContain('Name 1: ');
    await type('Ann Lee', '1 of 6: ');
    await type('AB-AAA', '5 of 6 answered');
    expect(files()).toEqual(['week3.ann-lee.answers.json']);
    await type('Bo', 'Name 2: ');
    await type('AA', '3 of 6: ');
    input.end();
    const { text, isLeft } = await done;
    expect(isLeft).toBe(true);
    expect(text).toContain('Bo is kept with AA');
    const kept = parseSitting(readFileSync(join(folder, 'week3.bo.answers.json'), 'utf8'), 'file');
    expect(kept.finished).toBeUndefined();
    expect(lettersIn(handout, letters, kept)).toEqual(['A', 'A']);
  });
});
