/** What holds for the page of every pigment. */
import { expect } from 'vitest';
import { pigmentShowText } from '../../src/commands/pigment-page.js';
import { widthOf } from '../../src/text/wrap.js';
import { STUDIO } from '../studio.js';

/** Looks at a page without colour: its width, and that it defers to the label. */
export function expectPage(id: string, columns: number): void {
  const text = pigmentShowText(STUDIO, id, { columns, colour: false });
  expect(text).not.toContain('\u001b');
  for (const line of text.split('\n')) expect(widthOf(line), line).toBeLessThanOrEqual(columns);
  expect(text.replace(/\s+/g, ' ')).toContain(
    'The label of your paint, its safety data sheet and your local rules on waste come before anything said here.',
  );
}
