/** Build step: reads and validates exercises/ and prints drills and pictures as JSON, so that the program starts without parsing YAML. */
import { libraryStudio } from '../paints/index.js';
import { readDrillFolder } from './exercises.js';
import { readPictures } from './pictures.js';

const FOLDER = 'exercises';
const studio = libraryStudio();
process.stdout.write(
  JSON.stringify({ drills: readDrillFolder(studio, FOLDER), pictures: readPictures(studio, FOLDER) }),
);
