/** A painted picture as SVG: vectors, nothing loaded from elsewhere, for reports and pages. */
import { html, join, type Markup } from '../text/html.js';
import type { AreaLook, Painted, Tone } from './covering.js';
import { LINE_WIDTH } from './fill.js';
import { OPEN_TONES } from './pixels.js';
import { GRID, type Graded, type Point, type Shape } from './types.js';

/** How a picture is drawn. */
export interface SvgOptions {
  /** Begins the ids inside, so that several pictures stand on one page; letters, digits, hyphens. */
  readonly prefix: string;
  /** The greys of the value check. */
  readonly inGrey?: boolean;
}

/** Stops of a gradation. */
const STOPS = 5;
/** Units from one stroke to the next. */
const STROKE_UNITS = 4;

const number = (x: number): string => String(Number(x.toFixed(2)));
const pairs = (points: readonly Point[]): string =>
  points.map(([x, y]) => `${number(x)},${number(y)}`).join(' ');

/** Ends of a gradation in the box of what it fills. */
const WAYS: Readonly<Record<Graded['towards'], readonly [number, number, number, number]>> = {
  down: [0, 0, 0, 1],
  up: [0, 1, 0, 0],
  right: [0, 0, 1, 0],
  left: [1, 0, 0, 0],
};

function gradient(
  id: string,
  { to, towards }: Graded,
  look: AreaLook,
  colourOf: (tone: Tone) => string,
): Markup {
  if (look.kind === 'open') return html``;
  const [x1, y1, x2, y2] = WAYS[towards];
  const stops = Array.from({ length: STOPS }, (_, stop) => {
    const way = stop / (STOPS - 1);
    return html`<stop offset="${number(way)}" stop-color="${colourOf(look.graded(1 + (to - 1) * way))}"/>`;
  });
  return html`<linearGradient id="${id}" x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}">${join(stops)}</linearGradient>`;
}

function hatch(id: string, look: AreaLook, paper: Tone, colourOf: (tone: Tone) => string): Markup {
  const strokes =
    look.kind === 'open'
      ? [
          { tone: paper, share: 0.8 },
          { tone: OPEN_TONES.hatch, share: 0.2 },
        ]
      : (look.strokes ?? []);
  if (strokes.length === 0) return html``;
  let from = 0;
  const bars = strokes.map(({ tone, share }) => {
    const bar = html`<rect x="${number(from)}" y="0" width="${number(share * STROKE_UNITS)}" height="${STROKE_UNITS}" fill="${colourOf(tone)}"/>`;
    from += share * STROKE_UNITS;
    return bar;
  });
  return html`<pattern id="${id}" width="${STROKE_UNITS}" height="${STROKE_UNITS}" patternUnits="userSpaceOnUse" patternTransform="rotate(40)">${join(bars)}</pattern>`;
}

/** The figures of a shape. @param fill a colour, or a reference to what fills it; @param edge an outline, where it is open */
function figures(
  { rects, polygons, ellipses, lines, width = LINE_WIDTH }: Shape,
  fill: string,
  edge: Markup,
): Markup[] {
  return [
    ...(rects ?? []).map(
      ([left, top, right, bottom]) =>
        html`<rect x="${number(left)}" y="${number(top)}" width="${number(right - left)}" height="${number(bottom - top)}" fill="${fill}"${edge}/>`,
    ),
    ...(polygons ?? []).map((points) => html`<polygon points="${pairs(points)}" fill="${fill}"${edge}/>`),
    ...(ellipses ?? []).map(
      ([cx, cy, rx, ry]) =>
        html`<ellipse cx="${number(cx)}" cy="${number(cy)}" rx="${number(rx)}" ry="${number(ry)}" fill="${fill}"${edge}/>`,
    ),
    ...(lines ?? []).map(
      (points) =>
        html`<polyline points="${pairs(points)}" fill="none" stroke="${fill}" stroke-width="${number(width)}"/>`,
    ),
  ];
}

/**
 * Draws a picture.
 * @throws RangeError for a prefix that may not begin an id
 */
export function svg({ picture, looks, paper }: Painted, { prefix, inGrey = false }: SvgOptions): Markup {
  if (!/^[a-z][a-z0-9-]{0,80}$/i.test(prefix)) throw new RangeError(`"${prefix}" cannot begin an id`);
  const colourOf = ({ hex, grey }: Tone): string => (inGrey ? grey : hex);
  const areaIndex = new Map(picture.areas.map(({ id }, index) => [id, index]));
  const patterns = picture.areas.map(({ id }, index) =>
    hatch(`${prefix}-a${index}`, looks[id] as AreaLook, paper, colourOf),
  );
  const gradients = picture.shapes.map(({ graded, area }, index) =>
    graded === undefined
      ? html``
      : gradient(`${prefix}-s${index}`, graded, looks[area] as AreaLook, colourOf),
  );
  const drawn = picture.shapes.flatMap((shape, index) => {
    const look = looks[shape.area] as AreaLook;
    const isOpen = look.kind === 'open';
    const fill =
      isOpen || look.strokes !== undefined
        ? `url(#${prefix}-a${areaIndex.get(shape.area)})`
        : shape.graded === undefined
          ? colourOf(look.tone)
          : `url(#${prefix}-s${index})`;
    const edge = isOpen ? html` stroke="${colourOf(OPEN_TONES.outline)}" stroke-width="0.4"` : html``;
    return figures(shape, fill, edge);
  });
  const title = inGrey ? `${picture.title}, in grey` : picture.title;
  return html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${GRID.columns} ${GRID.rows}" role="img" aria-label="${title}"><title>${title}</title><defs>${join([...patterns, ...gradients].filter(({ markup }) => markup !== ''))}</defs><rect width="${GRID.columns}" height="${GRID.rows}" fill="${colourOf(paper)}"/>${join(drawn)}</svg>`;
}
