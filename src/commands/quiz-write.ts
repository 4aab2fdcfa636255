/** `mudlark quiz write` and `mudlark quiz check`. */

import { checkDrill } from '../drills/check.js';
import { FAMILIES, findFamily } from '../drills/families.js';
import type { Drill } from '../drills/kinds/index.js';
import { GENERATED_FAMILIES, generateDrill, usedBefore } from '../drills/make/index.js';
import { DataError, InputError, UsageError } from '../errors.js';
import { writeNamed } from '../files/named.js';
import { libraryStudio } from '../paints/index.js';
import { chooseQuestions, type MakeDrill } from '../quiz/choose.js';
import { readHandout, shownFile } from '../quiz/files/read-files.js';
import { type Handout, MOST_SEED, parseHandout, type Rules } from '../quiz/handout.js';
import { handoutText } from '../quiz/handout-text.js';
import { isInstant } from '../quiz/instant.js';
import { cleanText } from '../text/sanitize.js';
import { bestAndTrap, checkJson } from './drills.js';
import { palettePaints } from './learner.js';
import { document, usage } from './run.js';

/** Options as typed. */
export interface WriteOptions {
  readonly families?: string;
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
  if (results !== 'end' && results !== 'each')
    throw new UsageError(`--results must be end or each, not "${cleanText(results, 40)}"`);
  if (due !== undefined && !isInstant(due))
    throw new UsageError('--due must be a date and time with its zone, like 2026-03-02T12:00:00Z');
  return {
    ...(options.time === undefined ? {} : { timePerQuestionSeconds: whole(options.time, '--time', 5, 3600) }),
    hints: options.hints === true,
    showResult: results,
    backAllowed: options.back !== false,
    shuffle: options.shuffle !== false,
    ...(due === undefined ? {} : { due }),
  };
}

function readFamilies(text: string | undefined): string[] {
  if (text === undefined) return [];
  const ids = text
    .split(',')
    .map((id) => id.trim())
    .filter((id) => id !== '');
  if (ids.length === 0) throw new UsageError('--families names no family; leave it out for all of them');
  return ids;
}

/** Makes the quiz and writes its file; text, or the JSON document. @throws UsageError, DataError */
export function writeCommand(options: WriteOptions, sources: WriteSources): string {
  const studio = libraryStudio();
  const { out } = options;
  if (out === undefined || out === '')
    throw new UsageError(
      'quiz write needs --out FILE, like --out week3.quiz.yaml; in a terminal it asks for the rest',
    );
  const seed =
    options.seed === undefined ? sources.random(999_999) : whole(options.seed, '--seed', 0, MOST_SEED);
  const level = options.level === undefined ? undefined : whole(options.level, '--level', 1, 5);
  const wish = {
    families: readFamilies(options.families),
    count: options.count === undefined ? DEFAULT_COUNT : whole(options.count, '--count', 1, 60),
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
    rules,
    questions: chosen.map((drill) => ({ drill, points: 1 })),
  });
  // Read back before it is written: what cannot be read must never reach a class.
  const handout = parseHandout(studio, text, shownFile(out));
  const done = writeNamed(out, text, options.force === true);
  if (options.json === true) return document(summary(handout, out));
  return `${[
    done,
    `${handout.title}: ${handout.questions.length} question${handout.questions.length === 1 ? '' : 's'}, seed ${seed}`,
    ...familyLines(handout),
    `Check it: mudlark quiz check ${shownFile(out)}`,
    `Sit it:   mudlark quiz sit ${shownFile(out)} --name "Ann Lee"`,
  ].join('\n')}\n`;
}

function familyLines({ questions }: Handout): string[] {
  return FAMILIES.flatMap(({ id, name }) => {
    const count = questions.filter(({ drill }) => drill.family === id).length;
    return count === 0 ? [] : [`  ${name}: ${count}`];
  });
}

function summary(handout: Handout, path: string): object {
  const { title, seed, engine, rules, digest, questions } = handout;
  return {
    file: shownFile(path),
    title,
    seed,
    engine,
    rules,
    digest,
    questions: questions.map(({ drill, points }) => ({
      drill: drill.id,
      family: drill.family,
      level: drill.level,
      points,
    })),
  };
}

/** The rules in words, a line each. */
function ruleLines({ rules, questions }: Handout): string[] {
  const { timePerQuestionSeconds: limit } = rules;
  const minutes = limit === undefined ? 0 : Math.ceil((limit * questions.length) / 60);
  return [
    limit === undefined ? 'no clock' : `${limit} s for each question, ${minutes} min at most`,
    rules.showResult === 'end' ? 'results at the end' : 'result after each question, which is then closed',
    rules.backAllowed ? 'going back and changing is allowed' : 'no going back',
    rules.shuffle ? 'an order of their own for each student' : 'the same order for everyone',
    rules.hints ? 'hints are shown' : 'no hints',
    ...(rules.due === undefined ? [] : [`due ${rules.due}`]),
  ];
}

/** Checks a handout as `drills check` does. @returns the text and whether it may be given out */
export function checkQuizCommand(
  path: string,
  version: string,
  options: { readonly json?: boolean },
): { readonly text: string; readonly passed: boolean } {
  const handout = readHandout(libraryStudio(), path);
  const checks = handout.questions.map(({ drill }) => checkDrill(handout.studio, drill));
  const faulty = checks.filter(({ faults }) => faults.length > 0).length;
  const notes =
    handout.engine === version
      ? []
      : [`written by version ${handout.engine}, checked by ${version}: marks go by the version that marks`];
  if (options.json === true) {
    return {
      text: document({ ...summary(handout, path), checks: checks.map(checkJson), faulty, notes }),
      passed: faulty === 0,
    };
  }
  const rows = handout.questions.map(({ drill, points }, index) => {
    const check = checks[index] as (typeof checks)[number];
    const family = findFamily(drill.family)?.name ?? drill.family;
    const head = `${check.faults.length === 0 ? 'ok   ' : 'fault'} ${drill.id}: ${family}, level ${drill.level}, ${points} point${points === 1 ? '' : 's'}; ${bestAndTrap(check.look)}`;
    return [head, ...check.faults.map((fault) => `      ${fault}`)].join('\n');
  });
  const lines = [
    handout.title,
    ...ruleLines(handout).map((line) => `  ${line}`),
    `  digest ${handout.digest}`,
    ...notes.map((note) => `  ${note}`),
    ...rows,
    `${checks.length} question${checks.length === 1 ? '' : 's'} checked, ${faulty} with faults`,
  ];
  return { text: `${lines.join('\n')}\n`, passed: faulty === 0 };
}

/** The fault that makes the exit code 1 after the report. */
export function checkQuizFault(): DataError {
  return new DataError('some questions have faults; the report above names them');
}
