/** A key that comes with the frame it belongs to, before anything else of the program has run, does what it does later. */
import { afterEach, expect, it } from 'vitest';
import { fakeDeps } from './fakes.js';
import { DOWN, ENTER, ESC, Stage, strike } from './stage.js';

afterEach(strike);

/** Sends each key as soon as a frame shows what it waits for. */
async function atOnce(
  stage: Stage,
  steps: readonly (readonly [shown: RegExp, keys: string])[],
): Promise<void> {
  const left = [...steps];
  const { write } = stage.out;
  stage.out.write = (frame) => {
    const next = left[0];
    if (next?.[0].test(frame.replace(/\u001b\[[0-9;]*m/g, ''))) {
      left.shift();
      queueMicrotask(() => stage.stdin.type(next[1]));
    }
    return write(frame);
  };
  await stage.type(['6'], /./);
  await expect.poll(() => left, { timeout: 5000 }).toEqual([]);
}

it('in a menu, on its screens, and where one program follows another', async () => {
  const stage = new Stage({ columns: 80, rows: 24 }, fakeDeps());
  await stage.shows('Mixing bench');
  await atOnce(stage, [
    [/scroll/, ESC],
    [/Esc quit/, '3'],
    [/THE MIXTURE, DRY/, ESC],
    [/Esc quit/, '2'],
    [/Enter practise it/, ESC],
    [/Esc quit/, '5'],
    [/❯ 1 Value scale/, `${DOWN}${DOWN}${DOWN}${DOWN}`],
    [/❯ 5 Back to home/, ENTER],
    [/Esc quit/, DOWN],
    [/❯ 2 /, DOWN],
    [/❯ 3 /, ENTER],
  ]);
  await stage.shows('THE MIXTURE, DRY');
});
