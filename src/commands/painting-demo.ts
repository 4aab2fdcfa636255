/** `mudlark painting --demo`: pictures to try it with, before and after. */
import { join } from 'node:path';
import { makeNamedFolder, requireOutputs, writeNamed } from '../files/named.js';
import { loadSharp, pictureFile } from '../files/sharp.js';
import { DEMO_SCENES, DEMO_STATES, demoSheet } from '../painting/index.js';
import type { Studio } from '../paints/index.js';
import type { Picture } from '../pictures/index.js';
import type { WorkBar } from './work-bar.js';

/** Writes the demo pictures into a folder. @returns what was done @throws DataError where one is there already */
export async function paintingDemo(
  studio: Studio,
  pictures: readonly Picture[],
  folder: string,
  force: boolean,
  bar: WorkBar,
): Promise<string> {
  const sheets = DEMO_SCENES.flatMap(({ picture: id, name }) => {
    const picture = pictures.find((each) => each.id === id);
    return picture === undefined
      ? []
      : DEMO_STATES.map((state) => ({ picture, state, name: `${name}-${state}` }));
  });
  const formats = [
    ['jpeg', 'jpg'],
    ['png', 'png'],
  ] as const;
  const pathOf = (name: string, ending: string): string => join(folder, `${name}.${ending}`);
  requireOutputs(
    sheets.flatMap(({ name }) => formats.map(([, ending]) => pathOf(name, ending))),
    [],
    force,
  );
  // A folder is not made for pictures that cannot be written.
  await loadSharp();
  makeNamedFolder(folder);
  const done: string[] = [];
  try {
    for (const [at, { picture, state, name }] of sheets.entries()) {
      bar.progress(at, sheets.length);
      const sheet = demoSheet(studio, picture, state);
      for (const [format, ending] of formats)
        done.push(writeNamed(pathOf(name, ending), await pictureFile(sheet, format), force));
    }
  } finally {
    bar.end();
  }
  return `${done.join('\n')}\n`;
}
