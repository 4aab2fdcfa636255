/** Writing a handout: YAML with a few lines for the teacher who opens it. */
import { Document, isCollection, isMap, isPair, isScalar, isSeq } from 'yaml';
import type { Drill } from '../drills/kinds/index.js';
import { HANDOUT_FORMAT, type Handout, UNSEALED_HANDOUT_FORMAT } from './handout.js';

const HEAD = [
  ' A quiz. Change what you like and then run: mudlark quiz check THIS-FILE',
  ' Words (titles, scenes, questions, hints) and comments may still change after students have sat it;',
  ' goals, paints, points, rules and the order of questions may not, or their answers will be refused.',
].join('\n');

const RULES = [
  ' timePerQuestionSeconds: a clock, counted from the moment a question is first shown; leave it out for none',
  ' hints: true shows the hint under each question; backAllowed: may go back and change',
  ' showResult: end, each (after each question) or later (kept back until quiz release)',
  ' shuffle: an order of their own for each student; due: later sittings are reported, like 2026-03-02T12:00:00Z',
].join('\n');

const SECRET = ' secret: the key that seals the answers, so that a changed file is seen; leave it as it is';

/** Longest collection that stands on one line, in characters of JSON. */
const ONE_LINE = 90;

/** Short collections go on one line, as people write them. */
function layOut(node: unknown): void {
  if (isMap(node)) for (const { value } of node.items) settle(value);
  else if (isSeq(node)) for (const item of node.items) settle(item);
}

function settle(node: unknown): void {
  if (!isCollection(node)) return;
  if (JSON.stringify(node.toJSON()).length <= ONE_LINE) node.flow = true;
  else layOut(node);
}

/** A drill as a file holds it: without the family, which stands beside it. */
function drillForFile(drill: Drill): object {
  const { family: _family, ...rest } = drill;
  return JSON.parse(JSON.stringify(rest)) as object;
}

/** What a handout is written from. */
export type HandoutContent = Omit<Handout, 'digest' | 'studio'>;

/** The text of a handout file. */
export function handoutText({ title, engine, seed, secret, rules, questions }: HandoutContent): string {
  const document = new Document({
    format: secret === undefined ? UNSEALED_HANDOUT_FORMAT : HANDOUT_FORMAT,
    title,
    engine,
    seed,
    ...(secret === undefined ? {} : { secret }),
    rules: JSON.parse(JSON.stringify(rules)) as object,
    questions: questions.map(({ drill, points }) => ({
      family: drill.family,
      points,
      drill: drillForFile(drill),
    })),
  });
  document.commentBefore = HEAD;
  const { contents } = document;
  if (!isMap(contents)) throw new TypeError('a handout is a map');
  for (const pair of contents.items) {
    if (!isPair(pair) || !isScalar(pair.key)) continue;
    if (pair.key.value === 'secret') pair.key.commentBefore = SECRET;
    if (pair.key.value === 'rules') pair.key.commentBefore = RULES;
    if (pair.key.value !== 'questions' || !isSeq(pair.value)) continue;
    pair.key.spaceBefore = true;
    for (const question of pair.value.items) {
      if (!isMap(question)) continue;
      const drill = question.get('drill', true);
      layOut(drill);
      if (question !== pair.value.items[0]) question.spaceBefore = true;
    }
  }
  return document.toString({ lineWidth: 110, flowCollectionPadding: true });
}
