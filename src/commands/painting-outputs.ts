/** What `mudlark painting` writes: value studies, the report, the practice plan. */
import { basename, dirname, extname, join } from 'node:path';
import { writeNamed } from '../files/named.js';
import { pictureFile } from '../files/sharp.js';
import { asSeen, paintingReport, type ReportPicture, type Study, studyOf } from '../painting/index.js';
import { planText } from '../quiz/plan.js';
import { pngAddress } from '../text/html.js';
import type { Voice } from '../words/voice.js';
import type { ReadPainting } from './painting.js';
import { planOfPainting } from './painting-plan.js';
import type { PaintingOptions, PaintingRequest } from './painting-request.js';

/** One file to write. */
export interface Output {
  readonly path: string;
  readonly what: Study | 'report' | 'plan';
}

/** Where a study goes: beside the photograph, under its name. */
function studyPath(photograph: string, study: Study, out: string | undefined): string {
  if (out !== undefined) return out;
  const name = basename(photograph, extname(photograph));
  return join(dirname(photograph), `${name}-${study === 'grey' ? 'grey' : `values-${study}`}.png`);
}

/** The files that are asked for. */
export const outputsOf = (
  photograph: string,
  { studies }: PaintingRequest,
  { out, report, plan }: PaintingOptions,
): Output[] => [
  ...studies.map((study) => ({ what: study, path: studyPath(photograph, study, out) })),
  ...(report === undefined ? [] : [{ what: 'report', path: report } as const]),
  ...(plan === undefined ? [] : [{ what: 'plan', path: plan } as const]),
];

/** What the files are made from. */
export interface Told {
  /** The painting, or before and after. */
  readonly read: readonly [ReadPainting, ReadPainting?];
  readonly told: readonly string[];
  readonly voice: Voice;
  readonly painter: string;
}

/** In the report each photograph stands in its colours, in greys and in three values. */
const REPORTED = [
  ['colour', 'The painting, evenly lit on white paper'],
  ['grey', 'The value check: the same in greys'],
  [3, 'In three values: light, middle, dark'],
] as const;

async function picturesOf({ reading: { likeness } }: ReadPainting): Promise<ReportPicture[]> {
  const pictures: ReportPicture[] = [];
  for (const [look, words] of REPORTED) {
    const pixels = look === 'colour' ? asSeen(likeness) : studyOf(likeness, look);
    pictures.push({ png: pngAddress(await pictureFile(pixels, 'png')), words });
  }
  return pictures;
}

async function reportOf({ read, told, voice }: Told): Promise<string> {
  const names = read.length > 1 ? ['Before: ', 'After: '] : [''];
  const parts = [];
  for (const [at, one] of read.entries())
    if (one !== undefined)
      parts.push({ title: `${names[at]}${one.name}`, pictures: await picturesOf(one), reading: one.reading });
  return paintingReport(`The painting ${(read[1] ?? read[0]).name}`, parts, told, voice);
}

/** Writes the files. @returns a line each @throws UsageError for a plan of nothing; DataError */
export async function writeOutputs(
  outputs: readonly Output[],
  told: Told,
  force: boolean,
): Promise<string[]> {
  const { read, voice, painter } = told;
  const last = read[1] ?? read[0];
  const contents: (readonly [path: string, content: string | Uint8Array])[] = [];
  for (const { what, path } of outputs) {
    if (what === 'report') contents.push([path, await reportOf(told)]);
    else if (what === 'plan')
      contents.push([
        path,
        planText(planOfPainting(last.advice, { name: painter, of: `the painting ${last.name}` }, voice)),
      ]);
    else contents.push([path, await pictureFile(studyOf(last.reading.likeness, what), 'png')]);
  }
  return contents.map(([path, content]) => writeNamed(path, content, force));
}
