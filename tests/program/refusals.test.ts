import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CLI, cleanEnv, mudlark, mudlarkHere } from './run-cli.js';

const folder = (): string => mkdtempSync(join(tmpdir(), 'mudlark-refusals-'));

/** A pipe that somebody made: a rename over it would take its place. */
function pipeIn(place: string): string {
  const path = join(place, 'pipe');
  expect(spawnSync('mkfifo', [path]).status).toBe(0);
  return path;
}

function oneLine(err: string): string {
  expect(err.trimEnd().split('\n')).toHaveLength(1);
  return err;
}

const ENTRY = {
  v: 1,
  at: '2026-01-01T00:00:00.000Z',
  drill: 'harbour-roof-shade',
  family: 'darken-bright',
  level: 1,
  answer: { second: 'alizarin-crimson', amount: '1:4' },
  mark: 80,
  verdict: 'fair',
  hints: 0,
  try: 1,
  set: 's1',
  engine: '0.1.0',
};

/** A home whose learner has one answer. */
function homeWithAnswer(): Record<string, string> {
  const env = cleanEnv();
  const file = join(folder(), 'in.jsonl');
  writeFileSync(file, `${JSON.stringify(ENTRY)}\n`);
  expect(mudlark(['record', 'import', file], env).code).toBe(0);
  return env;
}

function withInput(args: readonly string[], env: Record<string, string>, input: string) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [CLI, ...args], {
    env,
    input,
    encoding: 'utf8',
  });
  return { code: status, out: stdout, err: stderr };
}

describe('names that are not known', () => {
  it.each([
    ['grade', 'zzzz'],
    ['pigments', 'show', 'xx'],
    ['record', 'exprt'],
    ['settings', 'foo'],
    ['quiz'],
  ])('are refused as it is built: %s %s %s', async (...args) => {
    const said = mudlark(args);
    expect(said.code).toBe(2);
    expect(said).toEqual(await mudlarkHere(args));
  });

  it.each([
    [
      ['mix', 'no-such-paint=1'],
      /no paint is called "no-such-paint"\. Nearest: [a-z-]+, [a-z-]+ and [a-z-]+\./,
    ],
    [['mix', 'phtalo-blue=1'], /Did you mean phthalo-blue-/],
    [['pigments', 'show', 'xx'], /no pigment is called "xx"\. Nearest: /],
    [['grade', 'zzzz'], /no drill is called "zzzz"\. Nearest: /],
    [['record'], /record needs a command; there are: export, import, reset/],
    [['record', 'exprt'], /record has no command "exprt".*Did you mean export/],
    [['pigments', 'shw', 'viridian'], /pigments has no command "shw".*Did you mean show/],
    [['settings', 'foo'], /settings has no command "foo"; there are: set/],
    [['quiz'], /quiz needs a command/],
    [['help', 'mixx'], /there is no command "mixx"\. Did you mean mix/],
    [
      ['grade', 'harbour-roof-shade', '--second', 'cadmium-red', '--amount', '1:1', '--set', '__proto__=x'],
      /no choice called __proto__/,
    ],
    [['quiz', 'write', '--families', ',', '--out', 'never.yaml'], /--families names no family/],
    [['progress', '--json', '--csv', '-'], /both print/],
  ])('are refused in one line: %j', async (args, message) => {
    const run = await mudlarkHere(args);
    expect(run.code).toBe(2);
    expect(run.out).toBe('');
    expect(oneLine(run.err)).toMatch(message);
  });

  it('help shows the help of a command', () => {
    expect(mudlark(['help']).out).toBe(mudlark(['--help']).out);
    expect(mudlark(['help', 'mix']).out).toBe(mudlark(['mix', '--help']).out);
  });
});

describe('files that are not plain', () => {
  it('are never replaced, even when asked to', () => {
    const pipe = pipeIn(folder());
    for (const args of [
      ['record', 'export', pipe, '--force'],
      ['progress', '--csv', pipe, '--force'],
      ['quiz', 'write', '--count', '1', '--out', pipe, '--force'],
    ]) {
      const run = mudlark(args);
      expect(run.code).toBe(1);
      expect(oneLine(run.err)).toMatch(/this is not a plain file/);
    }
    expect(spawnSync('test', ['-p', pipe]).status).toBe(0);
  });

  it('an endless device in place of the settings is passed over', () => {
    const env = cleanEnv();
    const config = join(env['XDG_CONFIG_HOME'] as string, 'mudlark');
    mkdirSync(config, { recursive: true });
    symlinkSync('/dev/zero', join(config, 'settings.json'));
    const run = mudlark(['settings'], env);
    expect(run.code).toBe(0);
    expect(oneLine(run.err)).toMatch(/this is a device or a pipe, not a plain file; the defaults are used/);
    expect(mudlark(['settings', 'set', 'palette', 'six'], env).code).toBe(1);
  });
});

describe('quiz mark', () => {
  it('writes over nothing that it reads, and either both outputs or none', () => {
    const at = folder();
    const quiz = join(at, 'week.quiz.yaml');
    expect(mudlark(['quiz', 'write', '--count', '1', '--seed', '1', '--out', quiz]).code).toBe(0);
    const answers = join(at, 'a.answers.json');
    writeFileSync(answers, '{}');
    const before = readFileSync(quiz, 'utf8');
    const [csv, html] = [join(at, 'a.csv'), join(at, 'a.html')];
    const read = mudlark(['quiz', 'mark', quiz, answers, '--csv', quiz, '--force']);
    expect([read.code, oneLine(read.err)]).toEqual([1, expect.stringMatching(/never written over/)]);
    expect(readFileSync(quiz, 'utf8')).toBe(before);
    const twice = mudlark(['quiz', 'mark', quiz, answers, '--csv', csv, '--html', csv, '--force']);
    expect([twice.code, oneLine(twice.err)]).toEqual([1, expect.stringMatching(/named for two outputs/)]);
    writeFileSync(html, 'mine');
    expect(mudlark(['quiz', 'mark', quiz, answers, '--csv', csv, '--html', html]).code).toBe(1);
    expect(existsSync(csv)).toBe(false);
    expect(readFileSync(html, 'utf8')).toBe('mine');
  });
});

describe('record reset', () => {
  it('asks of what is piped in, and says so when there is no answer', () => {
    const env = homeWithAnswer();
    const silent = withInput(['record', 'reset'], env, '');
    expect(silent.code).toBe(2);
    expect(oneLine(silent.err)).toMatch(/nothing was changed; --yes/);
    expect(withInput(['record', 'reset'], env, 'no\n').out).toBe('Nothing was changed.\n');
    expect(withInput(['record', 'reset'], env, 'yes\n').out).toMatch(
      /^A new record is begun; the old one is kept as /,
    );
  });
});

describe('JSON documents', () => {
  it('write invisible characters as escapes, and hold the same text', () => {
    const run = mudlark(['progress', '--json', '--learner', 'A\u202eB\u{e0041}']);
    expect(run.out).not.toMatch(/[\p{Cf}\u007f-\u009f]/u);
    expect((JSON.parse(run.out) as { learner: string }).learner).toBe('A\u202eB\u{e0041}');
  });

  it('stay the only thing printed beside a table', () => {
    const csv = join(folder(), 'p.csv');
    const run = mudlark(['progress', '--json', '--csv', csv]);
    expect(run.code).toBe(0);
    expect((JSON.parse(run.out) as { written: string[] }).written).toEqual(['written: p.csv']);
    expect(existsSync(csv)).toBe(true);
  });
});
