/** Practice: scheduling, rating, levels, today's set, its summary. Pure: time and seeds are arguments. */
export type { Answered, Graded, Kept } from './answered.js';
export { HINT_COST, sessionMark } from './answered.js';
export type { AtAGlance } from './at-a-glance.js';
export { atAGlance, glanceLines } from './at-a-glance.js';
export { placesByTime, standsAt } from './dated.js';
export type { HistoryEntry } from './entry.js';
export { entryLine, entryOf, isEntry, isNewer, MAX_LINE_BYTES, parseEntry } from './entry.js';
export type { Feedback } from './feedback.js';
export { dueResults, feedbackFor } from './feedback.js';
export type { FigureRow } from './figure-rows.js';
export { changeWord, FIGURE_KINDS, figureRows, figuresInWords } from './figure-rows.js';
export { comparedWithLast } from './last-time.js';
export type { LevelOutlook, LevelState } from './levels.js';
export { TOP_LEVEL } from './levels.js';
export type { Mistake } from './mistakes.js';
export { mistakesOf } from './mistakes.js';
export type { FamilyNeed, Reason } from './need.js';
export { nextSteps } from './next-steps.js';
export { PLACING_DECISIONS, placementOf, startLevel } from './placing.js';
export type { PlotColumn, PlotOptions } from './plot.js';
export { columnPlot, sideBySide } from './plot.js';
export type { DrillRef, FamilyRef } from './refs.js';
export type { FamilyReport, ProgressReport, SetReport } from './report.js';
export { progressReport } from './report.js';
export type { Pick, SetRequest } from './set.js';
export { chooseSet } from './set.js';
export { chooseMend, nextPlacing } from './single-picks.js';
export type { Standing } from './standing.js';
export {
  addAnswer,
  copyStanding,
  emptyStanding,
  foldSorted,
  levelIn,
  placingIsOpen,
  standingFromJson,
  standingToJson,
} from './standing.js';
export type { FamilySummary, SetSummary } from './summary.js';
export { summariseSet } from './summary.js';
export type { Figures, Totals } from './totals.js';
export { figuresOf } from './totals.js';
export type { Trend } from './trend.js';
