/** What a raster is measured by. */
import type { Raster } from '../../src/pictures/index.js';

/** Share of the sheet that each area covers, 0-1, by id. */
export function sharesOf({ picture, area }: Raster): Map<string, number> {
  const shares = new Map<string, number>();
  for (const of of area) {
    const id = picture.areas[of]?.id as string;
    shares.set(id, (shares.get(id) ?? 0) + 1 / area.length);
  }
  return shares;
}

/** Areas that share a side of a pixel with this one. */
export function touching({ picture, area, width, height }: Raster, id: string): string[] {
  const found = new Set<string>();
  const idAt = (x: number, y: number): string => picture.areas[area[y * width + x] as number]?.id as string;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const here = idAt(x, y);
      for (const there of [x + 1 < width ? idAt(x + 1, y) : here, y + 1 < height ? idAt(x, y + 1) : here]) {
        if (here === there) continue;
        if (here === id) found.add(there);
        if (there === id) found.add(here);
      }
    }
  return [...found];
}
