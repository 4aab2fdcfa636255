/**
 * The figures of a set as they are shown: rounded once, so that the words, the number beside a bar and the length of the
 * bar come from one value.
 */
import type { Figures } from './totals.js';

/** A figure as shown. */
export interface ShownFigure {
  /** Rounded as the text says it. */
  readonly value: number;
  readonly text: string;
}

/** One figure, now and before. */
export interface FigureRow {
  readonly id: 'value' | 'kept' | 'dull';
  /** Up to 13 characters. */
  readonly label: string;
  readonly now: ShownFigure;
  /** Absent where there is nothing to compare with. */
  readonly before?: ShownFigure;
  /** Value at which a bar is full. */
  readonly full: number;
  /** Whether a fall is a gain: an error falls, the chroma kept rises. */
  readonly isError: boolean;
}

interface RowKind {
  readonly id: FigureRow['id'];
  readonly label: string;
  readonly full: number;
  readonly isError: boolean;
  readonly of: (figures: Figures) => number | undefined;
  readonly show: (x: number) => ShownFigure;
}

/** Steps in words: "1.0 step", "0.4 steps". */
export function inSteps(x: number): string {
  const text = x.toFixed(1);
  return `${text} ${text === '1.0' ? 'step' : 'steps'}`;
}

const KINDS: readonly RowKind[] = [
  {
    id: 'value',
    label: 'value error',
    full: 3,
    isError: true,
    of: ({ valueError }) => valueError,
    show: (x) => ({ value: Number(x.toFixed(1)), text: inSteps(x) }),
  },
  {
    id: 'kept',
    label: 'chroma kept',
    full: 1,
    isError: false,
    of: ({ chromaKept }) => chromaKept,
    show: (x) => ({ value: Math.round(100 * x) / 100, text: `${Math.round(100 * x)} %` }),
  },
  {
    id: 'dull',
    label: 'dulling off',
    full: 30,
    isError: true,
    of: ({ dullError }) => dullError,
    show: (x) => ({ value: Math.round(x), text: `C* ${Math.round(x)}` }),
  },
];

/** The figures that there are, now against before. */
export function figureRows(now: Figures, before?: Figures): FigureRow[] {
  return KINDS.flatMap(({ of, show, ...kind }): FigureRow[] => {
    const is = of(now);
    const was = before && of(before);
    if (is === undefined) return [];
    return [{ ...kind, now: show(is), ...(was !== undefined && { before: show(was) }) }];
  });
}

/** Whether a figure is better than before as shown; undefined where there is nothing to compare with. */
export function isBetter({ now, before, isError }: FigureRow): boolean | undefined {
  if (before === undefined) return undefined;
  return isError ? now.value < before.value : now.value > before.value;
}

const WORDS: Readonly<
  Record<
    FigureRow['id'],
    { readonly is: (now: ShownFigure) => string; readonly better: string; readonly worse: string }
  >
> = {
  value: {
    is: ({ value, text }) => (value === 0 ? 'value inside the band' : `value off by ${text} on average`),
    better: 'closer',
    worse: 'further off',
  },
  kept: { is: ({ text }) => `chroma kept ${text}`, better: 'more', worse: 'less' },
  dull: {
    is: ({ value, text }) => (value === 0 ? 'dulled as asked' : `dulled ${text} beside what was asked`),
    better: 'closer',
    worse: 'further off',
  },
};

function rowWords(row: FigureRow): string {
  const { now, before, id } = row;
  const { is, better, worse } = WORDS[id];
  if (before === undefined) return is(now);
  if (before.value === now.value) return `${is(now)}, as before`;
  return `${is(now)}, ${isBetter(row) === true ? better : worse} than before (${before.text})`;
}

/** Figures as words: "3 of 4 good; value off by 0.4 steps on average; chroma kept 71 %, more than before (60 %)". */
export function figuresInWords(now: Figures, before?: Figures): string {
  return [`${now.good} of ${now.answers} good`, ...figureRows(now, before).map(rowWords)].join('; ');
}
