import { DataError, UsageError } from '../errors.js';
import { requireOutputs, writeNamed } from '../files/named.js';
import { elsewhereWords } from '../quiz/elsewhere.js';
import { plural } from '../quiz/report-words.js';
import { termFrom } from '../quiz/term/term.js';
import { termCsv, termJson } from '../quiz/term/term-data.js';
import { termText } from '../quiz/term/term-text.js';
import type { TextLook } from '../quiz/text-parts.js';
import { type MarkOutput, refusedIn } from './quiz-mark.js';
import { markTerm, OF_A_ROOM } from './quiz-term-read.js';
import { document, localeHere } from './run.js';

/** Options as typed. */
export interface TermCommandOptions {
  readonly class?: string;
  readonly before?: string;
  readonly after?: string;
  readonly csv?: string;
  readonly html?: string;
  readonly anonymous?: boolean;
  readonly json?: boolean;
  readonly force?: boolean;
}

/** The two quizzes to compare, as indexes. @throws UsageError for numbers that are none of theirs */
function comparedPair(
  { before, after }: TermCommandOptions,
  count: number,
): { readonly compare?: readonly [number, number] } {
  if (before === undefined && after === undefined) return {};
  const place = (flag: string, text: string): number => {
    const number = /^\d{1,3}$/.test(text) ? Number(text) : 0;
    if (number < 1 || number > count)
      throw new UsageError(`${flag} must be the number of a quiz, 1 to ${count}, as the report counts them`);
    return number - 1;
  };
  const pair = [place('--before', before ?? '1'), place('--after', after ?? String(count))] as const;
  if (pair[0] === pair[1]) throw new UsageError('--before and --after must be two quizzes');
  return { compare: pair };
}

/** Marks the quizzes of a term and compares them. @throws UsageError, DataError */
export async function termCommand(
  given: readonly string[],
  options: TermCommandOptions,
  look: TextLook,
): Promise<MarkOutput> {
  const replace = options.force === true;
  const isAnonymous = options.anonymous === true;
  if (isAnonymous && options.csv !== undefined)
    throw new UsageError(
      '--anonymous leaves every student out, so there is nothing for --csv; leave one of the two away',
    );
  const { title, quizzes, inputs, strayFiles, elsewhere, passedRooms } = markTerm(given, options.class);
  requireOutputs(
    [options.csv, options.html].filter((path) => path !== undefined),
    inputs,
    replace,
  );
  const term = termFrom(quizzes, { ...comparedPair(options, quizzes.length), locale: localeHere() });
  const written: string[] = [];
  if (options.csv !== undefined) written.push(writeNamed(options.csv, termCsv(term), replace));
  if (options.html !== undefined) {
    const { termHtml } = await import('../quiz/term/term-html.js');
    written.push(writeNamed(options.html, termHtml(title, quizzes, term, { isAnonymous }), replace));
  }
  const refused = quizzes.reduce((sum, { result }) => sum + refusedIn(result), strayFiles.length);
  if (options.json === true)
    return {
      text: document({
        ...termJson(title, quizzes, term, isAnonymous),
        ...(isAnonymous ? {} : { strayFiles, elsewhere }),
        written,
      }),
      refused,
    };
  const strays = isAnonymous
    ? [`Set aside: ${plural(strayFiles.length, 'file')}`]
    : ['Set aside', ...strayFiles.map((line) => `  ${line}`)];
  const tail = [
    ...elsewhere.map((each) => elsewhereWords(each, { isAnonymous, ours: 'one of these' })),
    ...(passedRooms.length === 0 ? [] : [`Passed over ${passedRooms.join(', ')}: ${OF_A_ROOM}.`]),
    ...(strayFiles.length === 0 ? [] : strays),
    ...written,
  ];
  const text = termText(title, quizzes, term, look, isAnonymous);
  return { text: `${text}${tail.length > 0 ? `\n${tail.join('\n')}\n` : ''}`, refused };
}

/** The fault that makes the exit code 1 after the report. */
export function strayFault(count: number): DataError {
  return new DataError(
    `${count} file${count === 1 ? '' : 's'} could not be used; the report names ${count === 1 ? 'it' : 'them'}`,
  );
}
