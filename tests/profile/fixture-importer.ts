/** A program that brings a record in. Arguments: the file, the learner, a file to make when it is ready, a file whose coming begins it. */
import { existsSync, writeFileSync } from 'node:fs';
import { recordImport } from '../../src/commands/record.js';
import { openProfile } from '../../src/profile/index.js';

const [path = '', learner = '', ready = '', go = ''] = process.argv.slice(2);
const profile = await openProfile({ learner });
const sleeper = new Int32Array(new SharedArrayBuffer(4));
writeFileSync(ready, '');
while (!existsSync(go)) Atomics.wait(sleeper, 0, 0, 1);
process.stdout.write(recordImport(profile, path));
