import { describe, expect, it } from 'vitest';
import { DataError } from '../../src/errors.js';
import { MOST_QUESTIONS, parseHandout } from '../../src/quiz/handout.js';
import { isInstant } from '../../src/quiz/instant.js';
import { canonicalJson } from '../../src/text/canonical-json.js';
import { STUDIO } from '../studio.js';
import { RULES, someDrill, someHandout, someHandoutText } from './fixture.js';

const text = someHandoutText();
const digestOf = (changed: string): string => parseHandout(STUDIO, changed, 'x.yaml').digest;
const faultOf = (changed: string): string => {
  try {
    parseHandout(STUDIO, changed, 'x.yaml');
  } catch (error) {
    expect(error).toBeInstanceOf(DataError);
    return (error as Error).message;
  }
  return '';
};

describe('the handout file', () => {
  it('reads back what was written', () => {
    const handout = someHandout(4, { timePerQuestionSeconds: 60, due: '2026-03-02T12:00:00Z' });
    expect(handout.rules).toEqual({ ...RULES, timePerQuestionSeconds: 60, due: '2026-03-02T12:00:00Z' });
    expect(handout.questions.map(({ drill }) => drill)).toEqual([0, 1, 2, 3].map(someDrill));
    expect(handout.questions.map(({ points }) => points)).toEqual([1, 2, 1, 2]);
    expect(handout.seed).toBe(42);
  });

  it('takes the digest of what matters alone: not comments, layout, order of keys, title, words or the due moment', () => {
    const digest = digestOf(text);
    expect(digest).toMatch(/^sha256:[0-9a-f]{64}$/);
    expect(digestOf(`# a comment of the teacher\n${text}`)).toBe(digest);
    expect(digestOf(text.replace('seed: 42', 'seed:   42   # note'))).toBe(digest);
    expect(digestOf(text.replace('title: Week 3', 'title: Week three'))).toBe(digest);
    expect(digestOf(text.replace('A quarry wall', 'The quarry wall'))).toBe(digest);
    expect(digestOf(text.replace('rules:', 'rules:\n  due: 2026-03-02T12:00:00Z'))).toBe(digest);
    const [head, rest] = text.split('seed: 42\n') as [string, string];
    expect(digestOf(`seed: 42\n${head}${rest}`)).toBe(digest);
    expect(digestOf(JSON.stringify(JSON.parse(JSON.stringify(toData(text))), null, 1))).toBe(digest);
  });

  it('changes the digest with seed, rules, points, goals, paints and the order of questions', () => {
    const changes = [
      text.replace('seed: 42', 'seed: 43'),
      text.replace('backAllowed: true', 'backAllowed: false'),
      text.replace('points: 2', 'points: 3'),
      text.replace('[ 4, 7 ]', '[ 4, 7.5 ]'),
      text.replace('burnt-sienna', 'cobalt-blue'),
      swapFirstTwo(text),
    ];
    const digests = new Set([digestOf(text), ...changes.map(digestOf)]);
    expect(digests.size).toBe(changes.length + 1);
  });

  it('gives a line for every fault', () => {
    expect(faultOf(text.replace('seed: 42', 'seed: 42\nsed: 1'))).toMatch(
      /^x\.yaml:\d+: "sed" is not a known key/,
    );
    expect(faultOf(text.replace('format: 2', 'format: 4'))).toMatch(
      /^x\.yaml:\d+: format: format must be 2 or 3/,
    );
    expect(faultOf(text.replace('format: 2', 'format: 1'))).toMatch(
      /^x\.yaml:\d+: format: format 1 is of an earlier model of mixing; write the quiz again/,
    );
    expect(faultOf(text.replace('backAllowed: true', 'backAllowed: maybe'))).toMatch(
      /x\.yaml:\d+: rules\.backAllowed: backAllowed must be true or false/,
    );
    expect(faultOf(text.replace('question-1', 'question-0'))).toMatch(
      /^x\.yaml:\d+: the id "question-0" is used twice/,
    );
    expect(faultOf(text.replace('points: 2', 'points: 0'))).toMatch(/points must be above 0/);
    expect(faultOf(text.replace('shuffle: true', 'shuffle: true\n  due: tomorrow'))).toMatch(
      /due: must be a date/,
    );
    expect(faultOf(text.replace('  showResult: end\n', '  showResult: never\n'))).toMatch(
      /showResult must be end, each or later; later keeps results back until you release them/,
    );
    expect(faultOf('')).not.toBe('');
    expect(faultOf('- 1')).not.toBe('');
  });

  it.each(['__proto__', 'constructor', 'toString', 'prototype', 'hasOwnProperty'])(
    'refuses the reserved key %s wherever it stands',
    (key) => {
      const polluted = [
        `${key}: { polluted: true }\n${text}`,
        text.replace('rules:\n', `rules:\n  ${key}: { polluted: true }\n`),
        text.replace('amounts:', `${key}: { polluted: true }\n      amounts:`),
        text.replace('{ burnt-sienna: 1 }', `{ burnt-sienna: 1, ${key}: 1 }`),
      ];
      for (const changed of polluted) expect(faultOf(changed)).toContain(`"${key}" is not a known key here`);
      expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
    },
  );

  it('refuses a key given twice, aliases, deep nesting and a huge text, quickly', () => {
    expect(faultOf(text.replace('seed: 42', 'seed: 42\nseed: 43'))).toMatch(/"seed" stands here twice/);
    expect(faultOf(`a: &a [1]\nb: *a\n${text}`)).not.toBe('');
    expect(faultOf(`format: ${'['.repeat(5000)}`)).toMatch(/nested deeper/);
    expect(faultOf('#'.repeat(250_001))).toMatch(/larger than the 250 kB/);
    expect(faultOf(`{${Array.from({ length: 40_000 }, (_, index) => `k${index}`).join(',')}}`)).not.toBe('');
  });

  it('holds at most as many questions as it says', () => {
    expect(someHandout(MOST_QUESTIONS).questions).toHaveLength(MOST_QUESTIONS);
    expect(faultOf(someHandoutText(MOST_QUESTIONS + 1))).toMatch(/holds more than 60 questions/);
  });

  it('refuses control and direction-changing characters and drops other invisible ones', () => {
    expect(faultOf(text.replace('title: Week 3', 'title: "Week\\u202E 3"'))).toMatch(/direction-changing/);
    expect(faultOf(text.replace('title: Week 3', 'title: "Week\\e[31m 3"'))).toMatch(/control/);
    const zeroWidth = parseHandout(STUDIO, text.replace('title: Week 3', 'title: "Wee\\u200Bk 3"'), 'x');
    expect(zeroWidth.title).toBe('Week 3');
  });
});

describe('canonical JSON', () => {
  it('orders keys by code point, leaves out what is undefined, keeps lists in order', () => {
    expect(canonicalJson({ b: 1, a: [2, { d: undefined, c: 'x' }], B: null })).toBe(
      '{"B":null,"a":[2,{"c":"x"}],"b":1}',
    );
  });
});

describe('moments', () => {
  it('takes dates that exist, with a zone (ISO 8601)', () => {
    expect(isInstant('2026-03-02T12:00:00Z')).toBe(true);
    expect(isInstant('2024-02-29T12:00+01:00')).toBe(true);
    for (const wrong of [
      '2026-02-29T12:00Z',
      '2026-13-01T12:00Z',
      '2026-03-02T12:00',
      '2026-03-02',
      'now',
      '',
    ])
      expect(isInstant(wrong)).toBe(false);
  });
});

function toData(yaml: string): unknown {
  const handout = parseHandout(STUDIO, yaml, 'x');
  return {
    questions: handout.questions.map(({ drill: { family, ...drill }, points }) => ({
      drill,
      points,
      family,
    })),
    rules: handout.rules,
    seed: handout.seed,
    engine: handout.engine,
    title: handout.title,
    format: 2,
  };
}

function swapFirstTwo(yaml: string): string {
  const data = toData(yaml) as { questions: unknown[] };
  const [first, second, ...rest] = data.questions;
  return JSON.stringify({ ...data, questions: [second, first, ...rest] });
}
