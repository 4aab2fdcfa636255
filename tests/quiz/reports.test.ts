import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { analyseClass } from '../../src/quiz/analysis.js';
import { markClass } from '../../src/quiz/class.js';
import { parseHandout } from '../../src/quiz/handout.js';
import { reportCsv } from '../../src/quiz/report-csv.js';
import { reportJson } from '../../src/quiz/report-data.js';
import { reportHtml } from '../../src/quiz/report-html.js';
import { reportText } from '../../src/quiz/report-text.js';
import { discriminationWords, twoDecimals } from '../../src/quiz/report-words.js';
import { bar } from '../../src/quiz/text-parts.js';
import { escapeHtml } from '../../src/text/html.js';
import { widthOf } from '../../src/text/wrap.js';
import { STUDIO } from '../studio.js';
import { bestAnswers, everyKindHandout, sittingOf, someClass, someHandoutText } from './fixture.js';
import { classOf, handout, NASTY, named } from './nasty.js';

describe('the page', () => {
  const result = classOf(NASTY);
  const page = reportHtml(result, analyseClass(result));

  it('is one page of its own: no scripts, nothing from elsewhere, language and heads of tables stated', () => {
    expect(page).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(page).not.toMatch(/<(script|link|img|iframe|object|embed|base|form)\b/i);
    expect(page).not.toMatch(/\b(src|href|srcset|action)\s*=\s*["']/i);
    expect(page).not.toMatch(/url\(|@import|https?:/i);
    expect(page).toContain("default-src 'none'; style-src 'unsafe-inline'");
    expect(page.match(/<table/g)?.length).toBe(page.match(/<caption>/g)?.length);
    for (const head of page.match(/<th\b[^>]*>/g) ?? []) expect(head).toMatch(/scope="(row|col)"/);
    expect(page).toContain('@media print');
  });

  it('lets no text become markup or an attribute', () => {
    expect(page).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(page).not.toMatch(/\son\w+\s*=\s*["']/i);
    for (const tag of page.match(/<[a-z][^>]*>/gi) ?? [])
      expect(tag).not.toMatch(/alert|onerror|onmouseover/);
    expect(page).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u001b]/);
  });

  it('says every swatch in words too', () => {
    const swatches = page.match(/<li><span class="swatch"[^<]*<\/span>[^<]*<\/li>/g) ?? [];
    expect(swatches).toHaveLength(6);
    for (const swatch of swatches)
      expect(swatch).toMatch(/background-color:#[0-9a-f]{6}"><\/span> \w+: [a-z -]+, value step \d/);
  });

  it('escapes words of the handout as well', () => {
    const text = someHandoutText(1)
      .replace('A quarry wall', 'A <b onclick="x">wall</b> & more')
      .replace('Week 3', '"<i>Week</i>"');
    const other = parseHandout(STUDIO, text.replace(/title: .*Week.*/, "title: '<i>Week</i>'"), 'x');
    const marked = markClass(other, [
      { file: 'a.json', sitting: sittingOf(other, 'Ann', bestAnswers(other)) },
    ]);
    const html = reportHtml(marked, analyseClass(marked));
    expect(html).toContain('&lt;b onclick=&quot;x&quot;&gt;wall');
    expect(html).toContain('<h1>&lt;i&gt;Week&lt;/i&gt;</h1>');
  });

  it('escapes anything', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(escapeHtml(text)).not.toMatch(/[<>"'`]|&(?!(amp|lt|gt|quot|#39|#96);)/);
        expect(escapeHtml(text)).not.toMatch(/[\p{Cc}\p{Cf}]/u);
      }),
    );
  });
});

describe('reports over every kind of drill', () => {
  const { handout: every } = everyKindHandout();
  const files = someClass(every, 6).map((sitting, index) => ({ file: `${index}.json`, sitting }));
  const marked = markClass(every, files);
  const analysis = analyseClass(marked);

  it('name a best answer and choices for each, and hold no figure that is none', () => {
    const text = reportText(marked, analysis, { columns: 80, full: '#', empty: '.' });
    const outputs = [text, reportCsv(marked), reportHtml(marked, analysis)];
    for (const output of outputs) expect(output).not.toMatch(/undefined|NaN|Infinity|\[object/);
    expect(analysis.questions).toHaveLength(every.questions.length);
    for (const { bestLabel, answers, answered } of analysis.questions) {
      expect(bestLabel).not.toBe('');
      expect(answered).toBe(6);
      expect(answers.reduce((sum, { count }) => sum + count, 0)).toBe(6);
      expect(new Set(answers.map(({ label }) => label)).size).toBe(answers.length);
      for (const { mark, isGood } of answers) expect(isGood).toBe(mark >= 85);
    }
  });

  it('star every good answer and no other, in text and page', () => {
    const rows =
      reportHtml(marked, analysis).match(
        /<th scope="row">[^<]*<\/th><td class="n">\d+<\/td><td class="bars">.*?<td class="n">\d+<\/td>/g,
      ) ?? [];
    const ofAnswers = rows.slice(
      -analysis.questions.reduce((sum, { answers }) => sum + Math.min(5, answers.length), 0),
    );
    expect(ofAnswers.length).toBeGreaterThan(20);
    for (const row of ofAnswers) {
      const mark = Number(/<td class="n">(\d+)<\/td>$/.exec(row)?.[1]);
      expect(row.startsWith('<th scope="row">* ')).toBe(mark >= 85);
    }
  });
});

describe('what is shown to the class', () => {
  const result = markClass(
    handout,
    ['Zed Quill', 'Ann Marlow'].map((name) => ({ file: `${name}.json`, sitting: named(name) })),
    {
      list: {
        students: [
          { name: 'Ann Marlow', number: '31' },
          { name: 'Cai Thorne', group: 'morning' },
        ],
      },
      unreadable: [{ file: 'Quill-torn.json', why: 'this is not JSON' }],
    },
  );
  const analysis = analyseClass(result);
  const outputs = [
    reportText(result, analysis, { columns: 80, full: '#', empty: '.' }, true),
    reportHtml(result, analysis, { isAnonymous: true }),
    JSON.stringify(reportJson(result, analysis, true)),
  ];

  it('names nobody, and the usual report does', () => {
    const usual = reportText(result, analysis, { columns: 80, full: '#', empty: '.' });
    for (const name of ['Zed', 'Quill', 'Ann', 'Marlow', 'Cai', 'Thorne']) {
      expect(usual).toContain(name);
      for (const output of outputs) expect(output).not.toContain(name);
    }
    for (const output of outputs) expect(output).toMatch(/Question 0|question-0/);
    expect(outputs[0]).toMatch(/give one of them away/);
  });
});

describe('the text', () => {
  it('keeps to its columns and shows nothing that a terminal obeys', () => {
    const result = classOf([...NASTY, 'x'.repeat(300), '李'.repeat(40), '🙂'.repeat(40)]);
    for (const columns of [60, 80]) {
      const text = reportText(result, analyseClass(result), { columns, full: '#', empty: '.' });
      expect(text.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}]/u);
      for (const line of text.split('\n').filter((each) => each.startsWith('   ') || each.startsWith('x')))
        expect(widthOf(line)).toBeLessThanOrEqual(Math.max(columns, 80));
    }
  });

  it('draws bars from nothing to full, and shows the least share there is', () => {
    const look = { full: '#', empty: '.' };
    expect(bar(0, 4, look)).toBe('....');
    expect(bar(0.01, 4, look)).toBe('#...');
    expect(bar(0.5, 4, look)).toBe('##..');
    expect(bar(1, 4, look)).toBe('####');
    expect(bar(7, 4, look)).toBe('####');
  });

  it('words the discrimination by Ebel’s bands (as quoted in item-analysis guides)', () => {
    expect([0.4, 0.39, 0.29, 0.19, -0.01].map(discriminationWords)).toEqual([
      'tells strong from weak well',
      'tells strong from weak fairly well',
      'tells strong from weak a little',
      'hardly tells strong from weak',
      'backwards: the weaker did better; look at the question again',
    ]);
    expect([undefined, -0.001, 1].map(twoDecimals)).toEqual(['-', '0.00', '1.00']);
  });
});
