/** A fault of the program is told as one, never as what the person did wrong; and what the person did wrong is told as that. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { gradeCommand } from '../../src/commands/grade.js';
import { mixCommand } from '../../src/commands/mix.js';
import { report } from '../../src/commands/run.js';
import { DataError, InputError, isOurs, MudlarkError, StoreError, UsageError } from '../../src/errors.js';
import { shippedDrills } from '../../src/files/shipped.js';
import type { Pigment, Studio } from '../../src/paints/index.js';
import { STUDIO } from '../studio.js';

afterEach(() => vi.restoreAllMocks());

/** What is written to stderr for a fault, and the exit code. */
function told(error: unknown): { readonly code: number; readonly err: string } {
  let err = '';
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err += String(text);
    return true;
  });
  return { code: report(error), err };
}

async function thrownBy(work: () => unknown): Promise<unknown> {
  try {
    await work();
  } catch (error) {
    return error;
  }
  return undefined;
}

/** Faults that a programmer makes; all of them are a RangeError of the language. */
const SLIPS: Readonly<Record<string, () => number>> = {
  'a length below nothing': () => new Array(-1).length,
  'digits out of range': () => Number((1).toFixed(101)),
  'a call without an end': () => SLIPS['a call without an end']?.() ?? 0,
};

/** A studio whose paints stumble when they are mixed. */
function stumbling(slip: () => number): Studio {
  const paints = STUDIO.paints.map(
    (paint): Pigment => Object.defineProperty({ ...paint }, 'fullStrength', { get: slip }),
  );
  return { ...STUDIO, paints };
}

describe.each(Object.entries(SLIPS))('%s', (_name, slip) => {
  it('while a mixture is made is reported as a fault of the program', async () => {
    const error = await thrownBy(() => mixCommand(stumbling(slip), ['burnt-sienna=1'], {}));
    expect(error).toBeInstanceOf(RangeError);
    expect(isOurs(error)).toBe(false);
    const { code, err } = told(error);
    expect(code).toBe(1);
    expect(err).toMatch(/^mudlark: this is a fault of the program, please report it: .*\n\s*RangeError/);
  });

  it('while an answer is graded is reported as a fault of the program', async () => {
    const [drill] = await shippedDrills(STUDIO);
    const stumbles = new Proxy(STUDIO, { get: () => slip() });
    const error = await thrownBy(() => gradeCommand(stumbles, drill ? [drill] : [], drill?.id ?? '', {}));
    expect(isOurs(error)).toBe(false);
    expect(told(error).err).toMatch(/fault of the program/);
  });
});

describe('what a person did', () => {
  it.each([
    [['burnt-sienna=1'], { strength: '2' }, /strength must be above 0 and at most 1, got 2/],
    [['burnt-sienna=1'], { thin: '0.5' }, /thin must be 1 \(no water\) to 1000, got 0\.5/],
    [['burnt-sienna=2000000'], {}, /parts of burnt-sienna must be above 0/],
  ])('%j %j is one line and exit code 2', async (texts, options, message) => {
    const { code, err } = told(await thrownBy(() => mixCommand(STUDIO, texts, options)));
    expect(code).toBe(2);
    expect(err).toMatch(message);
    expect(err.trimEnd()).not.toContain('\n');
  });
});

describe('the classes', () => {
  it.each([
    [new UsageError('x'), 2],
    [new DataError('x'), 1],
    [new StoreError('x'), 1],
    [new MudlarkError('left', 130), 130],
  ])('%s ends with its own code', (error, code) => {
    expect(isOurs(error)).toBe(true);
    expect(told(error)).toEqual({ code, err: `mudlark: ${error.message}\n` });
  });

  it.each([
    new InputError('a number that no person gave'),
    new TypeError('x is not a function'),
    'a word',
    undefined,
  ])('%s is a fault of the program', (error) => {
    expect(isOurs(error)).toBe(false);
    const { code, err } = told(error);
    expect(code).toBe(1);
    expect(err).toMatch(/^mudlark: this is a fault of the program, please report it: /);
  });
});
