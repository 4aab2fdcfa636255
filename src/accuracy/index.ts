export * from './neutral.js';
export * from './report.js';
export type * from './types.js';
