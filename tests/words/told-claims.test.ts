/** Each claim about a passage, a shade, a shadow or a wash that dries, held to figures worked out here from the laid paint. */
import { describe, expect, test } from 'vitest';
import { WAVELENGTHS_NM } from '../../src/optics/index.js';
import { seeLaid, seeWet } from '../../src/washes/index.js';
import { STUDIO } from '../studio.js';
import { faultsIn, foundIn } from './answers.js';

const unless = (holds: boolean, fault: string): string[] => (holds ? [] : [fault]);
const near = (a: number, b: number, by: number): boolean => Math.abs(a - b) <= by + 1e-9;

describe('drying', () => {
  test('tells the dry wash by its own figures, and the change of them', () => {
    const faults = faultsIn('drying', ({ drill, grade }) => {
      const dry = seeLaid(STUDIO, drill.wash).colour;
      const wet = seeWet(STUDIO, drill.wash).colour;
      const [told] = foundIn(grade, 'drying-dry');
      if (told === undefined) return ['the dry wash goes unsaid'];
      const { text } = told;
      const lighter = Number(/(\d(?:\.\d)?) steps? lighter/.exec(text)?.[1] ?? 0);
      const gone = Number(/(\d+) of chroma gone/.exec(text)?.[1] ?? 0);
      return [
        ...unless(near(lighter, wet.step - dry.step, 0.1), text),
        ...unless(near(gone, wet.chroma - dry.chroma, 1), text),
        ...unless(!/darker|gained/.test(text), text),
        ...unless(text.includes('value unmoved') === near(wet.step, dry.step, 0.0999) || lighter > 0, text),
      ];
    });
    expect(faults).toEqual([]);
  });

  test('calls right what is right, and says what it does otherwise', () => {
    const faults = faultsIn('drying', ({ drill, answer, grade }) => {
      const dry = seeLaid(STUDIO, drill.wash).colour;
      const wet = seeWet(STUDIO, drill.wash).colour;
      const lighter = wet.step - dry.step;
      const lost = 1 - dry.chroma / wet.chroma;
      const value =
        lighter < -0.5 ? 'darker' : lighter < 0.5 ? 'same' : lighter < 1.5 ? 'lighter' : 'much-lighter';
      const chroma =
        lost < 0 ? 'rises' : lost < 0.08 ? 'falls-little' : lost < 0.5 ? 'falls-clearly' : 'falls-half';
      const counts = foundIn<Record<'asks' | 'close', string[]>>(grade, 'drying-right');
      const right = counts.flatMap(({ figures }) => figures.asks);
      const close = counts.flatMap(({ figures }) => figures.close);
      return [
        ...unless(!right.includes('value') || answer['value'] === value, `value is ${value}`),
        ...unless(!right.includes('chroma') || answer['chroma'] === chroma, `chroma ${chroma}`),
        ...unless(!right.includes('wait') || answer['wait'] === 'dry', 'only a dry patch can be judged'),
        ...unless(
          grade.mark < 100 || right.length + close.length === drill.asks.length,
          'all right, not told so',
        ),
        ...foundIn<{ value?: string; chroma?: string }>(grade, 'drying-is').flatMap(({ figures, text }) => [
          ...unless(figures.value === undefined || figures.value === value, text),
          ...unless(figures.chroma === undefined || figures.chroma === chroma, text),
        ]),
      ];
    });
    expect(faults).toEqual([]);
  });

  test('sends the one nearer to what was wanted when it sends to another', () => {
    const faults = faultsIn('drying', ({ drill, grade }) =>
      foundIn<Record<'dries' | 'to', { step: number; chroma: number }>>(grade, 'drying-mend-off').flatMap(
        ({ figures: { dries, to }, text }) => {
          const { step, chroma = 0 } = drill.target ?? { step: 0 };
          // A step is ten of L*, near enough.
          const far = (at: { step: number; chroma: number }): number =>
            Math.hypot(10 * (at.step - step), at.chroma - chroma);
          return unless(far(to) < far(dries), text);
        },
      ),
    );
    expect(faults).toEqual([]);
  });

  test('gives the reason that fits this wash', () => {
    const reasons = new Set<string>();
    const faults = faultsIn('drying', ({ drill, grade }) =>
      foundIn<{ reason: string }>(grade, 'drying-reason').flatMap(({ figures: { reason }, text }) => {
        reasons.add(reason);
        const dry = seeLaid(STUDIO, drill.wash);
        const wet = seeWet(STUDIO, drill.wash);
        const lift = [...dry.reflectance].map((band, at) => band / (wet.reflectance[at] ?? 1) - 1);
        const paper = [...dry.reflectance].reduce((sum, band) => sum + band, 0) / WAVELENGTHS_NM.length;
        const lost = 1 - dry.colour.chroma / wet.colour.chroma;
        if (reason === 'thin') return unless(lost < 0.03 && paper > 0.3, text);
        if (reason === 'bright')
          return unless(dry.colour.lab.l > 70 && Math.abs(dry.colour.step - wet.colour.step) < 0.1, text);
        // Something of the white of a matt surface must show where the film is darkest.
        if (reason === 'strong') return unless(lost >= 0.1 && Math.max(...lift) > 0.1, text);
        return unless(lost < 0.1 && Math.max(...lift) > 0.05, text);
      }),
    );
    expect(faults).toEqual([]);
    expect(reasons.size, 'unlike washes have unlike reasons').toBe(4);
  });
});

describe('shade chroma', () => {
  test('glows above the shading line, is mud below it, and names what the light leaves', () => {
    const faults = faultsIn('shade-chroma', ({ drill, answer, grade }) => {
      const { colour } = seeLaid(STUDIO, drill.lit);
      // The shade's L* from its Munsell value, 10.5 less the step (ASTM D1535), within half a unit of ten times the value.
      const line = (colour.chroma * (10 * (10.5 - drill.shade) + 16)) / (colour.lab.l + 16);
      const said = Number(answer['chroma']);
      return [
        ...foundIn<{ chroma?: string }>(grade, 'shade-said').flatMap(({ figures: { chroma: as }, text }) =>
          as === undefined
            ? []
            : as === 'glows'
              ? unless(said > line, text)
              : as === 'mud'
                ? unless(said < line, text)
                : unless(near(said, line, 0.35 * line), text),
        ),
        ...foundIn(grade, 'shade-line').flatMap(({ text }) => {
          const left = Number(/(\d+) %/.exec(text)?.[1] ?? 100) / 100;
          return unless(near(left, line / colour.chroma, 0.05), text);
        }),
      ];
    });
    expect(faults).toEqual([]);
  });

  test('the better choice holds where the one taken did not', () => {
    const faults = faultsIn('shade-chroma', ({ grade }) =>
      unless(grade.mark < 100 === foundIn(grade, 'shade-better').length > 0, `${grade.mark} marks`),
    );
    expect(faults).toEqual([]);
  });
});

describe('shadow values', () => {
  test('tells how far off each shadow is, and takes the share of the lit value', () => {
    const faults = faultsIn('shadow-values', ({ drill, grade, answer }) => {
      const steps = drill.things.map(({ name, shadow, lit }, at) => ({
        name,
        shadow,
        lit: typeof lit === 'number' ? lit : seeLaid(STUDIO, lit).colour.step,
        said: Number(answer[`thing-${at + 1}`]),
      }));
      const bandOf = ({ shadow, lit }: (typeof steps)[number]): [number, number] => {
        // A shaded side keeps six tenths of the lit value, a cast shadow four (MacEvoy, color11.html).
        const middle = 10.5 - (shadow === 'shade' ? 0.6 : 0.4) * (10.5 - lit);
        if (drill.light === 'overcast') return [lit, lit + 1.1];
        return [middle - 0.5, middle + (drill.light === 'hard-sun' ? 1.5 : 0.5)];
      };
      const told = foundIn<{ things: { name: string; shadow: string; gap: number }[] }>(grade, 'shadow-off');
      const off = told.flatMap(({ figures, text }) => figures.things.map((one) => ({ ...one, text })));
      return [
        ...off.flatMap((one) => {
          const thing = steps.find(({ name, shadow }) => one.name === name && one.shadow === shadow);
          if (thing === undefined) return [`of no thing: ${one.text}`];
          const [light, dark] = bandOf(thing);
          const gap = thing.said < light ? thing.said - light : thing.said - dark;
          return [
            ...unless(near(one.gap, gap, 1e-6), `${one.name}: ${one.gap} told, ${gap.toFixed(2)}`),
            ...unless(
              new RegExp(
                `${Math.abs(gap)
                  .toFixed(1)
                  .replace(/^1\.0$/, '1(\\.0)?')}( steps?)? too ${gap > 0 ? 'dark' : 'light'}`,
              ).test(one.text),
              `${one.text} (${gap.toFixed(2)})`,
            ),
          ];
        }),
        // What stays of a value, counted up from black, told as the steps that are lost: 8 keeps six tenths, 3.2 steps darker.
        ...foundIn(grade, 'shadow-rule').flatMap(({ text, onBlackFirst }) => {
          const lost = text.includes('six tenths') ? 0.4 : 0.6;
          const darker = Number(/: (\d+(?:\.\d)?) steps? darker/.exec(text)?.[1]);
          return unless(
            text === onBlackFirst && steps.some(({ lit }) => near(darker, lost * (10.5 - lit), 0.051)),
            text,
          );
        }),
        ...unless((grade.mark === 100) === (told.length === 0), `${grade.mark} marks`),
        ...unless(
          grade.idea !== 'cast-too-light' || off.some(({ shadow }) => shadow === 'cast'),
          'the cast shadow is right',
        ),
      ];
    });
    expect(faults).toEqual([]);
  });
});
