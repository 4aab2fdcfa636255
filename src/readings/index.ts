export * from './ask.js';
export * from './findings.js';
export { moveOf, patchColour, readBy, sizeOf } from './patch.js';
export * from './told.js';
export type * from './types.js';
