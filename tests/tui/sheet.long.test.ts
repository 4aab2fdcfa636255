/** The picture of a scene on the screens of practice, at every size and with every kind of drill that shows one. */
import { afterEach, describe, it } from 'vitest';
import { ASCII, expectInside, PLAIN, SIXTEEN } from './inside.js';
import { FULL } from './routes.js';
import { drillCalled, withPicture } from './scenes.js';
import { ENTER, strike } from './stage.js';

afterEach(strike);

const DRILLS = ['harbour-roof-shade', 'ways-kiln-one-paint', 'passage-pear-tree', 'shade-net-swatches'].map(
  drillCalled,
);
const SIZES = [
  { columns: 60, rows: 18 },
  { columns: 60, rows: 20 },
  { columns: 80, rows: 24 },
  { columns: 100, rows: 30 },
  { columns: 120, rows: 40 },
  { columns: 200, rows: 60 },
];

describe.each([
  ['all colours', FULL],
  ['256 colours', { ...FULL, FORCE_COLOR: '2' }],
  ['16 colours', SIXTEEN],
  ['no colours', PLAIN],
  ['ASCII', ASCII],
])('with %s', (_, env) => {
  describe.each(SIZES)('at $columns x $rows', (size) => {
    it.each(DRILLS)('$title keeps inside the screen', async (drill) => {
      const deps = withPicture(drill);
      for (const { name, keys, shows } of [
        { name: 'drill', keys: [], shows: drill.title.slice(0, 10) },
        { name: 'result', keys: [ENTER], shows: ' of 100' },
        { name: 'sheet', keys: ['v'], shows: /Esc back/ },
        { name: 'sheet of a result', keys: [ENTER, 'v', 'b'], shows: /best: / },
      ]) {
        await expectInside({ name, deps, keys, shows }, size, env);
        strike();
      }
    });
  });
});
