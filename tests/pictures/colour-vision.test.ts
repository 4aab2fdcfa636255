/**
 * Pictures for those who see fewer colours: where two areas lie side by side and their words tell them apart by more than value, the value
 * alone, or what is left of the colour, still does.
 */
import { parse } from 'culori';
import { describe, expect, it } from 'vitest';
import { type AreaLook, BARE, painted, raster } from '../../src/pictures/index.js';
import { DEFICIENCIES, deltaE, LEAST_SEEN } from '../deficiencies.js';
import { PICTURES } from '../painting/scenes.js';
import { STUDIO } from '../studio.js';

/** CIEDE2000 at which two areas side by side are seen as two by everybody. */
const USUAL = 10;

/** Pairs of areas that share an edge in a picture, by index. */
function neighbours({ width, height, area }: ReturnType<typeof raster>): Set<string> {
  const pairs = new Set<string>();
  for (let at = 0; at < area.length; at++)
    for (const other of [
      at % width < width - 1 ? at + 1 : at,
      at + width < width * height ? at + width : at,
    ]) {
      const [one, two] = [area[at] as number, area[other] as number].sort((a, b) => a - b) as [
        number,
        number,
      ];
      if (one !== two && two !== BARE) pairs.add(`${one} ${two}`);
    }
  return pairs;
}

const hexOf = (look: AreaLook | undefined): string | undefined =>
  look?.kind === 'laid' ? look.tone.hex : undefined;

describe.each(Object.entries(DEFICIENCIES))('with %s', (_, filter) => {
  it('areas that touch stay apart', () => {
    const lost: string[] = [];
    let looked = 0;
    for (const picture of PICTURES) {
      const { looks } = painted(STUDIO, picture);
      const ids = picture.areas.map(({ id }) => id);
      for (const pair of neighbours(raster(picture, 96, 56))) {
        const [one, two] = pair.split(' ').map((at) => ids[Number(at)] as string) as [string, string];
        const [first, second] = [hexOf(looks[one]), hexOf(looks[two])].map((hex) =>
          hex === undefined ? undefined : parse(hex),
        );
        if (first === undefined || second === undefined || deltaE(first, second) < USUAL) continue;
        looked += 1;
        const left = deltaE(filter(first), filter(second));
        if (left < LEAST_SEEN) lost.push(`${picture.id}: ${one} and ${two}, ${left.toFixed(1)}`);
      }
    }
    expect(looked).toBeGreaterThan(50);
    expect(lost).toEqual([]);
  });
});
