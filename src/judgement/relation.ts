/**
 * Around, between or across: what two paints do on the way from one to the other, not how far apart a circle draws them.
 * An angle in CIELAB names hues and nothing else. Lessons, reasons, made drills and words all ask here.
 */
import { hueDifference } from '../colour/lab.js';
import { type ColourReading, readColour } from '../colour/reading.js';
import { paintOf, perStudio, type Studio } from '../paints/index.js';
import { atStrength, type Load, madeUp, partsOf, puddleReflectance } from '../washes/index.js';
import { NEUTRAL_CHROMA, RELATION } from './table.js';

/**
 * - `neutral`: one of the two is a black, a grey, a white;
 * - `across`: they take each other's colour, and a grey lies on the way;
 * - `around`: the colour is kept all the way, and no third colour appears;
 * - `between`: the rest: a third colour appears, or part of the colour goes.
 */
export type RelationKind = 'neutral' | 'across' | 'around' | 'between';

export interface Relation {
  readonly kind: RelationKind;
  /** Least chroma on the way as a share of what a straight way between the two would have. */
  readonly kept: number;
  /** C* at the greyest point. */
  readonly least: number;
  /** Degrees from the nearer of the two at the point farthest from both. */
  readonly thirdDeg: number;
  /** Both alone, at the strength that the word is for. */
  readonly ends: readonly [ColourReading, ColourReading];
}

/**
 * What lies between two washes, both taken at strength 0.3 whatever they are laid at: the word belongs to the pair.
 * @param one,other loads of each, in any amount
 */
export function relationBetween({ paper }: Studio, one: readonly Load[], other: readonly Load[]): Relation {
  const at = (share: number): ColourReading => {
    const mixed = [
      ...atStrength(one, RELATION.strength * (1 - share)),
      ...atStrength(other, RELATION.strength * share),
    ].filter(({ load }) => load > 0);
    return readColour(puddleReflectance(mixed, paper));
  };
  const ends = [at(0), at(1)] as const;
  const [a, b] = ends;
  let kept = Number.POSITIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  let thirdDeg = 0;
  const steps = Math.round(1 / RELATION.step);
  for (let step = 1; step < steps; step++) {
    const share = step / steps;
    const { chroma, hue } = at(share);
    kept = Math.min(kept, chroma / ((1 - share) * a.chroma + share * b.chroma));
    least = Math.min(least, chroma);
    const away = Math.min(Math.abs(hueDifference(a.hue, hue)), Math.abs(hueDifference(b.hue, hue)));
    thirdDeg = Math.max(thirdDeg, away);
  }
  return { kind: kindOf({ kept, least, thirdDeg, ends }), kept, least, thirdDeg, ends };
}

function kindOf({ kept, least, thirdDeg, ends }: Omit<Relation, 'kind'>): RelationKind {
  const { across, around } = RELATION;
  if (ends.some(({ chroma }) => chroma < NEUTRAL_CHROMA)) return 'neutral';
  if (kept <= across.kept && least <= across.least) return 'across';
  return kept >= around.kept && thirdDeg <= around.thirdDeg ? 'around' : 'between';
}

const relations = perStudio(() => new Map<string, Relation>());

/**
 * The relation of a paint to a wash given by parts; computed once for each pair.
 * @throws RangeError for unknown paints
 */
export function relationOf(studio: Studio, paints: Readonly<Record<string, number>>, id: string): Relation {
  const known = relations(studio);
  const key = `${Object.entries(paints).flat().join(' ')} > ${id}`;
  let relation = known.get(key);
  if (relation === undefined) {
    const alone = [{ pigment: paintOf(studio, id), load: 1 }];
    relation = relationBetween(studio, madeUp(partsOf(studio, paints), RELATION.strength), alone);
    known.set(key, relation);
  }
  return relation;
}
