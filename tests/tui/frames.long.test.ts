import { afterEach, describe, it } from 'vitest';
import { ASCII, expectInside, PLAIN, SIXTEEN } from './inside.js';
import { FULL, ROUTES } from './routes.js';
import { strike } from './stage.js';

afterEach(strike);

const SIZES = [
  { columns: 60, rows: 18 },
  { columns: 60, rows: 20 },
  { columns: 79, rows: 23 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
  { columns: 200, rows: 60 },
];

const COLOURS: readonly [string, Record<string, string>][] = [
  ['all colours', FULL],
  ['16 colours', SIXTEEN],
  ['no colours', PLAIN],
  ['ASCII', ASCII],
];

describe.each(COLOURS)('with %s', (_, env) => {
  describe.each(SIZES)('at $columns x $rows', (size) => {
    it.each(ROUTES)('$name keeps inside the screen', (route) => expectInside(route, size, env));
  });
});
