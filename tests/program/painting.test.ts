import { copyFileSync, existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { readBox } from '../../src/commands/learner.js';
import { type PaintingPorts, paintingCommand } from '../../src/commands/painting.js';
import type { PaintingOptions } from '../../src/commands/painting-request.js';
import { SCHEMA_VERSION } from '../../src/commands/run.js';
import { WRITTEN } from '../../src/words/voice.js';
import { some } from '../cases.js';
import { file } from '../painting/made-files.js';
import { STUDIO } from '../studio.js';
import { demoFolder } from './demo.js';
import { cleanEnv, mudlark, mudlarkHere } from './run-cli.js';

const folder = mkdtempSync(join(tmpdir(), 'mudlark-painting-'));
const demo = demoFolder();
const at = (name: string): string => join(demo, name);
const env = cleanEnv();
const run = (...args: string[]) => mudlark(['painting', ...args], env);
const here = (...args: string[]) => mudlarkHere(['painting', ...args], env);

interface Document {
  readonly schemaVersion: number;
  readonly white: { readonly x: number; readonly y: number; readonly found: boolean };
  readonly range: { readonly light: number; readonly dark: number };
  readonly shares: { readonly light: number; readonly middle: number; readonly dark: number };
  readonly histogram: readonly number[];
  readonly masses: readonly { readonly step: number; readonly share: number; readonly words: string }[];
  readonly veil: {
    readonly slope: number | null;
    readonly below: number;
    readonly masses: readonly object[];
  };
  readonly advice: readonly object[];
  readonly trust: string;
  readonly reasons: readonly string[];
}

const PORTS: PaintingPorts = {
  voice: WRITTEN,
  columns: 80,
  colour: false,
  box: readBox(STUDIO, 'twelve'),
  painter: 'Ana',
};

const json = async (picture: string, options: PaintingOptions = {}): Promise<Document> =>
  JSON.parse(await paintingCommand(STUDIO, [picture], { ...options, json: true }, PORTS)) as Document;

function refused(code: number, ...args: string[]): string {
  const { code: ended, out, err } = run(...args);
  expect([ended, out]).toEqual([code, '']);
  expect(err.trimEnd().split('\n')).toHaveLength(1);
  return err;
}

const SCENES = ['harbour', 'orchard', 'market', 'quarry'];

describe('demo pictures', () => {
  it('are written as JPEG and PNG, before and after, and never over others unasked', () => {
    const names = SCENES.flatMap((scene) =>
      ['after', 'before'].flatMap((state) => ['jpg', 'png'].map((ending) => `${scene}-${state}.${ending}`)),
    );
    expect(readdirSync(demo).sort()).toEqual(names.sort());
    const other = mkdtempSync(join(folder, 'other-'));
    writeFileSync(join(other, 'quarry-after.png'), 'mine');
    expect(refused(1, '--demo', other)).toMatch(/this file is there already/);
    expect(readdirSync(other)).toEqual(['quarry-after.png']);
    expect(readFileSync(join(other, 'quarry-after.png'), 'utf8')).toBe('mine');
  });

  it.each(some(SCENES, 2))('%s has no darks before, and has them after', async (scene) => {
    const [before, after] = await Promise.all(
      ['before', 'after'].map((state) => json(at(`${scene}-${state}.jpg`))),
    );
    expect(before?.white.found && after?.white.found).toBe(true);
    // Drawn so that the darkest wash lies at step 5.5; the reading may be off by what photographs are held to, 0.4.
    expect(Math.abs((before?.range.dark ?? 0) - 5.5)).toBeLessThan(0.4);
    expect(before?.shares.dark).toBeLessThan(0.02);
    expect(after?.range.dark).toBeGreaterThan(7);
    expect(after?.shares.dark).toBeGreaterThan(0.04);
    expect(before?.trust).toBe('good');
  });
});

describe('painting, as it is built', () => {
  it('prints the document that is promised', () => {
    const { code, out, err } = run(at('harbour-before.png'), '--json');
    expect([code, err]).toEqual([0, '']);
    const read = JSON.parse(out) as Document;
    expect(Object.keys(read)).toEqual([
      'schemaVersion',
      'white',
      'range',
      'shares',
      'histogram',
      'masses',
      'veil',
      'advice',
      'trust',
      'reasons',
    ]);
    expect(read.schemaVersion).toBe(SCHEMA_VERSION);
    expect(Object.keys(read.masses[0] ?? {})).toEqual([
      'x',
      'y',
      'share',
      'step',
      'chroma',
      'hue',
      'lab',
      'words',
    ]);
    const sum = (numbers: readonly number[]): number => numbers.reduce((all, one) => all + one, 0);
    expect(read.histogram).toHaveLength(10);
    expect(sum(read.histogram)).toBeCloseTo(1, 6);
    expect(sum(Object.values(read.shares))).toBeCloseTo(1, 6);
    expect(sum(read.masses.map(({ share }) => share))).toBeCloseTo(1, 2);
  });

  it('says the same of the JPEG and the PNG of a picture', async () => {
    const [one, other] = await Promise.all(
      ['jpg', 'png'].map((ending) => json(at(`orchard-after.${ending}`))),
    );
    for (const end of ['light', 'dark'] as const)
      expect(Math.abs((one?.range[end] ?? 0) - (other?.range[end] ?? 9))).toBeLessThan(0.1);
    for (const part of ['light', 'middle', 'dark'] as const)
      expect(Math.abs((one?.shares[part] ?? 0) - (other?.shares[part] ?? 9))).toBeLessThan(0.02);
  });

  it('tells it in words, on either scale, in 80 columns', async () => {
    const { out, err, code } = run(at('market-after.jpg'));
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/^market-after\.jpg: \d masses\nWhite: bare paper, found at/);
    expect(out).toMatch(/Range: step 1\.\d to 7\.\d \(1 paper white to 10 darkest dark\)\./);
    expect(out).toMatch(/vivid red/);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
    expect((await here(at('market-after.jpg'), '--scale', 'black-first')).out).toMatch(
      /Range: V 9\.\d to 2\.\d \(0 black to 10 white\)\./,
    );
    const spoken = await mudlarkHere(['painting', at('market-after.jpg')], {
      ...env,
      MUDLARK_SCREEN_READER: 'true',
    });
    expect(spoken.out).toMatch(/^Mass 1: [a-z ]+, [a-z ]+, \d+ percent of it, value \d\.\d|^Mass 1: /m);
    expect(spoken.out).not.toMatch(/%|C\*/);
  });

  it('takes a white, a part and corners by hand', async () => {
    const picture = at('harbour-after.png');
    const usual = await json(picture);
    const dark = await json(picture, { white: '0.02,0.5=8' });
    expect(dark.white).toMatchObject({ x: 0.02, y: 0.5, found: false });
    // Paper held for a card of value 8 makes all of it darker by about what lies between them.
    expect(dark.range.dark - usual.range.dark).toBeGreaterThan(0.3);
    const sky = await json(picture, { crop: '0.55,0.1,0.35,0.12', white: '0.02,0.5' });
    expect(sky.range.dark).toBeLessThan(usual.range.dark - 3);
    const corners = await json(picture, { corners: '0.01,0.01,0.99,0.01,0.99,0.99,0.01,0.99' });
    expect(Math.abs(corners.range.dark - usual.range.dark)).toBeLessThan(0.2);
  });

  it('leads from a mass to a mixture', async () => {
    const picture = at('harbour-after.png');
    const paints = 'burnt-sienna,cadmium-red,ultramarine-blue';
    const { masses } = await json(picture);
    const roof = masses.findIndex(({ words }) => /brown/.test(words)) + 1;
    expect(roof).toBeGreaterThan(0);
    const { out, code } = run(picture, '--mass', String(roof), '--goal', 'rich', '--paints', paints);
    expect(code).toBe(0);
    expect(out).toMatch(new RegExp(`^Mass ${roof}: step .*\\nMass ${roof} \\(.*\\) is taken for `));
    expect(out).toContain('1. step');
    const read = (await json(picture, { mass: String(roof), paints: [paints] })) as Document & {
      readonly mixture: {
        readonly mass: number;
        readonly recipes: readonly { readonly parts: readonly { readonly pigment: string }[] }[];
      };
    };
    expect(read.mixture.mass).toBe(roof - 1);
    expect(read.mixture.recipes.length).toBeGreaterThan(0);
    for (const { parts } of read.mixture.recipes)
      for (const { pigment } of parts) expect(paints.split(',')).toContain(pigment);
  });
});

describe('studies', () => {
  it('are written beside the photograph, as greys with nothing else in them', async () => {
    const picture = join(folder, 'study.jpg');
    copyFileSync(at('orchard-after.jpg'), picture);
    const { out, code } = run(picture, '--grey', '--values', '3', '--values', '2');
    expect(code).toBe(0);
    expect(out).toMatch(
      /written: study-grey\.png\nwritten: study-values-3\.png\nwritten: study-values-2\.png\n$/,
    );
    const kept = await sharp(join(folder, 'study-values-3.png')).metadata();
    expect([kept.format, kept.channels, kept.exif, kept.icc, kept.xmp]).toEqual([
      'png',
      1,
      undefined,
      undefined,
      undefined,
    ]);
    const { data } = await sharp(join(folder, 'study-values-3.png'))
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect(new Set(data).size).toBeLessThanOrEqual(9);
    expect(refused(1, picture, '--grey')).toMatch(/study-grey\.png: this file is there already/);
    expect((await here(picture, '--grey', '--force')).out).toMatch(/replaced: study-grey\.png\n$/);
    expect(refused(1, picture, '--grey', '--out', picture, '--force')).toMatch(/never written over/);
    expect((await here(picture, '--values', '5', '--out', join(folder, 'five.png'))).code).toBe(0);
    expect(existsSync(join(folder, 'five.png'))).toBe(true);
  });
});

describe('what the camera wrote into the file', () => {
  it('reaches no output', async () => {
    const bytes = await sharp(at('harbour-before.png'))
      .jpeg()
      .withExif({
        IFD0: { Artist: 'SECRETNAME', Copyright: 'SECRETRIGHT' },
        IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 3230/100' },
      })
      .toBuffer();
    expect(bytes.toString('latin1')).toContain('SECRETNAME');
    const picture = file('camera.jpg', bytes);
    const studies = ['--grey', '--out', join(folder, 'camera-grey.png')];
    const { out, err } = run(picture, ...studies);
    const texts = [
      out,
      err,
      (await here(picture, '--json')).out,
      readFileSync(join(folder, 'camera-grey.png'), 'latin1'),
    ];
    for (const text of texts) expect(text).not.toMatch(/SECRET|GPS|51\/1|3230/);
  });
});
