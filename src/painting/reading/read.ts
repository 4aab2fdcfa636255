/** Reads the photograph of a painting: sheet, white, values, masses, what stands beside what, veil, and how far all that is to be believed. */
import { readColour } from '../../colour/index.js';
import type { Studio } from '../../paints/index.js';
import type { ByHand, Corners, Likeness, PaintingReading, Photograph, Place } from '../types.js';
import { bordersOf } from './borders.js';
import { figuresOf, steepestOf } from './figures.js';
import { areaOf } from './hull.js';
import { heightAt } from './lighting.js';
import { likenessOf } from './likeness.js';
import { type Box, paintingIn } from './margin.js';
import { massesOf, massOfPixels } from './masses.js';
import { type Paper, paperOfPlace } from './paper.js';
import { cutOut, type Point } from './photograph.js';
import { type Flat, laidFlat, smoothed } from './rectify.js';
import { isFramed, paperOfMargin } from './ring.js';
import { isWithin, requireSheet, requireWhite } from './said.js';
import { findSheet, type Sheet } from './sheet.js';
import { spotsOf } from './spots.js';
import { doubtsOf, trustOf } from './trust.js';
import { veilOf } from './veil.js';
import { barePixels, barePlace, evened, settleWhite } from './white.js';

/** A channel from here on may have been cut. */
const TOP = 0.985;
/** Light over the white's from which something is lighter than it, as Munsell value. */
const LIGHTER = 0.25;

/** Share of bare paper inside a part of the sheet. */
function bareIn(bare: Uint8Array, width: number, { left, top, right, bottom }: Box): number {
  let count = 0;
  for (let row = top; row < bottom; row++)
    for (let column = left; column < right; column++) count += bare[row * width + column] as number;
  return count / ((right - left) * (bottom - top));
}

/** Share of the bare pixels that the file may have cut; undefined where none is bare. */
function clippedOf({ light }: Flat, bare: Uint8Array): number | undefined {
  let [count, cut] = [0, 0];
  for (let at = 0; at < bare.length; at++) {
    if (bare[at] === 0) continue;
    count++;
    if (
      (light[3 * at] as number) > TOP ||
      (light[3 * at + 1] as number) > TOP ||
      (light[3 * at + 2] as number) > TOP
    )
      cut++;
  }
  return count === 0 ? undefined : cut / count;
}

/** Share of a painting that is lighter than a value. */
function lighterThan({ value }: Likeness, most: number): number {
  let count = 0;
  for (let at = 0; at < value.length; at++) if ((value[at] as number) > most) count++;
  return count / value.length;
}

/** Luminance of paper at nine places of the sheet: the most, and the most over the least. */
function levels(
  { project }: Flat,
  { width, height }: Photograph,
  paper: Paper,
): { level: number; uneven: number } {
  const at = new Float64Array(2);
  const heights: number[] = [];
  for (const u of [0.02, 0.5, 0.98])
    for (const v of [0.02, 0.5, 0.98]) {
      project(u, v, at);
      heights.push(
        heightAt(paper.light.luminance, (at[0] as number) / width - 0.5, (at[1] as number) / height - 0.5),
      );
    }
  const [most, least] = [Math.max(...heights), Math.min(...heights)];
  return { level: Math.exp(most), uneven: Math.exp(most - least) };
}

/** Sides where the photograph ends and no margin is seen, while others show the table: the painting may go on there. */
function cutSides(sheet: Sheet | undefined, box: Box, { width, height }: Flat): number {
  if (sheet === undefined) return 0;
  const margins = [box.top, width - box.right, height - box.bottom, box.left];
  const least = 0.025 * Math.min(width, height);
  return sheet.sides.filter(({ atBorder }, at) => atBorder && (margins[at] as number) < least).length;
}

/**
 * Reads a photograph.
 * @param byHand what is said of it; it goes before what is found
 * @throws InputError for corners that make no sheet and for a white that lies outside
 * @returns places of `white` and `corners` as shares of the whole photograph, all others of the likeness
 */
export function readPainting(studio: Studio, photograph: Photograph, byHand: ByHand): PaintingReading {
  const { photograph: part, toWhole, toPart } = cutOut(photograph, byHand.cut);
  const { width, height } = part;
  const inPixels = ({ x, y }: Place): Point => ({ x: x * width, y: y * height });
  const sheet = byHand.corners === undefined ? findSheet(part) : undefined;
  const corners =
    (byHand.corners && requireSheet(byHand.corners.map((corner) => inPixels(toPart(corner))))) ??
    sheet?.corners ??
    [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 1, y: 1 },
      { x: 0, y: 1 },
    ].map(inPixels);
  const flat = smoothed(laidFlat(part, corners));
  const spots = spotsOf(flat, part);
  const shown = byHand.white && requireWhite(byHand.white);
  const inPart = shown && { ...shown, ...toPart(shown) };
  const said = inPart && isWithin(inPart) ? inPart : undefined;
  // A white beside the cut is read there, as it is: then no paper is looked for in what is but a passage.
  const beside = said === undefined ? shown : undefined;
  const paper = beside === undefined ? (paperOfMargin(spots) ?? paperOfPlace(spots)) : undefined;
  const white =
    beside === undefined
      ? settleWhite(studio, part, said, paper)
      : settleWhite(studio, photograph, beside, undefined);
  const even = paper === undefined ? flat.light : evened(flat, part, paper.light);
  const bare =
    paper === undefined
      ? new Uint8Array(flat.width * flat.height)
      : barePixels(even, settleWhite(studio, part, undefined, paper).light, paper.grain);
  const whole: Box = { left: 0, top: 0, right: flat.width, bottom: flat.height };
  const box = paper?.by === 'margin' ? paintingIn(flat, bare) : whole;
  const likeness = likenessOf(even, flat.width, box, white.toD65);
  const masses = massesOf(likeness);
  const figures = figuresOf(likeness);
  const borders = bordersOf(masses);
  const at = said ?? barePlace(bare, flat, part) ?? { x: 0.5, y: 0.5 };
  const paintedShare = (likeness.width * likeness.height) / (flat.width * flat.height);
  const lightest = LIGHTER + (white.by === 'file' ? 10 : readColour(studio.paper.reflectance).value);
  const doubts = doubtsOf({
    white,
    paper,
    sheet,
    clipped: clippedOf(flat, bare),
    ...(paper === undefined ? { level: 1, uneven: 1 } : levels(flat, part, paper)),
    pixels: areaOf(corners) * paintedShare,
    side: Math.max(flat.width, flat.height) * flat.scale,
    bare: bareIn(bare, flat.width, box),
    lighter: lighterThan(likeness, lightest),
    cutSides: cutSides(sheet, box, flat),
    steepest: steepestOf(likeness, figures.range),
    framed: sheet !== undefined || (byHand.corners === undefined && isFramed(spots)),
  });
  return {
    likeness,
    massAt: massOfPixels(masses, likeness),
    white: { ...(beside === undefined ? toWhole(at) : { x: beside.x, y: beside.y }), found: white.found },
    corners: corners.map(({ x, y }) => toWhole({ x: x / width, y: y / height })) as unknown as Corners,
    area: {
      x: box.left / flat.width,
      y: box.top / flat.height,
      width: likeness.width / flat.width,
      height: likeness.height / flat.height,
    },
    ...figures,
    masses: masses.masses,
    borders,
    veil: veilOf(masses.masses, borders, figures.range),
    trust: trustOf(doubts),
    doubts,
  };
}
