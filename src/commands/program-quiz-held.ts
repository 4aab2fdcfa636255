/** Quizzes: the commands that hold one. */
import type { Command } from 'commander';
import type { Program } from './program.js';

export const HANDOUT = 'the handout, as quiz write made it';

/** Adds them below `quiz`. */
export function addHeldCommands({ print, exit }: Program, quiz: Command): void {
  quiz
    .command('sit')
    .description('sit a quiz, or read its results; stopped sittings go on where they were')
    .argument('<file>', `${HANDOUT}, or the result file that quiz release wrote`)
    .option('--name <name>', 'your name (else it is asked); the answers are kept beside the handout under it')
    .option('--screen-reader', 'the plain form, read from top to bottom')
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark quiz sit week3.quiz.yaml --name "Ann Lee"\n  mudlark quiz sit week3.ann-lee.results.json',
    )
    .action(async (file: string, _options, self: Command) => {
      const { sitCommand } = await import('./quiz-screens.js');
      exit(await sitCommand(file, self.optsWithGlobals()));
    });

  quiz
    .command('room')
    .description('one computer and a projector: the class answers by hands, the room sees what comes of it')
    .argument('<file>', HANDOUT)
    .option('--screen-reader', 'the plain form, read from top to bottom')
    .addHelpText('after', '\nExamples:\n  mudlark quiz room week3.quiz.yaml')
    .action(async (file: string, _options, self: Command) => {
      const { roomCommand } = await import('./quiz-screens.js');
      exit(await roomCommand(file, self.optsWithGlobals()));
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
}
