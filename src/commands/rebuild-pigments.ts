/** Development command: writes src/paints/data/library.json again from the carried figures. Run from the project's folder. */
import { writeFileSync } from 'node:fs';
import { libraryFile, rebuildLibrary } from '../paints/calibration/rebuild.js';

const TARGET = 'src/paints/data/library.json';

const records = rebuildLibrary();
writeFileSync(TARGET, libraryFile(records, new Date().toISOString().slice(0, 10)));
process.stdout.write(`${TARGET}: ${records.length} pigments\n`);
