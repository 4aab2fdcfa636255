/** Quizzes. */
import type { Command } from 'commander';
import type { Program } from './program.js';

const HANDOUT = 'the handout, as quiz write made it';

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
    .command('paper')
    .description('print a handout for those without a laptop, and its key: PDF files')
    .argument('<file>', HANDOUT)
    .option('--out <file>', 'the handout for students, like week3.pdf')
    .option('--key <file>', 'the key for the teacher, like week3.key.pdf')
    .option('--size <id>', 'a4 or letter (default a4)')
    .option('--force', 'replace files that are there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark quiz paper week3.quiz.yaml --out week3.pdf --key week3.key.pdf',
    )
    .action(async (file: string, options) => {
      const { ownVoice, paperCommand } = await import('./quiz-paper.js');
      print(await paperCommand(file, options, { voice: await ownVoice(), nowMs: Date.now() }));
    });

  quiz
    .command('enter')
    .description('type in answers from paper, one student after the other; mark reads them like the others')
    .argument('<file>', HANDOUT)
    .option(
      '--from <file>',
      'read them instead: one line a student, like "Ann Lee; A C B D"; - for the input',
    )
    .option('--folder <folder>', 'where to write them (default beside the handout)')
    .option('--sheet <code>', 'the code at the foot of the sheets; refused when the letters are not theirs')
    .option('--force', 'replace what was entered before from paper')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
Examples:
  mudlark quiz enter week3.quiz.yaml
  mudlark quiz enter week3.quiz.yaml --from week3.csv --folder answers`,
    )
    .action(async (file: string, options) => {
      const [{ enterCommand, refusedLines }, { report }] = await Promise.all([
        import('./quiz-enter.js'),
        import('./run.js'),
      ]);
      const { stdin: input, stdout: output } = process;
      const ports = { input, output, now: () => Date.now() };
      const { text, refused, isLeft } = await enterCommand(file, options, ports);
      print(text);
      if (isLeft) exit(130);
      if (refused > 0) exit(report(refusedLines(refused)));
    });

  quiz
    .command('mark')
    .description('mark answers and show what the class misunderstood')
    .argument('<file>', HANDOUT)
    .argument('<answers...>', 'answers files of the students')
    .option('--csv <file>', 'write a table for a spreadsheet')
    .option('--html <file>', 'write one page to print or send')
    .option('--due <moment>', 'report later sittings, like 2026-03-02T12:00:00Z')
    .option('--force', 'replace files that are there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
Examples:
  mudlark quiz mark week3.quiz.yaml week3.*.answers.json
  mudlark quiz mark week3.quiz.yaml answers/*.json --csv week3.csv --html week3.html`,
    )
    .action(async (file: string, answers: string[], options) => {
      const [{ markCommand, refusedFault }, { report }, { glyphsFor }] = await Promise.all([
        import('./quiz-mark.js'),
        import('./run.js'),
        import('../tui/kit/glyphs.js'),
      ]);
      const { full, empty } = glyphsFor(process.env);
      const columns = Math.min(100, Math.max(60, process.stdout.columns ?? 80));
      const { text, refused } = await markCommand(file, answers, options, {
        version,
        look: { columns, full, empty },
      });
      print(text);
      if (refused > 0) exit(report(refusedFault(refused)));
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
    .argument('<answers...>', 'answers files of the students')
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
