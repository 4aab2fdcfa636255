/**
 * Files that an earlier state of the program wrote (data/): they stay valid, byte for byte, whatever library makes canonical JSON or checks
 * an answer. They are made up; nobody sat this quiz. Never write them anew: a file out there would be as old.
 */
import { copyFileSync, mkdirSync, readFileSync } from 'node:fs';
import { crc32 } from 'node:zlib';
import { beforeEach, describe, expect, it } from 'vitest';
import { entryLine, foldSorted, parseEntry, standingToJson } from '../../src/practice/index.js';
import { readCheckpoint } from '../../src/profile/checkpoint.js';
import {
  bringIn,
  exportPieces,
  type LearnerFiles,
  learnerFiles,
  loadRecord,
  readContent,
  readEntries,
  readImport,
} from '../../src/profile/index.js';
import { parseSitting, sittingText } from '../../src/quiz/answers.js';
import { parseHandout } from '../../src/quiz/handout.js';
import { parseResults } from '../../src/quiz/results.js';
import { checkSeals } from '../../src/quiz/seals.js';
import { freshHome } from '../profile/helpers.js';
import { SECRET } from '../quiz/fixture.js';
import { STUDIO } from '../studio.js';

const path = (name: string): string => new URL(`data/${name}`, import.meta.url).pathname;
const read = (name: string): string => readFileSync(path(name), 'utf8');

describe('a quiz from before', () => {
  const handout = parseHandout(STUDIO, read('week.quiz.yaml'), 'week.quiz.yaml');
  const sitting = () => parseSitting(read('answers.json'), 'answers.json');

  it('has the digest that its answers name', () => {
    expect(handout.digest).toBe('sha256:0b4af2872069bfc02823c68a5b7444d47612e083e6ed2f9b300dbda3d38c1124');
    expect(sitting().handoutDigest).toBe(handout.digest);
  });

  it('has whole seals, and the same ones when it is sealed again', () => {
    expect(checkSeals(SECRET, sitting())).toEqual({ state: 'whole', faults: [], isCut: false });
    const { seals: _seals, ...bare } = sitting();
    expect(sittingText(bare, SECRET)).toBe(read('answers.json'));
  });

  it('has results that are sound, and are not once a mark is changed', () => {
    const text = read('results.json');
    expect(parseResults(STUDIO, text, 'results.json').isSound).toBe(true);
    const changed = text.replace(/"mark": \d+/, '"mark": 1');
    expect(parseResults(STUDIO, changed, 'results.json').isSound).toBe(false);
  });
});

describe('a record from before', () => {
  const home = freshHome();
  let files: LearnerFiles;
  beforeEach(() => {
    files = learnerFiles(home.path, 'Ada');
    mkdirSync(files.folder, { recursive: true });
  });

  const lines = read('record.jsonl').trimEnd().split('\n');

  it('is read whole, and written again as it stands', () => {
    copyFileSync(path('record.jsonl'), files.record);
    const entries = readEntries(files.record);
    expect(entries).toHaveLength(lines.length);
    expect(entries.map(entryLine).join('')).toBe(read('record.jsonl'));
    expect(loadRecord(files.record).foreignCount).toBe(0);
  });

  it('has a checkpoint that holds, and says what the answers say', () => {
    const kept = readCheckpoint(path('record.summary.json'));
    if (kept === undefined) throw new Error('the checkpoint is not taken');
    expect([kept.bytes, kept.crc]).toEqual([
      Buffer.byteLength(read('record.jsonl')),
      crc32(read('record.jsonl')),
    ]);
    copyFileSync(path('record.jsonl'), files.record);
    const loaded = loadRecord(files.record, path('record.summary.json'));
    expect(loaded.lines).toBe(kept.lines);
    const folded = foldSorted(lines.flatMap((line) => parseEntry(line) ?? []));
    expect(standingToJson(loaded.standing)).toBe(standingToJson(folded));
    expect(standingToJson(kept.standing)).toBe(standingToJson(folded));
  });

  it('is brought in whole, once however often, and exported as it was', () => {
    const brought = readImport(path('export.json'));
    expect([brought.entries.length, brought.unread.length, brought.refused]).toEqual([8, 2, 0]);
    expect(bringIn(files, 'Ada', brought)).toEqual({ answers: 8, unread: 2 });
    expect(bringIn(files, 'Ada', brought)).toEqual({ answers: 0, unread: 0 });
    const content = readContent(files);
    const { studio: _studio, ...bare } = JSON.parse(read('export.json'));
    const pieces = [...exportPieces(content, 'Ada', 'json', new Date(bare.exported))];
    expect(JSON.parse(pieces.join(''))).toEqual(bare);
  });

  it('knows an answer again whatever the order of its members', () => {
    const turned = (x: unknown): unknown =>
      typeof x === 'object' && x !== null && !Array.isArray(x)
        ? Object.fromEntries(
            Object.entries(x)
              .reverse()
              .map(([key, value]) => [key, turned(value)]),
          )
        : x;
    bringIn(files, 'Ada', readImport(path('export.json')));
    const other = lines.map((line) => `${JSON.stringify(turned(JSON.parse(line)))}\n`).join('');
    expect(bringIn(files, 'Ada', readImport('-', Buffer.from(other)))).toEqual({ answers: 0, unread: 0 });
  });
});
