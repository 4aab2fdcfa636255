/** What a computed sentence claims, held against figures worked out here and not by the code that wrote it. */
import { hueName } from '../../src/colour/hue.js';
import { hueDifference } from '../../src/colour/lab.js';
import { readColour } from '../../src/colour/reading.js';
import { WAVELENGTHS_NM } from '../../src/optics/index.js';
import { type Laid, type Load, puddleReflectance, seeLaid, strengthOf } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';

/** A film of two sides, each one paint or a wash of several. */
export interface Sides {
  readonly one: readonly Load[];
  readonly other: readonly Load[];
}

interface Stretch {
  readonly from: number;
  readonly to: number;
}

const stretchesIn = (text: string): Stretch[] =>
  [...text.matchAll(/\((\d+)-(\d+) nm\)/g)].map(([, from, to]) => ({ from: Number(from), to: Number(to) }));

const bandsIn = (stretches: readonly Stretch[]): number[] =>
  WAVELENGTHS_NM.flatMap((nm, band) =>
    stretches.some(({ from, to }) => nm >= from && nm <= to) ? [band] : [],
  );

const at = (light: Float64Array, band: number): number => light[band] as number;
const isSeen = (nm: number): boolean => nm >= 400 && nm <= 700;

/** Chroma and reflectance of one side alone as strong as the whole film. */
function alone(side: readonly Load[], whole: number) {
  const by = whole / strengthOf(side);
  const light = puddleReflectance(
    side.map(({ pigment, load }) => ({ pigment, load: load * by })),
    STUDIO.paper,
  );
  return { light, colour: readColour(light) };
}

/** What is wrong with a sentence about two paints in one film; empty when every claim holds. */
export function pairFaults(text: string, { one, other }: Sides): string[] {
  const mixed = [...one, ...other];
  const whole = strengthOf(mixed);
  const light = puddleReflectance(mixed, STUDIO.paper);
  const { chroma, hue } = readColour(light);
  const [a, b] = [alone(one, whole), alone(other, whole)];
  const share = strengthOf(other) / whole;
  const left = chroma / ((1 - share) * a.colour.chroma + share * b.colour.chroma);
  const faults: string[] = [];
  const claim = (holds: boolean, what: string): void => {
    if (!holds) faults.push(what);
  };

  if (/colour is kept|leaves most of the colour/.test(text))
    claim(left >= 0.85, `kept, but ${left.toFixed(2)} is left`);
  const told = /(\d+) % of the chroma between them is left/.exec(text)?.[1];
  if (told !== undefined) {
    claim(left < 0.85, `told as lost, but ${left.toFixed(2)} is left`);
    claim(
      Math.abs(Number(told) - 100 * left) <= 0.5 + 1e-6,
      `${told} % told, ${(100 * left).toFixed(1)} left`,
    );
  }
  if (/looks grey|hues cancel/.test(text)) claim(chroma < 12, `grey, but C* ${chroma.toFixed(1)}`);
  if (/[Mm]ostly .* comes back/.test(text))
    claim(chroma >= 12, `a part comes back, but C* ${chroma.toFixed(1)}`);
  const named = /between them lies ([a-z ]+), and/.exec(text)?.[1];
  if (named !== undefined) {
    const is = chroma < 5 ? 'grey' : hueName(hue);
    claim(named === is, `${named} named, ${is} shown`);
  }

  const swallowed = bandsIn(stretchesIn(/Both swallow ([^;]*);/.exec(text)?.[1] ?? ''));
  for (const band of swallowed) {
    const paper = at(STUDIO.paper.reflectance, band);
    claim(
      at(a.light, band) < 0.5 * paper && at(b.light, band) < 0.5 * paper,
      `${WAVELENGTHS_NM[band]} nm is not swallowed by both`,
    );
  }
  const back = bandsIn(stretchesIn(/[Mm]ostly (.*) comes back/.exec(text)?.[1] ?? ''));
  const most = Math.max(...light.filter((_, band) => isSeen(WAVELENGTHS_NM[band] as number)));
  for (const band of back) {
    claim(at(light, band) >= 0.7 * most, `${WAVELENGTHS_NM[band]} nm hardly comes back`);
    claim(!swallowed.includes(band), `${WAVELENGTHS_NM[band]} nm is swallowed and comes back`);
  }
  if (/No part of the light is swallowed strongly by both/.test(text)) {
    const shared = WAVELENGTHS_NM.map((nm, band) => {
      const half = 0.5 * at(STUDIO.paper.reflectance, band);
      return isSeen(nm) && at(a.light, band) < half && at(b.light, band) < half;
    });
    // Less than 30 nm together goes unsaid.
    claim(
      !shared.some((is, band) => is && shared[band + 1] === true && shared[band + 2] === true),
      'a shared part unsaid',
    );
  }

  if (/this little of it/.test(text)) claim(share <= 0.5, `little, but ${share.toFixed(2)} of the film`);
  if (/so .* sets the hue/.test(text)) {
    // Its own hue: at the strength of the film, or as little of it as lies there.
    const own = [b.colour, readColour(puddleReflectance(other, STUDIO.paper))];
    const turned = Math.min(...own.map((colour) => Math.abs(hueDifference(colour.hue, hue))));
    claim(chroma < 12 || turned <= 45, `sets the hue, which turned by ${turned.toFixed(0)}`);
  }
  if (/paler and chalkier/.test(text)) {
    const isWhite = (side: readonly Load[]): boolean =>
      side.every(({ pigment }) => pigment.id.endsWith('white'));
    const colour = isWhite(one) ? other : one;
    claim(isWhite(one) || isWhite(other), 'no white lies there');
    const before = readColour(puddleReflectance(colour, STUDIO.paper));
    // White paint is itself a little darker than the paper, which shows in the palest yellows.
    claim(readColour(light).step <= before.step + 0.3, `white darkened from ${before.step.toFixed(2)}`);
    claim(chroma <= before.chroma + 0.5, `white raised C* from ${before.chroma.toFixed(1)}`);
  }
  if (/it swallows all parts of the light alike/.test(text)) {
    const colour = Math.max(a.colour.chroma, b.colour.chroma);
    claim(colour < 12 || chroma < colour, `black leaves C* ${chroma.toFixed(1)} of ${colour.toFixed(1)}`);
  }
  return faults;
}

/** What is wrong with a sentence about layers or strokes. */
export function laidFaults(text: string, laid: Laid): string[] {
  const { step, chroma, hue } = seeLaid(STUDIO, laid).colour;
  const faults: string[] = [];
  const claim = (holds: boolean, what: string): void => {
    if (!holds) faults.push(what);
  };
  if ('layers' in laid) {
    const below = seeLaid(STUDIO, { layers: laid.layers.slice(0, -1) }).colour;
    const shown = (x: number): number => Number(x.toFixed(1));
    const moved = shown(step) - shown(below.step);
    const told = /(\d+\.\d|1) steps? (darker|lighter)/.exec(text);
    if (told !== null) {
      const by = Number(told[1]) * (told[2] === 'darker' ? 1 : -1);
      claim(Math.abs(by - moved) < 0.05, `${by} told, ${moved.toFixed(1)} shown`);
    }
    const change = /(adds|takes) (\d+) chroma/.exec(text);
    const by = chroma - below.chroma;
    if (change !== null)
      claim(
        Math.abs(Number(change[2]) * (change[1] === 'adds' ? 1 : -1) - by) <= 0.5,
        `chroma moved by ${by}`,
      );
    if (/leaves the chroma/.test(text)) claim(Math.abs(by) < 2, `chroma moved by ${by}`);
  } else if ('strokes' in laid) {
    if (/cancel to nearly grey/.test(text)) claim(chroma < 12, `grey, but C* ${chroma.toFixed(1)}`);
    const named = /it reads as ([a-z ]+)\./.exec(text)?.[1];
    if (named !== undefined)
      claim(chroma >= 12 && named === hueName(hue), `${named} named, ${hueName(hue)} shown`);
    if (/no stronger than the two between them/.test(text)) {
      const each = laid.strokes.map((stroke) => seeLaid(STUDIO, stroke).colour.chroma);
      claim(
        chroma <= Math.max(...each) + 1e-9,
        `C* ${chroma.toFixed(1)} of ${each.map((c) => c.toFixed(1)).join(', ')}`,
      );
    }
    if (/lighter than stirred/.test(text)) {
      const loads = laid.strokes.flatMap(({ share, ...stroke }) =>
        seeLaid(STUDIO, stroke)
          .loads.flat()
          .map(({ pigment, load }) => ({ pigment, load: load * share })),
      );
      const stirred = readColour(puddleReflectance(loads, STUDIO.paper));
      claim(
        step <= stirred.step + 0.05,
        `strokes at step ${step.toFixed(2)}, stirred ${stirred.step.toFixed(2)}`,
      );
    }
  }
  return faults;
}
