/** Quizzes. */
import type { Command } from 'commander';
import type { TextLook } from '../quiz/text-parts.js';
import type { Program } from './program.js';

const HANDOUT = 'the handout, as quiz write made it';

const ANSWERS = 'answers of the students: files, folders that hold them, or patterns like "week3.*.json"';

/** As report-csv.ts has them, which is loaded only when a table is written. */
const COLUMN_NAMES =
  'name, number, group, file, answered, right, points, possible, percent, remarks, skills, questions, answers';

/** How a report is laid out on this terminal. */
async function textLook(): Promise<TextLook> {
  const { glyphsFor } = await import('../tui/kit/glyphs.js');
  const { full, empty } = glyphsFor(process.env);
  return { columns: Math.min(100, Math.max(60, process.stdout.columns ?? 80)), full, empty };
}

/** Adds the quiz commands. */
export function addClassroomCommands({ command, print, exit }: Program, version: string): void {
  const quiz = command
    .command('quiz')
    .description('set a quiz, sit it, mark it, see what the class misunderstood')
    .usage('<command> [options]')
    .addHelpText(
      'after',
      `
Examples:
  mudlark quiz write --families darken-bright,dull-on-purpose --count 12 --level 3 --out week3.quiz.yaml
  mudlark quiz sit week3.quiz.yaml --name "Ann Lee"
  mudlark quiz mark week3.quiz.yaml week3.*.answers.json --html week3.html
  mudlark quiz room week3.quiz.yaml`,
    );

  quiz
    .command('write')
    .description('make a handout; in a terminal it asks for what the flags leave open')
    .option('--families <ids>', 'families with commas between; see: mudlark drills (default all)')
    .option('--count <number>', 'how many questions, 1 to 60 (default 12)')
    .option('--level <1..5>', 'level of the drills (default any)')
    .option('--palette <id>', 'only questions with the paints of this palette: six or twelve')
    .option('--seed <number>', 'the same seed makes the same quiz (default random)')
    .option('--title <text>', 'what the quiz is called')
    .option('--out <file>', 'where to write it, like week3.quiz.yaml')
    .option('--time <seconds>', 'a clock for each question, 5 to 3600 (default none)')
    .option('--results <when>', 'show results at the end or after each question (default end)')
    .option('--no-back', 'no going back to a question')
    .option('--no-shuffle', 'the same order for everyone')
    .option('--hints', 'show hints')
    .option('--due <moment>', 'report later sittings, like 2026-03-02T12:00:00Z')
    .option('--force', 'replace the file when it is there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
Examples:
  mudlark quiz write
  mudlark quiz write --families darken-bright --count 8 --palette six --seed 42 --title "Week 3" --out week3.quiz.yaml`,
    )
    .action(async (options) => {
      const [{ quizMaker, writeCommand }, { shippedDrills }, { libraryStudio }, { randomInt }] =
        await Promise.all([
          import('./quiz-write.js'),
          import('../files/shipped.js'),
          import('../paints/index.js'),
          import('node:crypto'),
        ]);
      const drills = await shippedDrills(libraryStudio());
      const inTerminal = process.stdin.isTTY === true && process.stdout.isTTY === true;
      const asks = options.out === undefined && options.json !== true && inTerminal;
      const wished = asks ? await (await import('./quiz-ask.js')).askForQuiz(options, drills) : options;
      print(
        writeCommand(wished, { version, drills, make: quizMaker, random: (most) => randomInt(most + 1) }),
      );
    });

  quiz
    .command('check')
    .description('prove that every question of a handout can be solved and that a mistake costs')
    .argument('<file>', HANDOUT)
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark quiz check week3.quiz.yaml')
    .action(async (file: string, options) => {
      const [{ checkQuizCommand, checkQuizFault }, { report }] = await Promise.all([
        import('./quiz-write.js'),
        import('./run.js'),
      ]);
      const { text, passed } = checkQuizCommand(file, version, options);
      print(text);
      if (!passed) exit(report(checkQuizFault()));
    });

  quiz
    .command('sit')
    .description('sit a quiz; stopped sittings go on where they were')
    .argument('<file>', HANDOUT)
    .option('--name <name>', 'your name; the answers are kept beside the handout under it')
    .option('--screen-reader', 'the plain form, read from top to bottom')
    .addHelpText('after', '\nExamples:\n  mudlark quiz sit week3.quiz.yaml --name "Ann Lee"')
    .action(async (file: string, _options, self: Command) => {
      const { sitCommand } = await import('./quiz-screens.js');
      exit(await sitCommand(file, self.optsWithGlobals(), version));
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
    .option('--due <moment>', 'report later sittings, like 2026-03-02T12:00:00Z')
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
      const [{ markCommand, refusedFault }, { report }] = await Promise.all([
        import('./quiz-mark.js'),
        import('./run.js'),
      ]);
      const look = await textLook();
      const { text, refused } = await markCommand(file, answers, options, { version, look });
      print(text);
      if (refused > 0) exit(report(refusedFault(refused)));
    });

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
      const [{ strayFault, termCommand }, { report }] = await Promise.all([
        import('./quiz-term.js'),
        import('./run.js'),
      ]);
      const { text, refused } = await termCommand(files, options, await textLook());
      print(text);
      if (refused > 0) exit(report(strayFault(refused)));
    });

  quiz
    .command('room')
    .description('one computer and a projector: the class answers by hands, the room sees what comes of it')
    .argument('<file>', HANDOUT)
    .option('--screen-reader', 'the plain form, read from top to bottom')
    .addHelpText('after', '\nExamples:\n  mudlark quiz room week3.quiz.yaml')
    .action(async (file: string, _options, self: Command) => {
      const { roomCommand } = await import('./quiz-screens.js');
      exit(await roomCommand(file, self.optsWithGlobals(), version));
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
      const [{ planCommand, refusedFault }, { report }] = await Promise.all([
        import('./quiz-mark.js'),
        import('./run.js'),
      ]);
      const { text, refused } = planCommand(file, answers, options);
      print(text);
      if (refused > 0) exit(report(refusedFault(refused)));
    });
}
