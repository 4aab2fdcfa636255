export * from './caution-words.js';
export * from './library.js';
export * from './loads.js';
export * from './palettes.js';
export * from './predict.js';
export * from './types.js';
