export * from './climb.js';
export * from './film.js';
export * from './mixture.js';
export * from './puddle.js';
export * from './search.js';
export * from './trial.js';
export type * from './types.js';
export { WAYS } from './types.js';
export * from './water.js';
