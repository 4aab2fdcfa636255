/** Practice and what belongs to a learner: progress, record, settings. */
import { type Command, Option } from 'commander';
import type { Program } from './program.js';

/** Exit code of a command that was left by Ctrl+C. */
const INTERRUPTED = 130;

/** Columns of the output, or 80 when it goes to a file. */
const columnsOf = (): number => process.stdout.columns ?? 80;

/**
 * Asks for a yes or a no, in a terminal or of what is piped in.
 * @throws MudlarkError with exit code 130 when it is left in a terminal; UsageError when other input ends without an answer
 */
export async function askYes(question: string): Promise<boolean> {
  const [{ typedLines }, { MudlarkError, UsageError }] = await Promise.all([
    import('./typed-lines.js'),
    import('../errors.js'),
  ]);
  const { stdin, stderr } = process;
  const lines = typedLines(stdin, stdin.isTTY ? stderr : undefined);
  // The question itself never settles when the input ends.
  const ended = new Promise<undefined>((resolve) => lines.once('close', () => resolve(undefined)));
  try {
    const answer = await Promise.race([lines.question(`${question} (yes/no) `), ended]);
    if (answer === undefined) {
      if (stdin.isTTY) {
        stderr.write('\n');
        throw new MudlarkError('left without an answer; nothing was changed', INTERRUPTED);
      }
      throw new UsageError('no answer, so nothing was changed; --yes does it without asking');
    }
    return /^\s*y(es)?\s*$/i.test(answer);
  } finally {
    lines.close();
  }
}

/** What comes in at standard input, as an export. @throws DataError when it is too large */
async function readStdin(): Promise<Buffer> {
  const [{ readInput }, { MOST_IMPORT_BYTES }] = await Promise.all([
    import('../files/read.js'),
    import('../profile/index.js'),
  ]);
  return readInput(MOST_IMPORT_BYTES);
}

/** The learner whom the options name, with what there is to say of the record on stderr. */
export async function openFor(options: { readonly learner?: string }) {
  const { openProfile } = await import('../profile/index.js');
  const profile = await openProfile(options.learner === undefined ? {} : { learner: options.learner });
  for (const notice of profile.notices) process.stderr.write(`mudlark: ${notice}\n`);
  return profile;
}

function addPractise({ command, exit }: Program, version: string): void {
  command.option('--screen-reader', 'the plain form, read from top to bottom').action(async (options) => {
    const { practise } = await import('./practise.js');
    exit(await practise(undefined, options, true, version));
  });
  command
    .command('practise')
    .alias('practice')
    .description('practise in the terminal: what is due and what is weak, or one family of drills')
    .argument('[family]', 'id of a family of drills; see: mudlark drills')
    .option('--level <n>', 'at this level, 1 worked to 5 cold, whatever your own')
    .option('--box <name>', 'draw drills from this box of paints')
    .addOption(new Option('--palette <name>', 'what --box was called before').hideHelp())
    .option('--minutes <n>', 'stop after about this long')
    .option('--learner <name>', 'whose record is kept')
    .option('--plan <file>', 'follow a practice plan made from a quiz')
    .option('--seed <n>', 'draw the same drills again from the same record')
    .option('--screen-reader', 'the plain form, read from top to bottom')
    .addHelpText(
      'after',
      `
Examples:
  mudlark practise
  mudlark practise darken-bright --minutes 10
  mudlark practise grey-lean --level 4
  mudlark practise --learner Ana --box twelve`,
    )
    .action(async (family: string | undefined, _options, self: Command) => {
      const { practise } = await import('./practise.js');
      exit(await practise(family, self.optsWithGlobals(), false, version));
    });
}

function addProgress({ command, print }: Program): void {
  command
    .command('progress')
    .description('levels, value error and chroma kept over the last sets, and what to do next')
    .option('--learner <name>', 'whose record is read')
    .option('--json', 'print one JSON document')
    .option('--csv <file>', 'write the figures as a table; - prints it')
    .option('--force', 'write over a file that is there')
    .addHelpText('after', '\nExamples:\n  mudlark progress\n  mudlark progress --learner Ana --csv ana.csv')
    .action(async (options) => {
      const [
        { progressCsv, progressJson, progressText },
        { FAMILY_REFS },
        { ASCII, glyphsFor },
        { requireNoRecord, requireReadable },
      ] = await Promise.all([
        import('./progress.js'),
        import('./family-refs.js'),
        import('../tui/kit/glyphs.js'),
        import('./learner-files.js'),
      ]);
      const profile = await openFor(options);
      requireReadable(profile);
      const wanted = {
        families: FAMILY_REFS,
        now: new Date(),
        columns: columnsOf(),
        ascii: glyphsFor(process.env) === ASCII,
        plain: profile.settings.values.screenReader,
      };
      const isJson = options.json === true;
      if (options.csv === undefined) {
        print(isJson ? progressJson(profile, wanted) : progressText(profile, wanted));
        return;
      }
      const table = await progressCsv(profile, wanted);
      if (options.csv === '-') {
        const { UsageError } = await import('../errors.js');
        if (isJson) throw new UsageError('--json and --csv - both print; name a file for the table');
        print(table);
        return;
      }
      requireNoRecord(profile, options.csv);
      const { writeNamed } = await import('../files/named.js');
      const written = writeNamed(options.csv, table, options.force === true);
      print(isJson ? progressJson(profile, { ...wanted, written: [written] }) : `${written}\n`);
    });
}

function addRecord({ command, print }: Program): void {
  const record = command.command('record').description('take a learner’s record along, or begin anew');
  record
    .command('export')
    .description('write the record to a file')
    .argument('<file>', 'file to write; - prints it')
    .option('--learner <name>', 'whose record')
    .option('--force', 'write over a file that is there')
    .addHelpText('after', '\nExamples:\n  mudlark record export ana.json --learner Ana')
    .action(async (file: string, options) => {
      const { recordExport, recordExportText } = await import('./record.js');
      const profile = await openFor(options);
      const now = new Date();
      if (file !== '-') {
        print(recordExport(profile, file, { now, force: options.force === true }));
        return;
      }
      const { text, notes } = recordExportText(profile, { now });
      for (const note of notes) process.stderr.write(`mudlark: ${note}\n`);
      print(text);
    });
  record
    .command('import')
    .description('add the answers of an exported record; those already there are left out')
    .argument('<file>', 'an exported record; - reads standard input')
    .option('--learner <name>', 'whose record')
    .option('--force', 'replace boxes of the same names')
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark record import ana.json --learner Ana\n  ssh studio mudlark record export - | mudlark record import -',
    )
    .action(async (file: string, options) => {
      const [{ recordImport }, profile] = await Promise.all([import('./record.js'), openFor(options)]);
      const input = file === '-' ? await readStdin() : undefined;
      print(recordImport(profile, file, input, options.force === true));
    });
  record
    .command('reset')
    .description('begin anew; asks first and keeps a copy')
    .option('--learner <name>', 'whose record')
    .option('--yes', 'do not ask')
    .addHelpText('after', '\nExamples:\n  mudlark record reset --learner Ana')
    .action(async (options) => {
      const { recordReset } = await import('./record.js');
      print(
        await recordReset(await openFor(options), options.yes === true ? () => true : askYes, new Date()),
      );
    });
}

function addSettings({ command, print }: Program): void {
  const settings = command
    .command('settings')
    .description('each setting, its value and where it came from')
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark settings\n  mudlark settings set value-scale black-first')
    .action(async (options) => {
      const { settingsJson, settingsText } = await import('./settings.js');
      const profile = await openFor({});
      print(options.json === true ? settingsJson(profile) : settingsText(profile, columnsOf()));
    });
  settings
    .command('set')
    .description('keep a setting')
    .argument('<name>', 'name of the setting')
    .argument('<value>', 'what it is set to')
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark settings set palette twelve\n  mudlark settings set screen-reader yes',
    )
    .action(async (name: string, value: string) => {
      const [{ settingsSet }, { learnerStudio }, profile] = await Promise.all([
        import('./settings.js'),
        import('./learner.js'),
        openFor({}),
      ]);
      const boxes = learnerStudio(profile).palettes.map(({ id }) => id);
      print(await settingsSet(profile, name, value, boxes));
    });
}

/** Adds practise, progress, record and settings; without a command the program starts at home. */
export function addLearnerCommands(program: Program, version: string): void {
  addPractise(program, version);
  addProgress(program);
  addRecord(program);
  addSettings(program);
}
