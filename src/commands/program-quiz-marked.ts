/** Quizzes: the commands that take answers. */
import type { Command } from 'commander';
import type { MudlarkError } from '../errors.js';
import type { TextLook } from '../quiz/text-parts.js';
import type { Program } from './program.js';
import { HANDOUT } from './program-quiz-held.js';
import type { MarkOutput } from './quiz-mark.js';

const ANSWERS = 'answers of the students: files, folders that hold them, or patterns like "week3.*.json"';

/** As report-csv.ts has them, which is loaded only when a table is written. */
const COLUMN_NAMES =
  'name, number, group, file, answered, right, points, possible, percent, remarks, skills, questions, answers';

/** Width of a report. */
export const reportColumns = (): number => Math.min(100, Math.max(60, process.stdout.columns ?? 80));

/** How a report is laid out on this terminal. */
async function textLook(): Promise<TextLook> {
  const { glyphsFor } = await import('../tui/kit/glyphs.js');
  const { full, empty } = glyphsFor(process.env);
  return { columns: reportColumns(), full, empty };
}

/** Adds them below `quiz`. */
export function addMarkedCommands({ print, exit }: Program, quiz: Command, version: string): void {
  const ended = async (
    { text, refused }: MarkOutput,
    fault: (refused: number) => MudlarkError,
  ): Promise<void> => {
    print(text);
    if (refused > 0) exit((await import('./run.js')).report(fault(refused)));
  };

  quiz
    .command('class')
    .description('show the list of a class; with --new begin one')
    .argument('<file>', 'the list, like class.yaml')
    .argument('[answers...]', 'with --new: answers whose names the list begins with')
    .option('--new', 'write the file, with the names in the answers or with examples')
    .option('--force', 'replace the file when it is there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
A list is YAML; only the name has to be there. A number may be typed in place of the name, and tells two of one name apart.
  format: 1
  students:
    - { name: Ann Lee, number: 7, group: morning }
    - { name: Ben Ito }

Examples:
  mudlark quiz class class.yaml --new week1
  mudlark quiz class class.yaml
  mudlark quiz mark week3.quiz.yaml week3 --class class.yaml`,
    )
    .action(async (file: string, answers: string[], options) => {
      const { classCommand } = await import('./quiz-class.js');
      print(classCommand(file, answers, options));
    });

  quiz
    .command('mark')
    .description('mark answers and show what the class misunderstood')
    .argument('<file>', HANDOUT)
    .argument('<answers...>', ANSWERS)
    .option('--class <file>', 'who is in the class: says who is missing; see: mudlark quiz class --help')
    .option('--csv <file>', 'write a table for a spreadsheet')
    .option('--columns <list>', `columns of the table: ${COLUMN_NAMES}`)
    .option('--html <file>', 'write a report of a few sheets to print or send')
    .option('--slips <folder>', 'write a page of feedback for each student, and one to print them all')
    .option('--anonymous', 'a report to show to the class: no names, no row of a single student')
    .option(
      '--due <moment>',
      'report later sittings: "2026-12-01 18:00" in your zone, or with a zone of its own',
    )
    .option('--force', 'replace files that are there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
Examples:
  mudlark quiz mark week3.quiz.yaml week3.*.answers.json
  mudlark quiz mark week3.quiz.yaml answers --class class.yaml --csv week3.csv --html week3.html
  mudlark quiz mark week3.quiz.yaml answers --csv week3.csv --columns name,group,percent,skills
  mudlark quiz mark week3.quiz.yaml answers --slips slips
  mudlark quiz mark week3.quiz.yaml answers week3.room.json --anonymous --html board.html`,
    )
    .action(async (file: string, answers: string[], options) => {
      const { markCommand, refusedFault } = await import('./quiz-mark.js');
      const look = await textLook();
      await ended(await markCommand(file, answers, options, { version, look }), refusedFault);
    });

  quiz
    .command('release')
    .description('write the result file of each student, which quiz sit opens to read')
    .argument('<file>', HANDOUT)
    .argument('<answers...>', ANSWERS)
    .option('--class <file>', 'who is in the class, by name, number and group')
    .option('--out <folder>', 'where to write them (default beside the handout)')
    .option('--unfinished', 'also for sittings that were not handed in')
    .option('--force', 'replace result files that are there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark quiz release week3.quiz.yaml week3.*.answers.json --out results',
    )
    .action(async (file: string, answers: string[], options) => {
      const [{ releaseCommand }, { refusedFault }] = await Promise.all([
        import('./quiz-release.js'),
        import('./quiz-mark.js'),
      ]);
      await ended(releaseCommand(file, answers, options, { version, nowMs: Date.now() }), refusedFault);
    });

  quiz
    .command('plan')
    .description('write a practice plan for each student: mudlark practise --plan FILE')
    .argument('<file>', HANDOUT)
    .argument('<answers...>', ANSWERS)
    .option('--class <file>', 'who is in the class, by name, number and group')
    .option('--folder <folder>', 'where to write them (default beside the handout)')
    .option('--force', 'replace plans that are there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark quiz plan week3.quiz.yaml week3.*.answers.json --folder plans',
    )
    .action(async (file: string, answers: string[], options) => {
      const { planCommand, refusedFault } = await import('./quiz-mark.js');
      await ended(planCommand(file, answers, options), refusedFault);
    });

  quiz
    .command('term')
    .description('several quizzes over the weeks: each skill before and after, by student and group')
    .argument('<files...>', 'handouts and answers (files, folders, patterns), or one term file')
    .option('--class <file>', 'who is in the class, by name, number and group')
    .option(
      '--before <number>',
      'the quiz to compare from, as the report counts them (default: the first of a skill)',
    )
    .option('--after <number>', 'the quiz to compare with (default: the last of a skill)')
    .option('--csv <file>', 'write a table for a spreadsheet')
    .option('--html <file>', 'write one page to print or send')
    .option('--anonymous', 'a report to show to the class: no names, no row of a single student')
    .option('--force', 'replace files that are there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
Answers know their handout, and the quizzes are put in the order in which they were sat. A term file says both outright; it is needed
when one quiz was sat twice. Its paths start from its own folder:
  format: 1
  title: Autumn
  class: class.yaml
  quizzes:
    - { handout: week1.quiz.yaml, answers: [before], title: Before }
    - { handout: week1.quiz.yaml, answers: [after], title: After }

Examples:
  mudlark quiz term week1.quiz.yaml week6.quiz.yaml answers --class class.yaml --html autumn.html
  mudlark quiz term autumn.term.yaml --anonymous`,
    )
    .action(async (files: string[], options) => {
      const { strayFault, termCommand } = await import('./quiz-term.js');
      await ended(await termCommand(files, options, await textLook()), strayFault);
    });
}
