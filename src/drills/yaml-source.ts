/** Reading a YAML file that someone wrote: bounded, without aliases, every fault named with its line. */
import * as v from 'valibot';
import { isMap, isPair, isSeq, LineCounter, type Node, parseDocument } from 'yaml';
import { DataError } from '../errors.js';
import { didYouMean } from '../text/nearest.js';
import { cleanText } from '../text/sanitize.js';
import { keyFault, knownKeys } from './yaml-keys.js';
import { syntaxFault } from './yaml-words.js';

/** Largest text that is read, in characters: eight times the longest of ours, and three seconds at worst. */
export const MOST_TEXT = 400_000;

/** Deepest nesting that is read; our formats need seven. */
const MOST_DEPTH = 24;

/** A message is one line, whatever stands in the file that it quotes. */
const clean = (message: string): string => cleanText(message, 400);

/** The line of a text that an offset lies on. */
function lineAt(text: string, offset: number): string {
  const start = text.lastIndexOf('\n', offset - 1) + 1;
  const end = text.indexOf('\n', offset);
  return text.slice(start, Math.min(end < 0 ? text.length : end, start + 2000));
}

type Path = readonly (string | number)[];

function nodeAt(root: unknown, path: Path): Node | undefined {
  let node: unknown = root;
  let found: Node | undefined;
  for (const key of path) {
    let next: unknown;
    if (isMap(node)) {
      const pair = node.items.find(
        (item) => isPair(item) && String((item.key as { value?: unknown })?.value) === String(key),
      );
      found = (pair?.key as Node | undefined) ?? found;
      next = pair?.value;
    } else if (isSeq(node)) {
      next = node.items[Number(key)];
      found = (next as Node | undefined) ?? found;
    }
    if (next === undefined || next === null) break;
    node = next;
  }
  return found;
}

/** Depth of flow and block nesting by a scan that cannot itself overflow. */
function tooDeep(text: string): boolean {
  let flow = 0;
  for (const char of text) {
    if (char === '[' || char === '{') flow++;
    else if (char === ']' || char === '}') flow = Math.max(0, flow - 1);
    if (flow > MOST_DEPTH) return true;
  }
  return text.split('\n').some((line) => /^\s*(- ){24,}/.test(line) || /^ {200,}\S/.test(line));
}

type Issue = v.BaseIssue<unknown>;

function pathOf(issue: Issue): (string | number)[] {
  return (issue.path ?? []).map((item) => (item as { key: unknown }).key as string | number);
}

const isUnknownKey = (issue: Issue): boolean => issue.type === 'strict_object' && issue.expected === 'never';
const isMissingKey = (issue: Issue): boolean =>
  issue.type === 'strict_object' && issue.received === 'undefined' && issue.expected !== 'never';

/** A mistyped key shows up twice, as unknown and as missing: the unknown one is the one to name. */
function firstIssue(issues: readonly Issue[]): Issue {
  return issues.find(isUnknownKey) ?? (issues[0] as Issue);
}

function describe(issue: Issue, issues: readonly Issue[], schema: unknown): string {
  const path = pathOf(issue);
  const key = String(path.at(-1) ?? '');
  if (isUnknownKey(issue)) {
    const missing = issues.filter(isMissingKey).map((other) => String(pathOf(other).at(-1)));
    // A missing key is the likelier slip; else any that is known at this place.
    const near = didYouMean(key, missing) || didYouMean(key, knownKeys(schema, path.slice(0, -1)));
    return `"${key.slice(0, 60)}" is not a known key here.${near}`;
  }
  if (isMissingKey(issue)) return `${path.join('.')} is missing`;
  if (path.length === 0 && issue.type === 'strict_object') return 'the file must hold keys and values';
  return `${path.length > 0 ? path.join('.') : 'the file'}: ${issue.message}`;
}

/**
 * One call of the YAML library, and nothing of ours: it throws errors of every class for what a text may hold (a tag that does not
 * fit, a sequence without an end), and a stack overflow where it is nested too deep.
 */
function inParser<T>(name: string, call: () => T): T {
  try {
    return call();
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    const what = error instanceof RangeError ? 'nested too deep' : (error.message.split('\n')[0] ?? '');
    throw new DataError(`${name}: ${clean(what)}`, { cause: error });
  }
}

/** A parsed text and a way to name the line of any of its values. */
export interface YamlSource<T> {
  readonly value: T;
  /** One-based line of the value at a path, or of the nearest thing around it. */
  lineOf(path: Path): number;
}

/** Refuses a text that is larger than any of its sort. @param what "handout" @throws DataError naming the file */
export function requireSize(text: string, most: number, what: string, name: string): void {
  if (text.length > most)
    throw new DataError(
      `${name}: larger than the ${most / 1000} kB of the largest ${what}; check that it is the right file`,
    );
}

/**
 * Parses and validates.
 * @param name what to call the file in a message
 * @throws DataError `name:line: what is wrong`, always one line
 */
export function parseYaml<S extends v.GenericSchema>(
  text: string,
  schema: S,
  name: string,
): YamlSource<v.InferOutput<S>> {
  if (text.length > MOST_TEXT) {
    throw new DataError(
      `${name}: the file is larger than ${MOST_TEXT / 1e6} MB; split it or check that it is the right file`,
    );
  }
  if (tooDeep(text))
    throw new DataError(`${name}: nested deeper than ${MOST_DEPTH} levels; check that it is the right file`);
  const lines = new LineCounter();
  const options = { lineCounter: lines, prettyErrors: false, strict: true, uniqueKeys: false } as const;
  const document = inParser(name, () => parseDocument(text, options));
  const fault = document.errors[0];
  if (fault !== undefined) {
    const { line } = lines.linePos(fault.pos[0]);
    throw new DataError(`${name}:${line}: ${syntaxFault(fault, lineAt(text, fault.pos[0]))}`);
  }
  const key = keyFault(document.contents);
  if (key !== undefined) throw new DataError(`${name}:${lines.linePos(key.offset).line}: ${clean(key.what)}`);
  const raw: unknown = inParser(name, () => document.toJS({ maxAliasCount: 0 }));
  const root: unknown = document.contents;
  const lineOf = (path: Path): number => {
    const offset = nodeAt(root, path)?.range?.[0];
    return offset === undefined ? 1 : lines.linePos(offset).line;
  };
  const result = v.safeParse(schema, raw);
  if (!result.success) {
    const issue = firstIssue(result.issues);
    throw new DataError(`${name}:${lineOf(pathOf(issue))}: ${clean(describe(issue, result.issues, schema))}`);
  }
  return { value: result.output, lineOf };
}
