/** A reading held against the painting that was photographed. */
import { type Lab, painterStep } from '../../src/colour/index.js';
import type { PaintingReading } from '../../src/painting/types.js';
import type { Painting } from './scenes.js';

/** How far a reading is off. */
export interface Off {
  /** Steps, at the light end and at the dark. */
  readonly light: number;
  readonly dark: number;
  /** Of each mass, against what truly lies under its pixels. */
  readonly masses: readonly { readonly steps: number; readonly chroma: number; readonly share: number }[];
  /** Of each mass that lies in one area for nine tenths of it, against the colour of that area. */
  readonly areas: readonly { readonly steps: number; readonly chroma: number }[];
}

/** Step under which a share of the painting lies. */
function stepAt({ at, surfaces }: Painting, share: number): number {
  const counts = new Uint32Array(surfaces.length);
  for (const index of at) counts[index] = (counts[index] as number) + 1;
  const order = surfaces
    .map(({ colour }, index) => ({ step: colour.step, count: counts[index] as number }))
    .sort((one, other) => one.step - other.step);
  let sum = 0;
  for (const { step, count } of order) {
    sum += count;
    if (sum >= share * at.length) return step;
  }
  return order.at(-1)?.step as number;
}

/** Pixels from a border. */
const INSIDE = 4;

interface Mean {
  count: number;
  l: number;
  a: number;
  b: number;
  value: number;
}

const chroma = ({ count, a, b }: Mean): number => Math.hypot(a, b) / count;

/** Holds one against the other. */
export function against(reading: PaintingReading, painting: Painting, margin: number): Off {
  const { likeness, massAt, masses, range, area: on } = reading;
  // Where a share of the sheet lies on the painting.
  const [across, down] = [1 + 2 * margin, 1 + (2 * margin * painting.width) / painting.height];
  const within = (share: number, count: number): number =>
    Math.min(count - 1, Math.max(0, Math.floor(share * count)));
  const means = masses.map((): Mean => ({ count: 0, l: 0, a: 0, b: 0, value: 0 }));
  const inArea = masses.map(() => new Map<number, Mean>());
  for (let row = 0, pixel = 0; row < likeness.height; row++)
    for (let column = 0; column < likeness.width; column++, pixel++) {
      const u = on.x + ((column + 0.5) / likeness.width) * on.width;
      const v = on.y + ((row + 0.5) / likeness.height) * on.height;
      const x = within(0.5 + (u - 0.5) * across, painting.width);
      const y = within(0.5 + (v - 0.5) * down, painting.height);
      const there = y * painting.width + x;
      const { colour } = painting.surfaces[painting.at[there] as number] as Painting['surfaces'][number];
      const mass = massAt[pixel] as number;
      // Soft edges belong to no mass: neither here nor where its colour is read.
      const inside = [-INSIDE, INSIDE].every(
        (far) =>
          column + far < 0 ||
          column + far >= likeness.width ||
          (massAt[pixel + far] === mass && (massAt[pixel + far * likeness.width] ?? mass) === mass),
      );
      if (!inside) continue;
      const area = painting.area[there] as number;
      const own = inArea[mass] as Map<number, Mean>;
      if (!own.has(area)) own.set(area, { count: 0, l: 0, a: 0, b: 0, value: 0 });
      for (const mean of [means[mass] as Mean, own.get(area) as Mean]) {
        mean.count++;
        mean.l += colour.lab.l;
        mean.a += colour.lab.a;
        mean.b += colour.lab.b;
        mean.value += colour.value;
      }
    }
  return {
    light: range.light - stepAt(painting, 0.01),
    dark: range.dark - stepAt(painting, 0.99),
    masses: masses.map(({ colour, share }, at) => {
      const mean = means[at] as Mean;
      return {
        steps: colour.step - painterStep(mean.value / mean.count),
        chroma: colour.chroma - chroma(mean),
        share,
      };
    }),
    areas: masses.flatMap(({ colour }, at) => {
      const most = [...(inArea[at] as Map<number, Mean>).values()].sort(
        (one, other) => other.count - one.count,
      )[0] as Mean;
      if (most.count < 0.9 * (means[at] as Mean).count) return [];
      return [
        { steps: colour.step - painterStep(most.value / most.count), chroma: colour.chroma - chroma(most) },
      ];
    }),
  };
}

/** The colour read at a place of the likeness, the mean of a square of pixels around it. */
export function labAt({ likeness }: PaintingReading, x: number, y: number, reach = 4): Lab {
  const { width, height, lab } = likeness;
  const sum = [0, 0, 0];
  let count = 0;
  for (let row = Math.floor(y * height) - reach; row <= Math.floor(y * height) + reach; row++)
    for (
      let column = Math.floor(x * width) - reach;
      column <= Math.floor(x * width) + reach;
      column++, count++
    )
      for (let k = 0; k < 3; k++)
        sum[k] = (sum[k] as number) + (lab[3 * (row * width + column) + k] as number);
  const [l = 0, a = 0, b = 0] = sum.map((one) => one / count);
  return { l, a, b };
}
