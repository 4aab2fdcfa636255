import { describe, expect, it } from 'vitest';
import { colourIsForced, colourLevel, colourNote } from '../../src/tui/kit/colour-level.js';
import { ASCII, glyphsFor, UNICODE } from '../../src/tui/kit/glyphs.js';
import { noTerminalReason } from '../../src/tui/kit/terminal-check.js';
import { enterSession, type SessionHost } from '../../src/tui/kit/terminal-session.js';

const level = (
  env: Record<string, string>,
  setting: Parameters<typeof colourLevel>[0]['setting'] = 'auto',
  noColourFlag = false,
) => colourLevel({ env, setting, noColourFlag });

describe('the colour level', () => {
  const full = { TERM: 'xterm-256color', COLORTERM: 'truecolor' };

  it('goes by what the terminal says of itself', () => {
    expect(level(full)).toBe(3);
    expect(level({ TERM: 'xterm-256color' })).toBe(2);
    expect(level({ TERM: 'xterm' })).toBe(1);
    expect(level({ TERM: 'dumb' })).toBe(0);
    expect(level({})).toBe(0);
    expect(level({ TERM: 'xterm-direct' })).toBe(3);
  });

  it('puts the flag before NO_COLOR, that before FORCE_COLOR, that before the setting', () => {
    expect(level({ ...full, FORCE_COLOR: '3' }, 'full', true)).toBe(0);
    expect(level({ ...full, NO_COLOR: '1', FORCE_COLOR: '3' }, 'full')).toBe(0);
    expect(level({ ...full, FORCE_COLOR: '1' }, 'full')).toBe(1);
    expect(level(full, '256')).toBe(2);
    expect(level({ TERM: 'dumb' }, 'full')).toBe(3);
  });

  it('takes an empty NO_COLOR as not set (no-color.org), and FORCE_COLOR without a number as "some"', () => {
    expect(level({ ...full, NO_COLOR: '' })).toBe(3);
    expect(level({ TERM: 'dumb', FORCE_COLOR: '' })).toBe(1);
    expect(level({ ...full, FORCE_COLOR: 'true' })).toBe(3);
    expect(level({ ...full, FORCE_COLOR: '0' })).toBe(0);
  });

  it('knows when the setting cannot show, and says how far colours can be trusted', () => {
    expect(colourIsForced({ env: { NO_COLOR: '1' }, setting: 'auto' })).toBe(true);
    expect(colourIsForced({ env: full, setting: 'none' })).toBe(false);
    expect(colourNote(1)).toMatch(/approximate/);
    expect(colourNote(2)).toMatch(/256/);
    expect(colourNote(3)).toBe('');
  });
});

describe('the signs', () => {
  it('are ASCII on a dumb terminal, the Linux console, and outside UTF-8', () => {
    expect(glyphsFor({ TERM: 'dumb', LANG: 'C.UTF-8' })).toBe(ASCII);
    expect(glyphsFor({ TERM: 'linux', LANG: 'C.UTF-8' })).toBe(ASCII);
    expect(glyphsFor({ TERM: 'xterm', LANG: 'C' })).toBe(ASCII);
    expect(glyphsFor({ TERM: 'xterm', LANG: 'de_DE.utf8' })).toBe(UNICODE);
    expect(glyphsFor({ TERM: 'xterm', LC_ALL: 'POSIX', LANG: 'de_DE.utf8' })).toBe(ASCII);
    expect(glyphsFor({ TERM: 'xterm' })).toBe(UNICODE);
  });
});

describe('without a terminal', () => {
  const facts = { stdinIsTTY: true, stdoutIsTTY: true, env: {} };

  it('names what is missing and what to use instead, on one line', () => {
    expect(noTerminalReason(facts, 'mudlark grade')).toBeUndefined();
    for (const missing of [
      { stdinIsTTY: false },
      { stdoutIsTTY: false },
      { env: { CI: 'true' } },
      { env: { CI: '1' } },
      { env: { TERM: 'dumb' } },
    ]) {
      const reason = noTerminalReason({ ...facts, ...missing }, 'mudlark grade');
      expect(reason).toContain('mudlark grade');
      expect(reason).not.toContain('\n');
    }
  });

  it.each([{ CI: 'false', CONTINUOUS_INTEGRATION: '0' }, { CI: '' }, { CONTINUOUS_INTEGRATION: '' }])(
    'takes %j as no runner',
    (env) => {
      expect(noTerminalReason({ ...facts, env }, 'x')).toBeUndefined();
    },
  );
});

describe('the session', () => {
  class FakeHost implements SessionHost {
    written = '';
    readonly listeners = new Map<string, () => void>();
    exited: number | undefined;
    died: string | undefined;
    /** What was done, in its order. */
    done: string[] = [];
    stops = true;
    private waiting: (() => void)[] = [];
    write = (text: string): void => {
      this.written += text;
      this.done.push(text);
    };
    dieOf = (signal: string): void => {
      this.died = signal;
    };
    setRaw = (isRaw: boolean): void => void this.done.push(isRaw ? 'raw' : 'line');
    stop = (whole: string): void => void this.done.push(`stop the ${whole}`);
    refreshSize = (): void => void this.done.push('size');
    soon = (listener: () => void): (() => void) => {
      this.waiting.push(listener);
      return () => {
        this.waiting = this.waiting.filter((each) => each !== listener);
      };
    };
    later = this.soon;
    /** Time goes by. */
    wait = (): void => {
      for (const listener of this.waiting.splice(0)) listener();
    };
    drawing = { hold: () => void this.done.push('hold'), show: () => void this.done.push('show') };
    onSignal = (signal: string, listener: () => void): void => void this.listeners.set(signal, listener);
    offSignal = (signal: string): void => void this.listeners.delete(signal);
    onExit = (listener: () => void): void => void this.listeners.set('exit', listener);
    offExit = (): void => void this.listeners.delete('exit');
    exit = (code: number): void => {
      this.exited = code;
      this.listeners.get('exit')?.();
    };
  }

  it('enters and leaves the alternate screen once, and stops listening', () => {
    const host = new FakeHost();
    const session = enterSession(host, true, host.drawing);
    expect(host.written).toContain('\u001b[?1049h');
    session.leave();
    session.leave();
    expect(host.written.match(/\u001b\[\?1049l/g)).toHaveLength(1);
    expect(host.written).toContain('\u001b[?25h');
    expect(host.listeners.size).toBe(0);
  });

  it.each([
    ['SIGINT', 130],
    ['SIGTERM', 143],
    ['SIGHUP', 129],
  ])('leaves it on %s with code %i', (signal, code) => {
    const host = new FakeHost();
    enterSession(host, true, host.drawing);
    host.listeners.get(signal)?.();
    expect(host.exited).toBe(code);
    expect(host.written).toContain('\u001b[?1049l');
  });

  const LEFT = expect.stringContaining('\u001b[?1049l');
  const ENTERED = expect.stringContaining('\u001b[?1049h');

  it('puts all back before it stops, and goes on with the whole', () => {
    const host = new FakeHost();
    const session = enterSession(host, true, host.drawing);
    host.done = [];
    session.stop();
    session.stop();
    expect(host.done).toEqual(['hold', LEFT, 'line', 'stop the job']);
    expect(host.listeners.has('SIGTSTP')).toBe(false);
    host.done = [];
    host.listeners.get('SIGCONT')?.();
    expect(host.done).toEqual([]);
    host.wait();
    expect(host.done).toEqual(['raw', ENTERED, 'size', 'show']);
    host.wait();
    expect(host.done).toHaveLength(4);
    host.done = [];
    host.listeners.get('SIGTSTP')?.();
    expect(host.done).toEqual(['hold', LEFT, 'line', 'stop the process']);
  });

  it('comes back by itself where nothing could stop it', () => {
    const host = new FakeHost();
    enterSession(host, true, host.drawing).stop();
    host.done = [];
    host.wait();
    expect(host.done).toEqual(['raw', ENTERED, 'size', 'show']);
  });

  it('draws anew after a stop that nobody told it of, without entering twice', () => {
    const host = new FakeHost();
    enterSession(host, true, host.drawing);
    host.done = [];
    host.listeners.get('SIGCONT')?.();
    host.wait();
    expect(host.done).toEqual(['line', 'raw', expect.not.stringContaining('1049'), 'size', 'show']);
  });

  it('ends by the signal itself while it is stopped, before it would go on, and touches the terminal no more', () => {
    const host = new FakeHost();
    enterSession(host, true, host.drawing).stop();
    host.done = [];
    host.listeners.get('SIGCONT')?.();
    host.listeners.get('SIGTERM')?.();
    expect([host.died, host.exited]).toEqual(['SIGTERM', undefined]);
    host.listeners.get('exit')?.();
    host.wait();
    expect(host.done).toEqual([]);
  });

  it('does not stop where there is no such signal', () => {
    const host = new FakeHost();
    host.stops = false;
    const session = enterSession(host, true, host.drawing);
    host.done = [];
    session.stop();
    expect(host.done).toEqual([]);
  });

  it('never enters it for a screen reader', () => {
    const host = new FakeHost();
    enterSession(host, false, host.drawing).leave();
    expect(host.written).not.toContain('1049');
  });
});
