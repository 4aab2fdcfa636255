/** One program at a time: a lock file beside what is changed, made in one step (O_EXCL), left behind by nobody for long. */
import {
  closeSync,
  linkSync,
  openSync,
  renameSync,
  rmSync,
  type Stats,
  statSync,
  writeFileSync,
} from 'node:fs';
import { hostname } from 'node:os';
import { codeOf, DataError, faultOf, isFileFault } from '../errors.js';
import { jsonOf, membersOf } from '../text/json.js';
import { shownPath } from './faults.js';
import { readUsable } from './read.js';
import { PRIVATE } from './write.js';

/** How long it is waited for, and how long a lock is believed whose program cannot be asked, ms. */
const PATIENCE_MS = 30_000;
const OLD_MS = 300_000;
const PAUSE_MS = 20;
const MOST_BYTES = 1000;

const sleeper = new Int32Array(new SharedArrayBuffer(4));

/** Makes the lock file. @returns false when there is one */
function taken(path: string): boolean {
  try {
    const fd = openSync(path, 'wx', PRIVATE);
    try {
      writeFileSync(fd, JSON.stringify({ pid: process.pid, host: hostname() }));
    } finally {
      closeSync(fd);
    }
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw error;
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // EPERM: it runs, and is somebody else's.
    return codeOf(error) !== 'ESRCH';
  }
}

/** Whether the program that made the lock has ended, or has held it for longer than any work takes. */
function isStale(path: string, { mtimeMs }: Stats): boolean {
  if (Date.now() - mtimeMs > OLD_MS) return true;
  const { pid, host } = membersOf(jsonOf(readUsable(path, MOST_BYTES) ?? '')) ?? {};
  return host === hostname() && typeof pid === 'number' && !isRunning(pid);
}

/** Takes a stale lock away. Of two programs that want to, the rename lets one through. */
function clear(path: string, stale: Stats): void {
  const away = `${path}.${process.pid}`;
  try {
    renameSync(path, away);
    // Another program cleared it and has made its own: that one goes back.
    if (statSync(away).ino !== stale.ino) linkSync(away, path);
  } catch (error) {
    // Another program was first.
    if (!isFileFault(error)) throw error;
  } finally {
    rmSync(away, { force: true });
  }
}

/**
 * Does work while no other program that asks for the same lock does.
 * @param patienceMs how long the others are waited for
 * @throws DataError when another program does not end; the fault of the file system when no lock can be made
 */
export function withLock<T>(path: string, work: () => T, patienceMs = PATIENCE_MS): T {
  const until = Date.now() + patienceMs;
  while (!taken(path)) {
    const held = statSync(path, { throwIfNoEntry: false });
    if (held?.isDirectory()) throw faultOf('EISDIR');
    if (held !== undefined && isStale(path, held)) clear(path, held);
    else if (Date.now() > until)
      throw new DataError(
        `another program has been writing for long; if none runs, delete ${shownPath(path)}`,
      );
    else Atomics.wait(sleeper, 0, 0, PAUSE_MS);
  }
  try {
    return work();
  } finally {
    rmSync(path, { force: true });
  }
}
