/** Faults that a person can mend. Each is shown as one line on stderr, without a stack; anything else is our bug. */

/** Base of the three: what happened, where, and what to do, in one line. */
export class MudlarkError extends Error {
  readonly exitCode: number;
  constructor(message: string, exitCode = 1, options?: ErrorOptions) {
    super(message, options);
    this.name = new.target.name;
    this.exitCode = exitCode;
  }
}

/** The command line was wrong: exit code 2. */
export class UsageError extends MudlarkError {
  constructor(message: string, options?: ErrorOptions) {
    super(message, 2, options);
  }
}

/** A file that someone wrote holds something that cannot be used: exit code 1. */
export class DataError extends MudlarkError {
  constructor(message: string, options?: ErrorOptions) {
    super(message, 1, options);
  }
}

/**
 * An argument that a person's word may have been handed on as is out of range, or names nothing. The core throws it; the command
 * that handed the word on makes it a `UsageError` (`usage` in commands/run.ts). Anywhere else it is our bug, as any RangeError.
 */
export class InputError extends RangeError {
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = new.target.name;
  }
}

/** Whether a fault is one that a person can mend; everything else is our bug and must not be told as theirs. */
export function isOurs(error: unknown): error is MudlarkError {
  return error instanceof MudlarkError;
}

/** Settings or the record cannot be read or written: exit code 1. */
export class StoreError extends MudlarkError {
  constructor(message: string, options?: ErrorOptions) {
    super(message, 1, options);
  }
}
