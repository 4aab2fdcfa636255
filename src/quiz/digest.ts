/**
 * What makes two handouts the same: SHA-256 of a canonical form of everything that decides the order, the conditions and
 * the marks: format, seed (not the secret of the seals), rules but for `due`, and of each question its family, points and drill but for the drill's words.
 *
 * Comments, layout, the order of keys, the title, and the words of a drill (title, scene, ask, hint, note) do not enter: a
 * teacher may mend a spelling after the class has sat. A goal, a paint, a rule or the order of the questions does enter.
 */
import { createHash } from 'node:crypto';
import { canonicalJson } from '../text/canonical-json.js';

/** What a digest looks like. */
export const DIGEST_SHAPE = /^sha256:[0-9a-f]{64}$/;

const WORDS: ReadonlySet<string> = new Set(['title', 'scene', 'ask', 'hint', 'note']);

type Data = Readonly<Record<string, unknown>>;

const isData = (value: unknown): value is Data =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function without(value: unknown, left: (key: string) => boolean): unknown {
  if (!isData(value)) return value;
  return Object.fromEntries(Object.entries(value).filter(([key]) => !left(key)));
}

function questionCore(question: unknown): unknown {
  if (!isData(question)) return question;
  return { ...question, drill: without(question['drill'], (key) => WORDS.has(key)) };
}

/** Digest of a handout as its file holds it. */
export function handoutDigest(raw: unknown): string {
  const data = isData(raw) ? raw : {};
  const questions = Array.isArray(data['questions']) ? data['questions'].map(questionCore) : [];
  const core = {
    format: data['format'],
    seed: data['seed'],
    rules: without(data['rules'], (key) => key === 'due'),
    questions,
  };
  return `sha256:${createHash('sha256').update(canonicalJson(core)).digest('hex')}`;
}
