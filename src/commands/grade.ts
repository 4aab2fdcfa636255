/** `mudlark grade`: grades an answer without the screens. */

import { firstAnswer } from '../drills/answers.js';
import { type Drill, kindOf } from '../drills/kinds/index.js';
import { howsOf } from '../drills/kinds/mix/choice.js';
import type { MixDrill } from '../drills/kinds/mix/schema.js';
import type { Answer, Field, Grade } from '../drills/types.js';
import { UsageError } from '../errors.js';
import type { Studio } from '../paints/index.js';
import { nearestNames } from '../text/nearest.js';
import { judgedRows, rowLine } from '../words/judged.js';
import { sayAll } from '../words/tell.js';
import { WRITTEN } from '../words/voice.js';
import { document, usage } from './run.js';

/** Options as typed. `set` holds `field=option` pairs for kinds of drill that are not a mixture. */
export interface GradeOptions {
  readonly second?: string;
  readonly amount?: string;
  readonly thin?: string;
  readonly set?: readonly string[];
  readonly json?: boolean;
}

/** The drill with this id. @throws UsageError with the nearest ids */
function requireDrill(drills: readonly Drill[], id: string): Drill {
  const drill = drills.find((candidate) => candidate.id === id);
  if (drill !== undefined) return drill;
  const near = nearestNames(
    id,
    drills.map((candidate) => candidate.id),
  );
  throw new UsageError(`no drill is called "${id.slice(0, 60)}".${near} See: mudlark drills`);
}

function readPairs(pairs: readonly string[]): Answer {
  return Object.fromEntries(
    pairs.map((pair) => {
      const at = pair.indexOf('=');
      if (at <= 0)
        throw new UsageError(`"${pair.slice(0, 60)}" must be written choice=option, like amount=1:4`);
      return [pair.slice(0, at), pair.slice(at + 1)];
    }),
  );
}

/** "2.0" names the same water as "2"; anything else stays as typed, for the message. */
function thinId(text: string): string {
  return /^[0-9.]+$/.test(text) && Number.isFinite(Number(text)) ? String(Number(text)) : text;
}

/** Puts the flags together as an answer; choices that have only one option may be left out. */
function readAnswer(fields: readonly Field[], options: GradeOptions): Answer {
  const typed: Record<string, string | undefined> = {
    second: options.second,
    amount: options.amount,
    thin: options.thin === undefined ? undefined : thinId(options.thin),
    ...readPairs(options.set ?? []),
  };
  const given = Object.fromEntries(
    Object.entries(typed).filter(([, value]) => value !== undefined),
  ) as Answer;
  const first = firstAnswer(fields);
  const only = fields
    .filter(({ options: choices }) => choices.length === 1)
    .map(({ id }) => [id, first[id]] as const);
  return { ...Object.fromEntries(only), ...given } as Answer;
}

/** What each choice of a mix drill is where the drill does not open it. */
function fixedChoices(drill: MixDrill): Answer {
  return {
    second: drill.tray[0] as string,
    amount: howsOf(drill)[0]?.id ?? '',
    thin: String(drill.thins[0]),
  };
}

/** What the drill fixes may be repeated, but not changed. */
function withoutFixed(drill: Drill, fields: readonly Field[], answer: Answer): Answer {
  if (drill.kind !== 'mix') return answer;
  const fixed = fixedChoices(drill);
  return Object.fromEntries(
    Object.entries(answer).filter(([key, value]) => {
      const isOpen = fields.some(({ id }) => id === key);
      if (isOpen || !Object.hasOwn(fixed, key)) return true;
      if (fixed[key] === value) return false;
      throw new UsageError(`this drill does not open the ${key}: it is ${fixed[key]}`);
    }),
  ) as Answer;
}

/** The best answer with what the drill fixes. */
function bestChoices(drill: Drill, best: Answer): Answer {
  return drill.kind === 'mix' ? { ...fixedChoices(drill), ...best } : best;
}

const FLAGS: Readonly<Record<string, string>> = {
  second: '--second',
  amount: '--amount',
  thin: '--thin',
};

/** @throws UsageError naming the first choice left open, and how to make it */
function requireChosen(fields: readonly Field[], answer: Answer): void {
  const open = fields.find(({ id }) => !Object.hasOwn(answer, id));
  if (open === undefined) return;
  const { id, label, options } = open;
  const flag = Object.hasOwn(FLAGS, id) ? `${FLAGS[id]} ${options[0]?.id}` : `--set ${id}=${options[0]?.id}`;
  throw new UsageError(
    `${label} is not chosen; it takes one of: ${options.map((option) => option.id).join(', ')}; like ${flag}`,
  );
}

function gradeJson(drill: Drill, answer: Answer, grade: Grade): object {
  const { value, chroma, hue } = grade;
  const finite = (band: readonly [number, number]) =>
    band.map((edge) => (Number.isFinite(edge) ? edge : null));
  return {
    drill: drill.id,
    family: drill.family,
    answer,
    mark: grade.mark,
    verdict: grade.verdict,
    ...(value === undefined ? {} : { value }),
    ...(chroma === undefined ? {} : { chroma: { ...chroma, asked: finite(chroma.asked) } }),
    ...(hue === undefined ? {} : { hue }),
    ...(grade.laid === undefined ? {} : { laid: grade.laid }),
    ...(grade.idea === undefined ? {} : { idea: grade.idea }),
    best: {
      ...bestChoices(drill, grade.best.answer),
      label: grade.best.label,
      mark: grade.best.mark,
    },
    evidence: grade.evidence,
    judged: judgedRows(grade, WRITTEN),
    explanation: sayAll(grade.told, WRITTEN),
    findings: grade.told,
  };
}

/** Grades; text, or the JSON document. @throws UsageError for an unknown drill or an answer that does not fit it */
export function gradeCommand(
  studio: Studio,
  drills: readonly Drill[],
  id: string,
  options: GradeOptions,
): string {
  const drill = requireDrill(drills, id);
  const kind = kindOf(studio, drill);
  const fields = kind.fields(drill);
  const answer = withoutFixed(drill, fields, readAnswer(fields, options));
  requireChosen(fields, answer);
  const grade = usage(() => kind.grade(drill, answer));
  if (options.json === true) return document(gradeJson(drill, answer, grade));
  const lines = [
    `${drill.title}: ${drill.ask}`,
    ...sayAll(kind.goalLines(drill), WRITTEN).map((line) => `  ${line}`),
    `${grade.mark} of 100 (${grade.verdict})`,
    ...judgedRows(grade, WRITTEN).map((row) => `  ${rowLine(row)}`),
    ...sayAll(grade.told, WRITTEN).map((line) => `- ${line}`),
  ];
  return `${lines.join('\n')}\n`;
}
