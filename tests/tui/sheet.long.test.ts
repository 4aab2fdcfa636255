/** The picture of a scene on the screens of practice, at every size and with every kind of drill that shows one. */
import { afterEach, it } from 'vitest';
import { everywhere, expectInside } from './inside.js';
import { drillCalled, withPicture } from './scenes.js';
import { ENTER, strike } from './stage.js';

afterEach(strike);

const DRILLS = ['harbour-roof-shade', 'ways-kiln-one-paint', 'passage-pear-tree', 'shade-net-swatches'].map(
  drillCalled,
);
everywhere((size, env) => {
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
