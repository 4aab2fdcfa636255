/** Sitting and room of the built program in a real pseudo-terminal. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { some } from '../cases.js';
import { mudlark } from '../program/run-cli.js';
import { SECRET, someHandoutText } from '../quiz/fixture.js';
import { CTRL_C, closeAll, DOWN, ENTER, ESC, Terminal } from './terminal.js';

let folder = '';
let handout = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'mudlark-quiz-'));
  handout = join(folder, 'week3.quiz.yaml');
  writeFileSync(handout, someHandoutText(3));
});
afterEach(closeAll);

const sit = (name: string, extra: object = {}): Terminal =>
  new Terminal({ args: ['quiz', 'sit', handout, '--name', name], ...extra });

interface SavedSitting {
  readonly events: readonly { readonly event: string; readonly answer?: Record<string, string> }[];
}

const saved = (file = 'week3.ann-lee.answers.json'): SavedSitting =>
  JSON.parse(readFileSync(join(folder, file), 'utf8')) as SavedSitting;

describe('quiz sit in a terminal', () => {
  it('has each choice on disk as soon as the screen shows it, and goes on after Ctrl+C where it was', async () => {
    const terminal = sit('Ann Lee');
    await terminal.shows('Enter begin');
    expect(terminal.isAlternate).toBe(true);
    await terminal.type(ENTER, /1 of 3 +○ not answered/);
    await terminal.type(DOWN, /❯ 2/);
    expect(saved().events.at(-1)).toMatchObject({ event: 'chosen', answer: { second: 'ultramarine-blue' } });
    await terminal.type(ENTER, /2 of 3/);
    expect(saved().events[2]).toMatchObject({ event: 'taken', answer: { second: 'ultramarine-blue' } });
    await terminal.type(CTRL_C, 'program ended with 130');
    expect(await terminal.ended()).toEqual({ code: 130, echo: true, canonical: true });
    expect(terminal.isAlternate).toBe(false);
    expect(terminal.isCursorShown).toBe(true);
    expect(terminal.text).toContain('1 of 3 answered');

    const again = sit('ann  LEE');
    await again.shows('1 of 3 answered');
    await again.type(ENTER, /2 of 3 +○ not answered/);
    await again.type(ENTER, /3 of 3/);
    await again.type(ENTER, 'press f to hand in');
    await again.type('f', 'Nothing can be changed afterwards');
    await again.type(ENTER, /points\. Open a result/);
    await again.type('q', 'program ended with 0');
    expect(saved().events.at(-1)?.event).toBe('handed-in');

    const third = sit('Ann Lee');
    await third.shows('is finished');
    expect((await third.ended()).code).toBe(1);
  });

  it('leaves the terminal clean and the sitting whole when it is killed', async () => {
    const terminal = sit('Ann Lee');
    await terminal.shows('Enter begin');
    await terminal.type(ENTER, /1 of 3/);
    await terminal.type(`${DOWN}${ENTER}`, /2 of 3/);
    terminal.kill('SIGTERM');
    expect(await terminal.ended()).toEqual({ code: 143, echo: true, canonical: true });
    expect(terminal.isAlternate).toBe(false);
    expect(saved().events.map(({ event }) => event)).toEqual(['begin', 'shown', 'taken', 'shown']);
    expect(readdirSync(folder).filter((name) => name.endsWith('.tmp'))).toEqual([]);
  });

  it('keeps students of unlike names apart, whatever is in the name', async () => {
    const names = some(['../../up', '🙂', 'Ann.Lee'], 2);
    for (const name of names) {
      const terminal = sit(name);
      await terminal.shows('Enter begin');
      await terminal.type(ENTER, /1 of 3/);
      await terminal.type(`${DOWN}${ENTER}`, /2 of 3/);
      await terminal.type(CTRL_C, 'program ended with 130');
    }
    const files = readdirSync(folder).filter((name) => name.endsWith('.answers.json'));
    const asFiles = ['week3.up_mark', 'week3.student_mark', 'week3.ann-lee_mark'];
    expect(files.map((name) => name.replace(/_[0-9a-f]{8}/, '_mark'))).toEqual(
      some(asFiles, 2)
        .map((name) => `${name}.answers.json`)
        .sort(),
    );
  });

  it('works without colours and for a screen reader', async () => {
    const plain = sit('Ann Lee', { env: { NO_COLOR: '1' } });
    await plain.shows('Enter begin');
    await plain.type(ENTER, /1 of 3/);
    expect(plain.raw).not.toMatch(/\u001b\[[34]8;/);
    await plain.type(CTRL_C, 'program ended with');
    const spoken = sit('Ben', { env: { INK_SCREEN_READER: 'true' } });
    await spoken.shows('Enter begin');
    expect(spoken.isAlternate).toBe(false);
    await spoken.type(ENTER, /Now choosing second paint: alizarin crimson/);
    await spoken.type(CTRL_C, 'program ended with 130');
  });
});

describe('quiz room in a terminal', () => {
  it('counts out of sight, keeps the counts after each vote, goes on with them, and mark reads them', async () => {
    const file = join(folder, 'week3.room.json');
    const counts = () =>
      JSON.parse(readFileSync(file, 'utf8')).questions as { offered: { first: number }[] }[];
    const terminal = new Terminal({ args: ['quiz', 'room', handout] });
    await terminal.shows('Enter count hands');
    await terminal.type(ENTER, 'Hands for A:');
    await terminal.type('12', /Hands for A: ●●/);
    expect(terminal.text).not.toMatch(/\b12\b|█/);
    await terminal.type(`${ENTER}9${ENTER}`, 'Hands for C:');
    expect(existsSync(file)).toBe(false);
    await terminal.type(ENTER.repeat(4), /Most hands: 12 of 21 for A/);
    expect(
      counts()[0]
        ?.offered.slice(0, 3)
        .map(({ first }) => first),
    ).toEqual([12, 9, 0]);
    await terminal.type('b', /of 100/);
    await terminal.type(ENTER, /2 of 3/);
    await terminal.type(ESC, 'Leave the quiz?');
    await terminal.type(ENTER, 'program ended with 0');
    expect(terminal.text).toMatch(/The counts are kept in week3\.room\.json/);
    expect(terminal.isAlternate).toBe(false);

    const again = new Terminal({ args: ['quiz', 'room', handout] });
    await again.shows(/week3\.room\.json has the counts of 1 of 3 questions/);
    await again.type(ENTER, /2 of 3/);
    await again.type(CTRL_C, 'program ended with 130');
    const other = new Terminal({ args: ['quiz', 'room', handout] });
    await other.shows('has the counts');
    await other.type('n', /1 of 3/);
    await other.type(`${ENTER}5${ENTER}`, 'Hands for B:');
    await other.type(ENTER.repeat(5), /5 of 5 for A/);
    await other.type(CTRL_C, 'program ended with 130');
    expect(readdirSync(folder).filter((name) => name.endsWith('.room.json'))).toEqual([
      'week3.2.room.json',
      'week3.room.json',
    ]);
    expect(counts()[0]?.offered[0]?.first).toBe(12);

    const marked = mudlark(['quiz', 'mark', handout, file]);
    expect([marked.code, marked.err]).toEqual([0, '']);
    expect(marked.out).toMatch(/of 21/);
  });
});

describe('results that the teacher keeps back', () => {
  it('are not shown when the quiz is handed in, and open from the released file', async () => {
    writeFileSync(handout, someHandoutText(2, { showResult: 'later' }, 'Week 3', SECRET));
    const terminal = new Terminal({ args: ['quiz', 'sit', handout] });
    await terminal.shows('Your name:');
    await terminal.type(`Ann Lee${ENTER}`, 'Enter begin');
    await terminal.type(ENTER, /1 of 2/);
    await terminal.type(ENTER, /2 of 2/);
    await terminal.type(ENTER, 'press f to hand in');
    await terminal.type('f', 'Nothing can be changed afterwards');
    await terminal.type(ENTER, 'program ended with 0');
    expect(terminal.text).toMatch(/your teacher shows the results later/);
    expect(terminal.text).not.toMatch(/points|of 100/);

    const answers = join(folder, 'week3.ann-lee.answers.json');
    const release = ['quiz', 'release', handout, answers, '--out', join(folder, 'results')];
    expect(mudlark(release).out).toMatch(
      /^Ann Lee: [\d.]+ of 3 points, written: week3\.ann-lee\.results\.json\n/,
    );
    expect(mudlark(release).err).toMatch(/there already.*--force/);
    const file = join(folder, 'results', 'week3.ann-lee.results.json');
    const opened = new Terminal({ args: ['quiz', 'sit', file] });
    await opened.shows(/points\. Open a result/);
    await opened.type(ENTER, /of 100/);
    await opened.type(CTRL_C, 'program ended with 130');

    const read = mudlark(['quiz', 'sit', file]);
    expect([read.code, read.err]).toEqual([0, '']);
    expect(read.out).toMatch(/^Week 3: results of Ann Lee\n[\s\S]*Best: /);
    expect(mudlark(['quiz', 'sit', answers]).err).toMatch(/holds a student's answers; name the handout/);
    writeFileSync(answers, readFileSync(answers, 'utf8').replace('Ann Lee', 'Ben Fox'));
    expect(mudlark(['quiz', 'mark', handout, answers]).out).toMatch(
      /Ben Fox[\s\S]*the file was changed after it was written: the student's name/,
    );
  });
});

describe('the quiz without a terminal', () => {
  it('says in one line what it needs, with exit code 2', () => {
    for (const args of [
      ['quiz', 'sit', handout, '--name', 'Ann'],
      ['quiz', 'room', handout],
      ['quiz', 'write'],
      ['quiz', 'sit', handout],
    ]) {
      const { code, out, err } = mudlark(args);
      expect([code, out]).toEqual([2, '']);
      expect(err).toMatch(/^mudlark: [^\n]+\n$/);
    }
  });

  it('writes, checks and marks; never replaces a file unasked', () => {
    const out = join(folder, 'new.quiz.yaml');
    const withoutSecret = (): string => readFileSync(out, 'utf8').replace(/^secret: [0-9a-f]{64}$/m, '');
    const write = [
      'quiz',
      'write',
      '--families',
      'darken-bright',
      '--count',
      '4',
      '--seed',
      '42',
      '--out',
      out,
    ];
    expect(mudlark(write).code).toBe(0);
    const text = withoutSecret();
    const secret = readFileSync(out, 'utf8');
    expect(mudlark(write).err).toMatch(/there already.*--force/);
    expect(mudlark([...write, '--force']).code).toBe(0);
    // The same seed makes the same quiz; the secret of its seals is another each time.
    expect(withoutSecret()).toBe(text);
    expect(readFileSync(out, 'utf8')).not.toBe(secret);
    const checked = mudlark(['quiz', 'check', out]);
    expect(checked.code).toBe(0);
    expect(checked.out + mudlark(['quiz', 'check', out, '--json']).out).not.toMatch(/best|trap|secret/);
    const key = join(folder, 'key.txt');
    expect(mudlark(['quiz', 'key', out, '--out', key]).out).toBe('written: key.txt\n');
    expect(readFileSync(key, 'utf8')).toMatch(/Best: .*: 1 of 1 \(mark 100\)/);
    expect(mudlark(['quiz', 'key', out, '--out', key]).err).toMatch(/there already.*--force/);
    expect(mudlark(['quiz', 'key', out, '--out', out, '--force']).err).toMatch(
      /read here and is never written/,
    );
    writeFileSync(join(folder, 'bad.json'), '{}');
    const marked = mudlark(['quiz', 'mark', out, join(folder, 'bad.json')]);
    expect(marked.code).toBe(1);
    expect(marked.out).toContain('bad.json: format is missing');
    expect(marked.err).toMatch(/1 answers file was refused/);
  });
});
