/** A program that brings a record in. Arguments: the file, the learner, the moment to begin (ms). */
import { recordImport } from '../../src/commands/record.js';
import { openProfile } from '../../src/profile/index.js';

const [path = '', learner = '', at = '0'] = process.argv.slice(2);
const profile = await openProfile({ learner });
const sleeper = new Int32Array(new SharedArrayBuffer(4));
Atomics.wait(sleeper, 0, 0, Math.max(0, Number(at) - Date.now()));
process.stdout.write(recordImport(profile, path));
