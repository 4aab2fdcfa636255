/** Calls of the file system, watched or made to fail while some work is done. */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { faultOf } from '../../src/errors.js';

type Call =
  | 'closeSync'
  | 'fsyncSync'
  | 'linkSync'
  | 'mkdirSync'
  | 'readSync'
  | 'renameSync'
  | 'writeFileSync'
  | 'writeSync';
type Called = (...given: never[]) => unknown;

/** Does work with another call in the place of one. @param other makes it from the sound one */
export function whileCalling(call: Call, other: (sound: Called) => Called, work: () => void): void {
  const sound: Called = fs[call];
  const put = (called: Called): void => {
    Object.assign(fs, { [call]: called });
    syncBuiltinESMExports();
  };
  put(other(sound));
  try {
    work();
  } finally {
    put(sound);
  }
}

/** Does work while a call fails as a broken or a full disk has it fail. */
export function whileFailing(call: Call, code: string, work: () => void): void {
  const fail = (): never => {
    throw faultOf(code);
  };
  whileCalling(call, () => fail, work);
}

/** What work asks of the file system, in order; of a flush also what goes to the disk: `fsyncSync file`, `fsyncSync folder`. */
export function callsOf(work: () => void): string[] {
  const seen: string[] = [];
  const named = (call: Call, [fd]: readonly unknown[]): string =>
    call === 'fsyncSync' ? `${call} ${fs.fstatSync(fd as number).isFile() ? 'file' : 'folder'}` : call;
  const calls: readonly Call[] = ['fsyncSync', 'linkSync', 'renameSync', 'writeFileSync', 'writeSync'];
  const watched = calls.reduce(
    (inner, call) => () =>
      whileCalling(
        call,
        (sound) =>
          (...given) => {
            seen.push(named(call, given));
            return sound(...given);
          },
        inner,
      ),
    work,
  );
  watched();
  return seen;
}
