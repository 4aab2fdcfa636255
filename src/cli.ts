/** Entry: reads the arguments, loads only what the command needs, sets the exit code. */

declare const __MUDLARK_VERSION__: string;

/** The program's version, put in by the build. */
export const VERSION = typeof __MUDLARK_VERSION__ === 'string' ? __MUDLARK_VERSION__ : '0.0.0-source';

process.stdout.on('error', ({ code, message }: NodeJS.ErrnoException) => {
  // A reader that closes early (`mudlark pigments | head`) is not a fault.
  if (code === 'EPIPE') process.exit(0);
  process.stderr.write(`mudlark: the output cannot be written (${code ?? message})\n`);
  process.exit(1);
});

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
