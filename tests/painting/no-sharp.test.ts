import { expect, it, vi } from 'vitest';
import { loadSharp } from '../../src/files/sharp.js';

// As where the package, which is optional, was never installed, or not for this machine.
vi.mock('sharp', () => {
  throw new Error('Could not load the "sharp" module\nPossible solutions: ...');
});

it('says in one line how to install what is not there', async () => {
  await expect(loadSharp()).rejects.toMatchObject({
    name: 'MudlarkError',
    exitCode: 1,
    message:
      'photographs need the package sharp, which is not installed here; run "npm install sharp" in the folder of mudlark',
  });
});
