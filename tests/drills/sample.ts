/** Mix drills for the tests, complete but for what a test changes. */
import type { MixDrill } from '../../src/drills/kinds/mix/schema.js';
import { TOUCHES } from '../../src/drills/kinds/mix/schema.js';

/** An orange roof that has to go darker and stay bright; every choice of second paint, no cost of cohesion. */
export function roof(change: Partial<MixDrill> = {}): MixDrill {
  return {
    kind: 'mix',
    id: 'roof',
    family: 'darken-bright',
    level: 3,
    title: 'Roof',
    scene: 'A roof in the sun.',
    ask: 'Which second paint?',
    start: { paints: { 'burnt-sienna': 1 }, strength: 0.3 },
    goal: { aim: 'rich', value: [5.3, 6.3] },
    tray: ['alizarin-crimson', 'ultramarine-blue', 'sap-green', 'ivory-black'],
    amounts: TOUCHES,
    glazes: [],
    strokes: [],
    thins: [1],
    ...change,
  };
}

/** A drill with everything open: twelve paints, every amount stirred in, glazed and in strokes. */
export function wide(change: Partial<MixDrill> = {}): MixDrill {
  return roof({
    tray: [
      'lemon-yellow',
      'cadmium-yellow',
      'raw-sienna',
      'burnt-sienna',
      'cadmium-red',
      'alizarin-crimson',
      'ultramarine-blue',
      'cobalt-blue',
      'cerulean-blue',
      'prussian-blue',
      'sap-green',
      'ivory-black',
    ],
    glazes: [0.1, 0.2, 0.3, 0.5, 0.8],
    strokes: [0.1, 0.25, 0.4].flatMap((share) => [0.3, 0.65].map((strength) => ({ share, strength }))),
    ...change,
  });
}
