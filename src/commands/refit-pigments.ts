/**
 * Development command: fits K and S of the measured paints again from the carried films, and works out how far predictions are off.
 * Takes a minute. Run from the project's folder.
 */
import { replaceWhole, SHARED } from '../files/write.js';
import { errorFigures, errorsFile } from '../paints/refit/errors-file.js';
import { measuredFile } from '../paints/refit/file.js';
import { fitTable } from '../paints/refit/fit.js';
import { ALL_EVIDENCE, SHIPPED_MODEL } from '../paints/refit/model.js';

const TABLE = 'src/paints/data/measured.json';
const ERRORS = 'src/accuracy/data/blind.json';

const today = new Date().toISOString().slice(0, 10);
const table = fitTable(ALL_EVIDENCE, SHIPPED_MODEL);
replaceWhole(TABLE, measuredFile(table, today), SHARED);
process.stdout.write(`${TABLE}: ${table.length} paints\n`);

const figures = errorFigures(table);
replaceWhole(ERRORS, errorsFile(figures, today), SHARED);
const { blind, thinnest } = figures;
process.stdout.write(
  `${ERRORS}: blind mixtures CIEDE2000 mean ${blind.mean}, median ${blind.median}; thinnest films ${thinnest.mean}, chroma ${thinnest.chromaBias}\n`,
);
