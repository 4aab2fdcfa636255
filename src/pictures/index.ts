/** The little sheet: pictures of scenes as data, painted with what a drill lays. */
export * from './covering.js';
export * from './in-words.js';
export * from './pixels.js';
export * from './raster.js';
export * from './svg.js';
export type * from './types.js';
export { GRID } from './types.js';
export * from './where.js';
