/** The drills and pictures of the exercises folder, read once for all tests of a worker; nobody writes into them. */
import { readDrillFolder } from '../src/files/exercises.js';
import { readPictures } from '../src/files/pictures.js';
import { STUDIO } from './studio.js';

export const SHIPPED_DRILLS = readDrillFolder(STUDIO, 'exercises');
export const SHIPPED_PICTURES = readPictures(STUDIO, 'exercises');
