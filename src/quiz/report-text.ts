/** The report of a class as text. */
import { findFamily } from '../drills/families.js';
import { padText, widthOf, wrapText } from '../text/wrap.js';
import type { ClassAnalysis, FieldCounts, QuestionAnalysis } from './analysis.js';
import type { ClassResult, Student } from './class.js';
import { figureLines, remarks, shownPoints, twoDecimals } from './report-words.js';

/** How the text is laid out. */
export interface TextLook {
  readonly columns: number;
  /** One column each: a filled and an empty part of a bar. */
  readonly full: string;
  readonly empty: string;
}

const NAME_COLUMNS = 24;
const BAR_COLUMNS = 20;

/** A bar of a share 0-1; anything above nothing shows. */
export function bar(
  share: number,
  columns: number,
  { full, empty }: Pick<TextLook, 'full' | 'empty'>,
): string {
  const filled = share > 0 ? Math.max(1, Math.round(Math.min(1, share) * columns)) : 0;
  return full.repeat(filled) + empty.repeat(columns - filled);
}

function studentRow(student: Student, questions: number, columns: number): string[] {
  const { name, answered, right, points, possible, percent } = student;
  const row = [
    padText(name, NAME_COLUMNS),
    padText(`${answered}/${questions}`, 8, 'left'),
    padText(String(right), 6, 'left'),
    padText(`${shownPoints(points)}/${shownPoints(possible)}`, 13, 'left'),
    padText(percent.toFixed(1), 7, 'left'),
  ].join(' ');
  const said = remarks(student).flatMap((remark) => wrapText(remark, columns - 4));
  return [row, ...said.map((line) => `    ${line}`)];
}

/** One row per student, remarks under it. */
function classTable({ students, handout }: ClassResult, columns: number): string[] {
  const head = [
    padText('name', NAME_COLUMNS),
    padText('answered', 8, 'left'),
    padText('right', 6, 'left'),
    padText('points', 13, 'left'),
    padText('percent', 7, 'left'),
  ].join(' ');
  return [head, ...students.flatMap((student) => studentRow(student, handout.questions.length, columns))];
}

/** Options of one row of choices as bars. */
function fieldBars({ label, options }: FieldCounts, look: TextLook): string[] {
  const labels = Math.min(34, Math.max(...options.map((option) => widthOf(option.label))));
  const total = options.reduce((sum, { count }) => sum + count, 0);
  return [
    label,
    ...options.map((option) => {
      const share = total === 0 ? 0 : option.count / total;
      const line = `  ${padText(option.label, labels)} ${bar(share, BAR_COLUMNS, look)} ${padText(String(option.count), 3, 'left')}`;
      return option.isBest ? `${line}  best` : line;
    }),
  ];
}

function questionBlock(
  question: QuestionAnalysis,
  index: number,
  { handout }: ClassResult,
  analysis: ClassAnalysis,
  look: TextLook,
): string[] {
  const { drill, points } = handout.questions[index] as ClassResult['handout']['questions'][number];
  const worth = points === 1 ? '' : `, ${shownPoints(points)} points`;
  const [common] = question.answers;
  const inner = [
    drill.ask,
    ...figureLines(question, analysis.sittings),
    ...question.fields.flatMap((field) => fieldBars(field, look)),
    `best: ${question.bestLabel}`,
    ...(common === undefined ? [] : [`most given: ${common.label} (${common.count}, marks ${common.mark})`]),
    ...question.ideas.slice(0, 2).map(({ words }) => words),
  ];
  return [
    `${index + 1}. ${drill.title} (${findFamily(drill.family)?.name ?? drill.family}, ${drill.id}${worth})`,
    ...inner.flatMap((line) =>
      line.startsWith('  ') ? [`   ${line}`] : wrapText(line, look.columns - 3).map((part) => `   ${part}`),
    ),
  ];
}

/** Reliability and what to make of it. */
export function reliabilityLines({ reliability, groupWords, warnings, sittings }: ClassAnalysis): string[] {
  const { kr20, alpha, standardError } = reliability;
  return [
    `KR-20 ${twoDecimals(kr20)} (right or wrong), Cronbach's alpha ${twoDecimals(alpha)} (points)`,
    ...(standardError === undefined
      ? []
      : [`standard error of measurement ${twoDecimals(standardError)} points`]),
    ...(sittings < 2
      ? []
      : [`Discrimination compares ${groupWords}, by points, the question itself included.`]),
    'Right means a mark of 85 or more. All variances are population variances.',
    ...warnings,
  ];
}

/** The whole report. */
export function reportText(result: ClassResult, analysis: ClassAnalysis, look: TextLook): string {
  const { handout, students, setAside } = result;
  const mean = analysis.meanPercent === undefined ? '' : `; mean ${analysis.meanPercent.toFixed(1)} %`;
  const wrapped = (lines: readonly string[]): string[] =>
    lines.flatMap((line) => wrapText(line, look.columns - 2).map((part) => `  ${part}`));
  const blocks = [
    [
      handout.title,
      `${students.length} sitting${students.length === 1 ? '' : 's'} counted, ${setAside.length} set aside${mean}`,
    ],
    ...(setAside.length === 0
      ? []
      : [
          [
            'Set aside',
            ...wrapped(
              setAside.map(({ name, file, why }) => `${name === '' ? file : `${name} (${file})`}: ${why}`),
            ),
          ],
        ]),
    ...(students.length === 0 ? [] : [classTable(result, look.columns)]),
    ...analysis.questions.map((question, index) => questionBlock(question, index, result, analysis, look)),
    ...(students.length === 0 ? [] : [['Reliability', ...wrapped(reliabilityLines(analysis))]]),
    ...(analysis.ideas.length === 0
      ? []
      : [
          [
            'What the class misunderstood, over all answers',
            ...wrapped(analysis.ideas.slice(0, 4).map(({ words, instead }) => `${words}. ${instead}`)),
          ],
        ]),
  ];
  return `${blocks.map((block) => block.join('\n')).join('\n\n')}\n`;
}
