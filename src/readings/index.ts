export * from './ask.js';
export * from './findings.js';
export { moveOf, patchColour, sizeOf } from './patch.js';
export { READ_ENDS } from './table.js';
export * from './told.js';
export type * from './types.js';
