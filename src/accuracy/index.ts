export * from './neutral.js';
export * from './report.js';
export { tintingStrength } from './tinting.js';
export type * from './types.js';
