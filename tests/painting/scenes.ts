/** Paintings of known washes, and the light that comes from a surface under a published illuminant. From reflectance to light, and never back. */
import { readdirSync, readFileSync } from 'node:fs';
import { type ColourReading, readColour } from '../../src/colour/index.js';
import { GRID, type Spectrum } from '../../src/optics/index.js';
import { parsePictureFile } from '../../src/pictures/format.js';
import { type Picture, raster } from '../../src/pictures/index.js';
import { seeLaid } from '../../src/washes/index.js';
import tables from '../outside/data/colour-cie-tables.json' with { type: 'json' };
import { STUDIO } from '../studio.js';

/** Light of the primaries of sRGB. */
export type Light = readonly [number, number, number];

/** XYZ (y 1 for white) to linear sRGB: W3C CSS Color Module Level 4. */
export const TO_SRGB = [
  [12831 / 3959, -329 / 214, -1974 / 3959],
  [-851781 / 878810, 1648619 / 878810, 36519 / 878810],
  [705 / 12673, -2585 / 12673, 705 / 667],
] as const;

/** A table at 5 nm from 360 nm, in the bands of the grid. */
const banded = (table: readonly number[]): number[] =>
  Array.from(
    { length: GRID.count },
    (_, band) => table[(GRID.startNm + band * GRID.stepNm - 360) / 5] as number,
  );

const [CX, CY, CZ] = [tables.observer2.x, tables.observer2.y, tables.observer2.z].map(banded) as [
  number[],
  number[],
  number[],
];
/** Relative spectra of CIE standard illuminants. */
export const ILLUMINANTS = { D65: banded(tables.illuminants.D65), A: banded(tables.illuminants.A) } as const;

/** So much of A and the rest of D65, each of one luminance. */
export function mixedLight(shareOfA: number): number[] {
  const level = (spectrum: readonly number[]): number =>
    spectrum.reduce((sum, s, band) => sum + s * (CY[band] as number), 0);
  const [d65, a] = [level(ILLUMINANTS.D65), level(ILLUMINANTS.A)];
  return ILLUMINANTS.D65.map(
    (s, band) => ((1 - shareOfA) * s) / d65 + (shareOfA * (ILLUMINANTS.A[band] as number)) / a,
  );
}

/** Light that comes from a surface, luminance 1 for the perfect white. */
export function lightFrom(reflectance: Spectrum, illuminant: readonly number[]): Light {
  let [x, y, z, white] = [0, 0, 0, 0];
  for (let band = 0; band < GRID.count; band++) {
    const s = illuminant[band] as number;
    const r = reflectance[band] as number;
    x += s * r * (CX[band] as number);
    y += s * r * (CY[band] as number);
    z += s * r * (CZ[band] as number);
    white += s * (CY[band] as number);
  }
  return TO_SRGB.map(([a, b, c]) => (a * x + b * y + c * z) / white) as unknown as Light;
}

/** Every shipped picture. */
export const PICTURES: readonly Picture[] = readdirSync('exercises/pictures')
  .sort()
  .map((file) => {
    const id = file.replace('.yaml', '');
    return parsePictureFile(STUDIO, readFileSync(`exercises/pictures/${file}`, 'utf8'), id, file);
  });

/** A painting as it is: its surfaces, and which of them lies at each pixel. */
export interface Painting {
  readonly width: number;
  readonly height: number;
  readonly at: Uint16Array;
  readonly surfaces: readonly { readonly reflectance: Spectrum; readonly colour: ColourReading }[];
  /** Index of the picture's area at each pixel. */
  readonly area: Uint8Array;
}

/** Steps in which a gradation is laid. */
const STEPS = 24;

/** A picture painted with its own washes. */
export function paintedPicture(picture: Picture, width = 384, height = 224): Painting {
  const drawn = raster(picture, width, height);
  const known = new Map<string, number>();
  const surfaces: { reflectance: Spectrum; colour: ColourReading }[] = [];
  const at = new Uint16Array(width * height);
  for (let pixel = 0; pixel < at.length; pixel++) {
    const area = drawn.area[pixel] as number;
    const share = Math.max(1, Math.round((drawn.strength[pixel] as number) * STEPS));
    const key = `${area} ${share}`;
    let index = known.get(key);
    if (index === undefined) {
      const wash = (picture.areas[area] as Picture['areas'][number]).wash;
      const { reflectance, colour } = seeLaid(STUDIO, {
        ...wash,
        strength: Math.min(1, (wash.strength * share) / STEPS),
      });
      index = surfaces.push({ reflectance, colour }) - 1;
      known.set(key, index);
    }
    at[pixel] = index;
  }
  return { width, height, at, surfaces, area: drawn.area };
}

/** Neutral strips or any surfaces side by side from left to right. */
export function strips(reflectances: readonly Spectrum[], width = 384, height = 224): Painting {
  const at = new Uint16Array(width * height);
  for (let pixel = 0; pixel < at.length; pixel++)
    at[pixel] = Math.floor(((pixel % width) * reflectances.length) / width);
  return {
    width,
    height,
    at,
    surfaces: reflectances.map((reflectance) => ({ reflectance, colour: readColour(reflectance) })),
    area: Uint8Array.from(at),
  };
}
