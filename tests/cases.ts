/**
 * How much of what is alike is looked at: some of it in the quick suite, all of it in the long one, which runs the files that ask here once more.
 */

/** The long suite says so in its settings. */
const isWhole = process.env['MUDLARK_CASES'] === 'all';

/** Every so manieth of a list, the first among them. */
export const some = <T>(all: readonly T[], every: number): readonly T[] =>
  isWhole ? all : all.filter((_, at) => at % every === 0);

/** A number of cases. */
export const casesOf = (whole: number, quick: number): number => (isWhole ? whole : quick);

/** True while mutants are run (`npm run test:mutants`): tests of many lives and many tries are left out, since each mutant would pay for them. */
export const IN_MUTANTS = process.env['STRYKER_MUTATOR_WORKER'] !== undefined;
