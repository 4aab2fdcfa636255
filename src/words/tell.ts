/**
 * What is said about drills and their results: a finding is data, its sentence is made here, on either scale of value, to
 * be read or heard. Nothing else writes English about a result.
 */
import { ADVICE } from './sentences/advice.js';
import { DIAGNOSIS } from './sentences/diagnosis.js';
import { DRYING } from './sentences/drying.js';
import { ORDER } from './sentences/order.js';
import { PLAIN } from './sentences/plain.js';
import { SHADE_CHROMA } from './sentences/shade-chroma.js';
import { SHADOW_VALUES } from './sentences/shadow-values.js';
import { SORT_VALUES } from './sentences/sort-values.js';
import { WHY } from './sentences/why.js';
import { WORKED } from './sentences/worked.js';
import type { Voice } from './voice.js';

/** Every sentence by its id: what it takes, and how it is said. */
const SENTENCES = {
  ...PLAIN,
  ...ADVICE,
  ...ORDER,
  ...DRYING,
  ...DIAGNOSIS,
  ...SHADE_CHROMA,
  ...SHADOW_VALUES,
  ...SORT_VALUES,
  ...WORKED,
  ...WHY,
};

type Sentences = typeof SENTENCES;
/** A sentence without figures takes an empty object. */
type FiguresOf<Id extends keyof Sentences> =
  Parameters<Sentences[Id]> extends [] ? Record<string, never> : Parameters<Sentences[Id]>[0];

/** One thing to be said: which sentence, and the figures in it. Plain data. */
export type Finding = {
  [Id in keyof Sentences]: { readonly id: Id; readonly figures: FiguresOf<Id> };
}[keyof Sentences];

/** A finding. @param figures what the sentence of that id takes */
export function tell<Id extends keyof Sentences>(id: Id, figures: FiguresOf<Id>): Finding {
  return { id, figures } as Finding;
}

/** The finding as one line. */
export function sayFinding({ id, figures }: Finding, voice: Voice): string {
  return (SENTENCES[id] as (figures: unknown, voice: Voice) => string)(figures, voice);
}

/** Findings as lines. */
export const sayAll = (findings: readonly Finding[], voice: Voice): string[] =>
  findings.map((finding) => sayFinding(finding, voice));

/** Lines that are words already, as findings. */
export const plainly = (lines: readonly string[]): Finding[] => lines.map((text) => tell('plain', { text }));
