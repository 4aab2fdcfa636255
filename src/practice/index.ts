/** Practice: scheduling, rating, levels, today's set, its summary. Pure: time and seeds are arguments. */
export type { Circumstance, HistoryEntry } from './entry.js';
export {
  entryFromGrade,
  entryLine,
  HINT_COST,
  isEntry,
  MAX_LINE_BYTES,
  parseEntry,
  sessionMark,
} from './entry.js';
export type { Feedback } from './feedback.js';
export { feedbackFor, feedbackPlan } from './feedback.js';
export type { LevelOutlook, LevelState } from './levels.js';
export { TOP_LEVEL } from './levels.js';
export type { FamilyNeed, Reason } from './need.js';
export { nextSteps } from './next-steps.js';
export type { PlotColumn, PlotOptions } from './plot.js';
export { columnPlot, sideBySide } from './plot.js';
export type { DrillRef, FamilyRef } from './refs.js';
export type { FamilyReport, ProgressReport, SetReport } from './report.js';
export { progressReport } from './report.js';
export type { Pick, SetRequest } from './set.js';
export { chooseSet } from './set.js';
export type { Standing } from './standing.js';
export {
  addAnswer,
  copyStanding,
  emptyStanding,
  foldHistory,
  foldSorted,
  standingFromJson,
  standingToJson,
} from './standing.js';
export type { FamilySummary, SetSummary } from './summary.js';
export { figuresInWords, summariseSet } from './summary.js';
export type { Figures, Totals } from './totals.js';
export { figuresOf } from './totals.js';
