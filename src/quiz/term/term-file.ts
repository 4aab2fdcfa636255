/** The term file: which quizzes a class sat over the weeks, in order, and where their answers lie. */
import * as v from 'valibot';
import { textSchema } from '../../drills/fields-schema.js';
import { parseYaml, requireSize } from '../../drills/yaml-source.js';
import { NOT_A_MAP } from '../handout.js';

/** Version of the file format; a file with another is refused. */
const TERM_FORMAT = 1;

/** Largest term file, in characters, and most quizzes in it: one a week for a year. */
const MOST_TERM = 50_000;
const MOST_QUIZZES = 52;

/** Most places that the answers to one quiz lie in; a folder is one. */
const MOST_PLACES = 400;

/** A quiz of the term; paths are taken from the folder of the term file. */
export interface TermEntry {
  readonly handout: string;
  /** Files, folders and patterns. */
  readonly answers: readonly string[];
  /** Where the handout's own title would not tell two sittings of it apart. */
  readonly title?: string | undefined;
}

export interface TermFile {
  readonly title?: string | undefined;
  /** Path of the class file. */
  readonly class?: string | undefined;
  readonly quizzes: readonly TermEntry[];
}

const path = textSchema(1000);

const termSchema = v.strictObject(
  {
    format: v.literal(TERM_FORMAT, `format must be ${TERM_FORMAT}`),
    title: v.optional(textSchema(120)),
    class: v.optional(path),
    quizzes: v.pipe(
      v.array(
        v.strictObject(
          {
            handout: path,
            answers: v.pipe(
              v.array(path, 'must be a list of files, folders and patterns, like [week1]'),
              v.minLength(1, 'must name a file, a folder or a pattern'),
              v.maxLength(MOST_PLACES, `names more than ${MOST_PLACES} places`),
            ),
            title: v.optional(textSchema(120)),
          },
          NOT_A_MAP,
        ),
        'must be a list',
      ),
      v.minLength(1, 'must name a quiz'),
      v.maxLength(MOST_QUIZZES, `holds more than ${MOST_QUIZZES} quizzes`),
    ),
  },
  NOT_A_MAP,
);

/**
 * Reads a term file.
 * @param name what to call the file in a message
 * @throws DataError `name:line: what is wrong`, always one line
 */
export function parseTermFile(text: string, name: string): TermFile {
  requireSize(text, MOST_TERM, 'term', name);
  const { format: _format, ...term } = parseYaml(text, termSchema, name).value;
  return term;
}

/** Whether a text is meant to hold a term, not a handout. */
export const isTermFile = (text: string): boolean =>
  /^\s*["']?quizzes["']?\s*:/m.test(text) && !/^["']?questions["']?\s*:/m.test(text);
