/**
 * Keys of a YAML file that someone wrote: each a plain word, none twice, none that JavaScript objects carry themselves.
 * The yaml package's own check for doubles compares every key with every other, so a megabyte of keys takes minutes.
 */
import { isAlias, isMap, isScalar, isSeq } from 'yaml';
import { isReservedKey } from '../text/json.js';

/** Where a key is at fault and why. */
export interface KeyFault {
  readonly offset: number;
  readonly what: string;
}

function faultIn(key: unknown, seen: Set<string>): string | undefined {
  if (!isScalar(key) || key.value === null || typeof key.value === 'object') return 'a key must be a word';
  const name = String(key.value);
  if (isReservedKey(name)) return `"${name}" is not a known key here`;
  if (seen.has(name)) return `"${name.slice(0, 60)}" stands here twice`;
  seen.add(name);
  return undefined;
}

/** The first key at fault below a node, or the first alias; else undefined. */
export function keyFault(root: unknown): KeyFault | undefined {
  const waiting: unknown[] = [root];
  while (waiting.length > 0) {
    const node = waiting.pop();
    if (isAlias(node))
      return {
        offset: node.range?.[0] ?? 0,
        what: 'a * stands for something written elsewhere; write it out',
      };
    if (isSeq(node)) for (const item of node.items) waiting.push(item);
    if (!isMap(node)) continue;
    const seen = new Set<string>();
    for (const { key, value } of node.items) {
      const what = faultIn(key, seen);
      if (what !== undefined)
        return {
          offset: (key as { range?: readonly number[] } | null)?.range?.[0] ?? node.range?.[0] ?? 0,
          what,
        };
      waiting.push(value);
    }
  }
  return undefined;
}

interface SchemaLike {
  readonly type?: string;
  readonly entries?: Readonly<Record<string, SchemaLike>>;
  readonly item?: SchemaLike;
  readonly items?: readonly SchemaLike[];
  readonly options?: readonly SchemaLike[];
  readonly wrapped?: SchemaLike;
}

/** The schemas that may stand one key further in. */
function inside(schema: SchemaLike, key: string | number): SchemaLike[] {
  if (schema.wrapped !== undefined) return inside(schema.wrapped, key);
  if (schema.type === 'variant' || schema.type === 'union')
    return (schema.options ?? []).flatMap((option) => inside(option, key));
  const next = schema.entries?.[String(key)] ?? schema.item ?? schema.items?.[Number(key)];
  return next === undefined ? [] : [next];
}

function entryKeys(schema: SchemaLike): string[] {
  if (schema.wrapped !== undefined) return entryKeys(schema.wrapped);
  if (schema.options !== undefined) return schema.options.flatMap(entryKeys);
  return Object.keys(schema.entries ?? {});
}

/** Every key that a valibot schema knows at a path, each once; where several shapes may stand, those of all. */
export function knownKeys(schema: unknown, path: readonly (string | number)[]): string[] {
  let at = [schema as SchemaLike];
  for (const key of path) at = at.flatMap((one) => inside(one, key));
  return [...new Set(at.flatMap(entryKeys))];
}
