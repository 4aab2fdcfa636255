/** Quizzes: the commands that make one. Those that hold and mark it are in the files beside. */
import type { Program } from './program.js';
import { addHeldCommands, HANDOUT } from './program-quiz-held.js';
import { addMarkedCommands, reportColumns } from './program-quiz-marked.js';

/** Adds the quiz commands. */
export function addClassroomCommands(program: Program, version: string): void {
  const { command, print, exit } = program;
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
    .option('--drills <ids>', 'these drills, by id with commas between; see: mudlark drills')
    .option('--count <number>', 'how many questions, 1 to 60 (default 12, or those of --drills)')
    .option('--level <1..5>', 'level of the drills (default any)')
    .option('--palette <id>', 'only questions with the paints of this palette: six or twelve')
    .option('--seed <number>', 'the same seed makes the same quiz (default random)')
    .option('--title <text>', 'what the quiz is called')
    .option('--out <file>', 'where to write it, like week3.quiz.yaml (default from the title)')
    .option('--time <seconds>', 'a clock for each question, 5 to 3600 (default none)')
    .option(
      '--results <when>',
      'show results: end, each (after each question), or later, when you release them (default end)',
    )
    .option('--no-back', 'no going back to a question')
    .option('--no-shuffle', 'the same order for everyone')
    .option('--hints', 'show hints')
    .option(
      '--due <moment>',
      'report later sittings: "2026-12-01 18:00" in your zone, or with a zone of its own',
    )
    .option('--force', 'replace the file when it is there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
Examples:
  mudlark quiz write
  mudlark quiz write --families darken-bright --count 8 --palette six --seed 42 --title "Week 3" --due "2026-12-01 18:00"`,
    )
    .action(async (options) => {
      const [{ quizMaker, writeCommand }, { shippedDrills }, { libraryStudio }, { randomBytes, randomInt }] =
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
        writeCommand(wished, {
          version,
          drills,
          make: quizMaker,
          random: (most) => randomInt(most + 1),
          secret: () => randomBytes(32).toString('hex'),
        }),
      );
    });

  quiz
    .command('check')
    .description('say of each question whether it can be solved and a mistake costs; no answer is shown')
    .argument('<file>', HANDOUT)
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark quiz check week3.quiz.yaml')
    .action(async (file: string, options) => {
      const [{ checkQuizCommand, checkQuizFault }, { report }] = await Promise.all([
        import('./quiz-check.js'),
        import('./run.js'),
      ]);
      const { text, passed } = checkQuizCommand(file, version, options);
      print(text);
      if (!passed) exit(report(checkQuizFault()));
    });

  quiz
    .command('key')
    .description('for the teacher: the best answers with their points, and why')
    .argument('<file>', HANDOUT)
    .option('--out <file>', 'write it there instead')
    .option('--force', 'replace the file when it is there already')
    .option('--json', 'one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark quiz key week3.quiz.yaml --out week3.key.txt')
    .action(async (file: string, options) => {
      const { keyCommand } = await import('./quiz-key.js');
      print(keyCommand(file, options, reportColumns()));
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

  addHeldCommands(program, quiz);
  addMarkedCommands(program, quiz, version);
}
