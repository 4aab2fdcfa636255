import { describe, expect, it } from 'vitest';
import { mudlark, mudlarkHere, mudlarkJson } from './run-cli.js';

interface RecipeDocument {
  schemaVersion: number;
  asked: object;
  reach: string;
  recipes: {
    parts: { pigment: string; parts: number }[];
    strength: number;
    thin: number;
    way: string;
    step: number;
    chroma: number;
    hue: number;
    lab: { l: number; a: number; b: number };
    kept: number;
    deltaE00?: number;
    words: string;
  }[];
}

const RICH = ['recipe', '--from', 'burnt-sienna=1', '--darker', '2', '--goal', 'rich'];

describe('mudlark recipe', () => {
  it('prints one JSON document, best first', () => {
    const { schemaVersion, reach, recipes } = mudlarkJson<RecipeDocument>(RICH);
    expect([schemaVersion, reach]).toEqual([1, 'in']);
    expect(recipes.length).toBeGreaterThan(1);
    for (const { words, chroma, lab, thin } of recipes) {
      expect(words).toMatch(/^[A-Z].*\.$/);
      expect(chroma).toBeCloseTo(Math.hypot(lab.a, lab.b), 9);
      expect(thin).toBeGreaterThanOrEqual(1);
    }
  });

  it('says a puddle so that mudlark mix gives the same', () => {
    const { recipes } = mudlarkJson<RecipeDocument>(['recipe', '--to', 'lab(40 10 20)', '--ways', 'puddle']);
    const [best] = recipes;
    if (best === undefined) throw new Error('no recipe');
    const parts = best.parts.map(({ pigment, parts: amount }) => `${pigment}=${amount}`);
    const mixed = mudlarkJson<{ lab: { l: number; a: number; b: number } }>([
      ...['mix', ...parts],
      ...['--strength', String(best.strength), '--thin', String(best.thin)],
    ]);
    for (const axis of ['l', 'a', 'b'] as const) expect(mixed.lab[axis]).toBeCloseTo(best.lab[axis], 0);
    expect(best.deltaE00).toBeLessThan(1);
    expect(best.words).toContain('by the prediction no difference that is seen');
  });

  it('says what is out of reach, in words within 80 columns', () => {
    const { out, code } = mudlark(['recipe', '--to', '#ff00ff']);
    expect(code).toBe(0);
    expect(out).toMatch(/Out of reach\. The nearest is .*too dull/s);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  it('refuses to go darker than there is, as it is built', async () => {
    const args = [...RICH, '--darker', '6'];
    expect(mudlark(args)).toEqual(await mudlarkHere(args));
  });

  it.each([
    [['recipe'], /say from which wash, or to which colour/],
    [['recipe', '--from', 'burnt-sienna=1'], /a goal is missing: add --goal shade, rich, dull or distance/],
    [['recipe', '--from', 'burnt-sienna=1', '--darker', '2'], /a goal is missing/],
    [['recipe', '--from', 'burnt-sienna=1', '--darker', '2', '--lighter', '1'], /a goal is missing/],
    [[...RICH, '--darker', '6'], /at most 5\.7 steps darker/],
    [['recipe', '--to', 'brown'], /"brown" is no colour that is read here; write/],
    [[...RICH, '--goal', 'mud'], /not "mud"/],
    [['recipe', '--from', 'burnt-siena=1', '--goal', 'rich'], /no paint is called/],
    [['recipe', '--from', 'burnt-sienna=-1', '--goal', 'rich'], /must be above 0/],
    [[...RICH, '--strength', '2'], /--strength must be from 0\.01 to 1/],
    [[...RICH, '--lighter', '1'], /--darker and --lighter are both given/],
    [[...RICH, '--darker', 'x'], /--darker must be a number/],
    [[...RICH, '--to', '#123456'], /leave out --goal/],
    [['recipe', '--to', 'mud'], /"mud" is no colour that is read here/],
    [['recipe', '--to', '#123456', '--box', 'twelv'], /no box is called "twelv"/],
    [['recipe', '--to', '#123456', '--within', 'mud'], /no paint is called/],
    [[...RICH, '--ways', 'spray'], /--ways takes puddle, glaze, strokes/],
    [[...RICH, '--most', '0'], /--most takes a whole number/],
    [['recipe', '--from', 'burnt-sienna=1', '--goal', 'shade', '--lighter', '1'], /a shade is darker/],
  ])('refuses %j in one line', async (args, words) => {
    const { code, err, out } = await mudlarkHere(args);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(words);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });
});
