/** `mudlark quiz write`. */
import { FAMILIES } from '../drills/families.js';
import type { Drill } from '../drills/kinds/index.js';
import { GENERATED_FAMILIES, generateDrill, usedBefore } from '../drills/make/index.js';
import { InputError, UsageError } from '../errors.js';
import { writeNamed } from '../files/named.js';
import { libraryStudio } from '../paints/index.js';
import { chooseQuestions, type MakeDrill } from '../quiz/choose.js';
import { inDrawnOrder } from '../quiz/drawn-order.js';
import { shownFile } from '../quiz/files/read-files.js';
import {
  type Handout,
  MOST_SEED,
  parseHandout,
  type Rules,
  SHOW_RESULT,
  type ShowResult,
} from '../quiz/handout.js';
import { handoutText } from '../quiz/handout-text.js';
import { titlePart } from '../quiz/names.js';
import { cleanText } from '../text/sanitize.js';
import { palettePaints } from './learner.js';
import { handoutSummary } from './quiz-check.js';
import { dueWords, readDue } from './quiz-due.js';
import { document, usage } from './run.js';

/** Options as typed. */
export interface WriteOptions {
  readonly families?: string;
  readonly drills?: string;
  readonly count?: string;
  readonly level?: string;
  readonly palette?: string;
  readonly seed?: string;
  readonly title?: string;
  readonly out?: string;
  readonly time?: string;
  readonly results?: string;
  readonly back?: boolean;
  readonly shuffle?: boolean;
  readonly hints?: boolean;
  readonly due?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** What a quiz is made from. */
export interface WriteSources {
  readonly version: string;
  readonly drills: readonly Drill[];
  readonly make?: (wish: { readonly level?: number; readonly paints: readonly string[] }) => MakeDrill;
  /** Whole number 0 … most, for a seed when none is given. */
  readonly random: (most: number) => number;
  /** A key for the seals, 64 hex digits that nobody can foresee. */
  readonly secret: () => string;
}

const DEFAULT_COUNT = 12;
/** Paints and level of made drills where neither is asked for. */
const USUAL_PALETTE = 'twelve';
const USUAL_LEVEL = 3;

/** Makes new drills of the families that can be made. */
export function quizMaker({
  level = USUAL_LEVEL,
  paints,
}: {
  readonly level?: number;
  readonly paints: readonly string[];
}): MakeDrill {
  const made: Drill[] = [];
  return (family, seed) => {
    if (!GENERATED_FAMILIES.includes(family)) return undefined;
    try {
      const avoid = usedBefore(made);
      const drill = generateDrill(libraryStudio(), { seed, family, level, palette: paints, avoid });
      made.push(drill);
      return drill;
    } catch (error) {
      // No such drill can be made from these paints: the caller counts what it has.
      if (error instanceof InputError) return undefined;
      throw error;
    }
  };
}

function whole(text: string, flag: string, least: number, most: number): number {
  const value = /^\d{1,10}$/.test(text.trim()) ? Number(text) : Number.NaN;
  if (!(value >= least && value <= most))
    throw new UsageError(`${flag} must be a whole number ${least} to ${most}, not "${cleanText(text, 40)}"`);
  return value;
}

function readRules(options: WriteOptions): Rules {
  const { results = 'end', due } = options;
  const showResult: ShowResult | undefined = SHOW_RESULT.find((each) => each === results);
  if (showResult === undefined)
    throw new UsageError(`--results must be end, each or later, not "${cleanText(results, 40)}"`);
  return {
    ...(options.time === undefined ? {} : { timePerQuestionSeconds: whole(options.time, '--time', 5, 3600) }),
    hints: options.hints === true,
    showResult,
    backAllowed: options.back !== false,
    shuffle: options.shuffle !== false,
    ...(due === undefined ? {} : { due: readDue(due) }),
  };
}

/** Ids with commas between. @param what that none is named of, where it is only commas */
function readIds(text: string | undefined, what: string): string[] {
  if (text === undefined) return [];
  const ids = text
    .split(',')
    .map((id) => id.trim())
    .filter((id) => id !== '');
  if (ids.length === 0) throw new UsageError(`${what}; leave it out for all of them`);
  return ids;
}

/** Makes the quiz and writes its file; text, or the JSON document. @throws UsageError, DataError */
export function writeCommand(options: WriteOptions, sources: WriteSources): string {
  const studio = libraryStudio();
  const out = options.out || (options.title && `${titlePart(options.title)}.quiz.yaml`);
  if (out === undefined || out === '')
    throw new UsageError(
      'quiz write needs --title or --out FILE, like --out week3.quiz.yaml; in a terminal it asks for the rest',
    );
  const seed =
    options.seed === undefined ? sources.random(999_999) : whole(options.seed, '--seed', 0, MOST_SEED);
  const level = options.level === undefined ? undefined : whole(options.level, '--level', 1, 5);
  const named = [...new Set(readIds(options.drills, '--drills names no drill'))];
  const wish = {
    families: readIds(options.families, '--families names no family'),
    drills: named,
    count:
      options.count === undefined ? named.length || DEFAULT_COUNT : whole(options.count, '--count', 1, 60),
    seed,
    ...(level === undefined ? {} : { level }),
    ...(options.palette === undefined ? {} : { paints: palettePaints(studio, options.palette) }),
  };
  const make = sources.make?.({
    ...(level === undefined ? {} : { level }),
    paints: palettePaints(studio, options.palette ?? USUAL_PALETTE),
  });
  const rules = readRules(options);
  const chosen = usage(() => chooseQuestions(wish, sources.drills, make));
  const title = cleanText(options.title ?? 'Quiz', 120) || 'Quiz';
  const text = handoutText({
    title,
    engine: sources.version,
    seed,
    secret: sources.secret(),
    rules,
    questions: chosen.map((drill) => ({ drill: inDrawnOrder(studio, drill, seed), points: 1 })),
  });
  // Read back before it is written: what cannot be read must never reach a class.
  const handout = parseHandout(studio, text, shownFile(out));
  const done = writeNamed(out, text, options.force === true);
  if (options.json === true) return document(handoutSummary(handout, out));
  return `${[
    done,
    `${handout.title}: ${handout.questions.length} question${handout.questions.length === 1 ? '' : 's'}, seed ${seed}`,
    ...familyLines(handout),
    ...(rules.due === undefined ? [] : [`Due ${dueWords(rules.due)}`]),
    `Check it: mudlark quiz check ${shownFile(out)}`,
    `Sit it:   mudlark quiz sit ${shownFile(out)}`,
    `Your key: mudlark quiz key ${shownFile(out)}`,
  ].join('\n')}\n`;
}

function familyLines({ questions }: Handout): string[] {
  return FAMILIES.flatMap(({ id, name }) => {
    const count = questions.filter(({ drill }) => drill.family === id).length;
    return count === 0 ? [] : [`  ${name}: ${count}`];
  });
}
