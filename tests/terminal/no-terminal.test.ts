import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { cleanEnv, mudlark } from '../program/run-cli.js';
import { someHandoutText } from '../quiz/fixture.js';
import { CTRL_C, closeAll, ENTER, Terminal } from './terminal.js';

afterAll(closeAll);

describe.concurrent('without a terminal', () => {
  it.each([[[]], [['practise']]])(
    '%j says so on one line, names commands to use instead, and exits with 2',
    (args) => {
      const { code, out, err } = mudlark(args);
      expect(code).toBe(2);
      expect(out).toBe('');
      expect(err.trim().split('\n')).toHaveLength(1);
      expect(err).toMatch(/terminal/);
      expect(err).toMatch(/grade|drills/);
    },
  );
});

describe.concurrent('a terminal that cannot move its cursor (TERM=dumb)', () => {
  it.each([[[]], [['practise']], [['quiz', 'sit']], [['quiz', 'room']]])(
    '%j says so, without a sequence',
    async (args) => {
      const handout = join(mkdtempSync(join(tmpdir(), 'mudlark-dumb-')), 'week.quiz.yaml');
      writeFileSync(handout, someHandoutText(2));
      const isQuiz = args[0] === 'quiz';
      const terminal = new Terminal({ args: isQuiz ? [...args, handout] : args, env: { TERM: 'dumb' } });
      expect((await terminal.ended()).code).toBe(2);
      expect(terminal.text.replace(/\s+/g, ' ')).toContain(
        'move the cursor and this terminal cannot (TERM is dumb)',
      );
      expect(terminal.raw).not.toContain('\u001b');
    },
  );

  it('is asked and told in plain lines', async () => {
    const env = { ...cleanEnv(), TERM: 'dumb' };
    mudlark(['box', 'new', 'mine', '--paints', 'burnt-sienna,ultramarine-blue,prussian-blue'], env);
    const asked = new Terminal({ args: ['dried', '--box', 'mine'], env, rows: 50 });
    await asked.shows('1. The wash alone: ');
    await asked.type(`4${ENTER}`, '1. With what was stirred in: ');
    await asked.type(CTRL_C, 'program ended with 130');
    const told = new Terminal({ args: ['mix', 'burnt-sienna:2', 'ultramarine-blue:1'], env });
    await told.ended();
    expect(asked.raw + told.raw).not.toContain('\u001b');
  });
});

describe.concurrent('a variable that is set to nothing', () => {
  it.each(['CI', 'CONTINUOUS_INTEGRATION'])('is no CI runner: %s', async (name) => {
    const terminal = new Terminal({ env: { [name]: '' } });
    await terminal.shows('Mixing bench');
    await terminal.type('q', 'program ended with 0');
  });

  it('is no NO_COLOR (no-color.org)', async () => {
    const terminal = new Terminal({
      args: ['practise', 'darken-bright', '--level', '2', '--seed', '1'],
      env: { NO_COLOR: '' },
    });
    await terminal.shows(/Enter lay it down/);
    expect(terminal.raw).toMatch(/\u001b\[48;2;\d+;\d+;\d+m/);
  });
});
