/** K and S of all measured paints from measured films. Started from single films only: no mixture tells where to begin. */
import { absorptionOverScattering, belowSurface, GRID, puddle, type Spectrum } from '../../optics/index.js';
import { leastSquares } from './least-squares.js';
import type { MeasuredFilm } from './measurements.js';
import { type Evidence, type FitModel, groundOf } from './model.js';
import { kAt, PAINTS, sAt, type Table, tableOf, UNKNOWNS, type Unknowns } from './unknowns.js';

/** ln S tried in every band, from a stain to a body colour. */
const LOG_SCATTERINGS: readonly number[] = Array.from({ length: 29 }, (_, i) => -6 + 0.3 * i);

/** K over S of the thickest film, as if it hid the paper. */
function ratioOf({ reflectance }: MeasuredFilm): Spectrum {
  return reflectance.map((measured) =>
    absorptionOverScattering(Math.min(Math.max(belowSurface(measured), 1e-3), 0.98)),
  );
}

/** Best S of one paint band by band, with the ratio of its thickest film. */
function startPaint(x: Unknowns, paint: number, own: readonly MeasuredFilm[], model: FitModel): void {
  const ratio = ratioOf(own.reduce((best, film) => (film.loadA > best.loadA ? film : best)));
  const least = new Float64Array(GRID.count).fill(Number.POSITIVE_INFINITY);
  const on = groundOf(model);
  for (const logS of LOG_SCATTERINGS) {
    const S = new Float64Array(GRID.count).fill(Math.exp(logS));
    const K = S.map((s, band) => s * (ratio[band] as number));
    const misfit = new Float64Array(GRID.count);
    for (const { loadA, reflectance } of own) {
      const found = puddle([{ paint: { K, S }, load: loadA }], on);
      for (let band = 0; band < GRID.count; band++) {
        const off = Math.cbrt(found[band] as number) - Math.cbrt(reflectance[band] as number);
        misfit[band] = (misfit[band] as number) + off * off;
      }
    }
    for (let band = 0; band < GRID.count; band++) {
      if ((misfit[band] as number) >= (least[band] as number)) continue;
      least[band] = misfit[band] as number;
      x[kAt(band, paint)] = Math.log(K[band] as number);
      x[sAt(band, paint)] = logS;
    }
  }
}

/**
 * Fits K and S of every paint.
 * @param evidence holds at least one film of each paint alone
 */
export function fitTable(evidence: Evidence, model: FitModel): Table {
  const singles = evidence.films.filter(({ loadB }) => loadB === 0);
  const rough = new Float64Array(UNKNOWNS);
  for (let paint = 0; paint < PAINTS; paint++) {
    startPaint(
      rough,
      paint,
      singles.filter(({ a }) => a === paint),
      model,
    );
  }
  const start = leastSquares(rough, { ...evidence, films: singles }, model);
  return tableOf(leastSquares(start, evidence, model));
}
