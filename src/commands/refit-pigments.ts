/** Development command: writes src/paints/data/measured.json again from the carried films. Run from the project's folder. */
import { writeFileSync } from 'node:fs';
import { measuredFile } from '../paints/refit/file.js';
import { fitTable } from '../paints/refit/fit.js';
import { ALL_EVIDENCE, SHIPPED_MODEL } from '../paints/refit/model.js';

const TARGET = 'src/paints/data/measured.json';

const today = new Date().toISOString().slice(0, 10);
const table = fitTable(ALL_EVIDENCE, SHIPPED_MODEL);
writeFileSync(TARGET, measuredFile(table, today));
process.stdout.write(`${TARGET}: ${table.length} paints\n`);
