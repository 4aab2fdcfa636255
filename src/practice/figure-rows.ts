/**
 * The figures of sets as they are shown: rounded once, so that the words, the number beside a bar and the length of the
 * bar come from one value. A fuller bar is better whatever the figure: an error empties it.
 */
import type { Figures } from './totals.js';

/** A figure as shown. */
export interface ShownFigure {
  /** Rounded as the text says it. */
  readonly value: number;
  /** Without a unit, as it stands in a table; at most five characters. */
  readonly number: string;
  /** With its unit. */
  readonly text: string;
  /** How full its bar is, 0-1: 1 where an error is nothing, or where all is there that was asked for. */
  readonly fill: number;
}

/** One figure, now and before. */
export interface FigureRow {
  readonly id: 'value' | 'kept' | 'dull';
  /** Up to 13 characters. */
  readonly label: string;
  readonly now: ShownFigure;
  /** Answers that it stands over, where some of the set had none of it. */
  readonly over?: number;
  /** Absent where there is nothing to compare with. */
  readonly before?: ShownFigure;
  /** Against before, as shown: an error gets better as it falls. Absent where there is nothing to compare with. */
  readonly change?: 'better' | 'worse' | 'same';
}

/** What a figure is and how it is shown. */
export interface FigureKind extends Pick<FigureRow, 'id' | 'label'> {
  /** Over a plot of it. */
  readonly title: string;
  /** The figure of a set; undefined where nothing of it was asked. */
  shown(figures: Figures): ShownFigure | undefined;
  /** The answers that it stands over. */
  over(figures: Figures): number;
  /** Whether it gets better as it rises; else as it falls. */
  readonly isRising: boolean;
  /** At an empty and at a full bar. */
  readonly ends: readonly [ShownFigure, ShownFigure];
  /** After the figure in a sentence, where it is a share: of what. */
  readonly share?: string;
  /** A better and a worse one in a word. */
  readonly words: Readonly<Record<'better' | 'worse' | 'same', string>>;
}

const NEARER = { better: 'nearer', worse: 'further off', same: 'as before' } as const;

interface Measure extends Omit<FigureKind, 'shown' | 'over' | 'isRising' | 'ends'> {
  readonly of: (figures: Figures) => number | undefined;
  readonly answers: (figures: Figures) => number | undefined;
  /** The values of an empty and of a full bar. */
  readonly from: number;
  readonly to: number;
  readonly write: (x: number) => Pick<ShownFigure, 'value' | 'number' | 'text'>;
}

/** Steps in words: "1.0 step", "0.4 steps". */
export function inSteps(x: number): string {
  const text = x.toFixed(1);
  return `${text} ${text === '1.0' ? 'step' : 'steps'}`;
}

/** The scales of the bars stay the same, so that those of two days can be compared. A worse figure leaves its bar empty. */
const MEASURES: readonly Measure[] = [
  {
    id: 'value',
    label: 'value error',
    title: 'Value error: steps outside what was asked',
    words: NEARER,
    of: ({ valueError }) => valueError,
    answers: ({ valueAnswers }) => valueAnswers,
    from: 2,
    to: 0,
    write: (x) => ({ value: Number(x.toFixed(1)), number: x.toFixed(1), text: inSteps(x) }),
  },
  {
    id: 'kept',
    label: 'chroma kept',
    title: 'Chroma kept, of what was to be kept',
    words: { better: 'more', worse: 'less', same: 'as before' },
    share: ' of what was asked',
    of: ({ chromaKept }) => chromaKept,
    answers: ({ chromaAnswers }) => chromaAnswers,
    from: 0,
    to: 1,
    write: (x) => {
      const percent = Math.round(100 * x);
      return { value: percent / 100, number: `${percent} %`, text: `${percent} %` };
    },
  },
  {
    id: 'dull',
    label: 'dulling error',
    title: 'Dulling error: chroma beside what was asked',
    words: NEARER,
    of: ({ dullError }) => dullError,
    answers: ({ dullAnswers }) => dullAnswers,
    from: 20,
    to: 0,
    write: (x) => ({ value: Math.round(x), number: x.toFixed(0), text: `${Math.round(x)} of chroma` }),
  },
];

function kindOf({ of, answers, from, to, write, ...kind }: Measure): FigureKind {
  const show = (x: number): ShownFigure => {
    const written = write(x);
    return { ...written, fill: Math.max(0, Math.min(1, (written.value - from) / (to - from))) };
  };
  return {
    ...kind,
    isRising: to > from,
    ends: [show(from), show(to)],
    over: (figures) => answers(figures) ?? 0,
    shown: (figures) => {
      const x = of(figures);
      return x === undefined ? undefined : show(x);
    },
  };
}

/** Value error, chroma kept where it was to be kept, and the error where colour was to be dulled: each counted apart. */
export const FIGURE_KINDS: readonly FigureKind[] = MEASURES.map(kindOf);

/** The figures that there are, now against before. */
export function figureRows(now: Figures, before?: Figures): FigureRow[] {
  return FIGURE_KINDS.flatMap((kind): FigureRow[] => {
    const { id, label } = kind;
    const is = kind.shown(now);
    if (is === undefined) return [];
    const was = before && kind.shown(before);
    const over = kind.over(now);
    const isPart = over > 0 && over < now.answers;
    return [
      {
        id,
        label,
        now: is,
        ...(isPart && { over }),
        ...(was && { before: was, change: changeOf(kind, is, was) }),
      },
    ];
  });
}

function changeOf({ isRising }: FigureKind, is: ShownFigure, was: ShownFigure): 'better' | 'worse' | 'same' {
  if (is.value === was.value) return 'same';
  return isRising === is.value > was.value ? 'better' : 'worse';
}

const kindOfRow = ({ id }: FigureRow): FigureKind | undefined => FIGURE_KINDS.find((kind) => kind.id === id);

/** How a figure is against before, in a word: "nearer"; undefined where there is nothing to compare with. */
export function changeWord(row: FigureRow): string | undefined {
  return row.change && kindOfRow(row)?.words[row.change];
}

function rowWords(row: FigureRow): string {
  const over = row.over === undefined ? '' : ` in ${row.over} of them`;
  const is = `${row.label} ${row.now.text}${kindOfRow(row)?.share ?? ''}${over}`;
  if (row.before === undefined) return is;
  return row.change === 'same'
    ? `${is}, ${changeWord(row)}`
    : `${is}, was ${row.before.number}: ${changeWord(row)}`;
}

/** Figures as words: "3 of 4 good; value error 0.4 steps in 2 of them, was 0.6: nearer; chroma kept 71 % of what was asked, was 60 %: more". */
export function figuresInWords(now: Figures, before?: Figures): string {
  return [`${now.good} of ${now.answers} good`, ...figureRows(now, before).map(rowWords)].join('; ');
}
