/** What a computed reason claims, held against figures worked out here and not by the code that wrote it. */
import { hueName } from '../../src/colour/hue.js';
import { hueDifference } from '../../src/colour/lab.js';
import { readColour } from '../../src/colour/reading.js';
import { colourInWords } from '../../src/colour/words.js';
import { reflectanceToXyz } from '../../src/colour/xyz.js';
import { WAVELENGTHS_NM } from '../../src/optics/index.js';
import { type Load, puddleReflectance, strengthOf } from '../../src/washes/index.js';
import { type Run, runsWords } from '../../src/words/spectrum.js';
import { type Finding, sayFinding } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { STUDIO } from '../studio.js';

/** A film of two sides, each one paint or a wash of several. */
export interface Sides {
  readonly one: readonly Load[];
  readonly other: readonly Load[];
}

/**
 * Parts of the spectrum that light of a hue has to hold, by the colours of spectral lights (usual names of the spectrum;
 * magenta and purple are no spectral lights: red with blue or violet). Common practice, no source.
 */
const HOLDS: Readonly<Record<string, RegExp>> = {
  red: /red|orange/,
  'red orange': /red|orange/,
  orange: /red|orange|yellow/,
  'yellow orange': /orange|yellow|to red/,
  yellow: /yellow|green/,
  'yellow green': /green|yellow/,
  green: /green|blue to yellow/,
  'blue green': /green|blue/,
  blue: /blue|violet to/,
  'violet blue': /blue|violet/,
  violet: /blue|violet/,
  purple: /blue|violet/,
  magenta: /red|violet|blue/,
};

const inRuns = (runs: readonly Run[], nm: number): boolean =>
  runs.some(({ fromNm, toNm }) => nm >= fromNm && nm <= toNm);

const at = (light: ArrayLike<number>, band: number): number => light[band] as number;

/** Luminance and the rest that the eye makes of one band. */
function eye(band: number): number {
  const { x, y, z } = reflectanceToXyz(
    Float64Array.from(WAVELENGTHS_NM, (_, each) => (each === band ? 1 : 0)),
  );
  return x + y + z;
}
const EYE = Array.from(WAVELENGTHS_NM, (_, band) => eye(band));
/** Bands of which the eye makes at least a tenth of what it makes of the best. */
const SEEN = EYE.map((weight) => weight >= 0.1 * Math.max(...EYE));
const mostSeen = (light: ArrayLike<number>): number =>
  Math.max(...SEEN.map((is, band) => (is ? at(light, band) : 0)));

/** Chroma and reflectance of one side alone as strong as the whole film. */
function alone(side: readonly Load[], whole: number) {
  const by = whole / strengthOf(side);
  const light = puddleReflectance(
    side.map(({ pigment, load }) => ({ pigment, load: load * by })),
    STUDIO.paper,
  );
  return { light, colour: readColour(light) };
}

export type Claim = (holds: boolean, what: string) => void;

function pairClaims(finding: Finding & { id: 'pair' }, { one, other }: Sides, claim: Claim): void {
  const { figures } = finding;
  const text = sayFinding(finding, WRITTEN);
  const mixed = [...one, ...other];
  const whole = strengthOf(mixed);
  const light = puddleReflectance(mixed, STUDIO.paper);
  const { lab, chroma, hue } = readColour(light);
  const [a, b] = [alone(one, whole), alone(other, whole)];
  const share = strengthOf(other) / whole;
  const left = chroma / ((1 - share) * a.colour.chroma + share * b.colour.chroma);

  claim(Math.abs(figures.left - left) < 1e-9, `${figures.left} left told, ${left} is`);
  const before = readColour(puddleReflectance(one, STUDIO.paper)).chroma;
  const still = before > 0 ? chroma / before : 1;
  // The lesser of the two losses: against both alone, and against the first as it lay there.
  const bounds: readonly (readonly [RegExp, boolean])[] = [
    [/the colour is kept/, left >= 0.85 && still >= 0.85],
    [/falls only because/, left >= 0.85 && b.colour.chroma < a.colour.chroma],
    [/neither takes the other’s colour/, left >= 0.85],
    [/So little .* cannot take much|has taken over/, left >= 0.85],
    [/both are dull by themselves/, Math.max(a.colour.chroma, b.colour.chroma) < 20],
    [/duller than either/, chroma < Math.min(a.colour.chroma, b.colour.chroma)],
    [/duller than (?!either).* would be alone/, chroma < Math.max(a.colour.chroma, b.colour.chroma)],
    [/a little of the colour goes/, still >= 0.7 && still < 0.85],
    [/about half of the colour goes/, still >= 0.4 && still < 0.7],
    [/most of the colour goes/, still < 0.4],
  ];
  const made = bounds.filter(([words]) => words.test(text));
  claim(made.length === 1, `${made.length} claims of colour: ${text}`);
  for (const [words, holds] of made)
    claim(holds, `${words} of ${left.toFixed(2)}, ${still.toFixed(2)}: ${text}`);
  claim(!/across the wheel/.test(text) || chroma < 20, `across at C* ${chroma.toFixed(1)}`);
  if (/So little/.test(text)) claim(share <= 0.5, `little, but ${share.toFixed(2)} of the film`);
  if (/has taken over/.test(text)) claim(share > 0.5, `taken over at ${share.toFixed(2)} of the film`);
  // Only a mixture that is nearly grey was cancelled; beside a clear green nothing of the kind is said.
  if (/each swallows what the other sends back/.test(text))
    claim(chroma < 20 && left < 0.5, `cancelled, but C* ${chroma.toFixed(1)}`);

  const named = / make an? (?:greyed )?([a-z ]+) between them/.exec(text)?.[1];
  if (named !== undefined) {
    const is = /brown|olive/.test(figures.made) ? figures.made : hueName(hue);
    claim(named === is, `${named} made, ${is} is`);
    if (/brown|olive/.test(figures.made))
      claim(colourInWords(lab).includes(figures.made), `${colourInWords(lab)} as ${figures.made}`);
    claim(chroma >= 12, `${figures.made} of C* ${chroma.toFixed(1)}`);
    for (const side of [a, b])
      claim(Math.abs(hueDifference(side.colour.hue, hue)) >= 20, `${figures.made} is one of the two`);
    claim(/greyed/.test(text) === chroma < 20, `greyed at C* ${chroma.toFixed(1)}`);
  }

  for (const band of WAVELENGTHS_NM.keys()) {
    const nm = WAVELENGTHS_NM[band] as number;
    if (!inRuns(figures.light.both, nm)) continue;
    for (const side of [a, b]) {
      claim(
        at(side.light, band) < 0.5 * at(STUDIO.paper.reflectance, band),
        `${nm} nm is not swallowed by both`,
      );
      claim(at(side.light, band) < 0.52 * mostSeen(side.light), `${nm} nm makes the colour of one of them`);
    }
    if (chroma >= 12 && SEEN[band])
      claim(at(light, band) < 0.52 * mostSeen(light), `${nm} nm is swallowed and comes back`);
  }
  // No part of the light by its name both goes and comes back, and none goes that one of them is known for.
  const parts = (words: string): Set<string> => {
    const order = ['violet', 'blue', 'green', 'yellow', 'orange', 'red'];
    return new Set(
      words.split(/, | and /).flatMap((run) => {
        const [from = '', to = from] = run.split(' to ');
        return order.slice(order.indexOf(from), order.indexOf(to) + 1);
      }),
    );
  };
  const gone = parts(runsWords(figures.light.both));
  for (const part of parts(runsWords(figures.light.back)))
    claim(!gone.has(part), `${part} goes and comes back: ${text}`);
  for (const side of [a, b])
    if (side.colour.chroma >= 12)
      for (const part of hueName(side.colour.hue).split(' '))
        claim(!gone.has(part), `a ${hueName(side.colour.hue)} swallows ${part}: ${text}`);

  const back = /Mostly (.*) comes? back/.exec(text)?.[1];
  if (back !== undefined) {
    claim(chroma >= 12, `a part comes back, but C* ${chroma.toFixed(1)}`);
    claim(HOLDS[hueName(hue)]?.test(back) === true, `${back} comes back of a ${hueName(hue)}`);
    const masked = light.map((value, band) =>
      inRuns(figures.light.back, WAVELENGTHS_NM[band] as number) ? value : 0,
    );
    const turned = Math.abs(hueDifference(readColour(masked).hue, hue));
    claim(turned <= 45, `${back} comes back, ${turned.toFixed(0)}° from the ${hueName(hue)}`);
  }
}

/** What is wrong with a finding about two sides in one film; empty when every claim holds. */
export function pairFaults(finding: Finding, sides: Sides): string[] {
  const faults: string[] = [];
  const claim: Claim = (holds, what) => {
    if (!holds) faults.push(what);
  };
  const { one, other } = sides;
  const mixed = [...one, ...other];
  const whole = strengthOf(mixed);
  const { step, chroma, hue } = readColour(puddleReflectance(mixed, STUDIO.paper));
  const [a, b] = [alone(one, whole), alone(other, whole)];
  if (finding.id === 'pair') {
    pairClaims(finding as Finding & { id: 'pair' }, sides, claim);
  } else if (finding.id === 'sets-hue') {
    // Its own hue: at the strength of the film, or as little of it as lies there.
    const own = [b.colour, readColour(puddleReflectance(other, STUDIO.paper))];
    const turned = Math.min(...own.map((colour) => Math.abs(hueDifference(colour.hue, hue))));
    claim(chroma < 12 || turned <= 45, `sets the hue, which turned by ${turned.toFixed(0)}`);
  } else if (finding.id === 'neutral') {
    const isWhite = (side: readonly Load[]): boolean =>
      side.every(({ pigment }) => pigment.id.endsWith('white'));
    if (finding.figures.isWhite) {
      claim(isWhite(one) || isWhite(other), 'no white lies there');
      const before = readColour(puddleReflectance(isWhite(one) ? other : one, STUDIO.paper));
      // White paint is itself a little darker than the paper, which shows in the palest yellows.
      claim(step <= before.step + 0.3, `white darkened from ${before.step.toFixed(2)}`);
      claim(chroma <= before.chroma + 0.5, `white raised C* from ${before.chroma.toFixed(1)}`);
    } else {
      claim(!isWhite(other), 'a white told as a black');
      const colour = Math.max(a.colour.chroma, b.colour.chroma);
      claim(colour < 12 || chroma < colour, `black leaves C* ${chroma.toFixed(1)} of ${colour.toFixed(1)}`);
    }
  } else {
    faults.push(`${finding.id} of two sides`);
  }
  return faults;
}
