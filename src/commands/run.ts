/** How a plain command ends: text or one JSON document on stdout, one line on stderr for a fault. */
import { InputError, isOurs, UsageError } from '../errors.js';
import { escapeInvisible } from '../text/sanitize.js';

/** Version of every JSON document that the program prints. */
export const SCHEMA_VERSION = 1;

/** A JSON document as it is printed. */
export function printed(json: object): string {
  return `${escapeInvisible(JSON.stringify(json, null, 2))}\n`;
}

/** A JSON document with its version first, as it is printed. */
export function document(body: object): string {
  return printed({ schemaVersion: SCHEMA_VERSION, ...body });
}

/** Where the person who runs the program is, for the order of names: a BCP 47 tag. */
export const localeHere = (): string => Intl.DateTimeFormat().resolvedOptions().locale;

/** Hands what a person gave to the core: a number out of range or a wrong choice is their mistake, anything else is not. */
export function usage<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof InputError) throw new UsageError(error.message, { cause: error });
    throw error;
  }
}

/** Makes a fault one printable line. */
function oneLine(text: string): string {
  return text
    .replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, ' ')
    .trim()
    .slice(0, 600);
}

/**
 * Has what no command could catch (in an event, in a promise that nobody waits for) reported like everything else. By the time that
 * the listeners of the exit run, those that were set before have put the terminal back.
 */
export function reportCrashes(): void {
  process.once('uncaughtException', (error) => {
    process.once('exit', () => {
      process.exitCode = report(error);
    });
    process.exit(1);
  });
}

/** Writes the fault and gives the exit code: 2 wrong usage, 1 failure; a bug of ours shows its stack. */
export function report(error: unknown): number {
  if (isOurs(error)) {
    process.stderr.write(`mudlark: ${oneLine(error.message)}\n`);
    return error.exitCode;
  }
  const { stack, message } = error instanceof Error ? error : new Error(String(error));
  process.stderr.write(
    `mudlark: this is a fault of the program, please report it: ${oneLine(message)}\n${stack ?? ''}\n`,
  );
  return 1;
}
