/** What each block gets, and how near it comes. */
import { readColour } from '../../../colour/reading.js';
import { scoreValue } from '../../../judgement/index.js';
import { once, paintOf, type Studio } from '../../../paints/index.js';
import { type Laid, type Seen, seeLaid, washStrength, waterStrength } from '../../../washes/index.js';
import { chosen, requireComplete } from '../../answers.js';
import type { Answer, Field } from '../../types.js';
import { shadowStep } from '../shadow-values/rules.js';
import type { Block, WashesDrill } from './schema.js';

/** The option that gives a block up. */
export const CANNOT = 'cannot';

/** Painter's step that a block has to reach. */
function wantedStep({ step, shadeOf, castOf }: Block): number {
  if (step !== undefined) return step;
  if (shadeOf !== undefined) return shadowStep(shadeOf, 'shade');
  return shadowStep(castOf as number, 'cast');
}

/** Id of the field of a block. */
export const blockField = (index: number): string => `block-${index + 1}`;

const laidIn = once((_studio, _drill: WashesDrill) => new Map<string, Laid>());

/** The paint at that water, over what lies below. */
export function laidAt(studio: Studio, drill: WashesDrill, water: string): Seen {
  const known = laidIn(studio, drill);
  let laid = known.get(water);
  if (laid === undefined) {
    const strength = washStrength(paintOf(studio, drill.paint), water);
    const wash = { paints: { [drill.paint]: 1 }, strength };
    laid = drill.over === undefined ? wash : { layers: [drill.over, wash] };
    known.set(water, laid);
  }
  return seeLaid(studio, laid);
}

/** Waters from the weakest wash to the strongest. */
export function watersOf({ waters }: WashesDrill): string[] {
  return [...waters].sort((a, b) => waterStrength(a) - waterStrength(b));
}

/** The wash that comes darkest, which for nearly every paint is the thickest. */
export function darkestWater(studio: Studio, drill: WashesDrill): string {
  return watersOf(drill).reduce((dark, water) =>
    laidAt(studio, drill, water).colour.step > laidAt(studio, drill, dark).colour.step ? water : dark,
  );
}

/** What the blocks start from: the paper, or the dry wash. */
export function startStep(studio: Studio, { over }: WashesDrill): number {
  return over === undefined ? readColour(studio.paper.reflectance).step : seeLaid(studio, over).colour.step;
}

/** A field for each block, and one for the strongest colour where it is asked. Each water with the strength that it gives of this tube. */
export function washesFields(studio: Studio, drill: WashesDrill): readonly Field[] {
  const paint = paintOf(studio, drill.paint);
  const waters = watersOf(drill).map((water) => ({
    id: water,
    label: water,
    note: `one part paint to ${water.split(':')[1]} of water, strength ${Math.round(100 * washStrength(paint, water))} %`,
  }));
  const options = drill.cannot
    ? [...waters, { id: CANNOT, label: 'cannot', note: 'this paint cannot get there' }]
    : waters;
  const blocks = drill.blocks.map(
    ({ name }, index): Field => ({ id: blockField(index), label: name, shape: 'scale', options }),
  );
  if (!drill.strongest) return blocks;
  return [
    ...blocks,
    {
      id: 'strongest',
      label: 'strongest colour in',
      shape: 'list',
      options: drill.blocks.map(({ name }, index) => ({ id: blockField(index), label: name })),
    },
  ];
}

/** One block as answered. */
export interface BlockResult {
  readonly block: Block;
  /** A water or `cannot`. */
  readonly choice: string;
  readonly wanted: number;
  /** Lightest and darkest step that count. */
  readonly band: readonly [number, number];
  /** What lies there; for a block given up, the darkest that the paint can do. */
  readonly seen: Seen;
  readonly score: number;
  readonly tooCloseToCall: boolean;
  readonly canReach: boolean;
}

/** Range of values, steps, under which half a step each way would take in a quarter of all that the paint can do. */
const SHORT_RANGE = 2;
/** Steps each way that count of a paint with so short a range, and of any other. */
const WITHIN = { short: 0.3, usual: 0.5 } as const;

/** Steps each way that count as hitting a block: fewer where the paint has a short range. */
export const withinOf: (studio: Studio, drill: WashesDrill) => number = once((studio, drill: WashesDrill) => {
  const steps = watersOf(drill).map((water) => laidAt(studio, drill, water).colour.step);
  return Math.max(...steps) - Math.min(...steps) < SHORT_RANGE ? WITHIN.short : WITHIN.usual;
});

/** Two washes no further apart than this, steps, are alike to the eye. */
const ALIKE_STEP = 0.3;

/** Two blocks that were to differ and come out alike. */
export function alikeIn(results: readonly BlockResult[]): readonly [BlockResult, BlockResult] | undefined {
  const laid = results.filter(({ choice }) => choice !== CANNOT);
  for (const [at, one] of laid.entries()) {
    const other = laid
      .slice(at + 1)
      .find(
        ({ wanted, seen }) =>
          Math.abs(wanted - one.wanted) > ALIKE_STEP &&
          Math.abs(seen.colour.step - one.seen.colour.step) <= ALIKE_STEP,
      );
    if (other !== undefined) return [one, other];
  }
  return undefined;
}

/** Scores one block. Giving up is right when the darkest wash stays lighter than the band, or within the model's error of its edge. */
function blockResult(studio: Studio, drill: WashesDrill, block: Block, choice: string): BlockResult {
  const wanted = wantedStep(block);
  const within = withinOf(studio, drill);
  const band = [wanted - within, wanted + within] as const;
  const darkest = laidAt(studio, drill, darkestWater(studio, drill));
  const edge = scoreValue(darkest.colour.step, band, darkest.evidence);
  const isShort = darkest.colour.step < band[0];
  const canReach = !isShort || edge.tooCloseToCall;
  if (choice === CANNOT) {
    return {
      block,
      choice,
      wanted,
      band,
      seen: darkest,
      score: isShort ? 1 : 0,
      tooCloseToCall: isShort && edge.tooCloseToCall,
      canReach,
    };
  }
  const seen = laidAt(studio, drill, choice);
  const { score, tooCloseToCall } = scoreValue(seen.colour.step, band, seen.evidence);
  // Where giving up is open and right, the thickest wash is a near miss, not an answer.
  const most = drill.cannot && !canReach ? 0.4 : 1;
  return { block, choice, wanted, band, seen, score: Math.min(score, most), tooCloseToCall, canReach };
}

/** All blocks of an answer. @throws InputError when it does not fit the fields */
export function blockResults(studio: Studio, drill: WashesDrill, answer: Answer): readonly BlockResult[] {
  const fields = washesFields(studio, drill);
  requireComplete(fields, answer);
  return drill.blocks.map((block, index) =>
    blockResult(studio, drill, block, chosen(fields, answer, blockField(index)).id),
  );
}

/** Of each block what every choice gives it. */
export function blockChoices(studio: Studio, drill: WashesDrill): readonly (readonly BlockResult[])[] {
  const choices = drill.cannot ? [...watersOf(drill), CANNOT] : watersOf(drill);
  return drill.blocks.map((block) => choices.map((choice) => blockResult(studio, drill, block, choice)));
}

/** The best choice for every block, each on its own; the nearer to the middle of its band the better. Computed once. */
export const bestWashes: (studio: Studio, drill: WashesDrill) => Answer = once(findBest);

function findBest(studio: Studio, drill: WashesDrill): Answer {
  const picks = blockChoices(studio, drill).map((results) =>
    results.reduce((best, next) => {
      if (next.score !== best.score) return next.score > best.score ? next : best;
      if (next.choice === CANNOT) return best;
      return Math.abs(next.seen.colour.step - next.wanted) < Math.abs(best.seen.colour.step - best.wanted)
        ? next
        : best;
    }),
  );
  const answer = Object.fromEntries(picks.map(({ choice }, index) => [blockField(index), choice]));
  return drill.strongest ? { ...answer, strongest: blockField(strongestIndex(picks)) } : answer;
}

/** Index of the block with the most chroma; one that was given up has none. */
export function strongestIndex(results: readonly BlockResult[]): number {
  const chromaOf = ({ choice, seen }: BlockResult): number => (choice === CANNOT ? -1 : seen.colour.chroma);
  return results.reduce(
    (best, next, index) => (chromaOf(next) > chromaOf(results[best] as BlockResult) ? index : best),
    0,
  );
}

/** Name of the paint. */
export function paintName(studio: Studio, { paint }: WashesDrill): string {
  return paintOf(studio, paint).name;
}
