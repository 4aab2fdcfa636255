import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { CTRL_C, closeAll, DOWN, ENTER, ESC, LEFT, RIGHT, Terminal, UP } from './terminal.js';

// Programs of several tests run at once: most of their time is waiting.
afterAll(closeAll);

const practise = (extra: object = {}): Terminal =>
  new Terminal({ args: ['practise', 'darken-bright', '--level', '2', '--seed', '1'], ...extra });
const DRILL = /Enter lay it down/;

/** Lays down whatever is chosen, past a caution where there is one. */
async function layDown(terminal: Terminal): Promise<void> {
  await terminal.type(ENTER, /of 100|Before this paint goes near/);
  if (terminal.text.includes('Before this paint')) await terminal.type(ENTER, /of 100/);
}

/** Every line of every record below a home. */
function recorded(home: string): string[] {
  const files = readdirSync(home, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.jsonl'),
  );
  return files
    .flatMap((name) => readFileSync(join(home, name), 'utf8').trim().split('\n'))
    .filter((line) => line.includes('"drill"'));
}

describe.concurrent('the program in a terminal', () => {
  it('starts at home in the alternate screen and leaves it clean on q', async () => {
    const terminal = new Terminal();
    await terminal.shows('Mixing bench');
    expect(terminal.isAlternate).toBe(true);
    await terminal.type('q', 'program ended with 0');
    expect(await terminal.ended()).toEqual({ code: 0, echo: true, canonical: true });
    expect(terminal.isAlternate).toBe(false);
    expect(terminal.isCursorShown).toBe(true);
  });

  it('takes a drill from the first key to the result, why and the next drill', async () => {
    const terminal = practise();
    await terminal.shows(DRILL);
    await terminal.type(DOWN, /❯ 2/);
    await terminal.type(UP, /❯ 1/);
    await terminal.type('j', /❯ 2/);
    await terminal.type('1', /❯ 1/);
    await terminal.type('?', 'Keys that work here');
    await terminal.type(ESC, DRILL);
    await layDown(terminal);
    expect(terminal.text).toMatch(/START[ ~]+YOURS/);
    await terminal.type('w', 'the mixture');
    await terminal.type(ENTER, /of 100/);
    await terminal.type('t', /try 2/);
    await terminal.type(ESC, /of 100/);
    await terminal.type(ENTER, /2 of 8/);
    await terminal.type(ESC, 'Leave this set?');
    await terminal.type(ESC, /2 of 8/);
    await terminal.type('q', 'Leave this set?');
    await terminal.type(ENTER, 'The set so far');
    await terminal.type(ENTER, /of 100/);
    await terminal.type(ENTER, 'The set so far');
    await terminal.type(ESC, 'Go on with the set');
    await terminal.type(ENTER, /2 of 8/);
  });

  it('has an answer in the record before its result is seen', async () => {
    const terminal = practise();
    await terminal.shows(DRILL);
    expect(recorded(terminal.env['HOME'] ?? '')).toHaveLength(0);
    await layDown(terminal);
    expect(recorded(terminal.env['HOME'] ?? '')).toHaveLength(1);
  });

  it('loses none of many arrows sent at once', async () => {
    const terminal = new Terminal();
    await terminal.shows('Mixing bench');
    await terminal.type('3', '30 %');
    await terminal.type(RIGHT.repeat(5), '55 %');
    await terminal.type(LEFT.repeat(10) + DOWN.repeat(3) + UP.repeat(2) + LEFT, /❯ .*1:4/);
    expect(terminal.text).toContain('at 5 %');
  });

  it('opens every entry of the home menu and comes back', async () => {
    const terminal = new Terminal();
    await terminal.shows('Mixing bench');
    for (const [key, shows] of [
      ['2', 'What to practise'],
      ['3', 'THE MIXTURE, DRY'],
      ['4', /^ Progress/m],
      ['5', 'Value scale'],
      ['6', 'How to read the screens'],
    ] as const) {
      await terminal.type(key, shows);
      await terminal.type(ESC, /Esc quit/);
    }
  });

  it('goes through the welcome once, and remembers it', async () => {
    const terminal = new Terminal({ welcomed: false });
    await terminal.shows('Welcome to Mudlark');
    await terminal.type(ENTER, '1 of 3');
    await terminal.type('1', '2 of 3');
    await terminal.type('2', '3 of 3');
    await terminal.type('1', 'worked example');
    await terminal.type(ENTER, /100 of 100/);
    await terminal.type(CTRL_C, 'program ended with 130');
    const again = new Terminal({ env: terminal.env, welcomed: false });
    await again.shows('Mixing bench');
  });
});

describe.concurrent('resizing', () => {
  it('goes to 60 x 20 and back, without a leftover and without clearing the scrollback', async () => {
    const terminal = practise();
    await terminal.shows(DRILL);
    await terminal.type(DOWN, /❯ 2/);
    terminal.resize(60, 20);
    await terminal.shows(/The lower$[\s\S]*❯ 2/m);
    expect(terminal.lines().at(-2)).toMatch(/keys/);
    expect(terminal.text.match(/START|Enter lay it down/g)?.length).toBeLessThanOrEqual(2);
    terminal.resize(80, 24);
    await terminal.shows(/The lower \S[\s\S]*❯ 2/);
    expect(terminal.text.match(/START|Enter lay it down/g)?.length).toBeLessThanOrEqual(2);
    expect(terminal.raw).not.toContain('\u001b[3J');
  });

  it('draws one line below the smallest size and recovers', async () => {
    const terminal = practise();
    await terminal.shows(DRILL);
    terminal.resize(50, 12);
    await terminal.shows('Mudlark needs 60 x 18; this is 50 x 12.');
    terminal.resize(120, 40);
    await terminal.shows(DRILL);
  });
});

describe.concurrent('ending', () => {
  it.each([
    ['the home screen', [], 'Mixing bench'],
    ['a drill', ['practise', 'darken-bright', '--level', '2', '--seed', '1'], DRILL],
  ] as const)('is clean on Ctrl+C from %s, with code 130', async (_, args, shows) => {
    const terminal = new Terminal({ args });
    await terminal.shows(shows);
    await terminal.type(CTRL_C, 'program ended with');
    expect(await terminal.ended()).toEqual({ code: 130, echo: true, canonical: true });
    expect(terminal.isAlternate).toBe(false);
    expect(terminal.isCursorShown).toBe(true);
  });

  it.each([
    ['SIGTERM', 143],
    ['SIGINT', 130],
    ['SIGHUP', 129],
  ] as const)('is clean on %s, with code %i', async (signal, code) => {
    const terminal = practise();
    await terminal.shows(DRILL);
    terminal.kill(signal);
    expect(await terminal.ended()).toEqual({ code, echo: true, canonical: true });
    expect(terminal.isAlternate).toBe(false);
    expect(terminal.isCursorShown).toBe(true);
  });

  it('tells on the normal screen how many answers were kept', async () => {
    const terminal = practise();
    await terminal.shows(DRILL);
    await layDown(terminal);
    await terminal.type(CTRL_C, '1 answer kept in your record.');
  });
});

describe.concurrent('killed outright', () => {
  it('leaves a terminal that echoes, shows its cursor and is out of the alternate screen', async () => {
    const terminal = practise();
    await terminal.shows(DRILL);
    await layDown(terminal);
    terminal.kill('SIGKILL');
    expect(await terminal.ended()).toMatchObject({ code: 137, echo: true, canonical: true });
    await terminal.until(
      () => !terminal.isAlternate && terminal.isCursorShown,
      () => 'the guard did not put the screen back',
    );
    expect(recorded(terminal.env['HOME'] ?? '')).toHaveLength(1);
  });
});

describe.concurrent('colour', () => {
  /** SGR sequences that set a colour. */
  const COLOUR = /\u001b\[[0-9;]*(?:3[0-8]|4[0-8]|9[0-7]|10[0-7])[0-9;]*m/;

  it('is full where the terminal has it', async () => {
    const terminal = practise();
    await terminal.shows(DRILL);
    expect(terminal.raw).toMatch(/\u001b\[48;2;\d+;\d+;\d+m/);
  });

  it.each([
    ['NO_COLOR', { env: { NO_COLOR: '1' } }],
    ['--no-color', { args: ['practise', 'darken-bright', '--level', '2', '--seed', '1', '--no-color'] }],
  ] as const)('is off with %s, and every paint has its words and value', async (_, extra) => {
    const terminal = practise(extra);
    await terminal.shows(DRILL);
    expect(terminal.raw).not.toMatch(COLOUR);
    expect(terminal.text).toMatch(/step \d/);
  });

  it('is said to be approximate with 256 colours', async () => {
    const terminal = practise({ env: { COLORTERM: '' } });
    await terminal.shows('Colours are approximate (256 only)');
    expect(terminal.raw).toMatch(/\u001b\[48;5;\d+m/);
  });
});

describe.concurrent('for a screen reader', () => {
  it('stays in the normal screen, without signs, and speaks the choice', async () => {
    const terminal = practise({ env: { INK_SCREEN_READER: 'true' } });
    await terminal.shows('Now choosing second paint');
    expect(terminal.isAlternate).toBe(false);
    expect(terminal.raw).not.toContain('\u001b[?1049h');
    expect(terminal.text).not.toMatch(/[█▄━❯●]/);
    await terminal.type(DOWN, /Now choosing second paint:[\s\S]*2 of/);
    await terminal.type(CTRL_C, 'program ended with');
    expect(await terminal.ended()).toEqual({ code: 130, echo: true, canonical: true });
  });
});
