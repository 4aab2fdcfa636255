/** Calling a class over: whose each sitting is, who is missing, and which names fit nobody. */
import type { Sitting } from './answers.js';
import { type ClassList, createRoll, type Enrolled } from './class-list.js';
import { byCodePoint, inNameOrder, nameKey } from './names.js';

/** A sitting that fits nobody on the list, or several. */
export interface Unmatched {
  readonly name: string;
  readonly file: string;
  readonly why: string;
}

/** The class called over. */
export interface CalledOver {
  readonly missing: readonly Enrolled[];
  /** They are marked all the same. */
  readonly unmatched: readonly Unmatched[];
}

/** Something handed in, and who on the list it is of. */
export type Known<T> = T & { readonly enrolled?: Enrolled; readonly calledAs?: string };

/** What is handed in by whose it is: somebody on the list, or the key of a name that is not. */
export function byPerson<T extends { readonly file: string; readonly sitting: Sitting }>(
  submitted: readonly T[],
  list: ClassList | undefined,
): { readonly people: ReadonlyMap<string | Enrolled, Known<T>[]>; readonly unmatched: readonly Unmatched[] } {
  const find = list === undefined ? undefined : createRoll(list);
  const people = new Map<string | Enrolled, Known<T>[]>();
  const unmatched: Unmatched[] = [];
  for (const each of submitted) {
    const { name } = each.sitting;
    const found = find?.(name);
    const known: Known<T> = found !== undefined && 'enrolled' in found ? { ...each, ...found } : each;
    if (found !== undefined && 'why' in found) unmatched.push({ name, file: each.file, why: found.why });
    const who = known.enrolled ?? nameKey(name);
    const before = people.get(who);
    if (before === undefined) people.set(who, [known]);
    else before.push(known);
  }
  return { people, unmatched };
}

/** Who of the list is not among those who handed in. */
export function callOver(
  { students }: ClassList,
  present: Iterable<string | Enrolled>,
  unmatched: readonly Unmatched[],
  locale: string,
): CalledOver {
  const inOrder = inNameOrder(locale);
  const here = new Set(present);
  return {
    missing: students.filter((each) => !here.has(each)).sort((a, b) => inOrder(a.name, b.name)),
    unmatched: [...unmatched].sort((a, b) => inOrder(a.name, b.name) || byCodePoint(a.file, b.file)),
  };
}
