/** What is due, what was done last and what rose in it: for the head of the home screen and of progress. */
import { fitWords, widthOf } from '../text/wrap.js';
import type { FamilyRef } from './refs.js';
import { dueAt, recallAt, WANTED_RECALL } from './spacing.js';
import type { FamilyStanding, Standing } from './standing.js';
import { figuresOf, setsOfModel } from './totals.js';
import { hasRisen } from './trend.js';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/** A skill. */
interface Skill {
  readonly id: string;
  readonly title: string;
}

/** A level that rose weighs more than a mark. */
const BY = ['level', 'mark'] as const;

/** A skill that rose: its level, or, where that stayed, its mean mark (0-100) against the sets before. */
export interface Risen extends Skill {
  readonly by: (typeof BY)[number];
  readonly from: number;
  readonly to: number;
}

/** The set answered last. */
export interface LastSet {
  /** Its latest answer, ISO 8601; and how long ago that is. */
  readonly when: string;
  readonly hoursAgo: number;
  readonly families: readonly Skill[];
  readonly answers: number;
  readonly good: number;
  /** Mean, 0-100. */
  readonly mark: number;
}

export interface AtAGlance {
  /** Skills due for review now, the most forgotten first. */
  readonly due: readonly Skill[];
  /** Where none is: the one that is due next, and when, ISO 8601. Absent before the first answer. */
  readonly next?: Skill & { readonly due: string; readonly days: number };
  /** Absent before the first answer. */
  readonly last?: LastSet;
  /** What rose in that set, levels first. */
  readonly rose: readonly Risen[];
}

interface Known extends Skill {
  readonly standing: FamilyStanding;
}

function risenIn({ id, title, standing }: Known): Risen[] {
  const { level, entered, sets } = standing;
  if (level.level > entered.level) return [{ id, title, by: 'level', from: entered.level, to: level.level }];
  const now = sets.at(-1);
  if (now === undefined || level.level < entered.level) return [];
  const later = figuresOf([now]);
  const earlier = figuresOf(setsOfModel(sets.slice(0, -1), now.model));
  if (earlier === undefined || later === undefined || !hasRisen({ earlier, later })) return [];
  const [from, to] = [Math.round(earlier.mark), Math.round(later.mark)];
  // Harder drills on like marks are a rise as well, but not one that these two numbers tell.
  return to > from ? [{ id, title, by: 'mark', from, to }] : [];
}

/**
 * The glance at a standing.
 * @param families in the order of the curriculum; others in the record are passed over
 */
export function atAGlance(standing: Standing, families: readonly FamilyRef[], now: Date): AtAGlance {
  const nowMs = now.getTime();
  const known = families.flatMap(({ id, title }): Known[] => {
    const family = standing.families.get(id);
    return family === undefined ? [] : [{ id, title, standing: family }];
  });
  const skill = ({ id, title }: Known): Skill => ({ id, title });
  const recall = ({ standing: { memory } }: Known): number => recallAt(memory, nowMs);
  const due = known
    .filter((one) => recall(one) < WANTED_RECALL)
    .sort((one, other) => recall(one) - recall(other));
  const dueMs = ({ standing: { memory } }: Known): number => dueAt(memory);
  const [soonest] = known.toSorted((one, other) => dueMs(one) - dueMs(other));
  const inLast = known.filter(({ standing: { entered } }) => entered.set === standing.lastSet);
  // Where no date can be believed, the latest that was written stands.
  const lastMs = standing.lastMs || (standing.ahead?.lastMs ?? 0);
  const whole = figuresOf(standing.sets.filter(({ set }) => set === standing.lastSet));
  return {
    due: due.map(skill),
    ...(due.length === 0 &&
      soonest && {
        next: {
          ...skill(soonest),
          due: new Date(dueMs(soonest)).toISOString(),
          days: Math.max(1, Math.ceil((dueMs(soonest) - nowMs) / DAY_MS)),
        },
      }),
    ...(whole && {
      last: {
        when: new Date(lastMs).toISOString(),
        hoursAgo: Math.max(0, Math.floor((nowMs - lastMs) / HOUR_MS)),
        families: inLast.map(skill),
        answers: whole.answers,
        good: whole.good,
        mark: Math.round(whole.mark),
      },
    }),
    rose: inLast.flatMap(risenIn).sort((one, other) => BY.indexOf(one.by) - BY.indexOf(other.by)),
  };
}

const counted = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`;

function agoWords(hours: number): string {
  if (hours < 1) return 'just now';
  return hours < 24 ? `${counted(hours, 'hour')} ago` : `${counted(Math.floor(hours / 24), 'day')} ago`;
}

const titlesOf = (skills: readonly Skill[]): string[] => skills.map(({ title }) => title);

/** A line with as many of the names as fit, the rest counted. Names have commas of their own. */
function naming(before: string, names: readonly string[], columns: number): string {
  for (let shown = names.length; shown > 0; shown -= 1) {
    const rest = names.length - shown;
    const list = [...names.slice(0, shown), ...(rest > 0 ? [`${rest} more`] : [])].join('; ');
    const line = `${before}${list}`;
    if (widthOf(line) <= columns) return line;
  }
  return fitWords(`${before}${counted(names.length, 'skill')}`, columns);
}

/** "Last, 5 hours ago: 6 of 8 good, mark 78, in Layers in order; 2 more". A record may hold skills that are not known here. */
function lastLine({ hoursAgo, families, answers, good, mark }: LastSet, columns: number): string {
  const line = `Last, ${agoWords(hoursAgo)}: ${good} of ${answers} good, mark ${mark}`;
  if (families.length === 0) return fitWords(line, columns);
  return naming(`${line}, in `, titlesOf(families), columns);
}

/**
 * The glance as three lines at most.
 * @param columns the widest line; from 60 on every line is whole
 */
export function glanceLines({ due, next, last, rose }: AtAGlance, columns: number): string[] {
  if (last === undefined) return [fitWords('Nothing practised yet.', columns)];
  return [
    ...(due.length > 0 ? [naming('Due for review: ', titlesOf(due), columns)] : []),
    ...(next === undefined
      ? []
      : [naming(`Due next, in ${counted(next.days, 'day')}: `, [next.title], columns)]),
    lastLine(last, columns),
    ...(rose.length === 0
      ? []
      : [
          naming(
            'Rose: ',
            rose.map(({ title, by, from, to }) => `${title}, ${by} ${from} to ${to}`),
            columns,
          ),
        ]),
  ];
}
