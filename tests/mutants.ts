/** True while mutants are run (`npm run test:mutants`): tests of many lives and many tries are left out, since each mutant would pay for them. */
export const IN_MUTANTS = process.env['STRYKER_MUTATOR_WORKER'] !== undefined;
