import { describe, expect, it } from 'vitest';
import { chartPaper } from '../../src/charts/index.js';
import { svgPages } from '../../src/paper/svg.js';
import { INK, type Mark, PAGE_SIZES } from '../../src/paper/types.js';
import { boxOf, requestOf } from '../charts/fixture.js';
import { MADE_MS, PRESS, reread, styleOf } from './fixture.js';

const ENTITIES: Readonly<Record<string, string>> = {
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
  '&#96;': '`',
  '&amp;': '&',
};
const plain = (text: string): string => text.replace(/&[^;]+;/g, (entity) => ENTITIES[entity] ?? '\ufffd');
const attribute = (tag: string, name: string): string =>
  new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? '';

/** XML 1.0: every element is closed in its turn. */
function isWellFormed(text: string): boolean {
  const open: string[] = [];
  for (const [, close, name, self] of text.matchAll(/<(\/?)([a-zA-Z]+)(?:\s+[\w:-]+="[^"<]*")*\s*(\/?)>/g)) {
    if (close === '/') {
      if (open.pop() !== name) return false;
    } else if (self !== '/') open.push(name ?? '');
  }
  return (
    open.length === 0 && text.replace(/<\/?[a-zA-Z]+(?:\s+[\w:-]+="[^"<]*")*\s*\/?>/g, '').search(/[<>]/) < 0
  );
}

const page = (marks: readonly Mark[]) => ({
  title: 'Trial',
  size: PAGE_SIZES.letter,
  pages: [marks],
  madeMs: MADE_MS,
});

describe('pages as SVG', () => {
  it('show what the PDF shows: the same words and colours in the same places', async () => {
    for (const id of ['greys', 'ladders'] as const) {
      const document = chartPaper(id, requestOf(boxOf('six')), styleOf('letter'));
      const { pages } = await reread(document);
      const drawn = svgPages(document, PRESS.ruler);
      expect(drawn).toHaveLength(pages.length);
      for (const [at, svg] of drawn.entries()) {
        expect(isWellFormed(svg)).toBe(true);
        const texts = [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, tag = '', text = '']) => ({
          text: plain(text),
          x: Number(attribute(` ${tag}`, 'x')),
          y: Number(attribute(` ${tag}`, 'y')),
          size: Number(attribute(` ${tag}`, 'font-size')),
        }));
        const known = (pages[at]?.texts ?? []).filter(({ text }) => text !== '');
        expect(texts.map(({ text }) => text)).toEqual(known.map(({ text }) => text));
        for (const [each, { x, y, size }] of known.entries()) {
          expect(Math.hypot((texts[each]?.x ?? 0) - x, (texts[each]?.y ?? 0) - y)).toBeLessThan(0.02);
          expect(texts[each]?.size).toBe(size);
        }
        const fills = [...svg.matchAll(/<rect ([^>]*)>/g)]
          .map(([, tag = '']) => ` ${tag}`)
          .filter((tag) => attribute(tag, 'x') !== '' && attribute(tag, 'fill') !== 'none')
          .map((tag) => [
            attribute(tag, 'fill'),
            Number(attribute(tag, 'x')).toFixed(1),
            Number(attribute(tag, 'width')).toFixed(1),
          ]);
        const boxes = (pages[at]?.boxes ?? []).flatMap(({ fill, x, width }) =>
          fill === undefined ? [] : [[fill, x.toFixed(1), width.toFixed(1)]],
        );
        expect(fills).toEqual(boxes);
      }
    }
  });

  it('take hostile words as words', () => {
    const text = `</text><script>alert("1")</script> & 'x' \u0007`;
    const [svg = ''] = svgPages(
      page([{ kind: 'text', x: 50, y: 50, text, size: 9, face: 'bold', colour: INK.plain }]),
      PRESS.ruler,
    );
    expect(isWellFormed(svg)).toBe(true);
    expect(svg).not.toContain('<script');
    expect(svg).not.toContain('\u0007');
    expect(svg).toContain('font-weight="bold"');
  });

  it('draw every figure, clipped and graded', () => {
    const box = { box: [10, 20, 30, 40] } as const;
    const graded = { from: [0, 0], to: [0, 9], colours: ['#000000', '#888888', '#ffffff'] } as const;
    const [svg = ''] = svgPages(
      page([
        { kind: 'figure', outline: { ellipse: [50, 60, 7, 8] }, fill: graded },
        {
          kind: 'figure',
          outline: {
            polygon: [
              [1, 2],
              [3, 4],
              [5, 6],
            ],
          },
          edge: { colour: '#123456', width: 0.5 },
        },
        {
          kind: 'clipped',
          outline: box,
          marks: [
            {
              kind: 'figure',
              outline: {
                path: [
                  [0, 0],
                  [99, 99],
                ],
              },
              edge: { colour: '#654321', width: 2 },
            },
          ],
        },
      ]),
      PRESS.ruler,
    );
    expect(isWellFormed(svg)).toBe(true);
    expect(svg).toContain('width="612pt" height="792pt"');
    expect(svg).toMatch(/<ellipse cx="50" cy="60" rx="7" ry="8" fill="url\(#fill-1\)">/);
    expect(svg).toMatch(/<stop offset="0.5" stop-color="#888888">/);
    expect(svg).toMatch(/<polygon points="1,2 3,4 5,6" fill="none" stroke="#123456" stroke-width="0.5">/);
    expect(svg).toMatch(/<clipPath id="clip-2"><rect x="10" y="20" width="30" height="40">/);
    expect(svg).toMatch(/<g clip-path="url\(#clip-2\)"><polyline points="0,0 99,99" fill="none"/);
  });
});
