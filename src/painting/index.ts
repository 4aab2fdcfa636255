/** The photograph of a painting: what is read of it, what is said of it, and what to do next. Pure. */
export * from './advice.js';
export * from './as-seen.js';
export * from './compare.js';
export * from './demo/scenes.js';
export * from './diagnosis.js';
export * from './from-mass.js';
export * from './name.js';
export * from './reading/read.js';
export * from './report.js';
export * from './study.js';
export * from './told.js';
export type * from './types.js';
