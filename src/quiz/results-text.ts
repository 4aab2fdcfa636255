/** A result file as text: what a student reads without the screens. */
import { wrapText } from '../text/wrap.js';
import { shownPoints } from './report-words.js';
import type { Released, ReleasedResult } from './results.js';

/** What has to be said of the file itself; undefined when it is as the teacher wrote it. */
export function resultsCaution({ isSound }: Pick<Released, 'isSound'>): string | undefined {
  if (isSound === false)
    return 'This file was changed after it was released: it may not say what your teacher wrote.';
  return isSound === undefined ? 'This file carries no seal: it may have been changed.' : undefined;
}

function lines(
  { title, ask, yours, mark, points, possible, best, why }: ReleasedResult,
  index: number,
): string[] {
  return [
    `${index + 1}. ${title}`,
    `   ${ask}`,
    yours === undefined
      ? `   Not answered: 0 of ${shownPoints(possible)} points`
      : `   Yours: ${yours}. ${shownPoints(points)} of ${shownPoints(possible)} points, mark ${mark}`,
    `   Best: ${best}`,
    ...why.map((line) => `   - ${line}`),
  ];
}

/** The whole file. @param columns width of the page */
export function resultsWords(released: Released, columns: number): string {
  const { handout, name, points, possible, results, engine } = released;
  const caution = resultsCaution(released);
  const head = [
    `${handout.title}: results of ${name}`,
    `${shownPoints(points)} of ${shownPoints(possible)} points, by version ${engine}, released on ${released.released.slice(0, 10)}`,
    ...(caution === undefined ? [] : [caution]),
  ];
  const blocks = [head, ...results.map(lines)].map((block) =>
    block
      .flatMap((line) => {
        const text = line.trimStart();
        const indent = ' '.repeat(line.length - text.length);
        return wrapText(text, columns - indent.length).map((piece) => indent + piece);
      })
      .join('\n'),
  );
  return `${blocks.join('\n\n')}\n`;
}
