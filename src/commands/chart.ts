/** `mudlark chart`: the paints of a box on paper, as PDF or SVG. */
import { extname } from 'node:path';
import { CHARTS, type ChartId, type ChartRequest, chartPaper } from '../charts/index.js';
import { UsageError } from '../errors.js';
import { paperFonts } from '../files/fonts.js';
import { requireOutputs, writeNamed } from '../files/named.js';
import { type Palette, paintOf, type Studio } from '../paints/index.js';
import { openPress, type Press } from '../paper/pdf.js';
import { svgPages } from '../paper/svg.js';
import { PAGE_SIZES, type PaperDocument } from '../paper/types.js';
import { listWords } from '../text/list-words.js';
import { didYouMean } from '../text/nearest.js';
import { cleanText } from '../text/sanitize.js';
import type { Voice } from '../words/voice.js';
import { cautionLines } from './cautions.js';
import { missingLines, sizeOf, textsOf } from './printing.js';
import { readPaints } from './read-paints.js';
import { readNumber } from './read-parts.js';
import { document, usage } from './run.js';
import type { WorkBar } from './work-bar.js';

/** Options as typed. */
export interface ChartOptions {
  readonly box?: string;
  readonly paints?: readonly string[];
  readonly out?: string;
  readonly size?: string;
  readonly seed?: string;
  readonly force?: boolean;
  readonly json?: boolean;
}

/** From the outside. */
export interface ChartPorts {
  readonly voice: Voice;
  readonly nowMs: number;
  /** Where no paints are named. */
  readonly box: Palette;
  readonly bar: WorkBar;
}

/** Most paints of a chart: 780 pairs fill some ninety sheets. */
const MOST_PAINTS = 40;
/** Charts that need two paints. */
const OF_PAIRS: readonly ChartId[] = ['pairs', 'greys', 'practice'];
const MOST_SEED = 2 ** 31 - 1;

function readChart(text: string): ChartId {
  const id = CHARTS.find((chart) => chart === text);
  if (id === undefined)
    throw new UsageError(
      `there is no chart "${cleanText(text, 40)}"; there are: ${listWords(CHARTS)}.${didYouMean(text, CHARTS)}`,
    );
  return id;
}

function readOut(out: string | undefined): { readonly out: string; readonly type: '.pdf' | '.svg' } {
  const type = extname(out ?? '').toLowerCase();
  if (out === undefined || (type !== '.pdf' && type !== '.svg'))
    throw new UsageError('chart needs --out FILE.pdf, or --out FILE.svg for a file a page');
  return { out, type };
}

function readSeed(text: string | undefined): number {
  if (text === undefined) return 1;
  const seed = readNumber(text, '--seed');
  if (!Number.isInteger(seed) || seed < 0 || seed > MOST_SEED)
    throw new UsageError(`--seed takes a whole number from 0 to ${MOST_SEED}, got ${text.slice(0, 20)}`);
  return seed;
}

/** "pairs-2.svg": where one page of several goes. */
function pageName(out: string, at: number, pages: number): string {
  if (pages === 1) return out;
  const type = extname(out);
  return `${out.slice(0, -type.length)}-${at + 1}${type}`;
}

async function filesOf(
  press: Press,
  paper: PaperDocument,
  { out, type }: ReturnType<typeof readOut>,
): Promise<readonly (readonly [file: string, content: string | Uint8Array])[]> {
  if (type === '.pdf') return [[out, await press.print(paper)]];
  const pages = svgPages(paper, press.ruler);
  return pages.map((page, at) => [pageName(out, at, pages.length), page]);
}

function readRequest(
  studio: Studio,
  id: ChartId,
  options: ChartOptions,
  ports: ChartPorts,
): ChartRequest & { readonly ofPaints: boolean } {
  const { paints, box } = readPaints(
    studio,
    { flag: '--paints', texts: options.paints, boxName: options.box },
    ports.box,
    MOST_PAINTS,
  );
  if (OF_PAIRS.includes(id) && paints.length < 2)
    throw new UsageError(`chart ${id} needs two paints or more, got ${paints.length}`);
  const { progress } = ports.bar;
  return { studio, paints, box, seed: readSeed(options.seed), progress, ofPaints: id !== 'values' };
}

/** Prints a chart into a file, or a file a page. @returns what was done @throws UsageError, DataError */
export async function chartCommand(
  studio: Studio,
  chart: string,
  options: ChartOptions,
  ports: ChartPorts,
): Promise<string> {
  const id = readChart(chart);
  const named = readOut(options.out);
  const { force = false } = options;
  const sheet = sizeOf(options.size ?? 'a4');
  const request = readRequest(studio, id, options, ports);
  // Before the work, and again when it is known how many files there are.
  requireOutputs([named.out], [], force);
  const press = openPress(paperFonts());
  const style = { ruler: press.ruler, voice: ports.voice, size: PAGE_SIZES[sheet], madeMs: ports.nowMs };
  let paper: PaperDocument;
  try {
    paper = usage(() => chartPaper(id, request, style));
  } finally {
    ports.bar.end();
  }
  const made = await filesOf(press, paper, named);
  requireOutputs(
    made.map(([file]) => file),
    [],
    force,
  );
  const done = made.map(([file, content]) => writeNamed(file, content, force));
  const missing = press.missing(textsOf(paper));
  const pages = paper.pages.length;
  if (options.json === true)
    return document({
      chart: id,
      ...(request.ofPaints ? { box: request.box, paints: request.paints } : {}),
      ...(id === 'practice' ? { seed: request.seed } : {}),
      size: sheet,
      pages,
      files: made.map(([file]) => cleanText(file, 160)),
      missing,
    });
  const many = pages === 1 ? '1 page' : `${pages} pages`;
  const [first = '', ...more] = done;
  const lines = [
    more.length === 0 ? `${first}, ${many}` : `${first} to ${more.at(-1)?.replace(/^\w+: /, '')}, ${many}`,
    ...missingLines(missing),
    ...(request.ofPaints ? cautionLines(request.paints.map((paint) => paintOf(studio, paint))) : []),
  ];
  return `${lines.join('\n')}\n`;
}
