import { describe, expect, test } from 'vitest';
import { labToXyz } from '../../src/colour/lab.js';
import type { ColourReading } from '../../src/colour/reading.js';
import { readXyz } from '../../src/colour/reading.js';
import { whiteOf } from '../../src/colour/xyz.js';
import { lookAt } from '../../src/drills/look.js';
import { GOOD_MARK, isSeenApart } from '../../src/judgement/index.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { kindOf, STUDIO } from '../studio.js';
import { roof } from './sample.js';

const DRILLS = SHIPPED_DRILLS;
const keyOf = (answer: object): string => JSON.stringify(Object.entries(answer).sort());

describe('what a mixture looks like', () => {
  const drill = roof({ amounts: ['1:8', '1:4', '1:2', '1:1'] });
  const look = lookAt(STUDIO, drill);
  const seconds = look.traps.map(({ answer }) => answer['second']);

  test('start, bound and shading line are those of the goal', () => {
    const { start, best } = look;
    const [from, to] = [start, best.colour] as [ColourReading, ColourReading];
    expect(look.goal).toBe(drill.goal);
    // C·(L + 16)/(L0 + 16): D. Briggs, The Dimensions of Colour, section 10.1.
    expect(look.shadingLine).toBeCloseTo((from.chroma * (to.lab.l + 16)) / (from.lab.l + 16), 9);
    expect(look.hueBound).toBe(40);
  });

  test('every second paint tempts with the answer that comes nearest to good, and the worst neighbour stands last', () => {
    expect(new Set(seconds)).toEqual(new Set(drill.tray));
    expect(look.traps.at(-1)).toBe(look.worst);
    const { fields, grade } = kindOf(drill);
    const [second, amount] = fields(drill);
    for (const trap of look.traps.slice(0, -1)) {
      const marks = (amount?.options ?? [])
        .map(({ id }) => grade(drill, { ...trap.answer, amount: id }).mark)
        .filter((mark) => mark < GOOD_MARK);
      expect(trap.grade.mark).toBe(Math.max(...marks));
    }
    expect(second?.options).toHaveLength(4);
  });

  test('a tray that cannot do it does not call its best a trap', () => {
    const none = lookAt(STUDIO, roof({ goal: { aim: 'rich', value: [9, 10] } }));
    expect(none.best.grade.mark).toBeLessThan(GOOD_MARK);
    expect(none.traps.map(({ answer }) => keyOf(answer))).not.toContain(keyOf(none.best.answer));
  });
});

describe('every shipped drill', () => {
  test('shows each answer once, the worst neighbour among them, and never the best', () => {
    for (const drill of DRILLS) {
      const { best, traps, worst } = lookAt(STUDIO, drill);
      const keys = traps.map(({ answer }) => keyOf(answer));
      expect(new Set(keys).size, drill.id).toBe(keys.length);
      expect(keys, drill.id).not.toContain(keyOf(best.answer));
      expect(traps, drill.id).toContain(worst);
      if (drill.kind !== 'mix')
        expect(Math.min(...traps.map(({ grade }) => grade.mark)), drill.id).toBe(worst.grade.mark);
    }
  }, 60_000);

  test('a mixture gives a colour for every answer; what a kind does not have is absent', () => {
    for (const drill of DRILLS) {
      const { best, traps, start, goal } = lookAt(STUDIO, drill);
      const isMix = drill.kind === 'mix';
      expect(goal !== undefined, drill.id).toBe(isMix);
      if (isMix)
        expect(
          [best, ...traps].every(({ colour }) => colour !== undefined),
          drill.id,
        ).toBe(true);
      if (isMix) expect(start, drill.id).toBeDefined();
      if (drill.kind === 'worked') expect(best.colour, drill.id).toBeUndefined();
    }
  }, 60_000);
});

describe('seen apart', () => {
  const at = (l: number, chroma: number, hue: number): ColourReading => {
    const angle = (hue * Math.PI) / 180;
    return readXyz(
      labToXyz({ l, a: chroma * Math.cos(angle), b: chroma * Math.sin(angle) }, whiteOf('D65-2')),
    );
  };

  test.each<[string, ColourReading, ColourReading, boolean]>([
    ['the same colour', at(50, 40, 50), at(50, 40, 50), false],
    ['six L*, more than half a step', at(50, 40, 50), at(44, 40, 50), true],
    ['three L*', at(50, 40, 50), at(47, 40, 50), false],
    ['ten of chroma', at(50, 60, 50), at(50, 49.9, 50), true],
    ['nine of chroma, of sixty', at(50, 60, 50), at(50, 51, 50), false],
    ['a third of the chroma', at(50, 24, 50), at(50, 15.9, 50), true],
    ['two of chroma beside a grey', at(50, 4, 50), at(50, 6, 50), false],
    ['21 degrees of hue', at(50, 40, 350), at(50, 40, 11), true],
    ['19 degrees of hue', at(50, 40, 350), at(50, 40, 9), false],
    ['two greys that lean apart', at(50, 4, 50), at(50, 4, 250), false],
  ])('%s', (_what, best, other, isSeen) => {
    expect(isSeenApart(best, other)).toBe(isSeen);
  });
});
