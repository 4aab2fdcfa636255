import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';

/** Packages that end up in a bundle of one file of src/colour. */
async function packagesOf(file: string): Promise<string[]> {
  const { metafile } = await build({
    entryPoints: [new URL(`../../src/colour/${file}`, import.meta.url).pathname],
    bundle: true,
    write: false,
    metafile: true,
    format: 'esm',
    platform: 'node',
    logLevel: 'silent',
  });
  const names = Object.keys(metafile.inputs).flatMap(
    (path) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1] ?? [],
  );
  return [...new Set(names)].sort();
}

describe('what a colour costs to load', () => {
  it('is nothing but our own code for what searches and grades use', async () => {
    expect(await packagesOf('index.ts')).toEqual([]);
    expect(await packagesOf('reading.ts')).toEqual([]);
  });

  it('is a library only where a screen colour, a difference or a notation is asked for', async () => {
    expect(await packagesOf('screen.ts')).toEqual(['culori']);
    expect(await packagesOf('difference.ts')).toEqual(['culori']);
    expect(await packagesOf('munsell-notation.ts')).toEqual(['munsell']);
    expect(await packagesOf('describe.ts')).toEqual(['culori', 'munsell']);
  });
});
