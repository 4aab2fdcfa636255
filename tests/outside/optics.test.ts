import { describe, expect, test } from 'vitest';
import {
  absorptionOverScattering,
  belowSurface,
  filmReflectance,
  fuseAreas,
  GRID,
  throughSurface,
} from '../../src/optics/index.js';
import { filmTransmittance, masstoneReflectance } from '../optics/films.js';
import areas from './data/optics-areas.json' with { type: 'json' };
import figures from './data/optics-films.json' with { type: 'json' };
import pipeline from './data/optics-pipeline.json' with { type: 'json' };
import published from './data/optics-published.json' with { type: 'json' };

// Source of each set: the `source` field of its file.

describe('an infinitely thick film (Kubelka and Munk 1931)', () => {
  test.each(figures.ratioFromReflectance)('R $R has K/S $K_over_S', ({ R, K_over_S }) => {
    expect(absorptionOverScattering(R)).toBeCloseTo(K_over_S, 9);
  });
  test.each(figures.reflectanceFromRatio)('K/S $K_over_S reflects $R', ({ R, K_over_S }) => {
    expect(masstoneReflectance(K_over_S)).toBeCloseTo(R, 11);
  });
  test('HunterLab, Applications Note, Kubelka-Monk Equation (2008): 55 % gives 0.184', () => {
    const { reflectancePercent, ratio } = published.ratioExample;
    expect(absorptionOverScattering(reflectancePercent / 100)).toBeCloseTo(ratio, 3);
  });
});

describe('a film over a ground (Kubelka 1948)', () => {
  test.each(figures.films)('K $K, S $S, X $X over $Rg', ({ K, S, X, Rg, R, R0, T, Rinf }) => {
    expect(filmReflectance(K * X, S * X, Rg)).toBeCloseTo(R, 9);
    expect(filmReflectance(K * X, S * X, 0)).toBeCloseTo(R0, 9);
    expect(filmTransmittance(K * X, S * X)).toBeCloseTo(T, 9);
    expect(masstoneReflectance(K / S)).toBeCloseTo(Rinf, 9);
  });

  test.each(figures.limits)('at the limit K $K, S $S, X $X over $Rg', ({ K, S, X, Rg, R, R0, T }) => {
    expect(filmReflectance(K * X, S * X, Rg)).toBeCloseTo(R, 9);
    expect(filmReflectance(K * X, S * X, 0)).toBeCloseTo(R0, 9);
    expect(filmTransmittance(K * X, S * X)).toBeCloseTo(T, 9);
  });

  test.each(figures.stacks)(
    'films laid one over the other: $layers_top_first',
    ({ layers_top_first, ...expected }) => {
      const over = (films: readonly (readonly number[])[]): number =>
        films.reduceRight(
          (below, [K = 0, S = 0, X = 0]) => filmReflectance(K * X, S * X, below),
          expected.Rg,
        );
      expect(over(layers_top_first)).toBeCloseTo(expected.R, 9);
      expect(over([...layers_top_first].reverse())).toBeCloseTo(expected.R_reversed_order, 9);
    },
  );

  test.each(published.watercolours)('K and S of $pigment as published by Curtis et al. 1997', (paint) => {
    for (const channel of [0, 1, 2]) {
      const [k, s] = [paint.K[channel] as number, paint.S[channel] as number];
      expect(filmReflectance(k, s, 1)).toBeCloseTo(paint.overWhite[channel] as number, 7);
      expect(filmReflectance(k, s, 0)).toBeCloseTo(paint.overBlack[channel] as number, 7);
      expect(filmReflectance(k / 2, s / 2, 1)).toBeCloseTo(paint.halfOverWhite[channel] as number, 7);
    }
  });
});

describe('paints stirred together (Duncan 1940)', () => {
  test.each(figures.duncan)('$components_c_K_S', ({ components_c_K_S, K_mix, S_mix, Rinf }) => {
    const sum = (at: 1 | 2): number =>
      components_c_K_S.reduce((total, part) => total + (part[0] as number) * (part[at] as number), 0);
    expect(sum(1)).toBeCloseTo(K_mix, 12);
    expect(sum(2)).toBeCloseTo(S_mix, 12);
    expect(masstoneReflectance(sum(1) / sum(2))).toBeCloseTo(Rinf, 9);
  });
});

describe('the surface (Saunderson 1942)', () => {
  test.each(figures.surfaceForward)('k1 $k1, k2 $k2, inside $R_internal', (row) => {
    const { k1, k2, R_internal, R_measured_specular_included, R_measured_specular_excluded } = row;
    expect(throughSurface(R_internal, { k1, k2 })).toBeCloseTo(R_measured_specular_included, 10);
    expect(throughSurface(R_internal, { k1, k2 }) - k1).toBeCloseTo(R_measured_specular_excluded, 10);
  });
  test.each(figures.surfaceInverse)('k1 $k1, k2 $k2, measured $R_measured', (row) => {
    const { k1, k2, R_measured, R_internal } = row;
    expect(belowSurface(R_measured, { k1, k2 })).toBeCloseTo(R_internal, 9);
  });
});

describe('areas side by side (Murray 1936, Neugebauer 1937)', () => {
  const flat = (reflectance: number): Float64Array => new Float64Array(GRID.count).fill(reflectance);

  test.each(areas.halves)('$a of $R_solid on $R_paper', ({ a, R_solid, R_paper, R }) => {
    expect(fuseAreas([flat(R_solid), flat(R_paper)], [a, 1 - a])[10]).toBeCloseTo(R, 12);
  });
  test.each(areas.neugebauer.cases)('eight areas with the weights of Demichel give $R', ({ weights, R }) => {
    const names = Object.keys(weights) as (keyof typeof weights)[];
    const fused = fuseAreas(
      names.map((name) => flat(areas.neugebauer.primaries[name])),
      names.map((name) => weights[name]),
    );
    expect(fused[20]).toBeCloseTo(R, 9);
  });
});

describe('the whole way from K and S to a measured reflectance', () => {
  const pigments: Readonly<Record<string, { K: number[]; S: number[] }>> = pipeline.pigments;

  test.each(pipeline.cases)('$name', ({ layers_top_first, k1, k2, R_internal, R_measured }) => {
    const inside = pipeline.paper.map((paper, band) =>
      layers_top_first.reduceRight((below, { recipe, X }) => {
        let [k, s] = [0, 0];
        for (const [name, amount] of Object.entries(recipe)) {
          k += amount * (pigments[name]?.K[band] ?? Number.NaN);
          s += amount * (pigments[name]?.S[band] ?? Number.NaN);
        }
        return filmReflectance(k * X, s * X, below);
      }, paper),
    );
    for (const [band, internal] of inside.entries()) {
      expect(internal).toBeCloseTo(R_internal[band] as number, 6);
      expect(throughSurface(internal, { k1, k2 })).toBeCloseTo(R_measured[band] as number, 6);
    }
  });
});
