import { afterEach, it } from 'vitest';
import { everywhere, expectInside } from './inside.js';
import { ROUTES } from './routes.js';
import { strike } from './stage.js';

afterEach(strike);

everywhere((size, env) => {
  it.each(ROUTES)('$name keeps inside the screen', (route) => expectInside(route, size, env));
});
