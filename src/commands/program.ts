/** The command tree. Each action loads its own code, so that a plain command starts without the screens. */
import { Command, CommanderError } from 'commander';
import { UsageError } from '../errors.js';
import { didYouMean } from '../text/nearest.js';
import { addBoxCommands } from './program-box.js';
import { addChartCommand } from './program-charts.js';
import { addClassroomCommands } from './program-classroom.js';
import { addDriedCommands } from './program-dried.js';
import { addLearnerCommands } from './program-learner.js';
import { addPaintCommands } from './program-paint.js';
import { addPaintingCommand } from './program-painting.js';
import { addShellCommands } from './program-shell.js';
import { report } from './run.js';

/** What the commands share. */
export interface Program {
  readonly command: Command;
  /** Prints what a command returned, once it has finished. */
  print(text: string): void;
  /** Sets the exit code of a command that finished its output but failed. */
  exit(code: number): void;
}

function describeRoot(command: Command, version: string): void {
  command
    .name('mudlark')
    .description('Trains watercolour painters to decide a mixture before the brush touches paper.')
    .version(version, '-V, --version', 'print the version')
    .helpOption('-h, --help', 'show help')
    .helpCommand('help [command]', 'show help of a command')
    .option('--no-color', 'no colours; everything is also said in words')
    .addHelpText(
      'after',
      `
Examples:
  mudlark                                       practise (needs a terminal)
  mudlark mix burnt-sienna=4 alizarin-crimson=2 --strength 0.3
  mudlark drills                                list the drills
`,
    )
    .showHelpAfterError(false)
    .allowExcessArguments(false);
}

/** exitOverride and quiet output for a command and everything below it. */
function settle(command: Command, problems: string[]): void {
  command.exitOverride();
  command.configureOutput({ writeErr: (text) => problems.push(text) });
  for (const child of command.commands) settle(child, problems);
}

/** Commands that do nothing by themselves: without one of theirs they say which there are. */
const GROUPS: readonly string[] = ['quiz', 'record', 'box'];

/** @throws UsageError when a word is no command where one has to stand; commander would call it one argument too many */
function requireCommand(parent: Command, words: readonly string[], path: string): void {
  if (parent.commands.length === 0) return;
  const [word, ...rest] = words;
  const names = parent.commands.map((child) => child.name());
  const what = parent.parent === null ? 'there is no command' : `${parent.name()} has no command`;
  if (word === undefined) {
    if (!GROUPS.includes(parent.name())) return;
    throw new UsageError(
      `${parent.name()} needs a command; there are: ${names.join(', ')}. See: ${path} --help`,
    );
  }
  if (word === 'help') {
    if (rest.length > 0) requireCommand(parent, rest.slice(0, 1), path);
    return;
  }
  const child = parent.commands.find((each) => each.name() === word || each.aliases().includes(word));
  if (child !== undefined) {
    requireCommand(child, rest, `${path} ${word}`);
    return;
  }
  const known = parent.parent === null ? '' : `; there are: ${names.join(', ')}`;
  throw new UsageError(
    `${what} "${word.slice(0, 60)}"${known}.${didYouMean(word, names)} See: ${path} --help`,
  );
}

/** The words of a command line that are no options, and no values of options of the commands named. */
function wordsOf(root: Command, argv: readonly string[]): string[] {
  const words: string[] = [];
  let command = root;
  for (let at = 0; at < argv.length; at++) {
    const word = argv[at] as string;
    if (!word.startsWith('-')) {
      words.push(word);
      command =
        command.commands.find((each) => each.name() === word || each.aliases().includes(word)) ?? command;
      continue;
    }
    const option = command.options.find(({ long, short }) => long === word || short === word);
    if (option?.required === true) at += 1;
  }
  return words;
}

const asksForHelp = (argv: readonly string[]): boolean =>
  argv.some((word) => word === '-h' || word === '--help');

/**
 * Runs one command line.
 * @returns the exit code: 0 done, 1 failure, 2 wrong usage, 130 interrupted
 */
export async function runProgram(argv: readonly string[], version: string): Promise<number> {
  const command = new Command();
  let code = 0;
  const program: Program = {
    command,
    print: (text) => process.stdout.write(text),
    exit: (wanted) => {
      code = wanted;
    },
  };
  describeRoot(command, version);
  addLearnerCommands(program, version);
  addPaintCommands(program);
  addChartCommand(program);
  addPaintingCommand(program);
  addDriedCommands(program);
  addBoxCommands(program, version);
  addClassroomCommands(program, version);
  addShellCommands(program, version);
  const problems: string[] = [];
  settle(command, problems);
  try {
    if (!asksForHelp(argv)) {
      requireCommand(command, wordsOf(command, argv), 'mudlark');
    }
    await command.parseAsync(argv, { from: 'user' });
    return code;
  } catch (error) {
    if (!(error instanceof CommanderError)) return report(error);
    if (error.exitCode === 0) return 0;
    const line = (problems.join(' ') || error.message)
      .replace(/^error:\s*/, '')
      .replace(/\s+/g, ' ')
      .trim();
    process.stderr.write(
      `mudlark: ${line.slice(0, 400)}${line.endsWith('.') || line.endsWith('?)') ? '' : '.'} See: mudlark --help\n`,
    );
    return 2;
  }
}
