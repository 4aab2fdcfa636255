/** Which mixtures are asked for. The data are the program's own predictions (see recovery.ts). */
import { describe, expect, it } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { mixturesToAsk, toldBy } from '../../src/readings/index.js';
import { strengthOf, type Wash, washLoads } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';
import { painted } from './recovery.js';

const boxOf = (id: string) => STUDIO.palettes.find((palette) => palette.id === id)?.pigments ?? [];
const NO_HAND = { noise: 0, offset: 0, water: 0 };
const widthAfter = (washes: readonly Wash[], ids: readonly string[]): number => {
  const { tubes } = toldBy(STUDIO, painted(washes, new Map(), NO_HAND, seededDraw(1)));
  return ids.reduce((sum, id) => {
    const [low, high] = tubes.find((tube) => tube.id === id)?.interval ?? [1 / 4, 4];
    return sum + Math.log(high / low);
  }, 0);
};

describe('the mixtures that are asked for', () => {
  const ids = boxOf('six');
  const { mixtures, silent } = mixturesToAsk(STUDIO, ids, 'value', { readings: [], count: 3 });

  it('are different washes of the box, no thicker than a masstone, with a patch that moves', () => {
    expect(new Set(mixtures.map(({ wash }) => JSON.stringify(wash))).size).toBe(3);
    for (const { wash, moves } of mixtures) {
      const used = [...Object.keys(wash.paints), ...Object.keys(wash.add ?? {})];
      expect(used.every((id) => ids.includes(id))).toBe(true);
      expect(strengthOf(washLoads(STUDIO, wash))).toBeLessThanOrEqual(1);
      expect(moves).toBeGreaterThanOrEqual(1);
    }
  });

  it('leave a yellow out for value, and not for CIELAB', () => {
    expect(silent).toEqual(['cadmium-yellow']);
    for (const { wash } of mixtures)
      expect({ ...wash.paints, ...wash.add }).not.toHaveProperty('cadmium-yellow');
    expect(mixturesToAsk(STUDIO, ids, 'lab', { readings: [], count: 3 }).silent).toEqual([]);
  });

  it('tell more than mixtures taken at random do', () => {
    const best = widthAfter(
      mixtures.map(({ wash }) => wash),
      ids,
    );
    const draw = seededDraw(5);
    for (let trial = 0; trial < 12; trial++) {
      const washes = Array.from({ length: 3 }, (): Wash => {
        const first = draw(ids.length - 1);
        const second = (first + 1 + draw(ids.length - 2)) % ids.length;
        const strength = 0.1 + draw(2) / 10;
        return {
          paints: { [ids[first] as string]: 1 },
          strength,
          add: { [ids[second] as string]: 2 ** (draw(3) - 2) },
        };
      });
      expect(widthAfter(washes, ids)).toBeGreaterThan(best);
    }
  });

  it('go to tubes that were not read yet', () => {
    const washes = mixtures.map(({ wash }) => wash);
    const next = mixturesToAsk(STUDIO, ids, 'value', {
      readings: painted(washes, new Map(), NO_HAND, seededDraw(1)),
      count: 3,
    });
    const read = new Set(
      [...washes, ...next.mixtures.map(({ wash }) => wash)].flatMap((w) => [
        ...Object.keys(w.paints),
        ...Object.keys(w.add ?? {}),
      ]),
    );
    for (const id of ids) if (!silent.includes(id)) expect(read.has(id), id).toBe(true);
  });

  it('are none where nothing moves', () => {
    const pale = ['cadmium-yellow', 'lemon-yellow'];
    expect(mixturesToAsk(STUDIO, pale, 'value', { readings: [], count: 2 })).toEqual({
      mixtures: [],
      silent: pale,
    });
  });
});
