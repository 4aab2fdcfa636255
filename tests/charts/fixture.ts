/** Charts printed and read back. */
import { type ChartId, type ChartRequest, chartPaper } from '../../src/charts/index.js';
import type { PaperId } from '../../src/paper/types.js';
import { reread, styleOf } from '../paper/fixture.js';
import type { ReadPage } from '../paper/pdf-reader.js';
import { STUDIO } from '../studio.js';

export const boxOf = (id: string): readonly string[] =>
  STUDIO.palettes.find((palette) => palette.id === id)?.pigments ?? [];

export const requestOf = (paints: readonly string[], more: Partial<ChartRequest> = {}): ChartRequest => ({
  studio: STUDIO,
  paints,
  box: 'the trial box',
  seed: 1,
  progress: () => {},
  ...more,
});

export const printed = (id: ChartId, request: ChartRequest, paper: PaperId = 'a4') =>
  reread(chartPaper(id, request, styleOf(paper)));

/** A patch as it was drawn, with the line of its value and what is written under it. */
export interface ReadCell {
  readonly colour: string;
  readonly grey: string;
  readonly value: string;
  readonly under: string;
}

const VALUE = /^step \d+\.\d, chroma \d+( ~)?$/;

/** The cells of all pages in their order. @param scale boxes of the scale of greys on the first page */
export function cellsOf(pages: readonly ReadPage[], scale = 10): ReadCell[] {
  const fills = pages.flatMap(({ boxes }) => boxes.flatMap(({ fill }) => fill ?? [])).slice(scale);
  const texts = pages.flatMap((page) => page.texts);
  const starts = texts.flatMap(({ text }, at) => (VALUE.test(text) ? [at] : []));
  return starts.map((start, at) => {
    const lines: string[] = [];
    // All that stands under the patch begins where the patch does.
    for (
      let next = start + 1;
      texts[next]?.x === texts[start]?.x && !VALUE.test(texts[next]?.text ?? '');
      next++
    )
      if ((texts[next]?.y as number) > (texts[start]?.y as number)) lines.push(texts[next]?.text ?? '');
      else break;
    return {
      colour: fills[2 * at] ?? '',
      grey: fills[2 * at + 1] ?? '',
      value: texts[start]?.text ?? '',
      under: lines.join(' '),
    };
  });
}

/** What is written under a cell, as paints with parts and the water. */
export function recipeIn(under: string): { paints: Record<string, number>; water: number } {
  const paints: Record<string, number> = {};
  for (const [, parts, name] of under.matchAll(
    /(?:^|\s)([\d.]+) ([A-Za-z].*?) \((?:no code|P[A-Za-z]+\d[^)]*)\)\*?/g,
  )) {
    const paint = STUDIO.paints.find((each) => each.name === name);
    if (paint === undefined) throw new Error(`no paint is called ${name} in: ${under}`);
    paints[paint.id] = Number(parts);
  }
  return { paints, water: Number(/water 1:([\d.]+)/.exec(under)?.[1]) };
}
