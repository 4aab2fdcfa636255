/** The commands on what dried on the painter's own paper. */
import type { Command } from 'commander';
import type { DriedStyle } from './dried.js';
import type { DriedPlace } from './dried-store.js';
import type { BoxFlags } from './open-box.js';
import type { Program } from './program.js';
import { askYes } from './program-learner.js';
import { collect } from './program-paint.js';

async function open(flags: BoxFlags): Promise<{ readonly place: DriedPlace; readonly style: DriedStyle }> {
  const [{ openBoxOf }, { openProfile }, { libraryStudio }] = await Promise.all([
    import('./open-box.js'),
    import('../profile/index.js'),
    import('../paints/index.js'),
  ]);
  const { profile, box, studio } = await openBoxOf(openProfile, flags);
  const { valueScale, screenReader } = profile.settings.values;
  return {
    place: { profile, box, studio, library: libraryStudio() },
    style: { voice: { scale: valueScale, spoken: screenReader }, columns: process.stdout.columns ?? 80 },
  };
}

const BOX = ['--box <name>', 'the box of the tubes (default: the one in use)'] as const;
const LEARNER = ['--learner <name>', 'whose tubes'] as const;
const LAB = ['--lab', 'read with an instrument: CIELAB or Munsell, not value alone'] as const;

function addAdd(dried: Command, { print }: Program): void {
  dried
    .command('add')
    .description('keep what dried, of one mixture or of a table of them')
    .argument('[paint=parts...]', 'paints of the wash by id with their parts')
    .option('--water <1:n>', 'parts of water to one of paint in the wash, like 1:24')
    .option(
      '--add <paint=parts>',
      'stirred in: parts to one part of the paint of the wash; may be repeated',
      collect,
      [],
    )
    .option('--alone <read>', 'what the wash alone dried to: 3.5, V 7, lab(70 10 20), 7.5YR 7/4')
    .option('--mixed <read>', 'what it dried to with what was stirred in, or the wash where nothing was')
    .option('--from <file>', 'a table instead, one reading a line; - for the input')
    .addHelpText(
      'after',
      `
A line of a table: the wash with its water; what is stirred in; the wash alone;
the mixture. A dash stands for nothing.

Examples:
  mudlark dried add burnt-sienna=1 --water 1:24 --add ultramarine-blue=2 --alone 3.5 --mixed 6
  mudlark dried add ultramarine-blue=1 --water 1:12 --add cadmium-yellow=1 --mixed '5GY 4/4'
  echo 'burnt-sienna=1 1:24; ultramarine-blue=2; 3.5; 6' | mudlark dried add --from -`,
    )
    .action(async (wash: string[], _options, self: Command) => {
      const options = self.optsWithGlobals();
      const [{ driedAdd, driedTable }, { UsageError }, { readText, readInput, textOf }, { place, style }] =
        await Promise.all([
          import('./dried.js'),
          import('../errors.js'),
          import('../files/read.js'),
          open(options),
        ]);
      const { from, water, add, alone, mixed } = options;
      const MOST_TABLE_BYTES = 100_000;
      if (from !== undefined) {
        if (wash.length > 0 || mixed !== undefined)
          throw new UsageError('--from reads a table; leave out the wash and its flags');
        const text =
          from === '-' ? textOf(await readInput(MOST_TABLE_BYTES)) : readText(from, MOST_TABLE_BYTES);
        print(driedTable(place, text, style, new Date()));
        return;
      }
      if (wash.length === 0 || water === undefined || mixed === undefined)
        throw new UsageError(
          'say what was painted and what dried: mudlark dried add burnt-sienna=1 --water 1:24 --add ultramarine-blue=2 --alone 3.5 --mixed 6',
        );
      print(driedAdd(place, { wash, water, add, alone, mixed }, style, new Date()));
    });
}

/** Adds dried with its commands. */
export function addDriedCommands(program: Program): void {
  const { command, print } = program;
  const dried = command
    .command('dried')
    .description('is what the screen says what dries on your paper? asks what dried, and corrects your tubes')
    .option(...LAB)
    .option(...BOX)
    .option(...LEARNER)
    .addHelpText(
      'after',
      `
Three mixtures of your own box are asked for, those that tell most. Paint the
wash alone, then with the addition, let them dry and read them on a grey scale.
After a few, the strengths of your tubes are told, by the middle one of them.

Examples:
  mudlark dried
  mudlark dried --lab
  mudlark dried ask
  mudlark dried show`,
    )
    .action(async (options) => {
      const [{ driedByHand }, { place, style }] = await Promise.all([
        import('./dried-ask.js'),
        open(options),
      ]);
      print(await driedByHand(place, options.lab === true ? 'lab' : 'value', style, () => new Date()));
    });
  dried
    .command('ask')
    .description('which mixtures to paint next')
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark dried ask\n  mudlark dried ask --lab --json')
    .action(async (_options, self: Command) => {
      const options = self.optsWithGlobals();
      const [{ driedAsk }, { place, style }] = await Promise.all([import('./dried.js'), open(options)]);
      print(driedAsk(place, options['lab'] === true ? 'lab' : 'value', style, options['json'] === true));
    });
  addAdd(dried, program);
  dried
    .command('show')
    .description('all that dried, against the prediction, and what it tells of your tubes')
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark dried show\n  mudlark dried show --json')
    .action(async (_options, self: Command) => {
      const options = self.optsWithGlobals();
      const [{ driedShow }, { place, style }] = await Promise.all([import('./dried.js'), open(options)]);
      print(driedShow(place, style, options['json'] === true));
    });
  dried
    .command('correct')
    .description('have the box reckon with the strengths that are known well enough; asks first')
    .option('--yes', 'do not ask')
    .addHelpText('after', '\nExamples:\n  mudlark dried correct\n  mudlark dried correct --yes')
    .action(async (_options, self: Command) => {
      const options = self.optsWithGlobals();
      const [{ driedCorrect }, { place, style }] = await Promise.all([import('./dried.js'), open(options)]);
      print(await driedCorrect(place, style, options['yes'] === true ? () => true : askYes));
    });
  dried
    .command('forget')
    .description('forget a reading, by its number in dried show, or all')
    .argument('<which>', 'a number, or all; all asks first')
    .option('--yes', 'do not ask')
    .addHelpText('after', '\nExamples:\n  mudlark dried forget 3\n  mudlark dried forget all')
    .action(async (which: string, _options, self: Command) => {
      const options = self.optsWithGlobals();
      const [{ driedForget }, { place }] = await Promise.all([import('./dried.js'), open(options)]);
      print(await driedForget(place, which, options['yes'] === true ? () => true : askYes));
    });
}
