/** A ladder or several shadows side by side: what each was laid over, what was laid, and the best under it. */
import type { GradeStep } from '../../drills/types.js';
import type { Spectrum } from '../../optics/index.js';
import { nameLines, padText, wrapText } from '../../text/wrap.js';
import { lookOf, spokenLook } from '../../words/look.js';
import { type Voice, valueWords } from '../../words/voice.js';
import type { Glyphs } from '../kit/glyphs.js';
import type { Piece } from '../kit/row.js';
import { patchStyle } from '../kit/theme.js';
import { LADDER_HEAD } from './places.js';

interface LadderLook {
  /** Of each step. */
  readonly columns: number;
  readonly rows: number;
  readonly level: number;
  readonly voice: Voice;
  readonly glyphs: Glyphs;
}

/** What stands where nothing was laid. */
const NONE = 'not laid';

/** The blank after each step. */
const BETWEEN: Piece = { text: ' ' };

/** One row of patches with their values: at its left what it is. */
function bandLines(
  head: string,
  films: readonly (Spectrum | undefined)[],
  rows: number,
  { columns, level, voice, glyphs }: LadderLook,
): Piece[][] {
  const lead = (at: number): Piece => ({ text: padText(at === 0 ? head : '', LADDER_HEAD), role: 'label' });
  const patches = Array.from({ length: level === 0 ? 0 : rows - 1 }, (_, at): Piece[] => [
    lead(at),
    ...films.flatMap((film): Piece[] => [
      film === undefined
        ? { text: ' '.repeat(columns) }
        : { text: ' '.repeat(columns), style: patchStyle(lookOf(film).hex) },
      BETWEEN,
    ]),
  ]);
  const said = films.map((film) => {
    if (film === undefined) return [glyphs.minus === '-' ? '-' : NONE];
    const look = lookOf(film);
    const words = level === 0 && rows > 1 ? wrapText(look.words, columns).slice(0, rows - 1) : [];
    return [valueWords(look.value, voice), ...words];
  });
  const lines = Math.max(...said.map(({ length }) => length));
  const figures = Array.from({ length: lines }, (_, at): Piece[] => [
    lead(patches.length + at),
    ...said.flatMap((one): Piece[] => [
      { text: padText(one[at] ?? '', columns), role: at === 0 ? 'plain' : 'muted' },
      BETWEEN,
    ]),
  ]);
  return [...patches, ...figures].map((line) => line.slice(0, -1));
}

/**
 * The steps of an answer side by side.
 * @param before what they were laid over is called so
 */
export function ladderLines(
  steps: readonly GradeStep[],
  before: string | undefined,
  look: LadderLook,
): Piece[][] {
  const { columns, glyphs } = look;
  const names = nameLines(
    steps.map(({ name }) => name),
    columns,
    2,
    glyphs.cut,
  );
  const nameRows = Math.max(...names.map(({ length }) => length));
  const bands: [head: string, films: (Spectrum | undefined)[]][] = [
    ['yours', steps.map(({ yours }) => yours)],
    ['best', steps.map(({ best }) => best)],
  ];
  if (steps.some((step) => step.before !== undefined))
    bands.unshift([(before ?? '').split(' ')[0] ?? '', steps.map((step) => step.before)]);
  const rows = Math.max(2, Math.floor((look.rows - nameRows) / bands.length));
  return [
    ...Array.from({ length: nameRows }, (_, at): Piece[] => [
      { text: ' '.repeat(LADDER_HEAD) },
      ...names
        .flatMap((lines): Piece[] => [
          { text: padText((lines[at] ?? '').toUpperCase(), columns), role: 'label' },
          BETWEEN,
        ])
        .slice(0, -1),
    ]),
    ...bands.flatMap(([head, films]) => bandLines(head, films, rows, look)),
  ];
}

/** A step in one line, for the ear. */
export function spokenStep({ name, yours, best }: GradeStep, voice: Voice): string {
  const said = (film: Spectrum | undefined): string =>
    film === undefined ? NONE : spokenLook(lookOf(film), voice);
  return `${name}: yours ${said(yours)}; best ${said(best)}.`;
}
