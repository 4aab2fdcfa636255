import { describe, expect, it } from 'vitest';
import { mudlark, mudlarkHere } from './run-cli.js';

describe('mudlark practise without a terminal', () => {
  it.each([[[]], [['practise']], [['practise', 'darken-bright', '--minutes', '5', '--seed', '7']]])(
    '%j says in one line which command to use, exit 2',
    (args) => {
      const run = mudlark(args);
      expect(run.code).toBe(2);
      expect(run.out).toBe('');
      expect(run.err).toMatch(/need a terminal.*mudlark/);
      expect(run.err.trimEnd().split('\n')).toHaveLength(1);
    },
  );

  it('refuses a family that there is not, as it is built', async () => {
    const args = ['practise', 'darken-brigth'];
    expect(mudlark(args)).toEqual(await mudlarkHere(args));
  });

  it.each([
    [['practise', 'darken-brigth'], /no family of drills.*Did you mean darken-bright/],
    [['practise', '--palette', 'sixx'], /no box is called "sixx".*six/],
    [['practise', '--minutes', '0'], /--minutes takes a whole number/],
    [['practise', '--minutes', '1e3'], /--minutes takes a whole number/],
    [['practise', '--level', '6'], /--level takes 1 \(worked\) to 5 \(cold\), not "6"/],
    [['practise', 'grey-lean', '--level', 'hard'], /--level takes/],
    [['practise', '--seed', '-1'], /--seed takes a whole number/],
    [['practise', '--seed', '1.5'], /--seed takes a whole number/],
  ])('refuses %j', async (args, message) => {
    const run = await mudlarkHere(args);
    expect(run.code).toBe(2);
    expect(run.err).toMatch(message);
    expect(run.err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('says when a plan cannot be read', () => {
    const run = mudlark(['practise', '--plan', '/nowhere/plan.yaml']);
    expect(run.code).toBe(1);
    expect(run.err).toMatch(/no such file/);
  });
});
