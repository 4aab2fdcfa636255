/**
 * A program that answers drills until it is stopped: saves an answer, then prints that its result was shown.
 * Arguments: path of the record, name of the set, number of answers, milliseconds between them.
 */
import { writeSync } from 'node:fs';
import { appendAnswer } from '../../src/profile/record-append.js';

const [path = '', set = '', count = '1', pause = '0'] = process.argv.slice(2);
const sleeper = new Int32Array(new SharedArrayBuffer(4));

for (let n = 0; n < Number(count); n += 1) {
  appendAnswer(path, {
    v: 1,
    at: new Date().toISOString(),
    drill: `drill-${n}`,
    family: 'darken-bright',
    level: 1 + (n % 5),
    // Of uneven length, so that a cut falls anywhere.
    answer: { second: 'x'.repeat(1 + (n % 180)), amount: '1:4' },
    mark: 80,
    verdict: 'good',
    hints: 0,
    try: 1,
    set,
    engine: 'test',
  });
  writeSync(1, `shown ${set} drill-${n}\n`);
  if (Number(pause) > 0) Atomics.wait(sleeper, 0, 0, Number(pause));
}
