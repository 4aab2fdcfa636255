/** Asking for the parts of a new quiz, one plain line at a time: works for a screen reader as it is. */
import { existsSync } from 'node:fs';
import { createInterface } from 'node:readline/promises';
import { FAMILIES } from '../drills/families.js';
import type { Drill } from '../drills/kinds/index.js';
import { MudlarkError } from '../errors.js';
import { libraryStudio } from '../paints/index.js';
import { cleanText } from '../text/sanitize.js';
import type { WriteOptions } from './quiz-write.js';

const paletteIds = (): string[] => libraryStudio().palettes.map(({ id }) => id);

/** One question of the dialogue. */
interface Line {
  readonly key: keyof WriteOptions;
  readonly ask: string;
  readonly usual: string;
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

function familyFault(known: readonly string[]): (answer: string) => string | undefined {
  return (answer) => {
    const wrong = answer.split(',').find((id) => id.trim() !== '' && !known.includes(id.trim()));
    return wrong === undefined ? undefined : `there is no family "${cleanText(wrong, 40)}" with drills`;
  };
}

function lines(known: readonly string[], replace: boolean): Line[] {
  return [
    { key: 'title', ask: 'Title', usual: 'Quiz', fault: () => undefined },
    {
      key: 'families',
      ask: 'Families, with commas between; empty for all',
      usual: '',
      fault: familyFault(known),
    },
    { key: 'count', ask: 'How many questions', usual: '12', fault: inRange(1, 60) },
    {
      key: 'level',
      ask: 'Level 1 (worked) to 5 (cold); empty for any',
      usual: '',
      fault: emptyOr(inRange(1, 5)),
    },
    {
      key: 'palette',
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
      ask: 'Results at the end or after each question (end, each)',
      usual: 'end',
      fault: oneOf(['end', 'each']),
    },
    {
      key: 'out',
      ask: 'File',
      usual: 'week1.quiz.yaml',
      fault: (answer) =>
        !replace && existsSync(answer) ? 'this file is there already; another name, please' : undefined,
    },
  ];
}

/** Thrown when the dialogue is left with Ctrl+C or the input ends. */
class Left extends MudlarkError {
  constructor() {
    super('left before the end; nothing was written', 130);
  }
}

/**
 * Asks for what the flags left open.
 * @throws MudlarkError with exit code 130 when the dialogue is left
 */
export async function askForQuiz(given: WriteOptions, drills: readonly Drill[]): Promise<WriteOptions> {
  const known = FAMILIES.filter(({ id }) => drills.some(({ family }) => family === id));
  const reader = createInterface({ input: process.stdin, output: process.stdout });
  const left = new AbortController();
  reader.on('close', () => left.abort());
  const answers: Record<string, string> = {};
  try {
    process.stdout.write(
      `A new quiz. Enter takes what stands in brackets.\nFamilies with drills:\n${known.map(({ id, name }) => `  ${id}: ${name}`).join('\n')}\n`,
    );
    for (const { key, ask, usual, fault } of lines(
      known.map(({ id }) => id),
      given.force === true,
    )) {
      if (given[key] !== undefined) continue;
      for (;;) {
        const typed = await reader.question(usual === '' ? `${ask}: ` : `${ask} [${usual}]: `, {
          signal: left.signal,
        });
        const answer = cleanText(typed, 200) || usual;
        const wrong = fault(answer);
        if (wrong === undefined) {
          if (answer !== '') answers[key] = answer;
          break;
        }
        process.stdout.write(`  ${wrong}\n`);
      }
    }
    return { ...given, ...answers };
  } catch (error) {
    if ((error as Error).name === 'AbortError') {
      process.stdout.write('\n');
      throw new Left();
    }
    throw error;
  } finally {
    reader.close();
  }
}
