/**
 * What is said about drills and their results: a finding is data, its sentence is made here, on either scale of value, to
 * be read or heard. Nothing else writes English about a result.
 */
import { wrapText } from '../text/wrap.js';
import { sentence } from './laid.js';
import { ADVICE } from './sentences/advice.js';
import { CHOOSE } from './sentences/choose.js';
import { DIAGNOSIS } from './sentences/diagnosis.js';
import { DRYING } from './sentences/drying.js';
import { MIX } from './sentences/mix.js';
import { MIXTURE } from './sentences/mixture.js';
import { ORDER } from './sentences/order.js';
import { PAINTING } from './sentences/painting.js';
import { READINGS } from './sentences/readings.js';
import { RECIPES } from './sentences/recipes.js';
import { SHADE_CHROMA } from './sentences/shade-chroma.js';
import { SHADOW_VALUES } from './sentences/shadow-values.js';
import { SORT_VALUES } from './sentences/sort-values.js';
import { WASHES } from './sentences/washes.js';
import { WHY } from './sentences/why.js';
import { WORKED } from './sentences/worked.js';
import { toVoice, type Voice, WRITTEN } from './voice.js';

/** Every sentence by its id: what it takes, and how it is said. */
const SENTENCES = {
  ...ADVICE,
  ...CHOOSE,
  ...MIX,
  ...MIXTURE,
  ...ORDER,
  ...PAINTING,
  ...READINGS,
  ...RECIPES,
  ...WASHES,
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
  [Id in keyof Sentences]: {
    readonly id: Id;
    readonly figures: FiguresOf<Id>;
    /** Of what it is said, where it is not of the answer as a whole: a name. */
    readonly of?: string;
  };
}[keyof Sentences];

/** A finding. @param figures what the sentence of that id takes */
export function tell<Id extends keyof Sentences>(id: Id, figures: FiguresOf<Id>): Finding {
  return { id, figures } as Finding;
}

/** Paints that begin with a name of a place or a person keep their capital letter. */
const PROPER = /^(Prussian|Chinese|Venetian|Naples|Hooker’?'?s)\b/;
const afterColon = (text: string): string =>
  PROPER.test(text) ? text : text.charAt(0).toLowerCase() + text.slice(1);

/** The finding as one line. */
export function sayFinding({ id, figures, of }: Finding, voice: Voice): string {
  const text = (SENTENCES[id] as (figures: unknown, voice: Voice) => string)(figures, voice);
  return toVoice(of === undefined ? text : `${sentence(of)}: ${afterColon(text)}`, voice);
}

/** Findings as lines. */
export const sayAll = (findings: readonly Finding[], voice: Voice): string[] =>
  findings.map((finding) => sayFinding(finding, voice));

/** Lines of the screen that a result may say, and the columns of each on a screen of 80. */
export const RESULT_ROOM = { lines: 6, columns: 76 } as const;

/** Lines of the screen that findings take. */
export function linesOf(findings: readonly Finding[], voice: Voice = WRITTEN): number {
  return sayAll(findings, voice).reduce((sum, line) => sum + wrapText(line, RESULT_ROOM.columns).length, 0);
}

/**
 * Findings in the order they are said, as many as the screen has room for: where it is too little the one of the highest
 * rank goes first. Rank 0 stays.
 */
export function fitted(
  ranked: readonly (readonly [rank: number, finding: Finding | undefined])[],
): Finding[] {
  let left = ranked.flatMap(([rank, finding]) => (finding === undefined ? [] : [{ rank, finding }]));
  const least = (): number => Math.max(...left.map(({ rank }) => rank));
  while (linesOf(left.map(({ finding }) => finding)) > RESULT_ROOM.lines && least() > 0) {
    const last = left.findLast(({ rank }) => rank === least());
    left = left.filter((one) => one !== last);
  }
  return left.map(({ finding }) => finding);
}
