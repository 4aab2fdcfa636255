/** The built program in a real pseudo-terminal, with an emulator that says what a person would see. */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type IPty, spawn } from '@lydell/node-pty';
import { Terminal as Emulator } from '@xterm/headless';
import { CLI, cleanEnv } from '../program/run-cli.js';

export interface TerminalOptions {
  readonly columns?: number;
  readonly rows?: number;
  readonly args?: readonly string[];
  readonly env?: Readonly<Record<string, string>>;
  /** Skips the welcome, as on every run but the first. */
  readonly welcomed?: boolean;
  /** The shell watches its jobs: one that stops is told, and goes on after Enter. */
  readonly jobs?: boolean;
}

/** Printed by the shell when the program has ended, with the exit code; `stty` follows. */
const ENDED = 'program ended with';

/** Printed by a shell with jobs when the program has stopped; `stty` follows. */
const STOPPED = 'program has stopped';

/** A program that starts beside other tests takes its time. */
const PATIENCE_MS = 60_000;

const later = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Has the welcome behind it. */
const welcome = (env: Record<string, string>): void => {
  execFileSync(process.execPath, [CLI, 'settings', 'set', 'welcomed', 'yes'], { env, stdio: 'ignore' });
};

let welcomedOnce: string | undefined;

/** A home with the welcome behind it, to be copied. */
function welcomedHome(): string {
  if (welcomedOnce !== undefined) return welcomedOnce;
  const env = cleanEnv();
  welcome(env);
  welcomedOnce = String(env['HOME']);
  return welcomedOnce;
}

export class Terminal {
  readonly env: Record<string, string>;
  /** Everything that was written, escape sequences and all. */
  raw = '';
  private readonly pty: IPty;
  /** Where the program's process id stands: the shell writes it and becomes the program. */
  private readonly pidFile = join(mkdtempSync(join(tmpdir(), 'mudlark-pid-')), 'pid');
  private readonly emulator: Emulator;

  constructor(options: TerminalOptions = {}) {
    const { columns = 80, rows = 24, args = [], env = {}, welcomed = true, jobs = false } = options;
    // A caller may hand in the environment of an earlier run, to come back to its home.
    this.env = {
      ...('HOME' in env ? {} : cleanEnv()),
      COLORTERM: 'truecolor',
      ...env,
    };
    if (welcomed && 'HOME' in env) welcome(this.env);
    else if (welcomed) cpSync(welcomedHome(), String(this.env['HOME']), { recursive: true });
    // A guard may put the line right a moment after the end, so the shell looks until it echoes or patience ends.
    const echoes = 'echoes() { case "$(stty -a)" in *" echo "*) ;; *) return 1 ;; esac; }';
    const settled = 'n=0; until echoes || [ $n -gt 100 ]; do n=$((n+1)); sleep 0.02; done';
    const program = `/bin/sh -c 'echo $$ > "$0"; exec "$@"' "$0" "$@"`;
    // A Ctrl+C that comes before the program listens for keys ends the program, not the shell, as in a person's shell.
    const told = `echo "${ENDED} $code"; ${settled}; stty -a`;
    // 128 and the number of SIGTSTP, SIGSTOP or SIGTTOU.
    const stops = `case $code in 148|146|147|150) echo "${STOPPED}"; stty -a; read -r word; fg;; *) break;; esac`;
    const run = jobs
      ? `set -m; ${program}; code=$?; while :; do ${stops}; code=$?; done`
      : `${program}; code=$?`;
    // The shell stays: what a terminal has not yet handed on is lost when nobody holds it any more.
    const command = `trap : INT; ${echoes}; ${run}; ${told}; read -r _`;
    this.pty = spawn('/bin/sh', ['-c', command, this.pidFile, process.execPath, CLI, ...args], {
      name: this.env['TERM'] ?? 'xterm-256color',
      cols: columns,
      rows,
      env: this.env,
    });
    this.emulator = new Emulator({ cols: columns, rows, allowProposedApi: true, scrollback: 500 });
    this.pty.onData((data) => {
      this.raw += data;
      this.emulator.write(data);
    });
    open.push(this);
  }

  /** What stands on the screen, line by line. */
  lines(): string[] {
    const { active } = this.emulator.buffer;
    return Array.from(
      { length: this.emulator.rows },
      (_, row) => active.getLine(active.baseY + row)?.translateToString(true) ?? '',
    );
  }

  get text(): string {
    return this.lines().join('\n');
  }

  /** Whether the terminal marks what is pasted. */
  get marksPastes(): boolean {
    return this.emulator.modes.bracketedPasteMode;
  }

  get isAlternate(): boolean {
    return this.emulator.buffer.active.type === 'alternate';
  }

  /** From the last sequence that said so. */
  get isCursorShown(): boolean {
    return this.raw.lastIndexOf('\u001b[?25h') >= this.raw.lastIndexOf('\u001b[?25l');
  }

  /** Waits until the screen shows something. */
  async shows(wanted: string | RegExp): Promise<void> {
    await this.until(
      () => (typeof wanted === 'string' ? this.text.includes(wanted) : wanted.test(this.text)),
      () => `waiting for ${wanted}, seeing:\n${this.text}`,
    );
  }

  /** Waits until something holds; looks again and again, never for a fixed time. */
  async until(holds: () => boolean, told: () => string): Promise<void> {
    const end = Date.now() + PATIENCE_MS;
    while (!holds()) {
      if (Date.now() > end) throw new Error(told());
      await later(15);
    }
  }

  /** Types, then waits for what it leads to. */
  async type(keys: string, wanted: string | RegExp): Promise<void> {
    this.pty.write(keys);
    await this.shows(wanted);
  }

  /** Pastes as a terminal does that marks what is pasted. */
  async paste(text: string, wanted: string | RegExp): Promise<void> {
    await this.type(`\u001b[200~${text}\u001b[201~`, wanted);
  }

  /** Types without waiting for anything. */
  send(keys: string): void {
    this.pty.write(keys);
  }

  resize(columns: number, rows: number): void {
    this.emulator.resize(columns, rows);
    this.pty.resize(columns, rows);
  }

  /** Ends the program, not the shell above it. */
  kill(signal: NodeJS.Signals): void {
    process.kill(Number(readFileSync(this.pidFile, 'utf8')), signal);
  }

  /** Waits for the end. @returns the exit code, and whether the terminal echoes what is typed */
  async ended(): Promise<{ code: number; echo: boolean; canonical: boolean }> {
    const { code, ...line } = await this.told(`${ENDED} (?<code>\\d+)`, 'the end');
    return { code: Number(code), ...line };
  }

  /** Waits until the program has stopped, of a shell with jobs. @returns how the line is set then */
  async stopped(): Promise<{ echo: boolean; canonical: boolean }> {
    const { code: _none, ...line } = await this.told(STOPPED, 'the stop');
    return line;
  }

  /** Has the shell go on with the program. */
  async goOn(wanted: string | RegExp): Promise<void> {
    this.raw = '';
    await this.type(ENTER, wanted);
  }

  private async told(
    sign: string,
    what: string,
  ): Promise<{ code?: string; echo: boolean; canonical: boolean }> {
    const shape = new RegExp(`${sign}[\\s\\S]*?(?<raw>-?)icanon[\\s\\S]*?[\\s;](?<silent>-?)echo[\\s;]`);
    await this.until(
      () => shape.test(this.raw),
      () => `waiting for ${what}, seeing:\n${this.text}`,
    );
    const { code, raw, silent } = this.raw.match(shape)?.groups ?? {};
    // The emulator takes what it is given a little later than it is given.
    await new Promise<void>((resolve) => this.emulator.write('', resolve));
    return { ...(code === undefined ? {} : { code }), canonical: raw !== '-', echo: silent !== '-' };
  }

  close(): void {
    this.pty.kill('SIGKILL');
    this.emulator.dispose();
  }
}

const open: Terminal[] = [];

/** Closes every terminal; for `afterEach`. */
export function closeAll(): void {
  for (const terminal of open.splice(0)) terminal.close();
}

export const ENTER = '\r';
export const ESC = '\u001b';
export const UP = '\u001b[A';
export const DOWN = '\u001b[B';
export const RIGHT = '\u001b[C';
export const LEFT = '\u001b[D';
export const CTRL_C = '\u0003';
export const CTRL_Z = '\u001a';
