import { RUN_FOLDER } from './temporary.js';

// Snapshots and colour levels must not depend on the machine that runs the tests.
delete process.env['CI'];
delete process.env['NO_COLOR'];

const { [RUN_FOLDER]: folder } = process.env;
if (folder !== undefined) process.env['TMPDIR'] = folder;
