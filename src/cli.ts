/** Entry: reads the arguments, loads only what the command needs, sets the exit code. */

declare const __MUDLARK_VERSION__: string;

/** The program's version, put in by the build. */
export const VERSION = typeof __MUDLARK_VERSION__ === 'string' ? __MUDLARK_VERSION__ : '0.0.0-source';

// Set to nothing, these say nothing; Ink would take them for a CI runner and draw no screen.
for (const name of ['CI', 'CONTINUOUS_INTEGRATION'])
  if (process.env[name] === '') Reflect.deleteProperty(process.env, name);

let isCutOff = false;
process.stdout.on('error', async (error: NodeJS.ErrnoException) => {
  // A reader that closes early (`mudlark pigments | head`) is not a fault.
  if (error.code === 'EPIPE') process.exit(0);
  if (isCutOff) return;
  isCutOff = true;
  const { faultWords } = await import('./errors.js');
  process.stderr.write(`mudlark: the output cannot be written: ${faultWords(error, 'write')}\n`);
  process.exit(1);
});
// Where the line of a fault cannot be said either, the exit code still tells it.
process.stderr.on('error', () => {});

async function main(argv: readonly string[]): Promise<number> {
  if (argv.length === 1 && (argv[0] === '--version' || argv[0] === '-V')) {
    process.stdout.write(`${VERSION}\n`);
    return 0;
  }
  const [{ runProgram }, { reportCrashes }] = await Promise.all([
    import('./commands/program.js'),
    import('./commands/run.js'),
  ]);
  reportCrashes();
  return runProgram(argv, VERSION);
}

process.exitCode = await main(process.argv.slice(2));
