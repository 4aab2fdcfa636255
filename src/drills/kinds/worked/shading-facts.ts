/** Statements about a darker thing beside a lighter one: on, above or below the line of a plain shade. */
import { shadingLine } from '../../../colour/chroma.js';
import { chromaMargin } from '../../../judgement/index.js';
import type { Proof } from '../../../words/sentences/worked.js';
import { at, chroma, type Fact, type Named, name } from './things.js';

/** Chroma of the first on the shading line of the second. */
function lineFrom(things: readonly Named[]): number {
  const [a, b] = [at(things, 0).seen.colour, at(things, 1).seen.colour];
  return shadingLine(b.chroma, b.lab.l, a.lab.l);
}
const line = (things: readonly Named[]): Proof => ({
  by: 'shade',
  name: name(things, 0),
  chroma: chroma(things, 0),
  line: lineFrom(things),
});

/** By the id that a drill file uses. */
export const SHADING_FACTS = {
  'keeps-line': {
    takes: 2,
    short: (t) => `${name(t, 0)} keeps a plain shade’s chroma`,
    text: (t) => `${name(t, 0)} keeps the chroma that a plain shade of ${name(t, 1)} would have`,
    margin: (t) => chroma(t, 0) - 0.85 * lineFrom(t),
    unit: 'chroma',
    figures: line,
  },
  'below-line': {
    takes: 2,
    short: (t) => `${name(t, 0)} is duller than a plain shade`,
    text: (t) => `${name(t, 0)} has lost more chroma than a plain shade of ${name(t, 1)} would`,
    margin: (t) => 0.85 * lineFrom(t) - chroma(t, 0),
    unit: 'chroma',
    figures: line,
  },
  'on-line': {
    takes: 2,
    short: (t) => `${name(t, 0)} is ${name(t, 1)} with less light`,
    text: (t) => `${name(t, 0)} lies on the shading line: ${name(t, 1)} with less light on it`,
    margin: (t) => chromaMargin(lineFrom(t)) - Math.abs(chroma(t, 0) - lineFrom(t)),
    unit: 'chroma',
    figures: line,
  },
  'glows-above-line': {
    takes: 2,
    short: (t) => `${name(t, 0)} glows`,
    text: (t) =>
      `${name(t, 0)} lies above the shading line: it has more chroma than less light on ${name(t, 1)} would leave, and glows`,
    margin: (t) => chroma(t, 0) - lineFrom(t) - chromaMargin(lineFrom(t)),
    unit: 'chroma',
    figures: line,
  },
} as const satisfies Record<string, Fact>;
