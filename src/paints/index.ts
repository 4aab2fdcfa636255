export * from './boxes.js';
export * from './caution-words.js';
export * from './evidence.js';
export type { Palette } from './palettes.js';
export * from './studio.js';
export type * from './types.js';
