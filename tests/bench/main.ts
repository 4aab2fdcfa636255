/** `npm run bench`: ratios, not times; run it on a quiet machine. `npm run bench core` runs one part. */
import { benchAnswer } from './answer.js';
import { printRows } from './base.js';
import { benchCore } from './core.js';
import { benchFrames } from './frames.js';
import { benchPainting } from './painting.js';
import { benchQuiz } from './quiz.js';
import { benchRecord } from './record.js';
import { benchStart } from './start.js';

const PARTS = {
  core: ['Optics and search', benchCore],
  answer: ['An answer', benchAnswer],
  frames: ['From a key to its frame', benchFrames],
  start: ['Start', benchStart],
  record: ['A record of 100,000 answers', benchRecord],
  quiz: ['A class of 200', benchQuiz],
  painting: ['A photograph of a painting', benchPainting],
} as const;

const only = process.argv[2];
if (only !== undefined && !Object.hasOwn(PARTS, only)) {
  console.error(`bench: there is no part "${only}"; there are ${Object.keys(PARTS).join(', ')}`);
  process.exit(2);
}
console.log('Mudlark benchmark: each figure is a multiple of a base measured in the same run.');
for (const [id, [title, run]] of Object.entries(PARTS)) {
  if (only === undefined || only === id) printRows(title, await run());
}
