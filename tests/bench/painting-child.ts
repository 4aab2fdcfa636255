/** One reading of a photograph in a process of its own, for the benchmark: prints how long it took and how much memory at the most. */
const WORKING_SIDE = 640;

/** What sharp itself needs to decode the photograph and bring it to working size. */
async function decode(file: string): Promise<() => Promise<unknown>> {
  const { default: sharp } = await import('sharp');
  sharp.cache(false);
  return () =>
    sharp(file)
      .resize(WORKING_SIDE, WORKING_SIDE, { fit: 'inside' })
      .raw()
      .toBuffer({ resolveWithObject: true });
}

async function read(file: string): Promise<() => Promise<unknown>> {
  const [{ readPhotograph }, { readPainting }, { libraryStudio }] = await Promise.all([
    import('../../src/files/photograph.js'),
    import('../../src/painting/index.js'),
    import('../../src/paints/index.js'),
    import('sharp'),
  ]);
  const studio = libraryStudio();
  return async () => readPainting(studio, await readPhotograph(file), {});
}

const [, , what, file = ''] = process.argv;
const work = await (what === 'decode' ? decode : read)(file);
const from = performance.now();
await work();
const ms = performance.now() - from;
console.log(JSON.stringify({ ms, bytes: 1024 * process.resourceUsage().maxRSS }));
