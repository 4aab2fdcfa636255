export * from './drying.js';
export * from './film.js';
export * from './grid.js';
export * from './paint-film.js';
export * from './surface.js';
