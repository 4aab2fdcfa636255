/** What is asked and said of a ladder of washes. */
import { MODEL_ERROR, pickMark } from '../../../judgement/index.js';
import type { Studio } from '../../../paints/index.js';
import type { BlockFigures } from '../../../words/sentences/washes.js';
import { type Finding, tell } from '../../../words/tell.js';
import { chosen } from '../../answers.js';
import type { Answer } from '../../types.js';
import type { WashesDrill } from './schema.js';
import {
  type BlockResult,
  CANNOT,
  laidAt,
  paintName,
  startStep,
  strongestIndex,
  washesFields,
  watersOf,
} from './score.js';

/** How a target is put: as a step, or as what it is the shadow of. */
function targetOf({ name, step, shadeOf, castOf }: WashesDrill['blocks'][number]): Finding {
  if (step !== undefined) return tell('washes-target', { name, as: 'step', step });
  return shadeOf === undefined
    ? tell('washes-target', { name, as: 'cast', step: castOf as number })
    : tell('washes-target', { name, as: 'shade', step: shadeOf });
}

export function goalLines(studio: Studio, drill: WashesDrill): Finding[] {
  const over = drill.over === undefined ? undefined : startStep(studio, drill);
  return [tell('washes-on', { paint: paintName(studio, drill), over }), ...drill.blocks.map(targetOf)];
}

const blockFigures = ({ block, choice, wanted, band, seen }: BlockResult): BlockFigures => ({
  name: block.name,
  water: choice === CANNOT ? undefined : choice,
  wanted,
  asked: band,
  step: seen.colour.step,
});

/** The blocks that came out as asked, then those that did not, by what went wrong. */
export function blocksTold(
  results: readonly BlockResult[],
  within: number,
): [rank: number, finding: Finding][] {
  const hits = results.filter(({ score }) => score >= 1);
  const misses = results.filter(({ score }) => score < 1);
  const gaveUp = misses.filter(({ choice }) => choice === CANNOT);
  const missed = misses.filter(({ choice }) => choice !== CANNOT);
  const close = hits.filter(({ tooCloseToCall }) => tooCloseToCall).map(({ block }) => block.name);
  return [
    ...ranked(misses.length === 0 ? 0 : 2, hits, () =>
      tell('washes-hit', { hits: hits.map(blockFigures), close, within }),
    ),
    ...ranked(0, missed, () => tell('washes-missed', { misses: missed.map(blockFigures) })),
    ...ranked(missed.length === 0 ? 0 : 1, gaveUp, () =>
      tell('washes-given-up', { blocks: gaveUp.map(blockFigures) }),
    ),
  ];
}

/** A finding on results with its rank; none where there are none. */
function ranked(rank: number, results: readonly BlockResult[], finding: () => Finding): [number, Finding][] {
  return results.length === 0 ? [] : [[rank, finding()]];
}

/** Why even steps of water are not even steps of value, in this paint's own figures. */
export function rangeTold(studio: Studio, drill: WashesDrill): Finding {
  const steps = watersOf(drill).map((water) => laidAt(studio, drill, water).colour.step);
  const all = steps.slice(1).map((step, index) => step - (steps[index] as number));
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const isUneven = all.length >= 2 && most >= Math.max(0.4, 1.5 * least);
  return tell('washes-range', {
    paint: paintName(studio, drill),
    range: [Math.min(...steps), Math.max(...steps)],
    moves: isUneven ? [least, most] : undefined,
  });
}

export function strongestPart(
  studio: Studio,
  drill: WashesDrill,
  results: readonly BlockResult[],
  answer: Answer,
): { readonly score: number; readonly finding?: Finding } {
  if (!drill.strongest) return { score: 1 };
  const named = chosen(washesFields(studio, drill), answer, 'strongest');
  const picked = results.find(({ block }) => block.name === named.label) as BlockResult;
  const best = results[strongestIndex(results)] as BlockResult;
  const laid = results.filter(({ choice }) => choice !== CANNOT);
  const chromas = laid.map(({ block, seen }) => ({ name: block.name, chroma: seen.colour.chroma }));
  const isGivenUp = picked.choice === CANNOT;
  const { mark } = isGivenUp
    ? { mark: 0 }
    : pickMark(
        picked.seen.colour.chroma,
        chromas.map(({ chroma }) => chroma),
        MODEL_ERROR[picked.seen.evidence].chroma,
      );
  const is = mark === 100 ? picked.block.name : best.block.name;
  const figures = { named: picked.block.name, is, chromas, isGivenUp };
  return {
    score: mark / 100,
    ...(laid.length === 0 ? {} : { finding: tell('washes-strongest', figures) }),
  };
}

export const alikeTold = ([one, other]: readonly [BlockResult, BlockResult]): Finding =>
  tell('washes-alike', { one: one.block.name, other: other.block.name });

/** The parts of the best answer that are not in this one: those that were wrong, or all of them where none was. */
export function bestTold(
  studio: Studio,
  drill: WashesDrill,
  answer: Answer,
  best: Answer,
  mark: number,
  wrong: readonly string[],
): Finding {
  const parts = washesFields(studio, drill).filter(({ id }) => answer[id] !== best[id]);
  if (parts.length === 0) return tell('washes-best', { as: 'nearest', label: '' });
  const named = parts.filter(({ id }) => wrong.includes(id));
  const label = (named.length === 0 ? parts : named)
    .map((field) => `${field.label} ${chosen([field], best, field.id).label}`)
    .join(', ');
  return tell('washes-best', { as: mark === 100 ? 'as-good' : 'better', label });
}

/** More water or less for each block that came out wrong and was not given up; undefined where another thing was wrong. */
function waterAdvice(results: readonly BlockResult[]): Finding | undefined {
  const wrong = results.filter(({ score, choice, canReach }) => score < 1 && choice !== CANNOT && canReach);
  const of = (isDark: boolean): string[] =>
    wrong.filter(({ seen, band }) => seen.colour.step > band[1] === isDark).map(({ block }) => block.name);
  return wrong.length === 0 ? undefined : tell('advice-water', { more: of(true), less: of(false) });
}

/** What to try next: the water of each block where that was it, else the lesson of the idea. */
export function adviceTold(idea: string | undefined, results: readonly BlockResult[]): Finding | undefined {
  if (idea === undefined) return undefined;
  const water = idea === 'too-light' || idea === 'too-dark' ? waterAdvice(results) : undefined;
  return water ?? tell('advice', { idea });
}
