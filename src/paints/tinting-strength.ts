/** Tinting strengths of acrylics, which those of paints that no one has measured are anchored to. */
import acrylics from './data/tinting-strength.json' with { type: 'json' };

/** By name in the table; the geometric mean where both sets have the paint. */
const ACRYLIC_STRENGTH: ReadonlyMap<string, number> = new Map(
  acrylics.acrylic.map(({ name, acrylic2016, acrylic2005 }) => {
    const figures = [acrylic2016, acrylic2005].filter((figure) => figure !== undefined);
    return [name, figures.reduce((product, figure) => product * figure, 1) ** (1 / figures.length)];
  }),
);

/**
 * Tinting strength of an acrylic, equal amounts of paint as sold, ultramarine blue 1: greatest K over greatest K.
 * @throws RangeError when the table has no such paint
 */
export function acrylicStrength(name: string): number {
  const strength = ACRYLIC_STRENGTH.get(name);
  if (strength === undefined) throw new RangeError(`data/tinting-strength.json has no ${name}`);
  return strength;
}
