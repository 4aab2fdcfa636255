/** How a plain command ends: text or one JSON document on stdout, one line on stderr for a fault. */
import { MudlarkError, UsageError } from '../errors.js';
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

/** Turns a fault of the core (a number out of range, a wrong choice) into a usage error. */
export function usage<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) throw new UsageError(error.message, { cause: error });
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

/** Writes the fault and gives the exit code: 2 wrong usage, 1 failure; a bug of ours shows its stack. */
export function report(error: unknown): number {
  if (error instanceof MudlarkError) {
    process.stderr.write(`mudlark: ${oneLine(error.message)}\n`);
    return error.exitCode;
  }
  const { stack, message } = error as Error;
  process.stderr.write(
    `mudlark: this is a fault of the program, please report it: ${oneLine(String(message))}\n${stack ?? ''}\n`,
  );
  return 1;
}
