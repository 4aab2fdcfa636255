/**
 * Build step: reads and validates exercises/ and prints drills and pictures as JSON, so that the program starts without parsing YAML,
 * with the chance that each drill is guessed: counting it takes longer than grading an answer.
 */
import { chanceByGuessing } from '../drills/chance-by-guessing.js';
import { libraryStudio } from '../paints/index.js';
import { readDrillFolder } from './exercises.js';
import { readPictures } from './pictures.js';
import type { Shipped } from './shipped.js';

const FOLDER = 'exercises';
const studio = libraryStudio();
const drills = readDrillFolder(studio, FOLDER);
const chances = Object.fromEntries(drills.map((drill) => [drill.id, chanceByGuessing(studio, drill)]));
const shipped: Shipped = { drills, chances };
process.stdout.write(JSON.stringify({ shipped, pictures: readPictures(studio, FOLDER) }));
