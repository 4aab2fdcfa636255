import { describe, expect, it } from 'vitest';
import { mudlark } from '../program/run-cli.js';

describe('without a terminal', () => {
  it.each([[[]], [['practise']]])(
    '%j says so on one line, names commands to use instead, and exits with 2',
    (args) => {
      const { code, out, err } = mudlark(args);
      expect(code).toBe(2);
      expect(out).toBe('');
      expect(err.trim().split('\n')).toHaveLength(1);
      expect(err).toMatch(/terminal/);
      expect(err).toMatch(/grade|drills/);
    },
  );
});
