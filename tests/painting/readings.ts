/** Readings of the demo pictures, made once: the sheet as the program draws it, before and after, as light. */

import { lightOfCode } from '../../src/colour/srgb.js';
import {
  type DemoState,
  demoSheet,
  type PaintingReading,
  type Photograph,
  readPainting,
} from '../../src/painting/index.js';
import { STUDIO } from '../studio.js';
import { PICTURES } from './scenes.js';

const known = new Map<string, PaintingReading>();

/** The light of a demo picture, every third pixel each way. */
function lightOf(id: string, state: DemoState): Photograph {
  const picture = PICTURES.find((each) => each.id === id);
  if (picture === undefined) throw new Error(`no picture ${id}`);
  const { width: across, height: down, data } = demoSheet(STUDIO, picture, state);
  const channels = data.length / (across * down);
  const by = 3;
  const [width, height] = [Math.floor(across / by), Math.floor(down / by)];
  const light = new Float32Array(3 * width * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let k = 0; k < 3; k++)
        light[3 * (y * width + x) + k] = lightOfCode(
          (data[channels * (by * y * across + by * x) + k] as number) / 255,
        );
  return { width, height, light };
}

/** What is read of a demo picture. */
export function demoReading(id: string, state: DemoState): PaintingReading {
  const key = `${id} ${state}`;
  const reading = known.get(key) ?? readPainting(STUDIO, lightOf(id, state), {});
  known.set(key, reading);
  return reading;
}
