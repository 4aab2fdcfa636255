/** A record out of order, or with lines that stand there twice, comes to what its answers come to each once. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { addAnswer, emptyStanding, entryLine, foldSorted, standingToJson } from '../../src/practice/index.js';
import { loadRecord } from '../../src/profile/index.js';
import { answerNo, freshHome, START } from './helpers.js';

const home = freshHome();

/** Times in minutes: many alike, some near each other, some far apart, some ahead of the clock at 500. */
const minutes = fc.oneof(fc.constantFrom(3, 4, 5), fc.integer({ min: 0, max: 400 }), fc.constant(900));
const answers = fc.array(
  fc
    .tuple(minutes, fc.integer({ min: 0, max: 3 }))
    .map(([minute, n]) => answerNo(n, { at: new Date(START + minute * 60_000).toISOString() })),
  { maxLength: 60 },
);

it('whatever their order and however often they stand there, also after a checkpoint', () => {
  const latestMs = START + 500 * 60_000;
  const record = join(home.path, 'record.jsonl');
  const summary = join(home.path, 'summary.json');
  fc.assert(
    fc.property(answers, fc.boolean(), (list, isLong) => {
      // Long lines lie in pieces of the file that are not read together.
      const told = isLong ? list.map((entry) => ({ ...entry, more: 'x'.repeat(9000) })) : list;
      writeFileSync(record, `not a line\n${told.map(entryLine).join('')}`);
      const seen = new Set<string>();
      const once = told.filter((entry) => seen.size < seen.add(entryLine(entry)).size);
      const asWritten = emptyStanding();
      for (const entry of told) addAnswer(asWritten, entry, latestMs);
      const inPlace = emptyStanding();
      for (const entry of once) addAnswer(inPlace, entry, latestMs);
      const wanted = asWritten.isOutOfOrder ? foldSorted(once, latestMs) : inPlace;
      expect(standingToJson(loadRecord(record, summary, latestMs).standing)).toBe(standingToJson(wanted));
    }),
    { numRuns: 300 },
  );
});
