/** Plain commands on paints and drills. */
import { type Command, InvalidArgumentError, Option } from 'commander';
import type { Studio } from '../paints/index.js';
import type { BoxFlags, OpenBox } from './open-box.js';
import type { Program } from './program.js';

/** An option that may be given more than once. */
export const collect = (value: string, before: readonly string[]): readonly string[] => {
  if (before.length >= 60) throw new InvalidArgumentError('given too often');
  return [...before, value];
};

/** The paints and the paper of the library, loaded only by the commands that need them. */
async function openStudio(): Promise<Studio> {
  return (await import('../paints/index.js')).libraryStudio();
}

/** The paints as the learner has them, loaded only by the commands that need them. */
async function openOwn(flags: BoxFlags): Promise<OpenBox> {
  return (await import('./open-box.js')).openBox(flags);
}

/** Whether a plain page may use 24-bit colour: a terminal, and nothing that asks for none. */
export async function mayColour(noColourFlag: boolean): Promise<boolean> {
  const { colourLevel } = await import('../tui/kit/colour-level.js');
  return (
    process.stdout.isTTY === true && colourLevel({ env: process.env, setting: 'auto', noColourFlag }) === 3
  );
}

function addPigments({ command, print }: Program): void {
  const pigments = command
    .command('pigments')
    .description('list the paints, or show one')
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark pigments\n  mudlark pigments show burnt-sienna')
    .action(async (options) => {
      const [{ pigmentsJson, pigmentsText }, { printed }, { studio }] = await Promise.all([
        import('./pigments.js'),
        import('./run.js'),
        openOwn({}),
      ]);
      print(options.json === true ? printed(pigmentsJson(studio)) : pigmentsText(studio));
    });
  pigments
    .command('show')
    .description('one paint: from water to masstone, its curves, evidence, handling, cautions')
    .argument('<paint>', 'id of the paint')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark pigments show ultramarine-blue\n  mudlark pigments show viridian --json',
    )
    .action(async (id: string, _options, self: Command) => {
      const [{ pigmentShowJson, pigmentShowText }, { printed }, { studio }] = await Promise.all([
        import('./pigment-page.js'),
        import('./run.js'),
        openOwn({}),
      ]);
      const { json, color } = self.optsWithGlobals();
      const style = { columns: process.stdout.columns ?? 80, colour: await mayColour(color === false) };
      print(json === true ? printed(pigmentShowJson(studio, id)) : pigmentShowText(studio, id, style));
    });
  command
    .command('accuracy')
    .description('the predictions held against published measurements')
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark accuracy\n  mudlark accuracy --json')
    .action(async (options) => {
      const [{ accuracyReport }, { accuracyText }, { printed }, studio] = await Promise.all([
        import('../accuracy/report.js'),
        import('./accuracy.js'),
        import('./run.js'),
        openStudio(),
      ]);
      const report = accuracyReport(studio);
      print(options.json === true ? printed(report) : accuracyText(studio, report));
    });
}

function addRecipe({ command, print }: Program): void {
  command
    .command('recipe')
    .description('the best few mixtures that take a wash where it is wanted, or that match a colour')
    .option('--from <paint=parts>', 'paint of the wash that is there; may be repeated', collect, [])
    .option('--strength <0..1>', 'how strong that wash is: near 0 water, 1 masstone (default 0.3)')
    .option('--goal <goal>', 'shade, rich, dull or distance')
    .option('--darker <steps>', "painter's steps darker (default: shade and rich 1, dull 0)")
    .option('--lighter <steps>', 'steps lighter (default: distance 1)')
    .option('--to <colour>', "a colour to reach: '#6b4a2f', 'lab(40 10 20)' (D65, 2 degrees), '7.5YR 4/4'")
    .option('--within <paints>', 'only these paints, by id with commas between', collect, [])
    .option(
      '--box <name>',
      'only the paints of this box, as strong as they are in it (default: the one in use)',
    )
    .addOption(new Option('--palette <name>', 'what --box was called before').hideHelp())
    .option('--ways <ways>', 'puddle, glaze, strokes, with commas between (default all)')
    .option('--most <n>', 'so many recipes at most, 1 to 6 (default 3)')
    .option('--learner <name>', 'whose settings hold')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
From a wash one or two paints more are brought to it, its own as well: at most twice as much as the wash holds, and no
thicker than a masstone. Without --from a colour is made up: in a puddle of up to three paints, or as a glaze or strokes of two.

Examples:
  mudlark recipe --from burnt-sienna=1 --strength 0.3 --darker 2 --goal rich
  mudlark recipe --from cadmium-red=1 --strength 0.4 --lighter 1 --goal distance --ways puddle,glaze
  mudlark recipe --from sap-green=1 --goal shade --within sap-green,prussian-blue,alizarin-crimson
  mudlark recipe --to '#6b4a2f' --box harbour
  mudlark recipe --to '7.5YR 4/4' --from burnt-sienna=1 --json`,
    )
    .action(async (options, self: Command) => {
      const [{ recipeCommand }, { studio, box, profile }] = await Promise.all([
        import('./recipe.js'),
        openOwn(options),
      ]);
      const { valueScale, screenReader } = profile.settings.values;
      print(
        recipeCommand(studio, options, {
          voice: { scale: valueScale, spoken: screenReader },
          columns: process.stdout.columns ?? 80,
          colour: !screenReader && (await mayColour(self.optsWithGlobals()['color'] === false)),
          box,
        }),
      );
    });
}

/** Adds pigments, accuracy, mix, recipe, grade and drills. */
export function addPaintCommands(program: Program): void {
  const { command, print, exit } = program;
  addPigments(program);
  command
    .command('mix')
    .description('predict the colour of a mixture, dry on white paper')
    .argument('<paint=parts...>', 'paints by id with their parts; for a glaze in the order they are laid')
    .option('--strength <0..1>', 'how strong the wash is: near 0 water, 1 masstone (default 1)')
    .option(
      '--add <paint=parts>',
      'stirred in without water: parts to one part of the paint of the first wash; may be repeated',
      collect,
      [],
    )
    .option('--thin <times>', 'last of all, water to one part in so many: 2 halves it')
    .option('--apply <way>', 'puddle, glaze or strokes (default puddle)')
    .option('--loads', 'the numbers are loads on the measured scale; strength is not used')
    .option('--box <name>', 'paints as strong as they are in this box (default: the one in use)')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
Examples:
  mudlark mix burnt-sienna=1 --strength 0.3 --add alizarin-crimson=1
  mudlark mix burnt-sienna=1 --strength 0.3 --add ultramarine-blue=0.25 --thin 2
  mudlark mix ultramarine-blue=1 burnt-sienna=1 --json
  mudlark mix cadmium-yellow=1 prussian-blue=1 --apply glaze`,
    )
    .action(async (parts: string[], options) => {
      const [{ mixCommand }, { studio }] = await Promise.all([import('./mix.js'), openOwn(options)]);
      print(await mixCommand(studio, parts, options));
    });

  addRecipe(program);
  command
    .command('grade')
    .description('grade an answer to a drill without the screens')
    .argument('<drill>', 'id of the drill; see: mudlark drills')
    .option('--second <paint>', 'second paint')
    .option('--amount <amount>', 'how it goes on: 1:4 stirred in, glaze-0.2, strokes-0.25-0.3')
    .option('--thin <times>', 'water afterwards, one part in so many, where the drill opens it')
    .option('--set <choice=option>', 'any other choice of the drill; may be repeated', collect, [])
    .option('--box <name>', 'paints as strong as they are in this box (default: the one in use)')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
Examples:
  mudlark grade harbour-roof-shade --second alizarin-crimson --amount 1:4
  mudlark grade harbour-roof-shade --second ultramarine-blue --amount 1:2 --json
  mudlark grade wheel-rust-two --set pick=crimson`,
    )
    .action(async (id: string, options) => {
      const [{ gradeCommand }, { shippedDrills }, { studio }] = await Promise.all([
        import('./grade.js'),
        import('../files/shipped.js'),
        openOwn(options),
      ]);
      print(gradeCommand(studio, await shippedDrills(studio), id, options));
    });

  const drills = command
    .command('drills')
    .description('list the drills, or check drill files')
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark drills\n  mudlark drills check my-drills/')
    .action(async (options) => {
      const [{ drillsCommand }, { shippedDrills }, studio] = await Promise.all([
        import('./drills.js'),
        import('../files/shipped.js'),
        openStudio(),
      ]);
      print(drillsCommand(await shippedDrills(studio), options));
    });

  drills
    .command('check')
    .description('prove that every drill can be solved, that a mistake costs and that luck does not win')
    .argument('[folder]', 'folder of drill files; the shipped drills when left out')
    .option('--json', 'print one JSON document')
    .option(
      '--sheet <file>',
      'write one page that shows every drill, its best answer and the wrong ones that tempt',
    )
    .option('--force', 'replace the page when it is there already')
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark drills check\n  mudlark drills check my-drills/ --json\n  mudlark drills check my-drills/ --sheet my-drills.html',
    )
    .action(async (folder: string | undefined, _options, self) => {
      const [
        { checkCommand, checkFault },
        { filesOfFolder, readDrillFolder },
        { readPictures },
        { shippedDrills, shippedPictures },
        { report },
        studio,
      ] = await Promise.all([
        import('./drills.js'),
        import('../files/exercises.js'),
        import('../files/pictures.js'),
        import('../files/shipped.js'),
        import('./run.js'),
        openStudio(),
      ]);
      const shipped = await shippedPictures(studio);
      const { text, passed } = await checkCommand(
        studio,
        folder === undefined ? await shippedDrills(studio) : readDrillFolder(studio, folder, shipped),
        self.optsWithGlobals(),
        folder === undefined ? [] : filesOfFolder(folder),
        folder === undefined ? shipped : [...readPictures(studio, folder), ...shipped],
      );
      print(text);
      if (!passed) exit(report(checkFault()));
    });
}
