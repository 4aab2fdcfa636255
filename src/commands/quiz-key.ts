/** `mudlark quiz key`: the teacher's key. */
import { requireOutputs, writeNamed } from '../files/named.js';
import { libraryStudio } from '../paints/index.js';
import { readHandout } from '../quiz/files/read-files.js';
import { keyText, quizKey } from '../quiz/key.js';
import { document } from './run.js';

/** Columns of a key that is written to a file. */
const PAGE_COLUMNS = 90;

/** Options as typed. */
export interface KeyOptions {
  readonly out?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** Prints the key, or writes it. @param columns width of the terminal @throws UsageError, DataError */
export function keyCommand(path: string, { out, force = false, json }: KeyOptions, columns: number): string {
  if (out !== undefined) requireOutputs([out], [path], force);
  const handout = readHandout(libraryStudio(), path);
  const key = quizKey(handout);
  const { title } = handout;
  if (out === undefined) return json === true ? document({ title, key }) : keyText(handout, key, columns);
  const written = writeNamed(
    out,
    json === true ? document({ title, key }) : keyText(handout, key, PAGE_COLUMNS),
    force,
  );
  return json === true ? document({ written }) : `${written}\n`;
}
