/** The photograph of a painting. */
import type { Command } from 'commander';
import type { Program } from './program.js';
import { collect, mayColour } from './program-paint.js';

async function demo({ print }: Program, folder: string, force: boolean): Promise<void> {
  const [{ paintingDemo }, { libraryStudio }, { shippedPictures }, { workBar }] = await Promise.all([
    import('./painting.js'),
    import('../paints/index.js'),
    import('../files/shipped.js'),
    import('./work-bar.js'),
  ]);
  const studio = libraryStudio();
  const bar = workBar('demo pictures', process.stderr, true);
  print(await paintingDemo(studio, await shippedPictures(studio), folder, force, bar));
}

/** Adds painting. */
export function addPaintingCommand(program: Program): void {
  const { command, print } = program;
  command
    .command('painting')
    .description('a photograph of your painting: its values, its masses, whether its darks are veiled')
    .argument('[photo]', 'JPEG, PNG, WebP or TIFF')
    .option(
      '--white <x,y[=V]>',
      'where bare paper or a card lies, as shares 0 to 1; V is the Munsell value of the card',
    )
    .option('--crop <x,y,w,h>', 'read this part only, as shares 0 to 1')
    .option('--corners <x,y,...>', 'the four corners of the sheet, from the left upper one clockwise')
    .option('--paints <paints>', 'the paints in it, by id with commas between', collect, [])
    .option('--box <name>', 'the paints of this box (default: the one in use)')
    .option('--mass <n>', 'how to mix this mass')
    .option('--goal <goal>', 'and from there a shade, rich, dull or distance')
    .option('--scale <scale>', 'paper-first or black-first (default: that of the settings)')
    .option('--grey', 'write a study in greys beside the photograph')
    .option('--values <n>', 'write a study in 2, 3 or 5 values; may be repeated', collect, [])
    .option('--out <file>', 'where the one study goes')
    .option('--demo <folder>', 'write pictures to try it with, before and after')
    .option('--learner <name>', 'whose settings and boxes hold')
    .option('--force', 'replace files that are there already')
    .option('--text', 'print text')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
Photograph the whole sheet with its margin, flat and evenly lit; bare paper is taken for white.

Examples:
  mudlark painting --demo pictures
  mudlark painting pictures/harbour-before.jpg
  mudlark painting harbour.jpg --white 0.05,0.5 --paints burnt-sienna,ultramarine-blue
  mudlark painting harbour.jpg --mass 3 --goal rich
  mudlark painting harbour.jpg --grey --values 3`,
    )
    .action(async (photo: string | undefined, options, self: Command) => {
      const { UsageError } = await import('../errors.js');
      if (options.demo !== undefined) {
        if (photo !== undefined)
          throw new UsageError('--demo writes pictures and reads none; leave the photograph out');
        return demo(program, options.demo, options.force === true);
      }
      if (photo === undefined)
        throw new UsageError(
          'painting needs a photograph, like: mudlark painting harbour.jpg; or --demo FOLDER',
        );
      if (options.json === true && options.text === true)
        throw new UsageError('--json and --text are both given; leave one out');
      const [{ paintingCommand }, { readScale }, { openBox }] = await Promise.all([
        import('./painting.js'),
        import('./painting-request.js'),
        import('./open-box.js'),
      ]);
      const scale = readScale(options.scale);
      const { studio, box, profile } = await openBox(options);
      const { valueScale, screenReader } = profile.settings.values;
      print(
        await paintingCommand(studio, photo, options, {
          voice: { scale: scale ?? valueScale, spoken: screenReader },
          columns: process.stdout.columns ?? 80,
          colour: !screenReader && (await mayColour(self.optsWithGlobals()['color'] === false)),
          box,
        }),
      );
    });
}
