/** `mudlark quiz check`: whether a handout may be given out. It says nothing of what the right answers are. */
import { checkDrill, type DrillCheck } from '../drills/check.js';
import { findFamily } from '../drills/families.js';
import { DataError } from '../errors.js';
import { libraryStudio } from '../paints/index.js';
import { readHandout, shownFile } from '../quiz/files/read-files.js';
import type { Handout } from '../quiz/handout.js';
import { dueWords } from './quiz-due.js';
import { document } from './run.js';

/** A handout in figures, as JSON documents hold it. The secret is no part of it. */
export function handoutSummary(handout: Handout, path: string): object {
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

const RESULT_WORDS: Readonly<Record<Handout['rules']['showResult'], string>> = {
  end: 'results at the end',
  each: 'result after each question, which is then closed',
  later: 'results later, when you release them: mudlark quiz release',
};

/** The rules in words, a line each. */
function ruleLines({ rules, questions }: Handout): string[] {
  const { timePerQuestionSeconds: limit } = rules;
  const minutes = limit === undefined ? 0 : Math.ceil((limit * questions.length) / 60);
  return [
    limit === undefined ? 'no clock' : `${limit} s for each question, ${minutes} min at most`,
    RESULT_WORDS[rules.showResult],
    rules.backAllowed ? 'going back and changing is allowed' : 'no going back',
    rules.shuffle ? 'an order of their own for each student' : 'the same order for everyone',
    rules.hints ? 'hints are shown' : 'no hints',
    ...(rules.due === undefined ? [] : [`due ${dueWords(rules.due)}`]),
  ];
}

const soundness = ({ id, family, level, kind, faults }: DrillCheck) => ({ id, family, level, kind, faults });

/** Checks a handout as `drills check` does, without a word of the answers. @returns the text and whether it may be given out */
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
      text: document({ ...handoutSummary(handout, path), checks: checks.map(soundness), faulty, notes }),
      passed: faulty === 0,
    };
  }
  const rows = handout.questions.map(({ drill, points }, index) => {
    const check = checks[index] as (typeof checks)[number];
    const family = findFamily(drill.family)?.name ?? drill.family;
    const head = `${check.faults.length === 0 ? 'ok   ' : 'fault'} ${drill.id}: ${family}, level ${drill.level}, ${points} point${points === 1 ? '' : 's'}`;
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
