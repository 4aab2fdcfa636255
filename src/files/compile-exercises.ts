/** Build step: reads and validates exercises/ and prints the drills as JSON, so that the program starts without parsing YAML. */
import { libraryStudio } from '../paints/index.js';
import { readDrillFolder } from './exercises.js';

process.stdout.write(JSON.stringify(readDrillFolder(libraryStudio(), 'exercises')));
