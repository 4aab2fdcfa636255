/** Pages as SVG, a file a page: the marks that `pdf.ts` draws, nothing loaded from elsewhere. Pure. */
import { html, join, type Markup } from '../text/html.js';
import type { Edge, Fill, Mark, Outline, PaperDocument, Ruler, Spot } from './types.js';

/** The font of the program's pages, or whatever is there; every text keeps the width that it was set with. */
const FONTS = "'Noto Sans', sans-serif";

const number = (x: number): string => String(Number(x.toFixed(3)));
const spots = (points: readonly Spot[]): string => points.map((spot) => spot.map(number).join(',')).join(' ');

/** Attributes of an element. */
type Attributes = Readonly<Record<string, string>>;

const EMPTY = html``;

function element(name: string, attributes: Attributes, inside: Markup = EMPTY): Markup {
  const written = Object.entries(attributes).reduce(
    (all, [key, value]) => html`${all} ${key}="${value}"`,
    EMPTY,
  );
  const tag = html`${name}`;
  return html`<${tag}${written}>${inside}</${tag}>`;
}

function figure(outline: Outline, look: Attributes): Markup {
  if ('box' in outline) {
    const [x, y, width, height] = outline.box.map(number) as [string, string, string, string];
    return element('rect', { x, y, width, height, ...look });
  }
  if ('ellipse' in outline) {
    const [cx, cy, rx, ry] = outline.ellipse.map(number) as [string, string, string, string];
    return element('ellipse', { cx, cy, rx, ry, ...look });
  }
  return 'polygon' in outline
    ? element('polygon', { points: spots(outline.polygon), ...look })
    : element('polyline', { points: spots(outline.path), ...look });
}

const edgeLook = (edge: Edge | undefined): Attributes =>
  edge === undefined ? {} : { stroke: edge.colour, 'stroke-width': number(edge.width) };

/** Draws the marks of one page; gradations and outlines that clip get names of their own. */
function drawing(ruler: Ruler): (mark: Mark) => Markup {
  let names = 0;
  const gradation = (fill: Exclude<Fill, string>, id: string): Markup => {
    const [[x1, y1], [x2, y2]] = [fill.from.map(number), fill.to.map(number)] as [
      [string, string],
      [string, string],
    ];
    const stops = fill.colours.map((colour, at) =>
      element('stop', { offset: number(at / (fill.colours.length - 1)), 'stop-color': colour }),
    );
    return element('linearGradient', { id, gradientUnits: 'userSpaceOnUse', x1, y1, x2, y2 }, join(stops));
  };
  const draw = (mark: Mark): Markup => {
    if (mark.kind === 'text') {
      const { x, y, text, size, face, colour } = mark;
      return element(
        'text',
        {
          x: number(x),
          y: number(y),
          'font-size': number(size),
          fill: colour,
          ...(face === 'bold' ? { 'font-weight': 'bold' } : {}),
          ...(text.trim() === ''
            ? {}
            : { textLength: number(ruler(text, { size, face })), lengthAdjust: 'spacingAndGlyphs' }),
        },
        html`${text}`,
      );
    }
    if (mark.kind === 'clipped') {
      const id = `clip-${++names}`;
      const clip = element('clipPath', { id }, figure(mark.outline, {}));
      return html`${clip}${element('g', { 'clip-path': `url(#${id})` }, join(mark.marks.map(draw)))}`;
    }
    const { outline, fill, edge } = mark;
    if (fill === undefined || typeof fill === 'string')
      return figure(outline, { fill: fill ?? 'none', ...edgeLook(edge) });
    const id = `fill-${++names}`;
    return html`${gradation(fill, id)}${figure(outline, { fill: `url(#${id})`, ...edgeLook(edge) })}`;
  };
  return draw;
}

/** Each page of a document as an SVG file of its own, as large as the sheet. */
export function svgPages({ title, size, pages }: PaperDocument, ruler: Ruler): string[] {
  const [width, height] = [number(size.width), number(size.height)];
  return pages.map((marks, at) => {
    const draw = drawing(ruler);
    const page = html`<svg xmlns="http://www.w3.org/2000/svg" width="${width}pt" height="${height}pt" viewBox="0 0 ${width} ${height}" font-family="${FONTS}" xml:lang="en">
<title>${pages.length === 1 ? title : `${title}, page ${at + 1} of ${pages.length}`}</title>
<rect width="${width}" height="${height}" fill="#ffffff"/>
${join(marks.map(draw))}
</svg>
`;
    return page.markup;
  });
}
