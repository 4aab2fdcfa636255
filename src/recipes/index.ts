export * from './find.js';
export { isOnScale, USUAL_DARKER } from './goal.js';
export { MOST_PAINTS } from './open.js';
export * from './told.js';
export type * from './types.js';
export { RECIPE_AIMS } from './types.js';
