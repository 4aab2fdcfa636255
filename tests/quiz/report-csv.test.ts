import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shownName } from '../../src/quiz/names.js';
import { readColumns, reportCsv } from '../../src/quiz/report-csv.js';
import { kindOf } from '../studio.js';
import { best, classOf, handout, NASTY } from './nasty.js';

/** The unquoted cells of one CSV row (RFC 4180, section 2). */
function cells(row: string): string[] {
  return [...row.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '',
  );
}

const anyName = fc
  .string({ unit: 'binary', minLength: 1, maxLength: 50 })
  .filter((name) => shownName(name) !== '');

describe('the CSV', () => {
  it('defuses cells that a spreadsheet would take for a formula, and quotes as RFC 4180 says', () => {
    const rows = reportCsv(classOf(NASTY)).split('\r\n');
    expect(rows).toHaveLength(NASTY.length + 2);
    expect(rows.at(-1)).toBe('');
    const names = rows.slice(1, -1).map((row) => cells(row)[0] as string);
    for (const name of names) expect(name).not.toMatch(/^[=+\-@\t\r＝＋－＠]/);
    expect(names).toContain("'=1+1");
    expect(names).toContain('a"b,c');
    expect(names.join('')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
    // RFC 3629, section 6: the byte-order mark as a signature of UTF-8.
    expect(Buffer.from(rows[0] as string).subarray(0, 3)).toEqual(Buffer.from([0xef, 0xbb, 0xbf]));
    expect(cells((rows[0] as string).slice(1))).toEqual([
      'Name',
      'Answered',
      'Right',
      'Points',
      'Possible points',
      'Percent',
      'Remarks',
      '1. Question 0',
      '2. Question 1',
      '3. Question 2',
    ]);
  });

  it('has the columns that were chosen, and refuses others', () => {
    const result = classOf(['Ann']);
    const [head = '', row = ''] = reportCsv(result, readColumns('percent, name,skills,answers'))
      .slice(1)
      .split('\r\n');
    expect(cells(head)).toEqual([
      'Percent',
      'Name',
      'Darken it and keep it bright',
      'Dull it on purpose',
      '1. Question 0: answer',
      '2. Question 1: answer',
      '3. Question 2: answer',
    ]);
    const labels = handout.questions.map(({ drill }, at) => kindOf(drill).label(drill, best[at] ?? {}));
    expect(cells(row)).toEqual(['100', 'Ann', '100', '100', ...labels]);
    expect(() => readColumns('name,percnt')).toThrow(/has no "percnt".*Did you mean percent\?/);
    expect(() => readColumns('name,name')).toThrow(/twice/);
    expect(() => readColumns('name,__proto__')).toThrow(/has no "__proto__"/);
  });

  it('holds for any name', () => {
    fc.assert(
      fc.property(anyName, (name) => {
        const rows = reportCsv(classOf([name])).split('\r\n');
        expect(rows).toHaveLength(3);
        expect(cells(rows[1] as string)).toHaveLength(10);
        expect(cells(rows[1] as string)[0]).not.toMatch(/^[=+\-@]|[\p{Cc}\p{Cf}]/u);
      }),
      { numRuns: 200 },
    );
  });
});
