/**
 * Build step: reads and validates exercises/ and prints the drills as JSON, so that the program starts without parsing YAML, with the
 * chance that each is guessed: counting it takes longer than grading an answer.
 */
import { chanceByGuessing } from '../drills/chance-by-guessing.js';
import { libraryStudio } from '../paints/index.js';
import { readDrillFolder } from './exercises.js';
import type { Shipped } from './shipped.js';

const studio = libraryStudio();
const drills = readDrillFolder(studio, 'exercises');
const chances = Object.fromEntries(drills.map((drill) => [drill.id, chanceByGuessing(studio, drill)]));
process.stdout.write(JSON.stringify({ drills, chances } satisfies Shipped));
