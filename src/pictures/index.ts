/** The little sheet: pictures of scenes as data, painted with what a drill lays. */
export * from './beside.js';
export * from './covering.js';
export * from './in-words.js';
export * from './pixels.js';
export * from './raster.js';
export * from './scene.js';
export * from './svg.js';
export type * from './types.js';
export * from './where.js';
