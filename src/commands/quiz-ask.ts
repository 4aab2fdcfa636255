/** Asking for the parts of a new quiz, one plain line at a time: works for a screen reader as it is. */
import { existsSync } from 'node:fs';
import { FAMILIES } from '../drills/families.js';
import type { Drill } from '../drills/kinds/index.js';
import { UsageError } from '../errors.js';
import { libraryStudio } from '../paints/index.js';
import { SHOW_RESULT } from '../quiz/handout.js';
import { MOST_NAME, shownName, titlePart } from '../quiz/names.js';
import { didYouMean } from '../text/nearest.js';
import { cleanText } from '../text/sanitize.js';
import { dialogue } from './dialogue.js';
import { dueWords, readDue } from './quiz-due.js';
import type { WriteOptions } from './quiz-write.js';

const paletteIds = (): string[] => libraryStudio().palettes.map(({ id }) => id);

/** One question of the dialogue. */
interface Line {
  readonly key: keyof WriteOptions;
  readonly ask: string;
  readonly usual: string | ((answers: Readonly<Record<string, string>>) => string);
  /** Not asked when drills were chosen by their ids. */
  readonly isForFamilies?: boolean;
  /** What is wrong with an answer; undefined when nothing is. */
  fault(answer: string): string | undefined;
}

const inRange = (least: number, most: number) => (answer: string) =>
  /^\d{1,9}$/.test(answer) && Number(answer) >= least && Number(answer) <= most
    ? undefined
    : `a whole number from ${least} to ${most}, please`;

const oneOf = (options: readonly string[]) => (answer: string) =>
  options.includes(answer) ? undefined : `one of: ${options.join(', ')}`;

const emptyOr = (check: (answer: string) => string | undefined) => (answer: string) =>
  answer === '' ? undefined : check(answer);

/** Ids with commas between, all of them known. */
function idsFault(what: string, known: readonly string[]): Line['fault'] {
  return (answer) => {
    const ids = answer.split(',').map((id) => id.trim());
    const wrong = ids.find((id) => id !== '' && !known.includes(id));
    return wrong === undefined
      ? undefined
      : `there is no ${what} "${cleanText(wrong, 60)}".${didYouMean(wrong, known)}`;
  };
}

function dueFault(answer: string): string | undefined {
  try {
    process.stdout.write(`  ${dueWords(readDue(answer))}\n`);
    return undefined;
  } catch (error) {
    if (error instanceof UsageError) return error.message.replace(/^--due: /, '').replace(/^--due /, 'it ');
    throw error;
  }
}

function lines(known: readonly string[], drills: readonly Drill[], replace: boolean): Line[] {
  return [
    { key: 'title', ask: 'Title', usual: 'Quiz', fault: () => undefined },
    {
      key: 'drills',
      ask: 'Drills by their ids (mudlark drills lists them), with commas between; empty to choose by family',
      usual: '',
      fault: idsFault(
        'drill',
        drills.map(({ id }) => id),
      ),
    },
    {
      key: 'families',
      isForFamilies: true,
      ask: 'Families, with commas between; empty for all',
      usual: '',
      fault: idsFault('family with drills', known),
    },
    {
      key: 'count',
      isForFamilies: true,
      ask: 'How many questions',
      usual: '12',
      fault: inRange(1, 60),
    },
    {
      key: 'level',
      isForFamilies: true,
      ask: 'Level 1 (worked) to 5 (cold); empty for any',
      usual: '',
      fault: emptyOr(inRange(1, 5)),
    },
    {
      key: 'palette',
      isForFamilies: true,
      ask: `Palette (${paletteIds().join(', ')}); empty for any`,
      usual: '',
      fault: emptyOr(oneOf(paletteIds())),
    },
    {
      key: 'time',
      ask: 'Seconds for each question; empty for no clock',
      usual: '',
      fault: emptyOr(inRange(5, 3600)),
    },
    {
      key: 'results',
      ask: 'Results at the end, after each question, or later when you release them (end, each, later)',
      usual: 'end',
      fault: oneOf(SHOW_RESULT),
    },
    {
      key: 'due',
      ask: 'Due, like 2026-12-01 18:00; empty for none',
      usual: '',
      fault: emptyOr(dueFault),
    },
    {
      key: 'out',
      ask: 'File',
      usual: ({ title = 'quiz' }) => `${titlePart(title)}.quiz.yaml`,
      fault: (answer) =>
        !replace && existsSync(answer) ? 'this file is there already; another name, please' : undefined,
    },
  ];
}

/** Asks a student for a name. @throws MudlarkError with exit code 130 when it is left */
export function askName(): Promise<string> {
  return dialogue(async (ask) => {
    for (;;) {
      const name = shownName((await ask('Your name: ')).slice(0, MOST_NAME * 4));
      if (name !== '') return name;
      process.stdout.write('  a name of at least one letter, please\n');
    }
  });
}

/**
 * Asks for what the flags left open.
 * @throws MudlarkError with exit code 130 when the dialogue is left
 */
export function askForQuiz(given: WriteOptions, drills: readonly Drill[]): Promise<WriteOptions> {
  const known = FAMILIES.filter(({ id }) => drills.some(({ family }) => family === id));
  const ids = known.map(({ id }) => id);
  return dialogue(async (ask) => {
    const answers: Record<string, string> = {};
    process.stdout.write(
      `A new quiz. Enter takes what stands in brackets.\nFamilies with drills:\n${known.map(({ id, name }) => `  ${id}: ${name}`).join('\n')}\n`,
    );
    for (const line of lines(ids, drills, given.force === true)) {
      const { key, fault } = line;
      const sofar = { ...(given.title === undefined ? {} : { title: given.title }), ...answers };
      if (given[key] !== undefined) continue;
      if (line.isForFamilies === true && (given.drills ?? answers['drills']) !== undefined) continue;
      const usual = typeof line.usual === 'string' ? line.usual : line.usual(sofar);
      for (;;) {
        const typed = await ask(usual === '' ? `${line.ask}: ` : `${line.ask} [${usual}]: `);
        const answer = cleanText(typed, 2000) || usual;
        const wrong = fault(answer);
        if (wrong === undefined) {
          if (answer !== '') answers[key] = answer;
          break;
        }
        process.stdout.write(`  ${wrong}\n`);
      }
    }
    return { ...given, ...answers };
  });
}
