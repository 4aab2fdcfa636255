/** `mudlark progress`: per skill the level, the last seven sets, value error and chroma kept, and what to do next. */
import { shownPath } from '../files/faults.js';
import type { FamilyRef, FamilyReport, ProgressReport, SetReport } from '../practice/index.js';
import { FIGURE_KINDS, figuresInWords, glanceLines, progressReport, TOP_LEVEL } from '../practice/index.js';
import type { Profile } from '../profile/index.js';
import { padText, wrapText } from '../text/wrap.js';
import { plots, trendLines } from './progress-plots.js';
import { document } from './run.js';

export interface ProgressOptions {
  /** In the order of the curriculum. */
  readonly families: readonly FamilyRef[];
  readonly now: Date;
  /** Characters across; 80 when absent. */
  readonly columns?: number;
  /** Only the characters of ASCII. */
  readonly ascii?: boolean;
  /** Sentences only, for screen readers. */
  readonly plain?: boolean;
}

const reportOf = (profile: Profile, { families, now }: ProgressOptions): ProgressReport =>
  progressReport(profile.standing, families, now);
const plural = (n: number, word: string): string => `${n.toLocaleString('en')} ${word}${n === 1 ? '' : 's'}`;

/** Later tries are told apart and counted nowhere. */
function triesText({ laterTries }: ProgressReport): string {
  if (laterTries === 0) return '';
  return laterTries === 1
    ? ' (and 1 later try, which is not counted)'
    : ` (and ${laterTries.toLocaleString('en')} later tries, which are not counted)`;
}

function headLines(profile: Profile, report: ProgressReport, columns: number): string[] {
  const met = report.families.filter(({ level }) => level > 0).length;
  const top = report.families.filter(({ level }) => level === TOP_LEVEL).length;
  return [
    `Progress of ${profile.shownLearner}: ${plural(report.answers, 'answer')}${triesText(report)}, ${met} of ${report.families.length} skills met, ${top} at the top level.`,
    '',
    ...glanceLines(report.glance, columns),
    ...(report.earlierSets === 0
      ? []
      : [
          `${plural(report.earlierSets, 'set')} before were predicted by an earlier model: they count for levels and review, but not in these figures.`,
        ]),
    ...(profile.problem === undefined ? [] : [profile.problem]),
    ...profile.cautions,
    ...(profile.foreignLines > 0 && profile.files
      ? [
          `${plural(profile.foreignLines, 'line')} of the record cannot be read and count for nothing; copies are in ${shownPath(profile.files.setAside)}.`,
        ]
      : []),
  ];
}

/** Heads of the three figures, in their order, and what they are. */
const HEADS = ['Value', 'Kept', 'Dull'];
/** Fewer answers tell more of the drill than of the skill. */
const LEAST_ANSWERS = 3;
const LEGEND =
  'Over the last seven sets with that skill: good answers; value error in steps and dulling error in chroma, where less is better; chroma kept of what was to be kept, where more is better. Each over the answers that asked for it, at least three.';

/** Columns of a figure with its gap. */
const CELL = 6;

function table(families: readonly FamilyReport[], columns: number): string[] {
  const hasFigures = columns >= 76;
  const row = (name: string, cells: readonly string[], state: string): string => {
    const shown = cells.slice(0, hasFigures ? cells.length : 2).map((cell) => padText(cell, CELL, 'left'));
    return `${padText(name, Math.min(40, columns - 9 - CELL * shown.length))}${shown.join('')}   ${state}`.trimEnd();
  };
  return [
    row('Skill', ['Level', 'Good', ...HEADS], 'State'),
    ...families.map(({ title, level, figures, state }) =>
      row(
        title,
        [
          level === 0 ? '-' : `${level}/${TOP_LEVEL}`,
          figures ? `${figures.good}/${figures.answers}` : '-',
          ...FIGURE_KINDS.map(
            ({ shown, over }) => (figures && over(figures) >= LEAST_ANSWERS && shown(figures)?.number) || '-',
          ),
        ],
        state,
      ),
    ),
    ...wrapText(hasFigures ? LEGEND : 'Good: over the last seven sets with that skill.', columns),
  ];
}

function inSentences(report: ProgressReport): string[] {
  const list = (shown: (set: SetReport) => { readonly number: string } | undefined): string =>
    report.sets.map((set) => shown(set)?.number ?? 'not asked').join(', ');
  return [
    ...report.families.map(({ title, level, figures, outlook }) =>
      level === 0
        ? `${title}: not practised yet.`
        : `${title}: level ${level} of ${TOP_LEVEL}; ${figures ? `in the last seven sets ${figuresInWords(figures)}` : 'no answers'}. ${outlook}`,
    ),
    ...(report.sets.length === 0
      ? []
      : [
          `The last ${plural(report.sets.length, 'set')}, oldest first.`,
          ...FIGURE_KINDS.filter(({ shown }) => report.sets.some((set) => shown(set) !== undefined)).map(
            ({ title, shown, isRising }) =>
              `${title}; ${isRising ? 'more' : 'less'} is better: ${list(shown)}.`,
          ),
        ]),
  ];
}

/** Progress as text; no line is longer than the columns given, and it says the same without colour. */
export function progressText(profile: Profile, options: ProgressOptions): string {
  const { columns: asked = 80, ascii = false, plain = false } = options;
  const columns = Math.max(40, Math.min(asked, 160));
  const report = reportOf(profile, options);
  const wrapped = (lines: readonly string[]): string[] => lines.flatMap((line) => wrapText(line, columns));
  const body = plain
    ? wrapped(inSentences(report))
    : [
        ...table(report.families, columns),
        '',
        ...(report.sets.length === 0 ? ['No sets yet.'] : plots(report.sets, columns, ascii)),
      ];
  const lines = [
    ...headLines(profile, report, columns).flatMap((line) => (line === '' ? [''] : wrapText(line, columns))),
    '',
    ...body,
    ...wrapped(trendLines(report)),
    '',
    'What to do next',
    ...report.next.flatMap((step) =>
      wrapText(step, columns - 2).map((line, i) => `${i === 0 ? '- ' : '  '}${line}`),
    ),
  ];
  return `${lines.join('\n')}\n`;
}

/** Progress as one JSON document. */
export function progressJson(
  profile: Profile,
  options: ProgressOptions & { readonly written?: readonly string[] },
): string {
  const { written = [] } = options;
  return document({
    learner: profile.learner,
    saving: profile.saving,
    ...(profile.problem !== undefined && { problem: profile.problem }),
    unreadableLines: profile.foreignLines,
    newerLines: profile.newerLines,
    answersAheadOfClock: profile.standing.ahead?.count ?? 0,
    ...reportOf(profile, options),
    ...(written.length > 0 && { written }),
  });
}

const CSV_COLUMNS = [
  'learner',
  'family',
  'skill',
  'level',
  'set',
  'started',
  'answers',
  'good',
  'fair',
  'off',
  'mark',
  'value_error_steps',
  'chroma_kept',
  'dull_error_chroma',
] as const;

/**
 * Progress as CSV (RFC 4180, one row a skill and set, the last seven sets of each). Texts that a spreadsheet would take
 * for a formula get an apostrophe in front.
 */
export async function progressCsv(profile: Profile, options: ProgressOptions): Promise<string> {
  const { stringify } = await import('csv-stringify/sync');
  const round = (x: number | undefined, digits: number): number | string =>
    x === undefined ? '' : Number(x.toFixed(digits));
  const rows = reportOf(profile, options).families.flatMap((family) =>
    family.sets.map((set) => [
      profile.learner,
      family.id,
      family.title,
      family.level,
      set.set,
      set.started,
      set.answers,
      set.good,
      set.fair,
      set.off,
      round(set.mark, 1),
      round(set.valueError, 3),
      round(set.chromaKept, 3),
      round(set.dullError, 1),
    ]),
  );
  return stringify([[...CSV_COLUMNS], ...rows], { escape_formulas: true, record_delimiter: 'windows' });
}
