export type {
  AnswerEntry,
  FeedbackTiming,
  SaveOutcome,
  SetItem,
  Settings,
  StartAt,
  TuiDeps,
} from './kit/deps.js';
export { runTui } from './program/run.js';
