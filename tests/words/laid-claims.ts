/** What a reason for layers or strokes claims, held against figures worked out here and not by the code that wrote it. */
import { hueName } from '../../src/colour/hue.js';
import { readColour } from '../../src/colour/reading.js';
import { type Laid, puddleReflectance, seeLaid } from '../../src/washes/index.js';
import { type Finding, sayFinding } from '../../src/words/tell.js';
import { WRITTEN } from '../../src/words/voice.js';
import { STUDIO } from '../studio.js';
import type { Claim } from './claims.js';

const shown = (x: number): number => Number(x.toFixed(1));

/** What is wrong with a finding about layers or strokes. */
export function laidFaults(finding: Finding, laid: Laid): string[] {
  const {
    step,
    chroma,
    hue,
    xyz: { y },
  } = seeLaid(STUDIO, laid).colour;
  const text = sayFinding(finding, WRITTEN);
  const faults: string[] = [];
  const claim: Claim = (holds, what) => {
    if (!holds) faults.push(`${what}: ${text}`);
  };
  if ('layers' in laid) {
    claim(finding.id === 'layer', 'not told as a layer');
    const below = seeLaid(STUDIO, { layers: laid.layers.slice(0, -1) }).colour;
    const moved = shown(step) - shown(below.step);
    const by = chroma - below.chroma;
    claim(/: (a little )?darker and/.test(text) === moved >= 0.05, `moved by ${moved.toFixed(1)}`);
    claim(/: (a little )?lighter and/.test(text) === moved <= -0.05, `moved by ${moved.toFixed(1)}`);
    claim(
      /: a little/.test(text) === (Math.abs(moved) >= 0.05 && Math.abs(moved) < 0.5),
      `moved by ${moved}`,
    );
    claim(/and (a little )?stronger/.test(text) === by >= 2, `C* moved by ${by.toFixed(1)}`);
    claim(/and (a little )?duller/.test(text) === by <= -2, `C* moved by ${by.toFixed(1)}`);
    claim(/and a little/.test(text) === (Math.abs(by) >= 2 && Math.abs(by) < 6), `C* moved by ${by}`);
    // A clear film can only take light away.
    if (/filters/.test(text)) claim(moved > -0.05, `a filter that lightens by ${moved.toFixed(1)}`);
  } else if ('strokes' in laid) {
    claim(finding.id === 'strokes', 'not told as strokes');
    const named = /it reads as ([a-z ]+)\./.exec(text)?.[1];
    claim(
      named === undefined ? chroma < 12 && /cancel/.test(text) : chroma >= 12 && named === hueName(hue),
      `C* ${chroma.toFixed(1)}, ${hueName(hue)}`,
    );
    const loads = laid.strokes.flatMap(({ share, ...stroke }) =>
      seeLaid(STUDIO, stroke)
        .loads.flat()
        .map(({ pigment, load }) => ({ pigment, load: load * share })),
    );
    const stirred = readColour(puddleReflectance(loads, STUDIO.paper));
    // What lies behind says that it lies lower stirred.
    claim(stirred.xyz.y <= y + 0.5, `Y ${stirred.xyz.y.toFixed(1)} stirred, ${y.toFixed(1)} side by side`);
    const lighter = shown(stirred.step) - shown(step);
    const told = /(\d+(?:\.\d)?) steps? lighter/.exec(text)?.[1];
    claim(
      told === undefined ? Math.abs(lighter) < 0.05 : Math.abs(Number(told) - lighter) < 0.051,
      `${lighter} lighter`,
    );
    claim(
      /stronger in colour|less grey/.test(text) === chroma - stirred.chroma >= 2,
      `C* ${(chroma - stirred.chroma).toFixed(1)}`,
    );
    claim(
      /weaker in colour|more grey/.test(text) === chroma - stirred.chroma <= -2,
      `C* ${(chroma - stirred.chroma).toFixed(1)}`,
    );
  }
  return faults;
}
