/** Why: over all shipped drills, what the curves and colours are said to show, held to the films themselves. */
import { describe, expect, test } from 'vitest';
import { readColour } from '../../src/colour/reading.js';
import type { Drill } from '../../src/drills/kinds/index.js';
import { neighbours } from '../../src/drills/look.js';
import type { Answer, ResultSwatch, Why } from '../../src/drills/types.js';
import { type Spectrum, WAVELENGTHS_NM } from '../../src/optics/index.js';
import { wrapText } from '../../src/text/wrap.js';
import { sayAll, sayFinding } from '../../src/words/tell.js';
import { kindOf, STUDIO } from '../studio.js';
import { SHIPPED, VOICES } from './answers.js';

interface Case {
  readonly where: string;
  readonly drill: Drill;
  readonly answer: Answer;
  readonly why: Why;
}

/** The best answer of every drill and a few that miss it by one choice. */
const CASES: readonly Case[] = SHIPPED.flatMap((drill) => {
  const kind = kindOf(drill);
  const best = kind.best(drill);
  const near = neighbours(kind.fields(drill), best);
  const each = Math.max(1, Math.floor(near.length / 6));
  return [best, ...near.filter((_, at) => at % each === 0)].flatMap((answer) => {
    const why = kind.why?.(drill, answer);
    const where = `${drill.kind} ${drill.id} ${Object.values(answer).join(' ')}`;
    return why === undefined ? [] : [{ where, drill, answer, why }];
  });
});

const isSeen = (band: number): boolean => {
  const nm = WAVELENGTHS_NM[band] as number;
  return nm >= 400 && nm <= 700;
};
const bands = [...WAVELENGTHS_NM.keys()].filter(isSeen);
const at = (film: Spectrum, band: number): number => film[band] as number;

const faultsOf = (check: (one: Case) => readonly string[]): string[] =>
  CASES.flatMap((one) => check(one).map((fault) => `${one.where}: ${fault}`));

test('every drill has a why, whatever its kind', () => {
  expect(new Set(CASES.map(({ drill }) => drill.id)).size).toBe(SHIPPED.length);
  expect(
    faultsOf(({ why }) => (why.films.length + (why.patches?.length ?? 0) === 0 ? ['shows nothing'] : [])),
  ).toEqual([]);
  expect(faultsOf(({ why }) => (why.told.length === 0 ? ['says nothing'] : []))).toEqual([]);
});

test('no two curves are the same', () => {
  const apart = (one: ResultSwatch, other: ResultSwatch): number =>
    Math.max(...[...one.reflectance].map((band, index) => Math.abs(band - at(other.reflectance, index))));
  const faults = faultsOf(({ why: { films } }) =>
    films.flatMap((one, index) =>
      films
        .slice(index + 1)
        .flatMap((other) => (apart(one, other) > 0.005 ? [] : [`${one.label} and ${other.label}`])),
    ),
  );
  expect(faults).toEqual([]);
});

test('is in the voice of the learner and leaves room for its curves', () => {
  const faults = faultsOf(({ why }) =>
    VOICES.flatMap((voice) => {
      const texts = sayAll(why.told, voice);
      const lines = texts.flatMap((text) => wrapText(text, 78)).length;
      return [
        ...texts.filter((text) => voice.scale === 'black-first' && /\bsteps? -?\d/.test(text)),
        ...texts.filter((text) => voice.spoken && /[→±%°~>]/.test(text)),
        ...texts.filter((text) => /undefined|NaN|Infinity|\[object|\s\s|\.\.|: ?\./.test(text)),
        ...(lines <= 9 ? [] : [`${lines} lines: ${texts.join(' / ')}`]),
      ];
    }),
  );
  expect(faults).toEqual([]);
});

describe('what is said of the light', () => {
  test('all paints swallow at least half of what is marked as swallowed', () => {
    const faults = faultsOf(({ why: { films, swallowed = [] } }) => {
      const alone = films.filter(({ label }) => label.endsWith(' alone'));
      return swallowed.flatMap(({ fromNm, toNm }) =>
        bands
          .filter(
            (band) =>
              at(WAVELENGTHS_NM as unknown as Spectrum, band) >= fromNm &&
              at(WAVELENGTHS_NM as unknown as Spectrum, band) <= toNm,
          )
          .flatMap((band) =>
            alone
              .filter(({ reflectance }) => at(reflectance, band) >= 0.5 * at(STUDIO.paper.reflectance, band))
              .map(({ label }) => `${label} lets ${WAVELENGTHS_NM[band]} nm through`),
          ),
      );
    });
    expect(faults).toEqual([]);
  });

  test('a glaze filters or covers as it is said to, and strokes never fall below the lower curve', () => {
    let glazes = 0;
    const faults = faultsOf(({ why }) => {
      const [text = ''] = sayAll(why.told, { scale: 'paper-first', spoken: false });
      const [first, second, third] = why.films.map(({ reflectance }) => reflectance);
      if (first === undefined || second === undefined || third === undefined) return [];
      const over = Math.max(...bands.map((band) => at(third, band) - at(first, band)));
      const least = Math.min(
        ...bands.map((band) => at(third, band) - Math.min(at(first, band), at(second, band))),
      );
      if (/^Light goes through the upper film|never reached what lies below/.test(text)) glazes += 1;
      // A clear film only takes light away, but for what its own surface and a little body scatter.
      const told = Number(/about (\d+) %/.exec(text)?.[1] ?? 0);
      return [
        ...(text.startsWith('Light goes through the upper film') && over > 0.06 ? [`rises by ${over}`] : []),
        ...(text.includes('never reached') && (told < 1 || told > 100) ? [text] : []),
        ...(text.startsWith('The eye takes the mean') && least < -1e-6 ? [`falls by ${least}`] : []),
      ];
    });
    expect(faults).toEqual([]);
    expect(glazes).toBeGreaterThan(5);
  });

  test('each paint takes more than half of what it is said to swallow', () => {
    let said = 0;
    const faults = faultsOf(({ why }) =>
      why.told.flatMap((finding) => {
        if (finding.id !== 'why-mixture') return [];
        const text = sayFinding(finding, { scale: 'paper-first', spoken: false });
        return [...text.matchAll(/(?:strong, |; )([^;]+?) swallows ([^;.]*)/g)].flatMap(
          ([, name, parts = '']) => {
            const film = why.films.find(({ label }) => label.split(' = ').includes(`${name} alone`));
            if (film === undefined) return [];
            return [...parts.matchAll(/\((\d+) to (\d+) nm\)/g)].flatMap(([, from, to]) => {
              said += 1;
              const inside = bands.filter((band) => {
                const nm = WAVELENGTHS_NM[band] as number;
                return nm >= Number(from) && nm <= Number(to);
              });
              const taken = inside.filter(
                (band) => at(film.reflectance, band) < 0.5 * at(STUDIO.paper.reflectance, band),
              );
              return taken.length >= 0.9 * inside.length ? [] : [`${name} at ${from} to ${to}`];
            });
          },
        );
      }),
    );
    expect(faults).toEqual([]);
    expect(said).toBeGreaterThan(100);
  });

  test('a paint that is said to take only some of the light lets some of every part pass', () => {
    const ends = [400, 430, 490, 560, 590, 630, 660];
    const faults = faultsOf(({ why }) =>
      sayAll(why.told, { scale: 'paper-first', spoken: false }).flatMap((text) =>
        [...text.matchAll(/(?:strong, |; )([^;]+?), so thin, takes only some/g)].flatMap(([, name]) => {
          const film = why.films.find(({ label }) => label.split(' = ').includes(`${name} alone`));
          if (film === undefined) return [];
          return ends.slice(1).flatMap((to, part) => {
            const inside = bands.filter((band) => {
              const nm = WAVELENGTHS_NM[band] as number;
              return nm >= (ends[part] as number) && nm < to;
            });
            const back = inside.reduce(
              (sum, band) => sum + at(film.reflectance, band) / at(STUDIO.paper.reflectance, band),
              0,
            );
            return back / inside.length >= 0.3 ? [] : [`${name}: ${back / inside.length} up to ${to} nm`];
          });
        }),
      ),
    );
    expect(faults).toEqual([]);
  });

  test('films compared are told by their own light, and value goes by it', () => {
    let said = 0;
    const faults = faultsOf(({ drill, why }) =>
      why.told.flatMap((finding) => {
        if (finding.id !== 'why-films' || !('by' in drill)) return [];
        const text = sayFinding(finding, { scale: 'paper-first', spoken: false });
        const films = finding.figures.films.map(({ name }) =>
          why.films.find(({ label }) => label.split(' = ').includes(name)),
        );
        if (films.includes(undefined)) return ['a film that is not drawn'];
        const light = films.map((film) => readColour((film as ResultSwatch).reflectance).xyz.y);
        if (!/^How much/.test(text)) return [];
        said += 1;
        const told = [...text.matchAll(/(\d+(?:\.\d)?) %/g)].map(([, share]) => Number(share));
        const sorted = light.toSorted((one, other) => (drill.by === 'darkest' ? one - other : other - one));
        return [
          ...(told.every((share, at) => Math.abs(share - (light[at] ?? 0)) <= 0.51) ? [] : [text]),
          ...(light.join() === sorted.join() ? [] : [`not in order: ${text}`]),
        ];
      }),
    );
    expect(faults).toEqual([]);
    expect(said).toBeGreaterThan(3);
  });
});

test('a drying drill shows its film wet and dry, and says nothing of water', () => {
  const faults = CASES.filter(({ drill }) => drill.kind === 'drying').flatMap(({ where, why }) => [
    ...(why.films.map(({ label }) => label).join() === 'wet,dry'
      ? []
      : [`${where}: ${why.films.map(({ label }) => label)}`]),
    ...sayAll(why.told, { scale: 'paper-first', spoken: false }).filter((text) => /more water/.test(text)),
  ]);
  expect(faults).toEqual([]);
});

test('a diagnosis shows the passage now, after the chosen repair and after the best, against its plan', () => {
  const faults = CASES.filter(({ drill }) => drill.kind === 'diagnosis').flatMap(({ where, why }) => {
    const labels = why.films.flatMap(({ label }) => label.split(' = '));
    const texts = sayAll(why.told, { scale: 'paper-first', spoken: false });
    return [
      ...(labels.length === 3 && /^(after|yours, had it)/.test(labels[2] ?? '')
        ? []
        : [`${where}: ${labels}`]),
      ...(texts[0]?.startsWith('The plan for') === true ? [] : [`${where}: ${texts[0]}`]),
    ];
  });
  expect(faults).toEqual([]);
});
