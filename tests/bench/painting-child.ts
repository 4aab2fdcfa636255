/** One reading of a photograph in a process of its own, for the benchmark: prints how long it took and how much memory at the most. */
import { existsSync, readFileSync } from 'node:fs';

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

async function light(file: string): Promise<() => Promise<unknown>> {
  const [{ readPhotograph }] = await Promise.all([import('../../src/files/photograph.js'), import('sharp')]);
  return () => readPhotograph(file);
}

async function whole(file: string): Promise<() => Promise<unknown>> {
  const [{ readPhotograph }, { readPainting }, { libraryStudio }] = await Promise.all([
    import('../../src/files/photograph.js'),
    import('../../src/painting/index.js'),
    import('../../src/paints/index.js'),
    import('sharp'),
  ]);
  const studio = libraryStudio();
  return async () => readPainting(studio, await readPhotograph(file), {});
}

const STATUS = '/proc/self/status';

/** Most memory of this process. What Node tells begins with that of the process that started it; Linux knows better. */
function mostBytes(): number {
  const told = existsSync(STATUS) ? /VmHWM:\s*(\d+)/.exec(readFileSync(STATUS, 'utf8'))?.[1] : undefined;
  return 1024 * (told === undefined ? process.resourceUsage().maxRSS : Number(told));
}

const WORK: Readonly<Record<string, typeof decode>> = { decode, light, whole };
const [, , what = '', file = ''] = process.argv;
const work = await (WORK[what] ?? decode)(file);
const from = performance.now();
await work();
const ms = performance.now() - from;
console.log(JSON.stringify({ ms, bytes: mostBytes() }));
