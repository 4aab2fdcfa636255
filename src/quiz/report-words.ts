/** Words and figures that the reports share. */
import type { QuestionAnalysis } from './analysis.js';
import type { Student } from './class.js';

/** A share or a correlation with two decimals; a dash where it cannot be computed. */
export function twoDecimals(value: number | undefined): string {
  if (value === undefined) return '-';
  const text = value.toFixed(2);
  return text === '-0.00' ? '0.00' : text;
}

/** Points without needless decimals. */
export function shownPoints(points: number): string {
  return String(Math.round(points * 100) / 100);
}

/** How well a question tells strong from weak, by D. Limits: Ebel's bands as item-analysis guides quote them. */
export function discriminationWords(discrimination: number): string {
  if (discrimination < 0) return 'backwards: the weaker did better; look at the question again';
  if (discrimination < 0.2) return 'hardly tells strong from weak';
  if (discrimination < 0.3) return 'tells strong from weak a little';
  if (discrimination < 0.4) return 'tells strong from weak fairly well';
  return 'tells strong from weak well';
}

/** Figures of one question, a line each. */
export function figureLines(question: QuestionAnalysis, sittings: number): string[] {
  const { difficulty, meanMark, groups, answered } = question;
  const right = Math.round(difficulty * sittings);
  return [
    `right ${right} of ${sittings} (difficulty index ${twoDecimals(difficulty)}), mean mark ${meanMark.toFixed(0)}, answered by ${answered}`,
    groups === undefined
      ? 'discrimination: needs two sittings'
      : `discrimination ${twoDecimals(groups.discrimination)}: ${discriminationWords(groups.discrimination)}`,
    `point-biserial ${twoDecimals(question.pointBiserial)}, corrected for the question itself ${twoDecimals(question.correctedPointBiserial)}`,
  ];
}

function duration(seconds: number): string {
  if (seconds < 120) return `${seconds} s`;
  if (seconds < 7200) return `${Math.round(seconds / 60)} min`;
  return seconds < 172_800 ? `${Math.round(seconds / 3600)} h` : `${Math.round(seconds / 86_400)} days`;
}

/** What a teacher should know of one sitting; nothing for most. */
export function remarks({ isPartial, sitting, lateSeconds, overTime, oddities }: Student): string[] {
  return [
    ...(sitting.source === 'paper' ? ['entered from paper'] : []),
    ...(isPartial
      ? [sitting.finished === undefined ? 'partial: not finished' : 'partial: questions open']
      : []),
    ...(lateSeconds === undefined ? [] : [`late by ${duration(lateSeconds)}`]),
    ...(overTime.length === 0 ? [] : [`over time on ${overTime.length}: ${overTime.join(', ')}`]),
    ...oddities,
  ];
}
