/**
 * Colour without a library behind it: what searches and grades use.
 * What needs culori or the Munsell tables is imported from its own file: `describe.js`, `screen.js`, `difference.js`,
 * `munsell-notation.js`.
 */
export * from './chroma.js';
export * from './hue.js';
export * from './lab.js';
export * from './reading.js';
export * from './value.js';
export * from './words.js';
export * from './xyz.js';
