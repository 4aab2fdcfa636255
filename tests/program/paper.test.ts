import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { cleanEnv, mudlark } from './run-cli.js';

const folder = mkdtempSync(join(tmpdir(), 'mudlark-paper-'));
const [quiz, out, key] = ['week3.quiz.yaml', 'week3.pdf', 'key.pdf'].map((name) => join(folder, name)) as [
  string,
  string,
  string,
];
const env = cleanEnv();
const run = (...args: string[]) => mudlark(['quiz', ...args], env);

describe('quiz paper, as it is built', () => {
  it('prints a handout and its key with the font that the build carries', () => {
    expect(
      run('write', '--families', 'darken-bright', '--count', '3', '--seed', '5', '--out', quiz).code,
    ).toBe(0);
    const { code, out: said, err } = run('paper', quiz, '--out', out, '--key', key, '--size', 'letter');
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(said).toMatch(
      /written: week3\.pdf, \d pages\nwritten: key\.pdf, \d pages\nEach page bears the sheet code [2-9A-Z]{4}\./,
    );
    for (const file of [out, key]) {
      const text = readFileSync(file, 'latin1');
      expect(text.startsWith('%PDF-1.7')).toBe(true);
      expect(text).toContain('/MediaBox [0 0 612 792]');
      expect(text.match(/\/FontFile2/g)).toHaveLength(2);
      expect(text.length).toBeLessThan(200_000);
    }
  });

  it('refuses in one line what it cannot do, and replaces nothing unasked', () => {
    const before = readFileSync(out);
    const refused: [string[], RegExp][] = [
      [['paper', quiz], /needs --out FILE\.pdf/],
      [['paper', quiz, '--out', out], /there already/],
      [['paper', quiz, '--out', quiz, '--force'], /never written over/],
      [
        ['paper', quiz, '--out', join(folder, 'x.pdf'), '--key', join(folder, 'x.pdf')],
        /named for two outputs/,
      ],
      [['paper', quiz, '--out', join(folder, 'x.pdf'), '--size', 'a3'], /--size must be a4 or letter/],
      [['paper', join(folder, 'none.yaml'), '--out', join(folder, 'x.pdf')], /none\.yaml/],
    ];
    for (const [args, why] of refused) {
      const { code, err } = run(...args);
      expect(code, args.join(' ')).toBeGreaterThan(0);
      expect(err).toMatch(why);
      expect(err.trim().split('\n')).toHaveLength(1);
    }
    expect(readFileSync(out).equals(before)).toBe(true);
  });

  it('has its answers entered and marked', () => {
    const table = join(folder, 'class.txt');
    writeFileSync(table, 'Ann Lee; AAA\nBo; A-B\nCy; AA\n');
    const typed = run('enter', quiz, '--from', table, '--folder', join(folder, 'answers'));
    expect(typed.code).toBe(1);
    expect(typed.out).toContain('2 students entered');
    expect(typed.out).toContain('class.txt, line 3: 2 letters for 3 questions');
    expect(typed.err).toMatch(/1 line was not taken/);
    const files = ['ann-lee', 'bo'].map((name) => join(folder, 'answers', `week3.${name}.answers.json`));
    const marked = run('mark', quiz, ...files, '--json');
    expect(marked.code).toBe(0);
    const { students } = JSON.parse(marked.out) as {
      students: { name: string; source: string; answered: number }[];
    };
    expect(students.map(({ name, source, answered }) => [name, source, answered])).toEqual([
      ['Ann Lee', 'paper', 3],
      ['Bo', 'paper', 2],
    ]);
    expect(run('enter', quiz, '--from', join(folder, 'none.txt')).err).toMatch(/none\.txt/);
  });
});
