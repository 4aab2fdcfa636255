/** The optics and the search, against the raw arithmetic of one film. */
import { readColour } from '../../src/colour/reading.js';
import type { MixDrill } from '../../src/drills/mix/schema.js';
import { solve } from '../../src/drills/mix/search.js';
import { findPigment, loadsFromParts, PALETTES, type Pigment, predict } from '../../src/paints/index.js';
import { against, type BenchRow } from './base.js';

/** The arithmetic that one film of two paints needs, 38 bands, nothing else: the base. */
function bareLoop(a: Pigment, b: Pigment, la: number, lb: number, ground: number, out: Float64Array): void {
  for (let band = 0; band < 38; band++) {
    const k = la * (a.K[band] as number) + lb * (b.K[band] as number);
    const s = la * (a.S[band] as number) + lb * (b.S[band] as number);
    const g = Math.sqrt(k * (k + 2 * s));
    const e = Math.exp(-2 * g);
    const c = (g * (1 + e)) / (1 - e);
    const r = (s - ground * (s + k - c)) / (s + k - ground * s + c);
    out[band] = 0.01 + (0.99 * 0.4 * r) / (1 - 0.6 * r);
  }
}

/** Rows for the report. */
export function benchCore(): BenchRow[] {
  const a = findPigment('burnt-sienna') as Pigment;
  const b = findPigment('ultramarine-blue') as Pigment;
  const out = new Float64Array(38);
  const loads = loadsFromParts(
    [
      { pigment: a, parts: 4 },
      { pigment: b, parts: 1 },
    ],
    0.4,
  );
  const bare = () => bareLoop(a, b, 0.2, 0.1, 0.9, out);
  const film = against(() => predict(loads, 'puddle'), 20_000, bare, 20_000);
  const seen = against(() => readColour(predict(loads, 'puddle')), 20_000, bare, 20_000);
  const twelve = PALETTES.find(({ id }) => id === 'twelve');
  const drill: MixDrill = {
    kind: 'mix',
    id: 'bench',
    family: 'darken-bright',
    level: 5,
    title: 'bench',
    scene: 'bench',
    ask: 'bench',
    start: { paints: { 'burnt-sienna': 1 }, strength: 0.3 },
    goal: { value: [5, 6], chroma: 'bright' },
    tray: twelve?.pigments ?? [],
    amounts: ['1:32', '1:16', '1:8', '1:4', '1:2', '1:1'],
    ways: ['puddle'],
    strengths: [0.3, 0.6],
  };
  const search = against(() => solve(drill), 1, bare, 5_000);
  const base = 'the bare loop of one film';
  return [
    {
      name: 'one film predicted',
      ratio: film.ratio,
      base,
      atMost: 3,
      note: `${Math.round(1000 / film.ms)} a second`,
    },
    { name: 'one film predicted and read as a colour', ratio: seen.ratio, base },
    {
      name: 'best answer, twelve paints, 2 strengths',
      ratio: search.ratio,
      base,
      note: `50 ms would be ${Math.round((search.ratio * 50) / search.ms)} x here`,
    },
  ];
}
