/** Charts on paper. */
import type { Program } from './program.js';

const listed = (value: string, before: readonly string[] = []): readonly string[] => [...before, value];

/** Adds chart. */
export function addChartCommand({ command, print }: Program): void {
  command
    .command('chart')
    .description('charts of your paints on paper: PDF, or SVG with a file a page')
    .argument('<chart>', 'pairs, ladders, greys, values or practice')
    .option('--out <file>', 'where it goes: FILE.pdf, or FILE.svg')
    .option('--box <name>', 'the paints of this box (default: the one in use)')
    .option('--paints <paints>', 'only these paints, by id with commas between', listed)
    .option('--size <id>', 'a4 or letter (default a4)')
    .option('--seed <number>', 'of the practice sheet: another number, other mixtures (default 1)')
    .option('--learner <name>', 'whose settings hold')
    .option('--force', 'replace files that are there already')
    .option('--json', 'print one JSON document')
    .addHelpText(
      'after',
      `
pairs      every two paints in five amounts, in equal steps as the eye sees them
ladders    each paint from its strongest wash to a pale one
greys      the greyest mixture of every pair that makes a grey, and the pairs that make none
values     ten greys on both scales of value, with a check of what your printer made of them
practice   eight mixtures to paint, each with an empty box beside its predicted patch

Examples:
  mudlark chart pairs --box six --out pairs.pdf
  mudlark chart greys --paints burnt-sienna,ultramarine-blue,viridian --out greys.pdf --size letter
  mudlark chart values --out values.svg
  mudlark chart practice --box harbour --seed 7 --out practice.pdf`,
    )
    .action(async (chart: string, options) => {
      const [{ chartCommand }, { workBar }, { openBox }] = await Promise.all([
        import('./chart.js'),
        import('./work-bar.js'),
        import('./open-box.js'),
      ]);
      const { studio, box, profile } = await openBox(options);
      const { valueScale, screenReader } = profile.settings.values;
      print(
        await chartCommand(studio, chart, options, {
          voice: { scale: valueScale, spoken: false },
          nowMs: Date.now(),
          box,
          bar: workBar(`chart of ${chart}`, process.stderr, !screenReader && options.json !== true),
        }),
      );
    });
}
