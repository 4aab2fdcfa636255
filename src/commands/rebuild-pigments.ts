/** Development command: writes src/paints/data/library.json again from the carried figures. Run from the project's folder. */
import { replaceWhole, SHARED } from '../files/write.js';
import { libraryFile, rebuildLibrary } from '../paints/calibration/rebuild.js';

const TARGET = 'src/paints/data/library.json';

const records = rebuildLibrary();
replaceWhole(TARGET, libraryFile(records, new Date().toISOString().slice(0, 10)), SHARED);
process.stdout.write(`${TARGET}: ${records.length} pigments\n`);
