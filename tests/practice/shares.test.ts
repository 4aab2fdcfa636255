/** How a set is shared out and put in order: the rules at the heads of shares.ts and arrange.ts. */
import { describe, expect, it } from 'vitest';
import { seededDraw } from '../../src/chance/draw.js';
import { arrange, isPair, type Share } from '../../src/practice/arrange.js';
import type { FamilyNeed, Reason } from '../../src/practice/index.js';
import { shareOut } from '../../src/practice/shares.js';

const need = (
  id: string,
  reason: Reason,
  more: Partial<FamilyNeed> = {},
  lookAlike: readonly string[] = [],
): FamilyNeed => ({
  family: { id, title: id, lookAlike },
  reason,
  level: reason === 'new' ? 1 : 3,
  recall: reason === 'new' ? 0 : 0.95,
  recent: 0.7,
  answers: 5,
  ...more,
});
const shared = (needs: readonly FamilyNeed[], count: number): Record<string, number> =>
  Object.fromEntries(shareOut(needs, count).map(({ need: { family }, slots }) => [family.id, slots]));
const news = (count: number, level = 1) =>
  Array.from({ length: count }, (_, at) => need(`n${at}`, 'new', { level }));

describe('the shares of a set', () => {
  it('add up to it, whatever is needed', () => {
    const kinds: Reason[] = ['new', 'weak', 'due', 'begun', 'rising', 'steady', 'known'];
    for (let count = 1; count <= 30; count += 1) {
      for (let families = 1; families <= 7; families += 1) {
        const needs = kinds.slice(0, families).map((reason, at) => need(`f${at}`, reason));
        const sum = shareOut(needs, count).reduce((total, { slots }) => total + slots, 0);
        expect(sum).toBe(count);
      }
    }
  });

  it('are all of what is weak where nothing else is there, else six in ten, rounded up', () => {
    expect(shared([need('w', 'weak')], 10)).toEqual({ w: 10 });
    expect(shared([need('w', 'weak'), need('k', 'known')], 10)).toEqual({ w: 6, k: 4 });
    expect(shared([need('w', 'weak'), need('k', 'known')], 11)).toEqual({ w: 7, k: 4 });
    expect(shared([need('w', 'weak'), need('k', 'known')], 1)).toEqual({ w: 1 });
    expect(shared([need('k', 'known')], 10)).toEqual({ k: 10 });
  });

  it('go to the four weakest, evenly, the weakest and then the lowest first', () => {
    const weak = [0.3, 0.1, 0.2, 0.1, 0.4].map((recent, at) =>
      need(`w${at}`, 'weak', { recent, level: 5 - at }),
    );
    expect(shared(weak, 6)).toEqual({ w3: 2, w1: 2, w2: 1, w0: 1 });
  });

  it('open three new families for a beginner, two drills each, fewer in a short set', () => {
    expect(shared(news(5), 12)).toEqual({ n0: 4, n1: 4, n2: 4 });
    expect(shared([...news(5)], 6)).toEqual({ n0: 3, n1: 3 });
    expect(shared(news(5), 3)).toEqual({ n0: 3 });
  });

  it('open one new family at a time later on, two in a set of two dozen, and none while four are still at level 1', () => {
    const rest = [need('k', 'known', { level: 5 })];
    expect(shared([...news(5), ...rest], 8)).toEqual({ n0: 2, k: 6 });
    expect(shared([...news(5), ...rest], 24)).toEqual({ n0: 2, n1: 2, k: 20 });
    const unsettled = (count: number) =>
      Array.from({ length: count }, (_, at) => need(`u${at}`, 'begun', { level: 1 }));
    expect(shared([...news(5), ...unsettled(3)], 8)['n0']).toBe(2);
    expect(shared([...news(5), ...unsettled(4)], 8)['n0']).toBeUndefined();
  });

  it('open one in three, a drill each, where the placing round has found their level', () => {
    expect(shared([...news(5, 3), need('k', 'known')], 9)).toEqual({ n0: 1, n1: 1, n2: 1, k: 6 });
    expect(shared([...news(5, 3), need('k', 'known')], 10)).toEqual({ n0: 1, n1: 1, n2: 1, n3: 1, k: 6 });
  });

  it('bring up first what is due, then what rises, then what looks like something chosen, then what fades', () => {
    const first = (...needs: FamilyNeed[]): string => shareOut(needs, 1)[0]?.need.family.id ?? '';
    expect(first(need('k', 'known', { recall: 0.95 }), need('d', 'due', { recall: 0.85 }))).toBe('d');
    expect(first(need('d', 'due', { recall: 0.85 }), need('e', 'due', { recall: 0.6 }))).toBe('e');
    expect(first(need('k', 'known'), need('s', 'steady'))).toBe('s');
    expect(first(need('k', 'known', { recall: 0.99 }), need('l', 'known', { recall: 0.91 }))).toBe('l');
    expect(first(need('k', 'known'), need('l', 'known')), 'of equals the first').toBe('k');
    const alike = [need('w', 'weak', {}, ['b']), need('a', 'known'), need('b', 'known')];
    expect(shared(alike, 2)).toEqual({ w: 2 });
    expect(shared(alike, 3)).toEqual({ w: 2, b: 1 });
  });

  it('are spread: what has come up once comes up less', () => {
    expect(shared([need('a', 'steady'), need('b', 'steady')], 4)).toEqual({ a: 2, b: 2 });
    // Far behind, it comes up twice before the other does once.
    expect(shared([need('a', 'due', { recall: 0 }), need('b', 'known', { recall: 1 })], 3)).toEqual({ a: 3 });
    expect(shared([need('a', 'due', { recall: 0 }), need('b', 'known', { recall: 0.9 })], 4)).toEqual({
      a: 3,
      b: 1,
    });
  });
});

describe('the order of a set', () => {
  const order = (shares: readonly Share[], seed = 1): string =>
    arrange(shares, seededDraw(seed))
      .map(({ family }) => family.id)
      .join('');
  const seeds = Array.from({ length: 40 }, (_, seed) => seed);

  it('has each family as often as it has slots', () => {
    for (const seed of seeds) {
      const said = order(
        [
          { need: need('a', 'due'), slots: 3 },
          { need: need('b', 'due'), slots: 2 },
          { need: need('c', 'due'), slots: 0 },
        ],
        seed,
      );
      expect([...said].sort().join('')).toBe('aaabb');
    }
    expect(order([])).toBe('');
  });

  it('has none twice running where another is left', () => {
    for (const seed of seeds) {
      expect(
        order(
          [
            { need: need('a', 'due'), slots: 3 },
            { need: need('b', 'due'), slots: 2 },
          ],
          seed,
        ),
      ).toBe('ababa');
      const three = [4, 3, 2].map((slots, at) => ({ need: need('abc'[at] as string, 'due'), slots }));
      expect(order(three, seed)).not.toMatch(/(.)\1/);
    }
  });

  it('keeps the first two of a new family together, and no more', () => {
    for (const seed of seeds) {
      const said = order(
        [
          { need: need('n', 'new'), slots: 3 },
          { need: need('b', 'due'), slots: 3 },
          { need: need('c', 'due'), slots: 3 },
        ],
        seed,
      );
      expect(said.indexOf('nn')).toBe(said.indexOf('n'));
      expect(said).not.toMatch(/nnn|bb|cc/);
    }
  });

  it('sets those that look alike side by side', () => {
    const a = need('a', 'due', {}, ['c']);
    const shares = [a, need('b', 'due'), need('c', 'due'), need('d', 'due')].map((one) => ({
      need: one,
      slots: 1,
    }));
    for (const seed of seeds) expect(order(shares, seed)).toMatch(/ac|ca/);
  });

  it('those that look alike are a pair from level 3 on, whichever of them names the other', () => {
    const [a, b] = [need('a', 'due', {}, ['b']), need('b', 'due')];
    expect([isPair(a, b), isPair(b, a), isPair(b, need('c', 'due'))]).toEqual([true, true, false]);
    expect([isPair({ ...a, level: 2 }, b), isPair(a, { ...b, level: 2 })]).toEqual([false, false]);
    const plain: FamilyNeed = { ...b, family: { id: 'b', title: 'b' } };
    expect([isPair(plain, plain), isPair(a, plain)]).toEqual([false, true]);
  });
});
