import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { mudlark, mudlarkHere, mudlarkJson } from './run-cli.js';

interface MixDocument {
  schemaVersion: number;
  parts: { pigment: string; parts?: number; added?: number; load: number }[];
  apply: string;
  strength: number;
  loads: { pigment: string; load: number }[];
  value: number;
  step: number;
  chroma: number;
  lab: { l: number; a: number; b: number };
  hex: string;
  reflectance: { wavelengths: number[]; values: number[] };
  evidence: string;
}

describe('mudlark mix', () => {
  it('prints one JSON document with loads, colour and reflectance', () => {
    const mix = mudlarkJson<MixDocument>([
      'mix',
      'burnt-sienna=4',
      'alizarin-crimson=2',
      '--strength',
      '0.3',
    ]);
    expect(mix.schemaVersion).toBe(1);
    expect(mix.parts.map(({ pigment, parts }) => [pigment, parts])).toEqual([
      ['burnt-sienna', 4],
      ['alizarin-crimson', 2],
    ]);
    expect(mix.parts[0]?.load).toBeCloseTo(2 * (mix.parts[1]?.load ?? 0), 10);
    expect(mix.reflectance.wavelengths).toHaveLength(38);
    expect(mix.reflectance.values.every((value) => value >= 0 && value <= 1)).toBe(true);
    expect(mix.step).toBeCloseTo(10.5 - mix.value, 10);
    expect(mix.chroma).toBeCloseTo(Math.hypot(mix.lab.a, mix.lab.b), 10);
    expect(mix.evidence).toBe('measured');
  });

  // common practice, no source: a dark neighbour shades burnt sienna and leaves it warm, ultramarine greys it,
  // and the two at one to one and full strength are the everyday dark neutral.
  it('keeps burnt sienna with alizarin, dulls it with ultramarine, and greys at one to one', () => {
    const alone = mudlarkJson<MixDocument>(['mix', 'burnt-sienna=1', '--strength', '0.3']);
    const around = mudlarkJson<MixDocument>([
      'mix',
      'burnt-sienna=4',
      'alizarin-crimson=2',
      '--strength',
      '0.3',
    ]);
    const across = mudlarkJson<MixDocument>([
      'mix',
      'burnt-sienna=4',
      'ultramarine-blue=2',
      '--strength',
      '0.3',
    ]);
    const dark = mudlarkJson<MixDocument>(['mix', 'burnt-sienna=1', 'ultramarine-blue=1', '--strength', '1']);
    expect(around.chroma / alone.chroma).toBeGreaterThan(0.8);
    expect(across.chroma / alone.chroma).toBeLessThan(0.55);
    expect(around.lab.l).toBeLessThan(alone.lab.l);
    expect(dark.chroma).toBeLessThan(12);
    expect(dark.lab.l).toBeLessThan(30);
  });

  it('stirs in without water, then thins', () => {
    const first = ['mix', 'burnt-sienna=1', '--strength', '0.3'];
    const stirred = mudlarkJson<MixDocument>([...first, '--add', 'alizarin-crimson=0.5']);
    expect(stirred.parts.map(({ pigment, parts, added }) => [pigment, parts, added])).toEqual([
      ['burnt-sienna', 1, undefined],
      ['alizarin-crimson', undefined, 0.5],
    ]);
    const [sienna, crimson] = stirred.loads.map(({ load }) => load);
    expect(crimson).toBeCloseTo(0.5 * (sienna ?? 0), 10);
    // The sienna gives way to the volume of the crimson alone: 0.5 · 0.3 / 4 of the puddle.
    const [alone] = mudlarkJson<MixDocument>(first).loads;
    expect(sienna).toBeCloseTo((alone?.load ?? 0) / (1 + (0.5 * 0.3) / 4), 10);
    const thinned = mudlarkJson<MixDocument>([...first, '--add', 'alizarin-crimson=0.5', '--thin', '2']);
    expect(thinned.strength).toBeCloseTo(stirred.strength / 2, 10);
    expect(thinned.lab.l).toBeGreaterThan(stirred.lab.l);
  });

  it('takes absolute loads, whatever the strength', () => {
    const given = mudlarkJson<MixDocument>([
      'mix',
      'ultramarine-blue=1',
      'burnt-sienna=2',
      '--loads',
      '--strength',
      '0.1',
    ]);
    expect(given.parts.map(({ load }) => load)).toEqual([1, 2]);
  });

  it('lays strokes lighter than the puddle of the same paint', () => {
    const paints = ['cadmium-yellow=1', 'ultramarine-blue=1'];
    const puddle = mudlarkJson<MixDocument>(['mix', ...paints]);
    const strokes = mudlarkJson<MixDocument>(['mix', ...paints, '--apply', 'strokes']);
    expect(strokes.parts).toEqual(puddle.parts);
    expect(strokes.lab.l).toBeGreaterThan(puddle.lab.l);
  });

  it('refuses a paint that there is not, as it is built', async () => {
    const args = ['mix', 'burnt-siena=1'];
    expect(mudlark(args)).toEqual(await mudlarkHere(args));
  });

  it.each([
    [['burnt-siena=1'], /no paint is called "burnt-siena".*Did you mean burnt-sienna/],
    [['burnt-sienna=-1'], /parts of burnt-sienna must be above 0/],
    [['burnt-sienna=0'], /above 0/],
    [['burnt-sienna=NaN'], /must be a number/],
    [['burnt-sienna=Infinity'], /must be a number/],
    [['burnt-sienna=1e308'], /at most/],
    [['burnt-sienna=1e309'], /must be a number/],
    [['burnt-sienna=0x10'], /must be a number/],
    [['burnt-sienna='], /must be a number/],
    [['burnt-sienna'], /paint=parts/],
    [['burnt-sienna=1', 'burnt-sienna=2'], /named twice/],
    [['burnt-sienna=1', '--strength', '0'], /strength must be above 0/],
    [['burnt-sienna=1', '--strength', '1.5'], /at most 1/],
    [['burnt-sienna=1', '--strength', 'thick'], /must be a number/],
    [['burnt-sienna=1', '--apply', 'spray'], /--apply takes puddle, glaze, strokes/],
    [['burnt-sienna=1', '--add', 'sap-green=0'], /parts of sap-green must be above 0/],
    [['burnt-sienna=1', '--add', 'sap-green'], /paint=parts/],
    [['burnt-sienna=1', '--add', 'sap-green=1', '--add', 'sap-green=1'], /named twice/],
    [['burnt-sienna=1', '--add', 'sap-green=1', '--apply', 'glaze'], /--add stirs into the puddle/],
    [['burnt-sienna=1', '--thin', '0.5'], /thin must be 1/],
    [['burnt-sienna=1', '--thin', '1e9'], /thin must be 1/],
    [['\u001b[31mred=1'], /no paint is called/],
    [['__proto__=1'], /no paint is called/],
    [[], /missing required argument/],
    [['burnt-sienna=1', '--sideways'], /unknown option/],
  ])('refuses %j with one clear line and exit code 2', async (args, message) => {
    const run = await mudlarkHere(['mix', ...args]);
    expect(run.code).toBe(2);
    expect(run.out).toBe('');
    expect(run.err.trimEnd()).toMatch(message);
    expect(run.err.trimEnd().split('\n')).toHaveLength(1);
    expect(run.err).not.toContain('\u001b');
  });
});

describe('mudlark', () => {
  it('prints the version of package.json', () => {
    const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
    expect(mudlark(['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' });
  });

  it('suggests a command for a typo', () => {
    const run = mudlark(['mixx']);
    expect(run.code).toBe(2);
    expect(run.err).toMatch(/mix/);
  });

  it.each([
    [['--help']],
    [['mix', '--help']],
    [['grade', '--help']],
    [['drills', '--help']],
    [['drills', 'check', '--help']],
  ])('helps with examples: %j', (args) => {
    const run = mudlark(args);
    expect(run.code).toBe(0);
    expect(run.out).toMatch(/Examples:\n\s+mudlark/);
  });
});
