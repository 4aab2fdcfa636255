/** `mudlark drills` and `mudlark drills check`. */

import { checkDrill, type DrillCheck } from '../drills/check.js';
import { findFamily } from '../drills/families.js';
import type { Drill } from '../drills/kinds/index.js';
import { DataError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { document } from './run.js';

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
  const families = [...new Set(drills.map(({ family }) => family))];
  const blocks = families.map((family) => {
    const rows = drills
      .filter((drill) => drill.family === family)
      .map(({ id, level, title }) => `  ${id.padEnd(width)}  level ${level}  ${title}`);
    return [findFamily(family)?.name ?? family, ...rows].join('\n');
  });
  return `${blocks.join('\n\n')}\n`;
}

function row({ id, best, bestMark, trap, trapMark, luck, faults }: DrillCheck): string {
  const head = `${faults.length === 0 ? 'ok   ' : 'fault'} ${id}: best ${best} (${bestMark}); trap ${trap} (${trapMark}); luck ${Math.round(luck * 100)} %`;
  return [head, ...faults.map((fault) => `      ${fault}`)].join('\n');
}

/**
 * Checks every drill. The report is printed by the caller either way.
 * @returns the text and whether all passed
 */
export function checkCommand(
  studio: Studio,
  drills: readonly Drill[],
  options: { readonly json?: boolean },
): { readonly text: string; readonly passed: boolean } {
  const checks = drills.map((drill) => checkDrill(studio, drill));
  const faulty = checks.filter(({ faults }) => faults.length > 0).length;
  const text =
    options.json === true
      ? document({ checked: checks.length, faulty, drills: checks })
      : `${[...checks.map(row), `${checks.length} drills checked, ${faulty} with faults`].join('\n')}\n`;
  return { text, passed: faulty === 0 };
}

/** The fault that makes the exit code 1 after the report. */
export function checkFault(): DataError {
  return new DataError('some drills have faults; the report above names them');
}
