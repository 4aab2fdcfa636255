/** `npm run bench`: ratios, not times; run it on a quiet machine. */
import { printRows } from './base.js';
import { benchCore } from './core.js';
import { benchStart } from './start.js';

console.log('Mudlark benchmark: each figure is a multiple of a base measured in the same run.');
printRows('Optics and search', benchCore());
if (process.argv[2] !== 'core') printRows('Start', await benchStart());
