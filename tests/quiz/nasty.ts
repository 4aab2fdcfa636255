import type { Sitting } from '../../src/quiz/answers.js';
import { markClass } from '../../src/quiz/class.js';
import { shownName } from '../../src/quiz/names.js';
import { bestAnswers, sittingOf, someHandout } from './fixture.js';

export const handout = someHandout(3);
export const best = bestAnswers(handout);
/** A sitting with the best answers under any name. */
export const named = (name: string): Sitting => ({
  ...sittingOf(handout, 'x', best),
  name: shownName(name),
});
/** Everybody with the best answers. */
export const classOf = (names: readonly string[]) =>
  markClass(
    handout,
    names.map((name, index) => ({ file: `${index}.json`, sitting: named(name) })),
  );

export const NASTY = [
  '=1+1',
  '+cmd',
  '-2+3',
  '@SUM(A1)',
  '\t=1',
  '\r=2',
  '＝1',
  'a"b,c',
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='x",
  '&amp;',
  'Ann\u202Eeel',
  '\u001b[31mred',
  '</style><script>',
  '`y`',
];
