/** The paper that the library's paints were measured on. */
import { type Ground, ground, spectrum } from '../optics/index.js';
import paper from './data/paper.json' with { type: 'json' };

/** White watercolour paper as measured with the paints. */
export const PAPER: Ground = ground(spectrum(paper.reflectance, 'paper'));
