export * from './compare.js';
export * from './criteria.js';
export * from './mixture.js';
export * from './relation.js';
export * from './score.js';
export * from './table.js';
export type * from './types.js';
export { AIMS } from './types.js';
