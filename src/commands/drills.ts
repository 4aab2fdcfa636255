/** `mudlark drills` and `mudlark drills check`. */

import type { ColourReading } from '../colour/reading.js';
import { checkDrills, type DrillCheck } from '../drills/check.js';
import { FAMILIES } from '../drills/families.js';
import type { Drill } from '../drills/kinds/index.js';
import type { DrillLook, SeenAnswer } from '../drills/look.js';
import { DataError } from '../errors.js';
import { requireOutputs, writeNamed } from '../files/named.js';
import type { Studio } from '../paints/index.js';
import type { Picture } from '../pictures/types.js';
import { document } from './run.js';

const FOR_A_QUIZ = [
  'For a quiz, name drills by the ids in front, or families by those in brackets:',
  '  mudlark quiz write --drills ID,ID',
  '  mudlark quiz write --families ID,ID',
].join('\n');

/** The list of drills; text, or the JSON document. */
export function drillsCommand(drills: readonly Drill[], options: { readonly json?: boolean }): string {
  if (options.json === true) {
    return document({
      drills: drills.map(({ id, family, level, kind, title, scene, ask }) => ({
        id,
        family,
        level,
        kind,
        title,
        scene,
        ask,
      })),
    });
  }
  const width = Math.max(...drills.map(({ id }) => id.length), 0);
  const blocks = FAMILIES.flatMap(({ id: family, name }) => {
    const rows = drills
      .filter((drill) => drill.family === family)
      .map(({ id, level, title }) => `  ${id.padEnd(width)}  level ${level}  ${title}`);
    return rows.length === 0 ? [] : [[`${name} (${family})`, ...rows].join('\n')];
  });
  return `${[...blocks, FOR_A_QUIZ].join('\n\n')}\n`;
}

/** "burnt sienna 1:4 (100)". */
const marked = ({ label, grade }: SeenAnswer): string => `${label} (${grade.mark})`;

/** What a check says of a best answer and its worst neighbour, in one line. */
const bestAndTrap = ({ best, worst }: DrillLook): string => `best ${marked(best)}; trap ${marked(worst)}`;

function row({ id, look, luck, faults }: DrillCheck): string {
  const head = `${faults.length === 0 ? 'ok   ' : 'fault'} ${id}: ${bestAndTrap(look)}; luck ${Math.round(luck * 100)} %`;
  return [head, ...faults.map((fault) => `      ${fault}`)].join('\n');
}

const figures = (colour: ColourReading | undefined) => ({
  step: colour?.step ?? null,
  chroma: colour?.chroma ?? null,
  hue: colour?.hue ?? null,
});

const answerJson = ({ answer, grade, colour }: SeenAnswer) => ({
  answer,
  mark: grade.mark,
  ...figures(colour),
});

/** A check as JSON documents hold it; what a kind of drill does not have is null. */
function checkJson({ id, family, level, kind, look, luck, faults }: DrillCheck): object {
  const { start, goal, hueBound, shadingLine, best, traps, worst } = look;
  return {
    id,
    family,
    level,
    kind,
    goal: goal ?? null,
    start: start === undefined ? null : figures(start),
    hueBound: hueBound ?? null,
    shadingLine: shadingLine ?? null,
    best: answerJson(best),
    bestLabel: best.label,
    bestMark: best.grade.mark,
    traps: traps.map(answerJson),
    trapLabel: worst.label,
    trapMark: worst.grade.mark,
    luck,
    faults,
  };
}

/**
 * Checks every drill. The report is printed by the caller either way.
 * @param options.sheet file for the contact sheet; @param read files that must not be written over; @param pictures that it shows
 * @returns the text and whether all passed
 * @throws DataError when the sheet cannot be written; asked for before anything is checked
 */
export async function checkCommand(
  studio: Studio,
  drills: readonly Drill[],
  options: { readonly json?: boolean; readonly sheet?: string; readonly force?: boolean },
  read: readonly string[] = [],
  pictures: readonly Picture[] = [],
): Promise<{ readonly text: string; readonly passed: boolean }> {
  const { sheet, force = false } = options;
  if (sheet !== undefined) requireOutputs([sheet], read, force);
  const checks = checkDrills(studio, drills);
  const faulty = checks.filter(({ faults }) => faults.length > 0).length;
  const written: string[] = [];
  if (sheet !== undefined) {
    const [{ sheetHtml }, { pictureBeside }] = await Promise.all([
      import('../drills/sheet/index.js'),
      import('../pictures/beside.js'),
    ]);
    const page = sheetHtml(studio, drills, checks, (drill, { best }) =>
      pictureBeside(studio, pictures, drill, best.answer),
    );
    written.push(writeNamed(sheet, page, force));
  }
  const text =
    options.json === true
      ? document({ checked: checks.length, faulty, drills: checks.map(checkJson), written })
      : `${[...checks.map(row), `${checks.length} drills checked, ${faulty} with faults`, ...written].join('\n')}\n`;
  return { text, passed: faulty === 0 };
}

/** The fault that makes the exit code 1 after the report. */
export function checkFault(): DataError {
  return new DataError('some drills have faults; the report above names them');
}
