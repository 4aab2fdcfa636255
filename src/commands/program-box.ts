/** The commands on a learner's own boxes of paints. */
import type { Command } from 'commander';
import type { BoxPlace } from './box.js';
import type { Program } from './program.js';
import { askYes, openFor } from './program-learner.js';
import { collect } from './program-paint.js';

interface Whose {
  readonly learner?: string;
}

async function openPlace(options: Whose, engine: string): Promise<BoxPlace> {
  const [{ libraryStudio }, { shippedDrills }, { drillsOfBox }, { learnerStudio }, profile] =
    await Promise.all([
      import('../paints/index.js'),
      import('../files/shipped.js'),
      import('./box-drills.js'),
      import('./learner.js'),
      openFor(options),
    ]);
  const library = libraryStudio();
  const drills = await shippedDrills(library);
  const path = profile.saving ? profile.files?.checked : undefined;
  return {
    profile,
    library,
    drillsOf: (box) => drillsOfBox(learnerStudio(profile, library), box, drills, { path, engine }),
  };
}

const LEARNER = ['--learner <name>', 'whose boxes'] as const;
const NAMES = [
  '--name-of <paint=name>',
  'what you call it; empty for the usual name; may be repeated',
] as const;
const STRENGTH = [
  '--strength <paint=times>',
  "how strongly your tube tints, 0.25 to 4 times the library's; may be repeated",
] as const;

function addWriting(box: Command, { print }: Program, version: string): void {
  box
    .command('new')
    .description('put a box together')
    .argument('<name>', 'small letters, digits and hyphens')
    .requiredOption('--paints <ids>', 'its paints, with commas between; may be repeated', collect, [])
    .option(...NAMES, collect, [])
    .option(...STRENGTH, collect, [])
    .option(...LEARNER)
    .addHelpText(
      'after',
      `
Examples:
  mudlark box new studio --paints burnt-sienna,ultramarine-blue,cadmium-yellow
  mudlark box new studio --paints burnt-sienna,ultramarine-blue --name-of burnt-sienna="my sienna" --strength burnt-sienna=1.4`,
    )
    .action(async (name: string, options) => {
      const { boxNew } = await import('./box.js');
      print(boxNew(await openPlace(options, version), name, options));
    });
  box
    .command('edit')
    .description('change its paints, their names and strengths, or what it is called')
    .argument('<name>', 'one of your boxes')
    .option('--paints <ids>', 'these paints and no others', collect, [])
    .option('--add <ids>', 'paints that come in', collect, [])
    .option('--remove <ids>', 'paints that go', collect, [])
    .option(...NAMES, collect, [])
    .option(...STRENGTH, collect, [])
    .option('--name <name>', 'what the box is called from now on; readings and settings follow')
    .option(...LEARNER)
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark box edit studio --add viridian --remove cadmium-yellow\n  mudlark box edit studio --strength burnt-sienna=1\n  mudlark box edit my-box --name studio',
    )
    .action(async (name: string, { learner, ...changes }) => {
      const { boxEdit } = await import('./box.js');
      print(await boxEdit(await openPlace({ learner }, version), name, changes));
    });
  box
    .command('delete')
    .description('delete one of your boxes; asks first')
    .argument('<name>', 'one of your boxes')
    .option('--yes', 'do not ask')
    .option(...LEARNER)
    .addHelpText('after', '\nExamples:\n  mudlark box delete studio')
    .action(async (name: string, options) => {
      const { boxDelete } = await import('./box.js');
      print(
        await boxDelete(await openPlace(options, version), name, options.yes === true ? () => true : askYes),
      );
    });
}

function addReading(box: Command, { print }: Program, version: string): void {
  box
    .command('list')
    .description('all boxes, the one in use marked')
    .option(...LEARNER)
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark box list')
    .action(async (options) => {
      const { boxList } = await import('./box.js');
      print(boxList(await openPlace(options, version), options));
    });
  box
    .command('show')
    .description('one box: its paints, names and strengths, and how many drills it leaves out')
    .argument('[name]', 'a box; the one in use when left out')
    .option(...LEARNER)
    .option('--json', 'print one JSON document')
    .addHelpText('after', '\nExamples:\n  mudlark box show studio\n  mudlark box show --json')
    .action(async (name: string | undefined, options) => {
      const { boxShow } = await import('./box.js');
      print(boxShow(await openPlace(options, version), name, options));
    });
  box
    .command('use')
    .description('keep practice, bench and recipes to a box')
    .argument('<name>', 'a box')
    .option(...LEARNER)
    .addHelpText('after', '\nExamples:\n  mudlark box use studio\n  mudlark box use twelve')
    .action(async (name: string, options) => {
      const { boxUse } = await import('./box.js');
      print(await boxUse(await openPlace(options, version), name));
    });
}

function addCarrying(box: Command, { print }: Program, version: string): void {
  box
    .command('export')
    .description('write one of your boxes to a file')
    .argument('<name>', 'one of your boxes')
    .argument('<file>', 'file to write; - prints it')
    .option('--force', 'write over a file that is there')
    .option(...LEARNER)
    .addHelpText('after', '\nExamples:\n  mudlark box export studio studio.box.json')
    .action(async (name: string, file: string, options) => {
      const { boxExport, boxExportText } = await import('./box.js');
      const place = await openPlace(options, version);
      print(file === '-' ? boxExportText(place, name) : boxExport(place, name, file, options.force === true));
    });
  box
    .command('import')
    .description('bring in a box that was exported')
    .argument('<file>', 'an exported box; - reads standard input')
    .option('--as <name>', 'call it otherwise')
    .option('--force', 'put it in the place of the one of its name')
    .option(...LEARNER)
    .addHelpText(
      'after',
      '\nExamples:\n  mudlark box import studio.box.json\n  mudlark box import ana.box.json --as ana',
    )
    .action(async (file: string, options) => {
      const [{ boxImport }, { readInput, textOf }, { MOST_OWN_BYTES }, place] = await Promise.all([
        import('./box.js'),
        import('../files/read.js'),
        import('../profile/index.js'),
        openPlace(options, version),
      ]);
      const input = file === '-' ? textOf(await readInput(MOST_OWN_BYTES)) : undefined;
      print(boxImport(place, file, options, input));
    });
}

/** Adds box with its commands. */
export function addBoxCommands(program: Program, version: string): void {
  const box = program.command
    .command('box')
    .description('your own boxes: which paints you have, what you call them, how strong they are');
  addWriting(box, program, version);
  addReading(box, program, version);
  addCarrying(box, program, version);
}
