/** The photograph of a painting. */
import type { Command } from 'commander';
import type { Program } from './program.js';
import { collect, mayColour } from './program-paint.js';

async function demo({ print }: Program, folder: string, force: boolean): Promise<void> {
  const [{ paintingDemo }, { libraryStudio }, { shippedPictures }, { workBar }] = await Promise.all([
    import('./painting-demo.js'),
    import('../paints/index.js'),
    import('../files/shipped.js'),
    import('./work-bar.js'),
  ]);
  const studio = libraryStudio();
  const bar = workBar('demo pictures', process.stderr, true);
  print(await paintingDemo(studio, await shippedPictures(studio), folder, force, bar));
}

/** Options that ask for something other than to look at it. */
const PLAIN = ['json', 'text', 'mass', 'grey', 'values', 'out', 'report', 'plan'] as const;

/** Adds painting. */
export function addPaintingCommand(program: Program): void {
  const { command, print, exit } = program;
  command
    .command('painting')
    .description('a photograph of your painting: its values, its masses, whether its darks are veiled')
    .argument('[photo]', 'JPEG, PNG, WebP or TIFF')
    .argument('[after]', 'the same painting later, framed alike')
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
    .option('--report <file>', 'write one page with pictures and figures, FILE.html')
    .option('--plan <file>', 'write a practice plan from the next steps; see: mudlark practise --plan')
    .option('--demo <folder>', 'write pictures to try it with, before and after')
    .option('--learner <name>', 'whose settings and boxes hold')
    .option('--force', 'replace files that are there already')
    .option('--text', 'print text; without it, in a terminal, the painting opens on the screen')
    .option('--screen-reader', 'the plain form, read from top to bottom')
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
  mudlark painting harbour.jpg --grey --values 3
  mudlark painting before.jpg after.jpg --report harbour.html
  mudlark painting harbour.jpg --plan ana.plan.yaml`,
    )
    .action(async (photo: string | undefined, after: string | undefined, options, self: Command) => {
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
      const [{ paintingCommand, readPaintings }, { readScale }, { openBox }, terminal] = await Promise.all([
        import('./painting.js'),
        import('./painting-request.js'),
        import('./open-box.js'),
        import('../tui/kit/terminal-check.js'),
      ]);
      const scale = readScale(options.scale);
      const { studio, box, profile } = await openBox(options);
      const { palette, colour, ...values } = profile.settings.values;
      const shared = self.optsWithGlobals();
      const screenReader = shared['screenReader'] === true || values.screenReader;
      const valueScale = scale ?? values.valueScale;
      const noColour = shared['color'] === false;
      const paths = after === undefined ? ([photo] as const) : ([photo, after] as const);
      const isPlain = PLAIN.some((name) => {
        const given = options[name];
        return Array.isArray(given) ? given.length > 0 : given !== undefined;
      });
      if (!isPlain && terminal.noTerminalReason(terminal.terminalFacts(), '') === undefined) {
        const paintings = await readPaintings(studio, paths, options, box);
        const { showPainting } = await import('./painting-screen.js');
        exit(await showPainting(studio, paintings, { valueScale, palette, screenReader, colour }, noColour));
        return;
      }
      print(
        await paintingCommand(studio, paths, options, {
          voice: { scale: valueScale, spoken: screenReader },
          columns: process.stdout.columns ?? 80,
          colour: !screenReader && (await mayColour(noColour)),
          box,
          painter: profile.shownLearner,
        }),
      );
    });
}
