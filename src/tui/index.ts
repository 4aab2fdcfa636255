export type {
  AnswerEntry,
  FeedbackTiming,
  SaveOutcome,
  SetItem,
  Settings,
  StartAt,
  TuiDeps,
} from './deps.js';
export { runTui } from './run.js';
